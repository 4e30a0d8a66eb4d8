package schema

import (
	"os"
	"path/filepath"
	"slices"
	"strings"
	"sync"
	"testing"

	"plumbrule/checker/source"
)

func read(t testing.TB, file string) *source.Document {
	t.Helper()
	data, err := os.ReadFile(file)
	if err != nil {
		t.Fatal(err)
	}
	return parse(t, filepath.Base(file), string(data))
}

func parse(t testing.TB, name, text string) *source.Document {
	t.Helper()
	doc, err := source.Read(name, []byte(text))
	if err != nil {
		t.Fatal(err)
	}
	return doc
}

// TestProblemsWithPointers looks at what the fixtures do not show: pointers, and the ends of spans.
func TestProblemsWithPointers(t *testing.T) {
	for _, c := range []struct{ name, text, pointer, marked, message string }{
		{"unknown key", "deck: 1\nguards: [{hieght: 3 ft}]", "/guards/0/hieght", "hieght", `unknown key "hieght" in the guard`},
		{"wrong word", "deck: 1\nplatforms: [{support: wall}]", "/platforms/0/support", "wall", `"wall" is not a word known here`},
		{"missing key", "job: {}", "", "", `the deck description lacks the key "deck"`},
		{"edge with a slash and blanks", "deck: 1\nplatforms: [{edges: {a/b ~ c%2: {drop: 3}}}]", "/platforms/0/edges/a~1b ~0 c%2/drop", "3", "a length needs its unit, found the bare number 3"},
		{"letters outside ASCII before it", "deck: 1\nlumber: {fräßig: {treated: ja}}", "/lumber/fräßig/treated", "ja", `expected true or false, found the text "ja"`},
		{"refused key", "deck: 1\nguards: [{infill: {kind: glass, baluster_width: 3}}]", "/guards/0/infill/baluster_width", "baluster_width", `"baluster_width" has no place here: it belongs to infill of balusters`},
	} {
		t.Run(c.name, func(t *testing.T) {
			doc := parse(t, "x.yaml", c.text)
			problems := Validate("design", doc)
			if len(problems) != 1 {
				t.Fatalf("found %+v, want one problem", problems)
			}
			p := problems[0]
			if marked := c.text[p.Span.Start.Offset:p.Span.End.Offset]; p.Pointer != c.pointer || marked != c.marked || p.Message != c.message {
				t.Errorf("found %q at %q, marking %q", p.Message, p.Pointer, marked)
			}
		})
	}
}

// TestOneMistakeOneProblem breaks the good designs in one place at a time, all over, and asks for exactly one
// problem, in that place.
func TestOneMistakeOneProblem(t *testing.T) {
	mutants := 0
	for _, file := range designs(t, "designs") {
		doc := read(t, file)
		mutate(doc.Root, func(what, pointer string) {
			if mutants++; mutants%3 != 0 {
				return // a place is broken in five ways, so that all ways and nearly all places still have their turn
			}
			problems := Validate("design", doc)
			if len(problems) != 1 || problems[0].Pointer != pointer {
				t.Errorf("%s: %s at %s gives %+v", file, what, pointer, problems)
			}
		})
	}
	if mutants < 3000 {
		t.Errorf("only %d mutants, of which every third was tried", mutants)
	}
}

// mutate calls fn with the tree broken in one place, and mends it again.
func mutate(n *source.Node, fn func(what, pointer string)) {
	for i := range n.Members {
		m := &n.Members[i]
		if closed := m.Value.Pointer != "/lumber/"+m.Key && !strings.HasSuffix(n.Pointer, "/edges"); closed {
			key, pointer := m.Key, m.Value.Pointer
			m.Key, m.Value.Pointer = key+"qx", pointer+"qx"
			fn("a misspelt key", pointer+"qx")
			m.Key, m.Value.Pointer = key, pointer
		}
	}
	good := *n
	for _, bad := range []source.Node{
		{Kind: source.Null},
		{Kind: source.String, Text: ""},
		{Kind: source.Array, Items: []*source.Node{{Kind: source.Bool, Text: "true"}}},
		{Kind: source.Number, Text: "-7.5"},
	} {
		number := bad.Kind == source.Number && (n.Kind == source.Number || strings.HasSuffix(n.Pointer, "/turn"))
		list := bad.Kind == source.Array && n.Kind == source.Array
		if number || list {
			continue
		}
		bad.Pointer, bad.Parent, bad.Span = good.Pointer, good.Parent, good.Span
		*n = bad
		fn("a value replaced by "+found(n), good.Pointer)
		*n = good
	}
	for _, m := range n.Members {
		mutate(m.Value, fn)
	}
	for _, item := range n.Items {
		mutate(item, fn)
	}
}

// TestSameProblemsEveryTime runs a file with many mistakes again and again, from several goroutines.
func TestSameProblemsEveryTime(t *testing.T) {
	var text strings.Builder
	text.WriteString("dek: 2\nplatforms:\n")
	for range 12 {
		text.WriteString("  - {mark: 1, suport: x, support: y, joists: {size: 2x11, layout: equal, spacing: 3}, outline: {walk: [], corners: 3}}\n")
	}
	doc := parse(t, "x.yaml", text.String())
	want := Validate("design", doc)
	if len(want) < 60 {
		t.Fatalf("found only %d problems", len(want))
	}
	for i := 1; i < len(want); i++ {
		if want[i].Span.Start.Offset < want[i-1].Span.Start.Offset {
			t.Errorf("%q comes after %q", want[i].Message, want[i-1].Message)
		}
	}
	var wait sync.WaitGroup
	for range 4 {
		wait.Go(func() {
			for range 13 {
				if got := Validate("design", doc); !slices.Equal(got, want) {
					t.Error("the problems differ from run to run")
				}
			}
		})
	}
	wait.Wait()
}

func TestUnknownSchema(t *testing.T) {
	doc := parse(t, "x.yaml", "deck: 1")
	problems := Validate("roof", doc)
	if len(problems) != 1 || !strings.Contains(problems[0].Message, `no schema is named "roof"`) {
		t.Errorf("found %+v", problems)
	}
	if err := ValidateValue("roof", 1); err == nil {
		t.Error("a value fits a schema that does not exist")
	}
}

func TestValidateValue(t *testing.T) {
	type guard struct {
		Height string `json:"height"`
	}
	good := map[string]any{"deck": 1, "guards": []guard{{"36 in"}}}
	if err := ValidateValue("design", good); err != nil {
		t.Errorf("a good value is refused: %v", err)
	}
	bad := map[string]any{"deck": 1, "guards": []guard{{"36 yd"}}, "stairs": 3}
	err := ValidateValue("design", bad)
	if err == nil {
		t.Fatal("a bad value is accepted")
	}
	for _, want := range []string{`design "/guards/0/height": length "36 yd"`, `design "/stairs": expected a list of stairs, found the number 3`} {
		if !strings.Contains(err.Error(), want) {
			t.Errorf("%q does not say %q", err, want)
		}
	}
	if err := ValidateValue("design", func() {}); err == nil {
		t.Error("a function is accepted")
	}
}

func TestAbsurdNumbers(t *testing.T) {
	for number, want := range map[string]bool{
		"7": false, "7.0": false, "-45": false, "1e3": false, "2.5E-7": false,
		"1e999999": true, "1e-999999": true, "1e99999999999999999999": true, strings.Repeat("9", 41): true,
	} {
		if got := absurd(number); got != want {
			t.Errorf("absurd(%s) = %v", number, got)
		}
	}
}

// FuzzValidate looks for documents that make it panic, hang, or place a problem outside the file.
func FuzzValidate(f *testing.F) {
	for _, below := range []string{"designs", "broken"} {
		files, err := filepath.Glob(filepath.Join(fixtures, below, "*.deck.yaml"))
		if err != nil {
			f.Fatal(err)
		}
		for _, file := range files {
			data, err := os.ReadFile(file)
			if err != nil {
				f.Fatal(err)
			}
			f.Add(string(data))
		}
	}
	f.Fuzz(func(t *testing.T, text string) {
		doc, err := source.Read("x.yaml", []byte(text))
		if err != nil {
			return
		}
		for _, p := range Validate("design", doc) {
			if p.Span.Start.Offset < 0 || p.Span.End.Offset > len(text) || p.Span.Start.Offset > p.Span.End.Offset {
				t.Errorf("%q is placed at %v of %d bytes", p.Message, p.Span, len(text))
			}
			if p.Message == "" || strings.ContainsAny(p.Message+p.Hint, "\n\r") || doc.Find(p.Pointer) == nil {
				t.Errorf("problem %+v", p)
			}
		}
	})
}

func BenchmarkValidate(b *testing.B) {
	doc := read(b, filepath.Join(fixtures, "designs", "quarry-hill.deck.yaml"))
	mustLookup(b, "design") // compiling is measured by itself
	for b.Loop() {
		if problems := Validate("design", doc); problems != nil {
			b.Fatal(problems)
		}
	}
}

func BenchmarkCompile(b *testing.B) {
	for b.Loop() {
		if _, err := compile("design", quantityKeyword); err != nil {
			b.Fatal(err)
		}
	}
}
