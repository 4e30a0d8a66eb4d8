package source

import (
	"errors"
	"testing"
	"time"
)

// fuzzRead holds what is true of any bytes at all: Read ends soon, with a tree
// that checkTree accepts or an error that checkError accepts.
func fuzzRead(f *testing.F, name, ext string) {
	f.Fuzz(func(t *testing.T, data []byte) {
		began := time.Now()
		doc, err := Read(name, data)
		if spent := time.Since(began); spent > 5*time.Second {
			t.Fatalf("reading %d bytes took %v", len(data), spent)
		}
		if err == nil {
			checkTree(t, doc, ext)
			return
		}
		var e *Error
		if !errors.As(err, &e) || doc != nil {
			t.Fatalf("Read gives %v and %T", doc, err)
		}
		checkError(t, e, data)
	})
}

func FuzzReadYAML(f *testing.F) {
	for _, data := range designs(f) {
		f.Add(data)
	}
	for _, text := range []string{
		"a: |\n  x\n\n  y\nb: >+2\n    z\n\n", "? a\n: 'b''c'\n? \"\\x41\\\n  d\"\n", "- &x y\n- *x\n- !!t z\n",
		"[a: b, {c, d: }, ? e : f, \"g\":h]", "a: b\n  c\r\n\r\n  d # e\n", "%YAML 1.1\n---\n<<: 1\n...\n", "\ufeff- 010\n- .5\n-\t1\n",
		"a: \"b\nc: \"d\"\n", "a: [1\nb: 2\n", "a:\n  - b\n c: d\n", "key:value\nx: 1\n",
		"::", "? :'\n::", "a: [\n", "[?,{c},d: f, \"d\":h]", "a: |2-\n    x \n     \n  b\n   \n",
	} {
		f.Add([]byte(text))
	}
	fuzzRead(f, "fuzz.yaml", ".yaml")
}

func FuzzReadJSON(f *testing.F) {
	for _, text := range []string{
		`{"a": [1, -2.5e+7, true, null, "\u00e9\ud83d\ude00\n"], "b": {}}`, "\ufeff[ ]\r\n", `{"a":1,}`, `{"a" 1}`, `[1 2]`,
		`{"a":010,"a":2}`, `["x`, `{'a': None}`, "[1, // c\n2]", `{"a": 5.}`, `{"é": {"é": 1e999999}}`, "}",
	} {
		f.Add([]byte(text))
	}
	fuzzRead(f, "fuzz.json", ".json")
}
