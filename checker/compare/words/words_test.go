package words_test

import (
	"strings"
	"testing"

	"plumbrule/checker/compare"
	"plumbrule/checker/compare/words"
	"plumbrule/checker/result"
	"plumbrule/checker/source"
)

func outside(have, margin string, n float64) *result.Result {
	return &result.Result{Outcome: result.Outside, Have: &result.Value{Number: 1, Unit: "in", Text: have}, Margin: &result.Value{Number: n, Unit: "in", Text: margin}}
}

func within() *result.Result {
	return &result.Result{Outcome: result.Within, Have: &result.Value{Number: 7, Unit: "in", Text: `7"`}, Margin: &result.Value{Number: 0.75, Unit: "in", Text: `3/4"`}}
}

func TestWay(t *testing.T) {
	flag := &result.Result{Outcome: result.Outside, Have: &result.Value{Text: "no"}}
	board := &result.Result{Outcome: result.Outside, Have: &result.Value{Text: "flat board"}}
	excused := outside(`8"`, `1/4"`, -0.25)
	excused.Outcome = result.Excused
	place := &compare.Place{Text: "36 in", Span: source.Span{Start: source.Position{Line: 7}}}
	for _, c := range []struct {
		m    compare.Matter
		want string
	}{
		{compare.Matter{State: compare.StillOpen, Trend: compare.Better, Was: outside(`8-1/4"`, `1/2"`, -0.5), Is: outside(`8"`, `1/4"`, -0.25)}, `was 8-1/4", outside by 1/2"; now 8", outside by 1/4": better`},
		{compare.Matter{State: compare.Gone, Was: outside(`8"`, `1/4"`, -0.25), Is: within()}, `was 8", outside by 1/4"; now 7", inside by 3/4"`},
		{compare.Matter{State: compare.Gone, Was: flag, Reason: compare.NoElement}, "was outside; now gone with its element"},
		{compare.Matter{State: compare.New, Is: board, Reason: compare.NoElement}, "was not there, as the element is new; now flat board, outside"},
		{compare.Matter{State: compare.New, Is: flag, Was: &result.Result{Outcome: result.DoesNotApply, Reason: "no stair"}}, "was not checked (no stair); now outside"},
		{compare.Matter{State: compare.New, Is: flag}, "was not found; now outside"},
		{compare.Matter{State: compare.Hidden, Was: flag, Reason: compare.NothingSeen}, "was outside; now not shown"},
		{compare.Matter{State: compare.Revealed, Is: flag, Reason: compare.NoRun}, "was not to be told, as the check could not run; now outside"},
		{compare.Matter{State: compare.Excused, Is: excused, Was: excused}, `was 8", excused, outside by 1/4"; now 8", excused, outside by 1/4"`},
		{compare.Matter{State: compare.NowShown, Was: &result.Result{Outcome: result.NotShown}, Field: place}, "now 36 in (line 7)"},
		{compare.Matter{State: compare.NotShown, Is: &result.Result{Outcome: result.NotShown}, Field: place}, "was 36 in (line 7)"},
		{compare.Matter{State: compare.Asked, Is: &result.Result{Outcome: result.NotShown}, Reason: compare.NoNeed}, "before, the check did not apply"},
		{compare.Matter{State: compare.Dropped, Was: &result.Result{Outcome: result.NotShown}, Reason: compare.NoNeed}, "the check does not apply any more"},
		{compare.Matter{State: compare.Asked, Is: &result.Result{Outcome: result.NotShown}, Reason: compare.NoRun}, "before, the check could not run"},
		{compare.Matter{State: compare.StillAsked, Was: &result.Result{}, Is: &result.Result{}}, ""},
	} {
		if got := words.Way(&c.m); got != c.want {
			t.Errorf("%s: %q, want %q", c.m.State, got, c.want)
		}
	}
}

func TestGroups(t *testing.T) {
	missing := func(check, at, what string) *compare.Matter {
		return &compare.Matter{State: compare.StillAsked, Is: &result.Result{Check: check, Outcome: result.NotShown, At: []string{at}, Message: what + " is not shown"}}
	}
	list := []*compare.Matter{missing("a", "/0", "width"), missing("b", "/0", "height"), missing("c", "/0", "width"), missing("d", "/1", "width")}
	var got []string
	for _, g := range words.Groups(list) {
		got = append(got, words.Message(g[0])+" "+g[0].Is.Check)
	}
	if strings.Join(got, ", ") != "width a, height b, width d" {
		t.Errorf("%q", got)
	}
}

// TestHeadings sees to it that no state goes without words, and that none of
// them is the words of another.
func TestHeadings(t *testing.T) {
	seen := map[string]bool{}
	for _, s := range compare.States() {
		heading := words.Heading(s)
		if heading == "" || seen[heading] {
			t.Errorf("%s: %q", s, heading)
		}
		seen[heading] = true
	}
}

func TestAspects(t *testing.T) {
	limit := &result.Value{Number: 900, Unit: "mm", Text: "900 mm", Standard: "35-7/16\"", Relation: result.AtLeast}
	row := compare.Row{Count: 2, Name: "guard G1: height", See: "S3", Cells: []compare.Cell{
		{Has: true, Result: &result.Result{Outcome: result.Within, Have: &result.Value{Unit: "mm", Text: "900 mm"}, Limit: limit, Margin: &result.Value{Unit: "mm", Text: "0 mm"}, Clause: "K1", Status: "recalled"}},
		{Has: true, Result: &result.Result{Outcome: result.NotShown, Message: "height is not shown", Clause: "R3"}, Figures: []compare.Figure{{Name: "min", Text: "36 in", Relation: result.AtLeast, Status: "published"}}},
		{Has: true, Elsewhere: []source.Position{{Line: 3}, {Line: 3, Column: 9}, {Line: 12}}},
		{},
	}}
	want := map[string]string{
		"outcome":   "within / not shown / see lines 3, 12 / no such check",
		"found":     "900 mm /  /  / ",
		"limit":     "at least 900 mm (35-7/16\") / at least 36 in /  / ",
		"margin":    "at the limit itself, which is inside /  /  / ",
		"clause":    "K1 / R3 /  / ",
		"figure is": "recalled / published /  / ",
		"remark":    " / height is not shown /  / ",
	}
	for _, a := range words.Aspects(&row) {
		if got := strings.Join(a.Words, " / "); got != want[a.Name] {
			t.Errorf("%s: %q, want %q", a.Name, got, want[a.Name])
		}
		delete(want, a.Name)
	}
	if len(want) > 0 {
		t.Errorf("nothing said of %v", want)
	}
	if got := words.Subject(&row); got != "guard G1: height (sheet S3), 2 alike" {
		t.Errorf("%q", got)
	}
}

func TestStackedJoinsWhatIsAlike(t *testing.T) {
	same := &result.Result{Outcome: result.Within}
	row := compare.Row{Cells: []compare.Cell{{Has: true, Result: same}, {}, {Has: true, Result: same}}}
	names, lines := words.Stacked(&row, []result.Set{{ID: "A"}, {ID: "B"}, {ID: "C"}}, func(s string) string { return s })
	if strings.Join(names, "; ") != "A, C; B" || strings.Join(lines, "; ") != "within; no such check" {
		t.Errorf("%q: %q", names, lines)
	}
}
