package source

import (
	"bytes"
	"encoding/json"
	"math"
	"reflect"
	"strings"
	"testing"
	"time"

	"go.yaml.in/yaml/v4"
)

func TestJSONTree(t *testing.T) {
	for _, c := range []struct{ text, want string }{
		{`{"a":1}`, `{"a": 1}`},
		{"\n [1, 2.50 ,\t-0, 1e3, 1E+999999]\n", `[1, 2.50, -0, 1e3, 1E+999999]`},
		{`[true,false,null,"",{},[]]`, `[true, false, null, "", {}, []]`},
		{`{"a\"b":"\u00e9\ud83d\ude00\/\n","é":"ü"}`, `{"a\"b": "é😀/\n", "é": "ü"}`},
		{`{"<<":1,"~/":{"":2}}`, `{"<<": 1, "~/": {"": 2}}`},
		{"\ufeff{\r\n\"a\":\r1}", `{"a": 1}`},
		{`"text"`, `"text"`},
	} {
		t.Run(c.text, func(t *testing.T) {
			doc := mustRead(t, "t.json", c.text)
			if got := sketch(doc.Root); got != c.want {
				t.Errorf("tree is %s, want %s", got, c.want)
			}
			checkTree(t, doc, ".json")
		})
	}
}

func TestJSONPlaces(t *testing.T) {
	doc := mustRead(t, "t.json", "\ufeff{\"é\": [1,\n  \"x\"] }\n")
	for pointer, want := range map[string]string{
		"": "1:1-2:9", "/é": "1:7-2:7", "/é/0": "1:8-1:9", "/é/1": "2:3-2:6",
	} {
		if got := place(doc.Find(pointer).Span); got != want {
			t.Errorf("%q is at %s, want %s", pointer, got, want)
		}
	}
	m := doc.Root.Member("é")
	if got := place(m.KeySpan); got != "1:2-1:5" {
		t.Errorf("the key is at %s", got)
	}
	if got := m.KeySpan.Start.Offset; got != 4 {
		t.Errorf("the key's offset is %d, want 4: three bytes of mark and the brace", got)
	}
}

// writeJSON writes a tree as JSON with the order and the number literals kept.
func writeJSON(t *testing.T, b *bytes.Buffer, n *Node) {
	t.Helper()
	text := func(s string) {
		data, err := json.Marshal(s)
		if err != nil {
			t.Fatal(err)
		}
		b.Write(data)
	}
	switch n.Kind {
	case Object:
		b.WriteByte('{')
		for i, m := range n.Members {
			if i > 0 {
				b.WriteByte(',')
			}
			text(m.Key)
			b.WriteString(":\n")
			writeJSON(t, b, m.Value)
		}
		b.WriteByte('}')
	case Array:
		b.WriteByte('[')
		for i, item := range n.Items {
			if i > 0 {
				b.WriteString(", ")
			}
			writeJSON(t, b, item)
		}
		b.WriteByte(']')
	case String:
		text(n.Text)
	case Null:
		b.WriteString("null")
	default:
		b.WriteString(n.Text)
	}
}

// TestSameTreeFromJSON reads each design a second time as JSON, and compares
// the values with what the YAML library itself makes of the file.
func TestSameTreeFromJSON(t *testing.T) {
	for name, data := range designs(t) {
		t.Run(name, func(t *testing.T) {
			fromYAML := mustRead(t, name, string(data))
			var b bytes.Buffer
			writeJSON(t, &b, fromYAML.Root)
			fromJSON := mustRead(t, strings.TrimSuffix(name, ".yaml")+".json", b.String())
			checkTree(t, fromJSON, ".json")
			if got, want := sketch(fromJSON.Root), sketch(fromYAML.Root); got != want {
				t.Errorf("from JSON\n%s\nfrom YAML\n%s", got, want)
			}
			// JSON is YAML too, so the other reader must agree about the places.
			asFlow := mustRead(t, "flow.yaml", b.String())
			checkTree(t, asFlow, ".yaml")
			comparePlaces(t, fromJSON.Root, asFlow.Root)

			var decoded any
			if err := yaml.Unmarshal(data, &decoded); err != nil {
				t.Fatal(err)
			}
			if got, want := plainNumbers(t, fromYAML.Root.Interface()), plainNumbers(t, decoded); !reflect.DeepEqual(got, want) {
				t.Errorf("values\n%v\nby the library alone\n%v", got, want)
			}
		})
	}
}

// plainNumbers turns every number of an untyped tree into a float64, and every
// date back into text.
func plainNumbers(t *testing.T, v any) any {
	t.Helper()
	switch v := v.(type) {
	case map[string]any:
		for key := range v {
			v[key] = plainNumbers(t, v[key])
		}
	case []any:
		for i := range v {
			v[i] = plainNumbers(t, v[i])
		}
	case int:
		return float64(v)
	case time.Time: // the library's own idea of a bare date
		return v.Format(time.DateOnly)
	case json.Number:
		f, err := v.Float64()
		if err != nil || math.IsInf(f, 0) {
			t.Fatalf("%s: %v", v, err)
		}
		return f
	}
	return v
}
