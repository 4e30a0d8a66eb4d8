package edit_test

import (
	"bytes"
	"os"
	"path/filepath"
	"reflect"
	"strings"
	"testing"

	"plumbrule/checker/edit"
	"plumbrule/checker/source"
)

func read(t testing.TB, name, text string) *source.Document {
	t.Helper()
	doc, err := source.Read(name, []byte(text))
	if err != nil {
		t.Fatalf("%v in\n%s", err, text)
	}
	return doc
}

func TestApply(t *testing.T) {
	for _, c := range []struct {
		name, file, text string
		edits            []edit.Edit
		want             string
	}{
		{"plain", "a.yaml", "a: 7 in # worn\nb: 1\n", []edit.Edit{{Pointer: "/a", Value: edit.Text("8-1/2 in")}}, "a: 8-1/2 in # worn\nb: 1\n"},
		{"quoted", "a.yaml", `a: "7 in"`, []edit.Edit{{Pointer: "/a", Value: edit.Text(`8"`)}}, `a: "8\""`},
		{"single quotes", "a.yaml", `a: {b: '7 in'}`, []edit.Edit{{Pointer: "/a/b", Value: edit.Text(`8'`)}}, `a: {b: '8'''}`},
		{"needs quotes", "a.yaml", "a: [x, y]", []edit.Edit{{Pointer: "/a/1", Value: edit.Text("p, q")}}, `a: [x, "p, q"]`},
		{"would be a number", "a.yaml", "a: x", []edit.Edit{{Pointer: "/a", Value: edit.Text("1e5")}}, `a: "1e5"`},
		{"would be a flag", "a.yaml", "a: x", []edit.Edit{{Pointer: "/a", Value: edit.Text("No")}}, `a: "No"`},
		{"percent", "a.yaml", "a: 3%", []edit.Edit{{Pointer: "/a", Value: edit.Text("2%")}}, "a: 2%"},
		{"number and flag", "a.yaml", "a: 7\nb: false\n", []edit.Edit{{Pointer: "/b", Value: edit.Flag(true)}, {Pointer: "/a", Value: edit.Number(8)}}, "a: 8\nb: true\n"},
		{"json", "a.json", `{"a": {"b": "7 in"}}`, []edit.Edit{{Pointer: "/a/b", Value: edit.Text("8 in")}}, `{"a": {"b": "8 in"}}`},
		{"json list", "a.json", `{"a": ["1 in"]}`, []edit.Edit{{Pointer: "/a", Value: edit.List([]string{"1 in", "2 in"})}}, `{"a": ["1 in", "2 in"]}`},
		{"flow list", "a.yaml", "a: [1 in, 2 in] # posts\n", []edit.Edit{{Pointer: "/a", Value: edit.List([]string{"1 in", "3 in", "2 in"})}}, "a: [1 in, 3 in, 2 in] # posts\n"},
		{"block list", "a.yaml", "a:\n- 1 in\n- 2 in\nb: 1\n", []edit.Edit{{Pointer: "/a", Value: edit.List([]string{"3 in"})}}, "a: [3 in]\nb: 1\n"},
		{"member of a block", "a.yaml", "l:\n  - a: 1\n    b: 2\n", []edit.Edit{{Pointer: "/l/0/c", Value: edit.Text("G1")}}, "l:\n  - c: G1\n    a: 1\n    b: 2\n"},
		{"member of a flow", "a.yaml", "l: {a: 1}", []edit.Edit{{Pointer: "/l/c", Value: edit.Text("G1")}}, "l: {c: G1, a: 1}"},
		{"member of nothing", "a.yaml", "l: {}", []edit.Edit{{Pointer: "/l/c", Value: edit.Text("G1")}}, "l: {c: G1}"},
		{"member in json", "a.json", `{"l": {"a": 1}}`, []edit.Edit{{Pointer: "/l/c", Value: edit.Object("like", "G1")}}, `{"l": {"c": {"like": "G1"}, "a": 1}}`},
		{"returns", "a.yaml", "a:\r\n  b: 1\r\n", []edit.Edit{{Pointer: "/a/c", Value: edit.Number(2)}}, "a:\r\n  c: 2\r\n  b: 1\r\n"},
		{"marked start", "a.yaml", "\ufeffa: 7 in\n", []edit.Edit{{Pointer: "/a", Value: edit.Text("8 in")}}, "\ufeffa: 8 in\n"},
	} {
		t.Run(c.name, func(t *testing.T) {
			doc := read(t, c.file, c.text)
			got, err := edit.Apply(doc, c.edits)
			if err != nil {
				t.Fatal(err)
			}
			if string(got) != c.want {
				t.Errorf("got\n%s\nwant\n%s", got, c.want)
			}
			again := read(t, c.file, string(got))
			for _, e := range c.edits {
				if n := again.Find(e.Pointer); n == nil || !reflect.DeepEqual(n.Interface(), e.Value.Interface()) {
					t.Errorf("%s reads back as %v", e.Pointer, n.Interface())
				}
			}
		})
	}
}

func TestRefusals(t *testing.T) {
	doc := read(t, "a.yaml", `a: {b: [1, 2]}
c: x
e:
f: {}
g: # from the survey
  - 1
h:
  - 1 # the north corner
  - 2
? i # a remark: with a colon
:
  - 1
`)
	for name, edits := range map[string][]edit.Edit{
		"no pointer":     {{Pointer: "x", Value: edit.Number(1)}},
		"below a text":   {{Pointer: "/c/d", Value: edit.Number(1)}},
		"behind a list":  {{Pointer: "/a/b/2", Value: edit.Number(1)}},
		"nowhere":        {{Pointer: "/x/y", Value: edit.Number(1)}},
		"one in other":   {{Pointer: "/a", Value: edit.Number(1)}, {Pointer: "/a/b", Value: edit.Number(1)}},
		"left empty":     {{Pointer: "/e", Value: edit.Number(1)}},
		"two in empty":   {{Pointer: "/f/a", Value: edit.Number(1)}, {Pointer: "/f/b", Value: edit.Number(1)}},
		"comment first":  {{Pointer: "/g", Value: edit.List([]string{"1"})}},
		"comment within": {{Pointer: "/h", Value: edit.List([]string{"1"})}},
		"key away":       {{Pointer: "/i", Value: edit.List([]string{"1"})}},
		"twice":          {{Pointer: "/c", Value: edit.Text("y")}, {Pointer: "/c", Value: edit.Text("z")}},
	} {
		if out, err := edit.Apply(doc, edits); err == nil {
			t.Errorf("%s: got\n%s", name, out)
		}
	}
}

// every calls f for each value of a document but the root.
func every(n *source.Node, f func(*source.Node)) {
	if n.Parent != nil {
		f(n)
	}
	for _, m := range n.Members {
		every(m.Value, f)
	}
	for _, item := range n.Items {
		every(item, f)
	}
}

// holdsToItself puts each value of a document in its own place: all values must
// read as before.
func holdsToItself(t testing.TB, doc *source.Document) (edits int) {
	want := doc.Root.Interface()
	every(doc.Root, func(n *source.Node) {
		if n.Kind == source.Null {
			return // may be left empty, which gives it no place
		}
		out, err := edit.Apply(doc, []edit.Edit{{Pointer: n.Pointer, Value: n}})
		if len(n.Members)+len(n.Items) > 0 && err != nil && bytes.ContainsAny(doc.Bytes, "#?") {
			return // it may have comments in it, or a key away from its colon
		}
		edits++
		if err != nil {
			t.Fatalf("%s: %v", n.Pointer, err)
		}
		again, err := source.Read(doc.Name, out)
		if err != nil {
			t.Fatalf("%s in place of itself: %v\n%s", n.Pointer, err, out)
		}
		if !reflect.DeepEqual(again.Root.Interface(), want) {
			t.Errorf("%s in place of itself changes the document to\n%s", n.Pointer, out)
		}
	})
	return edits
}

func TestValueInPlaceOfItself(t *testing.T) {
	files, err := filepath.Glob("../../fixtures/designs/*.deck.yaml")
	if err != nil || len(files) == 0 {
		t.Fatal(files, err)
	}
	edits := 0
	for _, file := range files {
		data, err := os.ReadFile(file)
		if err != nil {
			t.Fatal(err)
		}
		edits += holdsToItself(t, read(t, file, string(data)))
	}
	t.Logf("%d values put in their own place", edits)
	if edits < 500 {
		t.Errorf("only %d values", edits)
	}
}

func FuzzEdit(f *testing.F) {
	for _, text := range []string{
		"a: 7 in\n", "a:\n  - b: 1\n    c: [x, 'y']\n", `{"a": {"b": [1, true, null]}}`, "a:\n- x\n- y # two\nb: {c: d}\n",
		"a: |\n  long\n  text\nb: >-\n  folded\n", "\"a\": \"b\\u00e9\"\nc: 'it''s'\n", "a: {}\nb: []\n", "? a\n: b\n",
	} {
		f.Add(text)
	}
	f.Fuzz(func(t *testing.T, text string) {
		for _, name := range []string{"a.yaml", "a.json"} {
			doc, err := source.Read(name, []byte(text))
			if err != nil || len(text) > 2000 {
				continue
			}
			if strings.ContainsRune(text, '?') {
				continue // keys behind question marks are on lines of their own
			}
			holdsToItself(t, doc)
		}
	})
}
