package shape_test

import (
	"bytes"
	"encoding/json"
	"testing"

	"plumbrule/checker/report/shape"
	"plumbrule/checker/result"
	"plumbrule/checker/source"
)

func written(t *testing.T, v any) string {
	t.Helper()
	data, err := json.Marshal(v)
	if err != nil {
		t.Fatal(err)
	}
	return string(data)
}

// A number of zero is written, and words have no number; what is not there is
// left out, but no list becomes null.
func TestShapes(t *testing.T) {
	span := source.Span{Start: source.Position{Line: 3, Column: 7}}
	for want, v := range map[string]any{
		`{"value":0,"unit":"in","text":"0 in","relation":"at most"}`: shape.ValueOf(&result.Value{Unit: "in", Text: "0 in", Relation: result.AtMost}),
		`{"text":"flat board"}`: shape.ValueOf(&result.Value{Number: 3, Text: "flat board"}),
		`null`:                  shape.ValueOf(nil),
		`{"at":"/stairs/0","start":{"line":3,"column":7},"end":{"line":1,"column":1}}`: shape.PlaceOf("/stairs/0", span, ""),
		`{"id":"a","edition":"2021","title":"A","not_covered":[]}`:                     shape.SetOf(&result.Set{ID: "a", Edition: "2021", Title: "A"}),
		`{"outside":1,"within":2,"not_shown":3,"does_not_apply":4,"excused":5,"could_not_run":6}`: shape.CountsOf(
			result.Counts{Outside: 1, Within: 2, NotShown: 3, DoesNotApply: 4, Excused: 5, CouldNotRun: 6}),
		`[]`:    shape.Each(nil, func(n *int) int { return *n }),
		`["x"]`: shape.List([]string{"x"}),
	} {
		if got := written(t, v); got != want {
			t.Errorf("%s, want %s", got, want)
		}
	}
}

func TestMargin(t *testing.T) {
	for _, c := range []struct {
		v      *result.Value
		number bool
		text   string
	}{
		{nil, false, ""},
		{&result.Value{Text: "one of them"}, false, "one of them"},
		{&result.Value{Unit: "mm", Text: "0 mm"}, true, "0 mm"},
	} {
		number, text := shape.MarginOf(c.v)
		if (number != nil) != c.number || text != c.text {
			t.Errorf("%+v: %v %q", c.v, number, text)
		}
	}
}

func TestPointer(t *testing.T) {
	if got := shape.PointerOf(&result.Result{At: []string{"/a", "/b"}}); got != "/a" {
		t.Errorf("%q", got)
	}
	if got := shape.PointerOf(&result.Result{}); got != "" {
		t.Errorf("%q", got)
	}
}

// Marks like <A> stay readable, and files end with a line end.
func TestWrite(t *testing.T) {
	var out bytes.Buffer
	if err := shape.Write(&out, map[string]string{"mark": "<A>"}); err != nil {
		t.Fatal(err)
	}
	if got, want := out.String(), "{\n  \"mark\": \"<A>\"\n}\n"; got != want {
		t.Errorf("%q, want %q", got, want)
	}
}
