package content_test

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"plumbrule/checker/report/content"
	"plumbrule/checker/result"
)

// finding is short for a result that is only told apart by its id.
func finding(id string, outcome result.Outcome, class result.Consequence, check, at string) result.Result {
	return result.Result{Fingerprint: id, Outcome: outcome, Consequence: class, Check: check, At: []string{at}}
}

// ids writes groups as "a b, c".
func ids(groups []content.Group) string {
	var words []string
	for _, g := range groups {
		var members []string
		for _, r := range g {
			members = append(members, r.Fingerprint)
		}
		words = append(words, strings.Join(members, " "))
	}
	return strings.Join(words, ", ")
}

func TestArrange(t *testing.T) {
	layout := content.Arrange([]result.Result{
		finding("a", result.Outside, result.Structure, "x/one", "/1"),
		finding("b", result.Outside, result.LifeSafety, "x/two", "/1"),
		finding("c", result.Excused, result.LifeSafety, "x/two", "/2"),
		finding("d", result.Outside, result.Structure, "x/two", "/2"),
		finding("e", result.Outside, result.Structure, "x/one", "/1"),
		finding("f", result.CouldNotRun, result.Structure, "x/one", ""),
		finding("g", result.Outside, "", "x/one", "/9"),
	})
	var got []string
	for _, class := range layout.Outside {
		got = append(got, fmt.Sprintf("%s: %s", class.Consequence, ids(class.Groups)))
	}
	want := []string{"life safety: b", "structure: a e, d", ": g"}
	if !slices.Equal(got, want) {
		t.Errorf("outside: %q, want %q", got, want)
	}
	if ids(layout.Excused) != "c" || ids(layout.CouldNotRun) != "f" || layout.NotShown != nil {
		t.Errorf("excused %q, could not run %q, not shown %v", ids(layout.Excused), ids(layout.CouldNotRun), layout.NotShown)
	}
	if n := content.Count(layout.Outside[1].Groups); n != 3 {
		t.Errorf("%d results of structure, want 3", n)
	}
}

func TestArrangeNotShown(t *testing.T) {
	var findings []result.Result
	for i, row := range [][3]string{ // see, place, needs
		{"", "/a", "a"},
		{"S10", "/b", "b"},
		{"sheet S2 detail 3", "/c", "c"},
		{"S2", "/d", "d"},
		{"7/S2", "/c", "c"}, // the same element as the third: next to it
		{"S2", "/c", "other"},
		{"S2", "/e", ""},
	} {
		r := finding(fmt.Sprint(i), result.NotShown, result.Structure, fmt.Sprint("x/", i), row[1])
		r.See, r.Needs = row[0], row[2]
		findings = append(findings, r)
	}
	var got []string
	for _, sheet := range content.Arrange(findings).NotShown {
		got = append(got, sheet.Title()+": "+ids(sheet.Groups))
	}
	want := []string{"sheet S2: 2 4 5, 3, 6", "sheet S10: 1", "no sheet named: 0"}
	if !slices.Equal(got, want) {
		t.Errorf("%q, want %q", got, want)
	}
}

func TestSheets(t *testing.T) {
	tests := []struct{ see, mark, sheet, where string }{
		{"S3", "ST1", "sheet S3", "sheet S3, ST1"},
		{"sheet 2", "", "sheet 2", "sheet 2"},
		{"Sheet 2 Detail 3", "B1", "sheet 2", "Sheet 2 Detail 3, B1"},
		{"S3, S4", "", "sheet S3", "sheet S3, S4"},
		{"5/S3", "P1", "sheet S3", "detail 5/S3, P1"},
		{"A/S3", "", "sheet S3", "detail A/S3"},
		{"S3/S4", "", "sheet S3/S4", "sheet S3/S4"},
		{"sheet", "", "sheet sheet", "sheet"},
		{"", "ST1", "no sheet named", "mark ST1"},
		{" ", "", "no sheet named", ""},
	}
	for _, test := range tests {
		r := finding("", result.NotShown, result.Structure, "x/y", "/")
		r.See = test.see
		if got := content.Arrange([]result.Result{r}).NotShown[0].Title(); got != test.sheet {
			t.Errorf("%q is on %q, want %q", test.see, got, test.sheet)
		}
		if got := content.Where(test.see, test.mark); got != test.where {
			t.Errorf("%q and %q: %q, want %q", test.see, test.mark, got, test.where)
		}
	}
}

func TestClosest(t *testing.T) {
	reading := func(id, at, unit string, margin, limit float64) result.Result {
		r := finding(id, result.Within, result.Structure, "x/y", at)
		r.Margin = &result.Value{Number: margin, Unit: unit}
		r.Limit = &result.Value{Number: limit, Unit: unit}
		return r
	}
	noMargin := finding("no margin", result.Within, result.Structure, "x/y", "/9")
	noMargin.Limit = &result.Value{Number: 1, Unit: "in"}
	outside := reading("excused", "/10", "in", 0, 1)
	outside.Outcome = result.Excused
	readings := []result.Result{
		reading("half", "/1", "in", 4, 8),
		reading("tenth", "/2", "kPa", 0.2, 2),
		reading("none", "/3", "in", 0, 36),
		reading("quarter, other set", "/2", "kPa", 0.5, 2),
		reading("limit of zero", "/4", "in", 0, 0),
		reading("words", "/5", "", 0, 1),
		noMargin,
		outside,
		reading("tenth again", "/6", "in", 1, 10),
	}
	tests := map[int]string{0: "", 2: "none, tenth", 3: "none, tenth, tenth again", 9: "none, tenth, tenth again, half"}
	for n, want := range tests {
		var got []string
		for _, r := range content.Closest(readings, n) {
			got = append(got, r.Fingerprint)
		}
		if strings.Join(got, ", ") != want {
			t.Errorf("closest %d: %q, want %q", n, got, want)
		}
	}
}

func TestValues(t *testing.T) {
	inches := func(n float64, text string) *result.Value { return &result.Value{Number: n, Unit: "in", Text: text} }
	most := func(v *result.Value) *result.Value { v.Relation = result.AtMost; return v }
	tests := []struct {
		name                    string
		r                       result.Result
		measured, limit, margin string
	}{
		{"nothing", result.Result{}, "", "", ""},
		{
			"outside",
			result.Result{Outcome: result.Outside, Have: inches(8, `8"`), Limit: most(inches(7.75, `7-3/4"`)), Margin: inches(-0.25, `-1/4"`), Clause: "R1", Status: "recalled"},
			`measured 8"`, `limit at most 7-3/4" (R1; recalled)`, `outside by 1/4"`,
		},
		{
			"within, no basis",
			result.Result{Outcome: result.Within, Have: inches(7, `7"`), Limit: most(inches(7.75, `7-3/4"`)), Margin: inches(0.75, `3/4"`)},
			`measured 7"`, `limit at most 7-3/4"`, `inside by 3/4"`,
		},
		{
			"at the limit",
			result.Result{Outcome: result.Within, Have: inches(7, `7"`), Limit: most(inches(7, `7"`)), Margin: inches(0, `0"`)},
			`measured 7"`, `limit at most 7"`, "at the limit itself, which is inside",
		},
		{
			"excused",
			result.Result{Outcome: result.Excused, Margin: inches(-1, `−1"`)},
			"", "", `outside by 1"`,
		},
		{
			"in the standard's unit",
			result.Result{Limit: &result.Value{Unit: "mm", Text: "102 mm", Standard: `4"`, Relation: result.LessThan}, Status: "published"},
			"", `limit less than 102 mm (4" in the standard; published)`, "",
		},
		{
			"the same in the standard",
			result.Result{Limit: &result.Value{Unit: "in", Text: `4"`, Standard: `4"`}},
			"", `limit 4"`, "",
		},
		{
			"flag",
			result.Result{Have: &result.Value{Text: "no"}, Limit: &result.Value{Text: "yes", Relation: result.Exactly}},
			"shown no", "required yes", "",
		},
		{
			"words",
			result.Result{Have: &result.Value{Text: "flat board"}, Limit: &result.Value{Text: "round, shaped", Relation: result.OneOf}},
			"shown flat board", "required one of round, shaped", "",
		},
	}
	for _, test := range tests {
		if got := content.Measured(&test.r); got != test.measured {
			t.Errorf("%s: %q, want %q", test.name, got, test.measured)
		}
		if got := content.Limit(&test.r); got != test.limit {
			t.Errorf("%s: %q, want %q", test.name, got, test.limit)
		}
		if got := content.Margin(&test.r); got != test.margin {
			t.Errorf("%s: %q, want %q", test.name, got, test.margin)
		}
	}
}

func TestDisposition(t *testing.T) {
	tests := []struct {
		stamp  result.Disposition
		counts result.Counts
		want   string
	}{
		{result.ReviseAndResubmit, result.Counts{Outside: 3}, "revise and resubmit"},
		{result.CorrectionsNoted, result.Counts{Outside: 3, NotShown: 1}, "corrections noted; 1 item not shown"},
		{result.CannotCheck, result.Counts{NotShown: 12, CouldNotRun: 2}, "cannot check: not shown; 12 items not shown; 2 checks could not run"},
		{result.CannotCheck, result.Counts{CouldNotRun: 1}, "cannot check: not shown; 1 check could not run"},
		{result.NoExceptions, result.Counts{Within: 9}, "no exceptions found by these rule sets"},
	}
	for _, test := range tests {
		if got := content.Disposition(&result.Design{Disposition: test.stamp, Counts: test.counts}); got != test.want {
			t.Errorf("%q, want %q", got, test.want)
		}
	}
}

func TestTalliesLeaveNothingOut(t *testing.T) {
	counts := result.Counts{Outside: 1, Within: 2, NotShown: 4, DoesNotApply: 8, Excused: 16, CouldNotRun: 32}
	sum := 0
	for _, tally := range content.Tallies(counts) {
		sum += tally.N
	}
	if sum != 63 {
		t.Errorf("the tallies add up to %d, want 63", sum)
	}
}

func TestEditionNamesWhatIsAmended(t *testing.T) {
	set := result.Set{ID: "town", Title: "Town rules", Edition: "2", Extends: "irc-2021"}
	if got, want := content.Edition(&set), "Town rules, edition 2, amends irc-2021"; got != want {
		t.Errorf("%q, want %q", got, want)
	}
}
