package words_test

import (
	"os"
	"slices"
	"strings"
	"testing"

	"plumbrule/checker/compare"
	"plumbrule/checker/compare/words"
	"plumbrule/checker/result"
	"plumbrule/checker/source"
)

// absent stands for a revision that has no such stair.
const absent = result.Outcome("no element")

// revision is a design with a stair of which a check says one thing.
func revision(t *testing.T, name string, o result.Outcome) result.Design {
	t.Helper()
	text := "site: {live_load: 40 psf}\nstairs:\n- {mark: ST9, risers: 3}\n"
	switch o {
	case result.NotShown:
		text += "- {mark: ST1, risers: 6}\n"
	case absent:
	default:
		text += "- {mark: ST1, risers: 6, total_rise: 48 in}\n"
	}
	doc, err := source.Read(name, []byte(text))
	if err != nil {
		t.Fatal(err)
	}
	d := result.Design{File: name, Document: doc}
	r := result.Result{Check: "x/y", Set: "town", Title: "rise of a stair", Outcome: o, Consequence: result.Structure, Message: "rise of stair ST1"}
	at := "/stairs/1/total_rise"
	switch o {
	case absent:
		return d
	case result.Outside, result.Excused:
		r.Have, r.Margin = &result.Value{Number: 48, Unit: "in", Text: `48"`}, &result.Value{Number: -1, Unit: "in", Text: `1"`}
		r.Limit = &result.Value{Number: 47, Unit: "in", Text: `47"`, Relation: result.AtMost}
	case result.Within:
		r.Have, r.Margin = &result.Value{Number: 48, Unit: "in", Text: `48"`}, &result.Value{Number: 1, Unit: "in", Text: `1"`}
		r.Limit = &result.Value{Number: 49, Unit: "in", Text: `49"`, Relation: result.AtMost}
	case result.NotShown:
		at, r.Needs, r.Message = "/stairs/1", "stairs[].total_rise", "rise of stair ST1 is not shown"
	case result.CouldNotRun:
		at, r.Reason = "", "it ran into an error"
	case result.DoesNotApply:
		at, r.Reason = "", "no stair"
	}
	if at != "" {
		r.At, r.Span = []string{at}, doc.Find(at).Span
	}
	if o == result.Within || o == result.DoesNotApply {
		d.Readings = append(d.Readings, r)
	} else {
		d.Findings = append(d.Findings, r)
	}
	return d
}

// The fragments of which the table below is put together.
const (
	outBy        = `48", outside by 1"`
	waived       = `48", excused, outside by 1"`
	inside       = `48", inside by 1"`
	failed       = "not able to run (it ran into an error)"
	untold       = "not to be told, as the check could not run"
	noCheck      = "not checked, as the check does not apply any more"
	noCheckYet   = "not checked, as the check did not apply"
	fieldGone    = "not shown any more: was 48 in (line 4)"
	fieldThere   = "now shown: now 48 in (line 4)"
	ranBefore    = "could not run: was able to run; now " + failed
	runsNow      = "could run again: was " + failed + "; now able to run"
	withNotShown = "--fail-on-not-shown"
)

// transitions are what is told of every way from one outcome to another, and
// whether it gives exit code 1: "yes", "" or only with a flag. What is nobody's
// finding on either side is not told.
var transitions = []struct {
	was, is result.Outcome
	told    []string
	worse   string
}{
	{result.Outside, result.Outside, []string{"still outside: was " + outBy + "; now " + outBy + ": unchanged"}, ""},
	{result.Outside, result.NotShown, []string{"not seen any more: was " + outBy + "; now not shown", fieldGone}, "yes"},
	{result.Outside, result.CouldNotRun, []string{ranBefore, "not seen any more: was " + outBy + "; now " + untold}, "yes"},
	{result.Outside, result.Excused, []string{"excused: was " + outBy + "; now " + waived}, ""},
	{result.Outside, result.Within, []string{"gone: was " + outBy + "; now " + inside}, ""},
	{result.Outside, result.DoesNotApply, []string{"gone: was " + outBy + "; now " + noCheck}, ""},
	{result.Outside, absent, []string{"gone: was " + outBy + "; now gone with its element"}, ""},

	{result.NotShown, result.Outside, []string{fieldThere, "outside once seen: was not shown; now " + outBy}, "yes"},
	{result.NotShown, result.NotShown, []string{"still not shown: "}, ""},
	{result.NotShown, result.CouldNotRun, []string{ranBefore, "could not run: was not shown; now " + untold}, "yes"},
	{result.NotShown, result.Excused, []string{"excused: was not shown; now " + waived, fieldThere}, ""},
	{result.NotShown, result.Within, []string{fieldThere}, ""},
	{result.NotShown, result.DoesNotApply, []string{fieldThere}, ""},
	{result.NotShown, absent, []string{"not asked for any more: the element is gone"}, ""},

	{result.CouldNotRun, result.Outside, []string{runsNow, "outside once seen: was " + untold + "; now " + outBy}, "yes"},
	{result.CouldNotRun, result.NotShown, []string{runsNow, fieldGone}, withNotShown},
	{result.CouldNotRun, result.CouldNotRun, []string{"could not run: was " + failed + "; now " + failed}, ""},
	{result.CouldNotRun, result.Excused, []string{runsNow, "excused: was " + untold + "; now " + waived}, ""},
	{result.CouldNotRun, result.Within, []string{runsNow}, ""},
	{result.CouldNotRun, result.DoesNotApply, []string{"could run again: was " + failed + "; now not checked (no stair)"}, ""},
	{result.CouldNotRun, absent, []string{runsNow}, ""},

	{result.Excused, result.Outside, []string{"new: was " + waived + "; now " + outBy}, "yes"},
	{result.Excused, result.NotShown, []string{"not seen any more: was " + waived + "; now not shown", fieldGone}, "yes"},
	{result.Excused, result.CouldNotRun, []string{ranBefore, "not seen any more: was " + waived + "; now " + untold}, "yes"},
	{result.Excused, result.Excused, []string{"excused: was " + waived + "; now " + waived}, ""},
	{result.Excused, result.Within, []string{"not excused any more: was " + waived + "; now " + inside}, ""},
	{result.Excused, result.DoesNotApply, []string{"not excused any more: was " + waived + "; now " + noCheck}, ""},
	{result.Excused, absent, []string{"not excused any more: was " + waived + "; now gone with its element"}, ""},

	{result.Within, result.Outside, []string{"new: was " + inside + "; now " + outBy}, "yes"},
	{result.Within, result.NotShown, []string{fieldGone}, withNotShown},
	{result.Within, result.CouldNotRun, []string{ranBefore}, "yes"},
	{result.Within, result.Excused, []string{"excused: was " + inside + "; now " + waived}, ""},
	{result.Within, result.Within, nil, ""},
	{result.Within, result.DoesNotApply, nil, ""},
	{result.Within, absent, nil, ""},

	{result.DoesNotApply, result.Outside, []string{"new: was " + noCheckYet + "; now " + outBy}, "yes"},
	{result.DoesNotApply, result.NotShown, []string{fieldGone}, withNotShown},
	{result.DoesNotApply, result.CouldNotRun, []string{"could not run: was not checked (no stair); now " + failed}, "yes"},
	{result.DoesNotApply, result.Excused, []string{"excused: was " + noCheckYet + "; now " + waived}, ""},
	{result.DoesNotApply, result.Within, nil, ""},
	{result.DoesNotApply, result.DoesNotApply, nil, ""},
	{result.DoesNotApply, absent, nil, ""},

	{absent, result.Outside, []string{"new: was not there, as the element is new; now " + outBy}, "yes"},
	{absent, result.NotShown, []string{"newly asked for: the element is new"}, withNotShown},
	{absent, result.CouldNotRun, []string{ranBefore}, "yes"},
	{absent, result.Excused, []string{"excused: was not there, as the element is new; now " + waived}, ""},
	{absent, result.Within, nil, ""},
	{absent, result.DoesNotApply, nil, ""},
	{absent, absent, nil, ""},
}

// TestTransitions goes through the whole table: what is printed of each way from
// one outcome to another, how it counts for the exit code, and that the page on
// usage has the same.
func TestTransitions(t *testing.T) {
	page := published(t)
	for _, c := range transitions {
		t.Run(string(c.was+" to "+c.is), func(t *testing.T) {
			r := compare.Between(revision(t, "was.yaml", c.was), revision(t, "is.yaml", c.is), nil)
			var told, states []string
			for i := range r.Matters {
				m := &r.Matters[i]
				told = append(told, string(m.State)+": "+words.Way(m))
				if !slices.Contains(states, string(m.State)) {
					states = append(states, string(m.State))
				}
			}
			slices.Sort(told)
			if !slices.Equal(told, c.told) {
				t.Errorf("told\n%s\nwant\n%s", strings.Join(told, "\n"), strings.Join(c.told, "\n"))
			}
			worse, open := r.Worse(result.Structure, false), r.Worse(result.Structure, true)
			if worse != (c.worse == "yes") || open != (c.worse != "") {
				t.Errorf("worse %t, with what is not shown %t, want %q", worse, open, c.worse)
			}
			if r.Worse(result.LifeSafety, false) {
				t.Error("it counts for a class that is graver than its own")
			}
			cell := strings.Join(states, ", ")
			switch {
			case c.worse == "yes":
				cell = "**" + cell + "**"
			case c.worse != "":
				cell = "*" + cell + "*"
			}
			if got := page[[2]result.Outcome{c.was, c.is}]; got != cell {
				t.Errorf("the page on usage says %q, want %q", got, cell)
			}
		})
	}
	if len(transitions) != 49 {
		t.Errorf("%d ways, want 7 times 7", len(transitions))
	}
}

// published reads the table of the page on usage, by old and new outcome.
func published(t *testing.T) map[[2]result.Outcome]string {
	t.Helper()
	page, err := os.ReadFile("../../../docs/usage.md")
	if err != nil {
		t.Fatal(err)
	}
	cells := map[[2]result.Outcome]string{}
	var heads []string
	for line := range strings.SplitSeq(string(page), "\n") {
		row := strings.Split(strings.Trim(line, "| "), " | ")
		switch {
		case strings.HasPrefix(line, "| old, new"):
			heads = row
		case heads == nil || strings.HasPrefix(line, "|---"):
		case !strings.HasPrefix(line, "|"):
			return cells
		default:
			for i := range min(len(row), len(heads)) {
				cells[[2]result.Outcome{result.Outcome(row[0]), result.Outcome(heads[i])}] = strings.Trim(row[i], "–")
			}
		}
	}
	t.Fatal("the page on usage has no table of outcomes, old and new")
	return nil
}
