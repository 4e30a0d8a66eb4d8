package draw_test

import (
	"bytes"
	"io"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"plumbrule/checker/draw"
	"plumbrule/checker/draw/paper"
	"plumbrule/checker/draw/pdf"
	"plumbrule/checker/draw/png"
	"plumbrule/checker/draw/svg"
	"plumbrule/checker/facts"
	"plumbrule/checker/model"
	"plumbrule/checker/report/golden"
	"plumbrule/checker/source"
)

// The designs that are drawn: those of the fixtures, and shapes that they lack.
func designFiles() []string {
	var files []string
	for _, name := range fixtures() {
		files = append(files, filepath.Join("..", "..", "fixtures", "designs", name+".deck.yaml"))
	}
	for _, name := range []string{"octagon", "along", "bare"} {
		files = append(files, filepath.Join("testdata", "shapes", name+".deck.yaml"))
	}
	return files
}

func fixtures() []string { return []string{"alder-lane", "karaka-bay", "ketch-point", "quarry-hill"} }

func fixture(name string) string {
	return filepath.Join("..", "..", "fixtures", "designs", name+".deck.yaml")
}

// read takes a design to what follows from it, without any rule.
func read(t *testing.T, file string) *facts.Derived {
	t.Helper()
	data, err := os.ReadFile(file)
	if err != nil {
		t.Fatal(err)
	}
	doc, err := source.Read(file, data)
	if err != nil {
		t.Fatal(err)
	}
	deck, problems := model.Read(doc)
	if len(problems) > 0 {
		t.Fatalf("%s: %s", file, problems[0].Message)
	}
	derived, faults := facts.Derive(deck)
	if len(faults) > 0 {
		t.Fatalf("%s: %s", file, faults[0].Message)
	}
	return derived
}

func sheets(t *testing.T, file string, options draw.Options) []*paper.Sheet {
	t.Helper()
	derived := read(t, file)
	options.Source = filepath.Base(file)
	list, err := draw.Sheets(derived, options)
	if err != nil {
		t.Fatal(err)
	}
	return list
}

func TestGoldens(t *testing.T) {
	for _, name := range fixtures() {
		for _, s := range sheets(t, fixture(name), draw.Options{}) {
			var out bytes.Buffer
			if err := svg.Write(&out, s); err != nil {
				t.Fatal(err)
			}
			golden.Equal(t, name+"/"+s.File+".svg", out.Bytes())
		}
	}
}

func TestSameBytes(t *testing.T) {
	write := func(w io.Writer) {
		list := sheets(t, fixture("ketch-point"), draw.Options{Report: run()})
		if err := pdf.Write(w, list); err != nil {
			t.Fatal(err)
		}
		for _, s := range list {
			if err := svg.Write(w, s); err != nil {
				t.Fatal(err)
			}
		}
		for _, s := range list[:2] {
			if err := png.Write(w, s, 72); err != nil {
				t.Fatal(err)
			}
		}
	}
	var first, second bytes.Buffer
	write(&first)
	write(&second)
	if !bytes.Equal(first.Bytes(), second.Bytes()) {
		t.Error("two runs gave different bytes")
	}
}

func TestOptions(t *testing.T) {
	derived := read(t, fixture("alder-lane"))
	for _, options := range []draw.Options{{Paper: "napkin"}, {Views: []draw.View{"attic"}}} {
		if _, err := draw.Sheets(derived, options); err == nil || !strings.Contains(err.Error(), "unknown") {
			t.Errorf("%+v: %v", options, err)
		}
	}
	one := sheets(t, fixture("alder-lane"), draw.Options{Views: []draw.View{draw.Stairs}, Paper: "letter"})
	if len(one) != 1 || one[0].Width != 792 || one[0].File != "d1-section-of-stair-st1" || one[0].Job != "Alder Lane back deck" {
		t.Errorf("got %d sheets, the first %+v", len(one), *one[0])
	}
}

// Everything stays inside the border of its sheet, and no words stand on others,
// on any paper.
func TestWordsHaveRoom(t *testing.T) {
	for _, file := range designFiles() {
		for i, name := range draw.Papers() {
			if i > 0 && testing.Short() {
				break
			}
			for _, s := range sheets(t, file, draw.Options{Paper: name}) {
				const margin = 28
				if e := paper.Bounds(s.Items); e.Min.X < margin-1 || e.Min.Y < margin-1 || e.Max.X > s.Width-margin+1 || e.Max.Y > s.Height-margin+1 {
					t.Errorf("%s on %s, %s: reaches from %.0f to %.0f", filepath.Base(file), name, s.Name, e.Min, e.Max)
				}
				apart(t, filepath.Base(file)+" on "+name+", "+s.Name, s)
			}
		}
	}
}

// apart reports words that stand on other words.
func apart(t *testing.T, where string, s *paper.Sheet) {
	t.Helper()
	texts := paper.Texts(s.Items)
	if len(texts) < 10 {
		t.Errorf("%s: only %d texts", where, len(texts))
	}
	for i := range texts {
		for k := range i {
			if texts[i].Box().Meets(texts[k].Box()) {
				t.Errorf("%s: %q stands on %q", where, texts[i].Words, texts[k].Words)
			}
		}
	}
}

// A sheet says what it shows to those who cannot see it, how far it goes, and
// that it proves nothing.
func TestEverySheetSaysWhatItIs(t *testing.T) {
	for _, file := range designFiles() {
		list := sheets(t, file, draw.Options{})
		for _, s := range list {
			var all []string
			for _, text := range paper.Texts(s.Items) {
				all = append(all, text.Words)
			}
			page := strings.Join(all, " ")
			for _, want := range []string{"Nothing found is no proof", "None was run", "sheet", s.Number + " of ", "Do not scale the drawing"} {
				if !strings.Contains(page, want) {
					t.Errorf("%s, %s does not say %q", filepath.Base(file), s.Name, want)
				}
			}
			if len(s.About) < 20 {
				t.Errorf("%s, %s: %q tells little", filepath.Base(file), s.Name, s.About)
			}
			for _, verdict := range []string{"compliant", "approved", "passes"} {
				if strings.Contains(page, verdict) {
					t.Errorf("%s, %s says %q", filepath.Base(file), s.Name, verdict)
				}
			}
		}
	}
}
