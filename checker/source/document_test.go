package source

import (
	"encoding/json"
	"reflect"
	"strings"
	"testing"
)

func TestFind(t *testing.T) {
	doc := mustRead(t, "t.yaml", "a/b:\n  - {m~n: x, '': y, '0': z}\n  - 1\n~1: w\n")
	for pointer, want := range map[string]string{
		"/a~1b/0/m~0n": `"x"`, "/a~1b/0/": `"y"`, "/a~1b/0/0": `"z"`, "/a~1b/1": "1", "/~01": `"w"`,
	} {
		n := doc.Find(pointer)
		if n == nil || sketch(n) != want {
			t.Errorf("Find(%q) is %v, want %s", pointer, n, want)
		} else if n.Pointer != pointer {
			t.Errorf("the node at %q says %q", pointer, n.Pointer)
		}
	}
	if doc.Find("") != doc.Root {
		t.Error("the empty pointer is not the root")
	}
	for _, pointer := range []string{"/", "a~1b", "/a", "/a~1b/2", "/a~1b/-1", "/a~1b/01", "/a~1b/+1", "/a~1b/x", "/a~1b/1/0", "/~01/", "//"} {
		if n := doc.Find(pointer); n != nil {
			t.Errorf("Find(%q) gives %s", pointer, sketch(n))
		}
	}
}

func TestMember(t *testing.T) {
	doc := mustRead(t, "t.json", `{"a": 1, "b": [2]}`)
	if m := doc.Root.Member("b"); m == nil || m.Key != "b" || m.Value.Kind != Array {
		t.Errorf("member b is %+v", m)
	}
	var none *Node
	if doc.Root.Member("c") != nil || doc.Find("/b").Member("0") != nil || none.Member("a") != nil {
		t.Error("a member that does not exist was found")
	}
}

func TestInterface(t *testing.T) {
	doc := mustRead(t, "t.yaml", "{a: [1.50, 1e999999, 'x'], b: True, c: false, d: ~, e: {}, f: []}")
	want := map[string]any{
		"a": []any{json.Number("1.50"), json.Number("1e999999"), "x"},
		"b": true, "c": false, "d": nil, "e": map[string]any{}, "f": []any{},
	}
	if got := doc.Root.Interface(); !reflect.DeepEqual(got, want) {
		t.Errorf("Interface gives %#v", got)
	}
}

func TestLine(t *testing.T) {
	doc := mustRead(t, "t.yaml", "\ufeffa: é\r\n\r\nb: 2\rc: 3\n")
	for n, want := range []string{"", "a: é", "", "b: 2", "c: 3", "", ""} {
		if got := doc.Line(n); got != want {
			t.Errorf("line %d is %q, want %q", n, got, want)
		}
	}
}

// TestFormat tells which reader a name and a text lead to, by what only one of
// the two accepts or says.
func TestFormat(t *testing.T) {
	for _, c := range []struct{ name, text, want string }{
		{"x.json", `{"a": 1}`, `{"a": 1}`},
		{"X.JSON", `{a: 1}`, "not in double quotes"},
		{"x.deck.yaml", `{a: 1}`, `{"a": 1}`},
		{"dir.json/x.yml", `{a: 1}`, `{"a": 1}`},
		{"-", "a: 1", `{"a": 1}`},
		{"-", " {\"a\":\t1}", `{"a": 1}`},
		{"-", "{a: 1}", `{"a": 1}`},
		{"-", "{a: 1, a: 2}", "already given"},
		{"-", "{\"a\": 1,}", `{"a": 1}`},
		{"-", "{\"a\": 010}", "octal"},
		{"-", "{\"a\": 1, \"a\": 2}", "already given"},
		{"-", "[a, b]", `["a", "b"]`},
		{"-", "[1, 2", "the file ends"},
		{"-", "[a, b", "never closed"},
		{"-", "{", "the file ends"},
		{"-", "# c\n[1]", `[1]`},
		{"noext", "[", "the file ends"},
		{"x.txt", "a:\n\tb: 1", "tab"},
	} {
		doc, err := Read(c.name, []byte(c.text))
		var got string
		if err != nil {
			got = err.Error()
		} else {
			got = sketch(doc.Root)
		}
		if !strings.Contains(got, c.want) {
			t.Errorf("%s with %q gives %s, want %s", c.name, c.text, got, c.want)
		}
		if err == nil && doc.Name != c.name {
			t.Errorf("the document of %s is named %s", c.name, doc.Name)
		}
	}
}

func TestKindString(t *testing.T) {
	var got []string
	for k := Object; k <= Null+1; k++ {
		got = append(got, k.String())
	}
	want := "object array string number boolean null unknown kind 7"
	if strings.Join(got, " ") != want {
		t.Errorf("kinds are named %v", got)
	}
}
