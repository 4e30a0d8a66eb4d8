package draw

import (
	"encoding/json"
	"os"
	"path/filepath"
	"testing"

	"plumbrule/checker/draw/paper"
	"plumbrule/checker/facts"
	"plumbrule/checker/model"
	"plumbrule/checker/source"
)

// Whatever field a design leaves out, it is drawn: each field of each design is
// left out once.
func TestDrawsWithoutAnyField(t *testing.T) {
	files, err := filepath.Glob(filepath.Join("..", "..", "fixtures", "designs", "*.deck.yaml"))
	if err != nil || len(files) < 4 {
		t.Fatalf("%d designs, %v", len(files), err)
	}
	shapes, err := filepath.Glob(filepath.Join("testdata", "shapes", "*.deck.yaml"))
	if err != nil {
		t.Fatal(err)
	}
	fonts, err := paper.OpenFonts()
	if err != nil {
		t.Fatal(err)
	}
	tried := 0
	for _, file := range append(files, shapes...) {
		data, err := os.ReadFile(file)
		if err != nil {
			t.Fatal(err)
		}
		doc, err := source.Read(file, data)
		if err != nil {
			t.Fatal(err)
		}
		for i, field := range fields(doc.Root) {
			if field == "/deck" || testing.Short() && i%5 != 0 {
				continue
			}
			tried += drawWithout(t, fonts, doc.Root, field)
		}
	}
	if tried < 100 {
		t.Errorf("only %d drawings", tried)
	}
}

// drawWithout draws a design with one member left out, and counts the figures.
func drawWithout(t *testing.T, fonts *paper.Fonts, root *source.Node, field string) int {
	t.Helper()
	data, err := json.Marshal(without(root, field))
	if err != nil {
		t.Fatal(err)
	}
	doc, err := source.Read("left-out.deck.json", data)
	if err != nil {
		t.Fatal(err)
	}
	deck, problems := model.Read(doc)
	if len(problems) > 0 {
		return 0 // what is left refers to what was left out
	}
	derived, faults := facts.Derive(deck)
	if len(faults) > 0 {
		return 0
	}
	d := newDrafter(derived, fonts, nil)
	n := 0
	for _, view := range Views() {
		list, err := d.drawings(view)
		if err != nil {
			t.Fatal(err)
		}
		for _, drawing := range list {
			for _, build := range drawing.figures {
				figure := build(pencil{scale: scales(deck.System)[6], draft: true})
				if e := paper.Bounds(figure.items()); e.Width() > 1e5 || e.Height() > 1e5 {
					t.Errorf("%s without %s reaches %.0f by %.0f points", drawing.name, field, e.Width(), e.Height())
				}
				n++
			}
		}
	}
	return n
}

// fields lists the pointers of all members of objects.
func fields(n *source.Node) []string {
	var list []string
	for _, m := range n.Members {
		list = append(append(list, m.Value.Pointer), fields(m.Value)...)
	}
	for _, item := range n.Items {
		list = append(list, fields(item)...)
	}
	return list
}

// without is a value as JSON takes it, one member left out.
func without(n *source.Node, field string) any {
	switch n.Kind {
	case source.Object:
		object := map[string]any{}
		for _, m := range n.Members {
			if m.Value.Pointer != field {
				object[m.Key] = without(m.Value, field)
			}
		}
		return object
	case source.Array:
		list := make([]any, len(n.Items))
		for i, item := range n.Items {
			list[i] = without(item, field)
		}
		return list
	}
	return n.Interface()
}

func TestFieldWords(t *testing.T) {
	for path, want := range map[string]string{
		"platforms[].decking.overhang": "decking overhang",
		"platforms[].footings.depth":   "footing depth",
		"platforms[].joists.direction": "joists direction",
		"platforms[].beams":            "beams",
		"stairs[].from.at":             "stair from at",
		"width of the boards":          "width of the boards",
	} {
		if got := fieldWords(path); got != want {
			t.Errorf("%s: %q, want %q", path, got, want)
		}
	}
}

// What is not shown is placed where it would stand.
func TestFilledIn(t *testing.T) {
	for _, c := range []struct{ at, needs, want string }{
		{"/platforms/0", "platforms[].footings.depth", "/platforms/0/footings/depth"},
		{"/platforms/0/footings", "platforms[].footings.depth", "/platforms/0/footings/depth"},
		{"/stairs/1", "stairs[].landing_bottom.along", "/stairs/1/landing_bottom/along"},
		{"/guards/0", "platforms[].ledger", "/guards/0"},
		{"/platforms/1/outline", "platforms[].edges.front.drop", "/platforms/1/edges/front/drop"},
		{"/platforms/1/ledger", "platforms[].ledger", "/platforms/1/ledger"},
		{"/stairs/0/risers", "", "/stairs/0/risers"},
	} {
		if got := filledIn(c.at, c.needs); got != c.want {
			t.Errorf("%s lacking %s: %s, want %s", c.at, c.needs, got, c.want)
		}
	}
}

func BenchmarkPlan(b *testing.B) {
	data, err := os.ReadFile(filepath.Join("..", "..", "fixtures", "designs", "quarry-hill.deck.yaml"))
	if err != nil {
		b.Fatal(err)
	}
	doc, err := source.Read("quarry-hill.deck.yaml", data)
	if err != nil {
		b.Fatal(err)
	}
	deck, _ := model.Read(doc)
	derived, _ := facts.Derive(deck)
	for b.Loop() {
		if _, err := Sheets(derived, Options{Views: []View{Plan}}); err != nil {
			b.Fatal(err)
		}
	}
}
