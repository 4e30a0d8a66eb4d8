package source

import (
	"fmt"
	"strings"
	"testing"
)

// TestYAMLTree checks values and, by checkTree, the places of all of them.
func TestYAMLTree(t *testing.T) {
	for _, c := range []struct{ text, want string }{
		{"a: 1", `{"a": 1}`},
		{"a: [1, 2.50, -0, 1e3, 1E+999999]", `{"a": [1, 2.50, -0, 1e3, 1E+999999]}`},
		{"- yes\n- no\n- on\n- off\n- y\n- Yes", `["yes", "no", "on", "off", "y", "Yes"]`},
		{"- true\n- True\n- TRUE\n- false\n- 'true'", `[true, true, true, false, "true"]`},
		{"- null\n- ~\n- Null\n- NULL\n-\n- ''", `[null, null, null, null, null, ""]`},
		{"- 2024-01-05\n- 12:30:45\n- 1.2.3\n- 1-1/2\n- 2x10\n- 16 in", `["2024-01-05", "12:30:45", "1.2.3", "1-1/2", "2x10", "16 in"]`},
		{"- \"010\"\n- '0x1F'\n- 6' 5\"\n- +\n- .\n- ...x", `["010", "0x1F", "6' 5\"", "+", ".", "...x"]`},
		{"a:\nb: # c\n\n  # d\nc:", `{"a": null, "b": null, "c": null}`},
		{"{a: , b, 'c': , d:\n # x ]\n }", `{"a": null, "b": null, "c": null, "d": null}`},
		{"a:\n- x\n- y\nb: z", `{"a": ["x", "y"], "b": "z"}`},
		{"- - a\n  - b\n- c: d\n  e: f", `[["a", "b"], {"c": "d", "e": "f"}]`},
		{"a: one\n  two\n\n  three # four\nb: x", `{"a": "one two\nthree", "b": "x"}`},
		{"[one\n two, 'three\n four', \"five\\\n  six\"]", `["one two", "three four", "fivesix"]`},
		{`"a\"b": "c\\"` + "\n'd''e': ''''\n", `{"a\"b": "c\\", "d'e": "'"}`},
		{`a: "\x41\u00e9\U0001F600\/\t"`, `{"a": "Aé😀/\t"}`},
		{"é: [ü, {日本: 語}]\nz: 1", `{"é": ["ü", {"日本": "語"}], "z": 1}`},
		{"a: |\n  x\n   y\n\nb: 1", `{"a": "x\n y\n", "b": 1}`},
		{"a: |-\n  x\n  y\n\n# c\nb: 1", `{"a": "x\ny", "b": 1}`},
		{"a: |+ # c\n  x\n\n\nb: 1", `{"a": "x\n\n\n", "b": 1}`},
		{"a: >\n  x\n  y\n\n  z\n   w\nb: 1", `{"a": "x y\nz\n w\n", "b": 1}`},
		{"a:\n  b: |2\n      x\n     y\n  c: >-1\n    z", `{"a": {"b": "  x\n y\n", "c": " z"}}`},
		{"a: |\n\n\n  x\n", `{"a": "\n\nx\n"}`},
		{"a: |\nb: >-\nc: |+\n\n\nd: |\n\n", `{"a": "", "b": "", "c": "\n\n", "d": ""}`},
		{"a: |-\n  x  \nb: |\n  y", `{"a": "x  ", "b": "y"}`},
		{"- |\n # not a comment\n# a comment\n- x", `["# not a comment\n", "x"]`},
		{"? a\n: b\n? c\n: - d\n", `{"a": "b", "c": ["d"]}`},
		{"? a\n? b\n", `{"a": null, "b": null}`},
		{"[a: b, ? c : d, e: ]", `[{"a": "b"}, {"c": "d"}, {"e": null}]`},
		{"[\n  1, # one ]\n  2 # two }\n  , ]", `[1, 2]`},
		{"{}", `{}`},
		{"a: { }\nb: [ # c\n ]", `{"a": {}, "b": []}`},
		{"--- # c\na: 1\n...\n# end\n", `{"a": 1}`},
		{"---\n- a\n", `["a"]`},
		{"a: --- b\nc: 'x\n  ---'\n", `{"a": "--- b", "c": "x ---"}`},
		{"a: b#c # d", `{"a": "b#c"}`},
		{"a: <<\n\"<<\": b\n'1': c\n\"~\": d", `{"a": "<<", "<<": "b", "1": "c", "~": "d"}`},
		{"{\n\ta: 1\n}", `{"a": 1}`},
		{"a:\t1\n\t\nb: 2", `{"a": 1, "b": 2}`},
		{"a: 1\rb: 2\r\nc: |\r\n  x\r\n  y\r\nd: 3\n", `{"a": 1, "b": 2, "c": "x\ny\n", "d": 3}`},
		{"\ufeffa: 1", `{"a": 1}`},
		{"just text", `"just text"`},
		{"~", `null`},
		{"{\"a\":1,'b':[x]}", `{"a": 1, "b": ["x"]}`},
		{"yes: no", `{"yes": "no"}`},
	} {
		t.Run(c.text, func(t *testing.T) {
			doc := mustRead(t, "t.yaml", c.text)
			if got := sketch(doc.Root); got != c.want {
				t.Errorf("tree is %s, want %s", got, c.want)
			}
			checkTree(t, doc, ".yaml")
		})
	}
}

// TestYAMLPlaces states places outright, as "line:column-line:column".
func TestYAMLPlaces(t *testing.T) {
	const text = "# c\n" +
		"é: {x: 'ab', \"y\": }\n" + // 2
		"list:\n" + // 3
		"  - one\n" + // 4
		"    two # c\n" + // 5
		"  - [1, [2]] # c\n" + // 6
		"text: |\n" + // 7
		"  a\n" + // 8
		"  b\n" + // 9
		"last:\n" // 10
	doc := mustRead(t, "t.yaml", text)
	for _, c := range []struct{ pointer, key, value string }{
		{"", "", "2:1-10:6"},
		{"/é", "2:1-2:2", "2:4-2:20"},
		{"/é/x", "2:5-2:6", "2:8-2:12"},
		{"/é/y", "2:14-2:17", "2:18-2:18"},
		{"/list", "3:1-3:5", "4:3-6:13"},
		{"/list/0", "", "4:5-5:8"},
		{"/list/1", "", "6:5-6:13"},
		{"/list/1/1", "", "6:9-6:12"},
		{"/list/1/1/0", "", "6:10-6:11"},
		{"/text", "7:1-7:5", "7:7-10:1"},
		{"/last", "10:1-10:5", "10:6-10:6"},
	} {
		n := doc.Find(c.pointer)
		if n == nil {
			t.Errorf("%s is missing", c.pointer)
			continue
		}
		if got := place(n.Span); got != c.value {
			t.Errorf("%s is at %s, want %s", c.pointer, got, c.value)
		}
		if c.key == "" {
			continue
		}
		m := n.Parent.Member(c.pointer[strings.LastIndex(c.pointer, "/")+1:])
		if got := place(m.KeySpan); got != c.key {
			t.Errorf("the key of %s is at %s, want %s", c.pointer, got, c.key)
		}
	}
}

func place(s Span) string {
	return fmt.Sprintf("%d:%d-%d:%d", s.Start.Line, s.Start.Column, s.End.Line, s.End.Column)
}
