package compare

import (
	"testing"

	"plumbrule/checker/result"
	"plumbrule/checker/source"
)

const (
	before = `site: {live_load: 40 psf}
stairs:
- {mark: ST1, risers: 6, total_rise: 48 in}
- {mark: ST2, risers: 6}
- {mark: ST3, risers: 9}
`
	after = `site: {live_load: 40 psf}
stairs:
- {mark: ST4, risers: 5}
- {mark: ST2, risers: 6, total_rise: 40 in}
- {mark: ST1, risers: 7}
`
)

// reading is a result of one check at a place.
func reading(outcome result.Outcome, at string, margin float64) result.Result {
	r := result.Result{Check: "x/y", Set: "town", Outcome: outcome, Consequence: result.Structure, At: []string{at}, Fingerprint: at}
	if outcome == result.Outside || outcome == result.Within {
		r.Margin = &result.Value{Number: margin, Unit: "in"}
	}
	return r
}

// said is a finding that no margin belongs to.
func said(at, message string) result.Result {
	r := reading(result.Outside, at, 0)
	r.Margin, r.Message = nil, message
	return r
}

func lacking(at, needs string) result.Result {
	r := reading(result.NotShown, at, 0)
	r.Needs = needs
	return r
}

func report(t *testing.T, name, text string, results []result.Result) result.Design {
	t.Helper()
	doc := read(t, name, text)
	d := result.Design{File: name, Document: doc}
	for _, r := range results {
		n := doc.Find(r.At[0])
		if n == nil {
			t.Fatalf("%s has no %s", name, r.At[0])
		}
		r.Span = n.Span
		if r.Outcome == result.Within || r.Outcome == result.DoesNotApply {
			d.Readings = append(d.Readings, r)
		} else {
			d.Findings = append(d.Findings, r)
		}
	}
	return d
}

func TestBecome(t *testing.T) {
	type results = []result.Result
	cases := []struct {
		name    string
		was, is results
		want    State
		reason  Reason
		trend   Trend
	}{
		{"mended", results{reading(result.Outside, "/stairs/0/risers", -1)}, results{reading(result.Within, "/stairs/2/risers", 1)}, Gone, "", ""},
		{"broken", results{reading(result.Within, "/stairs/0/risers", 1)}, results{reading(result.Outside, "/stairs/2/risers", -1)}, New, "", ""},
		{"closer", results{reading(result.Outside, "/stairs/0/risers", -1)}, results{reading(result.Outside, "/stairs/2/risers", -0.5)}, StillOpen, "", Better},
		{"further off", results{reading(result.Outside, "/stairs/0/risers", -0.25)}, results{reading(result.Outside, "/stairs/2/risers", -0.5)}, StillOpen, "", Worse},
		{"as it was", results{reading(result.Outside, "/stairs/0/risers", -0.5)}, results{reading(result.Outside, "/stairs/2/risers", -0.500001)}, StillOpen, "", Unchanged},
		{"said alike without a margin", results{said("/stairs/0/risers", "too many")}, results{said("/stairs/2/risers", "too many")}, StillOpen, "", Unchanged},
		{"said otherwise without a margin", results{said("/stairs/0/risers", "too many")}, results{said("/stairs/2/risers", "too few")}, StillOpen, "", ""},
		{"by another value of the element", results{reading(result.Outside, "/stairs/0/total_rise", -0.5)}, results{reading(result.Outside, "/stairs/2/risers", -0.5)}, StillOpen, "", Unchanged},
		{"taken out with its element", results{reading(result.Outside, "/stairs/2/risers", -1)}, nil, Gone, NoElement, ""},
		{"put in with its element", nil, results{reading(result.Outside, "/stairs/0/risers", -1)}, New, NoElement, ""},
		{"no longer to be checked", results{reading(result.Outside, "/stairs/0/risers", -1)}, results{reading(result.DoesNotApply, "", 0)}, Gone, NoNeed, ""},
		{"exempt now", results{reading(result.Outside, "/stairs/0/risers", -1)}, results{reading(result.DoesNotApply, "/stairs/2", 0)}, Gone, "", ""},
		{"hidden", results{reading(result.Outside, "/stairs/0/total_rise", -1)}, results{lacking("/stairs/2", "stairs[].total_rise")}, Hidden, NothingSeen, ""},
		{"revealed", results{lacking("/stairs/1", "stairs[].total_rise")}, results{reading(result.Outside, "/stairs/1/total_rise", -1)}, Revealed, NothingSeen, ""},
		{"the check broke", results{reading(result.Outside, "/stairs/0/risers", -1)}, results{reading(result.CouldNotRun, "", 0)}, Hidden, NoRun, ""},
		{"shown", results{lacking("/stairs/1", "stairs[].total_rise")}, results{reading(result.Within, "/stairs/1/total_rise", 1)}, NowShown, "", ""},
		{"not shown any more", results{reading(result.Within, "/stairs/0/total_rise", 1)}, results{lacking("/stairs/2", "stairs[].total_rise")}, NotShown, "", ""},
		{"still not shown", results{lacking("/stairs/0", "stairs[].width")}, results{lacking("/stairs/2", "stairs[].width")}, StillAsked, "", ""},
		{"asked of a new element", nil, results{lacking("/stairs/0", "stairs[].width")}, Asked, NoElement, ""},
		{"the element that lacked it is gone", results{lacking("/stairs/2", "stairs[].width")}, nil, Dropped, NoElement, ""},
		{"asked of something that is elsewhere", results{reading(result.Within, "/stairs/0/risers", 1)}, results{lacking("/site", "site.frost_depth")}, Asked, "", ""},
		{"not asked for any more", results{lacking("/stairs/0", "stairs[].width")}, results{reading(result.DoesNotApply, "", 0)}, Dropped, NoNeed, ""},
		{"waived", results{reading(result.Excused, "/stairs/0/risers", -1)}, results{reading(result.Excused, "/stairs/2/risers", -1)}, Excused, "", ""},
		{"waived of late", results{reading(result.Within, "/stairs/0/risers", 1)}, results{reading(result.Excused, "/stairs/2/risers", -1)}, Excused, "", ""},
		{"no need of a waiver", results{reading(result.Excused, "/stairs/0/risers", -1)}, results{reading(result.Within, "/stairs/2/risers", 1)}, Unexcused, "", ""},
		{"could not run", results{reading(result.Within, "/stairs/0/risers", 1)}, results{reading(result.CouldNotRun, "", 0)}, CouldNot, "", ""},
		{"asked for before, and the check could not run now", results{lacking("/stairs/0", "stairs[].width")}, results{reading(result.CouldNotRun, "", 0)}, CouldNot, NoRun, ""},
		{"asked for, and before the check could not run", results{reading(result.CouldNotRun, "", 0)}, results{lacking("/stairs/2", "stairs[].width")}, Asked, NoRun, ""},
		{"excused before, not shown now", results{reading(result.Excused, "/stairs/0/total_rise", -1)}, results{lacking("/stairs/2", "stairs[].total_rise")}, Hidden, NothingSeen, ""},
		{"excused before, the check broke", results{reading(result.Excused, "/stairs/0/risers", -1)}, results{reading(result.CouldNotRun, "", 0)}, Hidden, NoRun, ""},
		{"could run again", results{reading(result.CouldNotRun, "", 0)}, results{reading(result.DoesNotApply, "", 0)}, RanAgain, "", ""},
	}
	for _, c := range cases {
		t.Run(c.name, func(t *testing.T) {
			r := Between(report(t, "was.yaml", before, c.was), report(t, "is.yaml", after, c.is), nil)
			m := r.Matters[len(r.Matters)-1]
			for _, other := range r.Matters { // the one that the case is about, and not what it goes with
				if other.State == c.want {
					m = other
				}
			}
			if m.State != c.want || m.Trend != c.trend || c.reason != "" && m.Reason != c.reason {
				t.Errorf("%s %q %q, want %s %q %q", m.State, m.Trend, m.Reason, c.want, c.trend, c.reason)
			}
		})
	}
}

// TestResultsOfOnePlace pairs what a check says several times of one place, as
// of posts that share a description.
func TestResultsOfOnePlace(t *testing.T) {
	was := []result.Result{reading(result.Outside, "/stairs/0/risers", -1), reading(result.Outside, "/stairs/0/risers", -2), reading(result.Outside, "/stairs/0/risers", -3)}
	is := []result.Result{reading(result.Outside, "/stairs/2/risers", -3), reading(result.Outside, "/stairs/2/risers", -1)}
	was[0].Fingerprint, was[1].Fingerprint, was[2].Fingerprint = "a", "b", "c"
	is[0].Fingerprint, is[1].Fingerprint = "c", "a"
	r := Between(report(t, "was.yaml", before, was), report(t, "is.yaml", after, is), nil)
	if open, gone := r.Of(StillOpen), r.Of(Gone); len(open) != 2 || len(gone) != 1 || open[0].Trend != Unchanged || open[1].Trend != Unchanged || gone[0].Was.Fingerprint != "b" {
		t.Errorf("%+v", r.Matters)
	}
}

func TestWorse(t *testing.T) {
	light := reading(result.Outside, "/stairs/2/risers", -1)
	light.Consequence = result.Workmanship
	r := Between(report(t, "was.yaml", before, nil), report(t, "is.yaml", after, []result.Result{light, lacking("/stairs/0", "stairs[].width")}), nil)
	for _, c := range []struct {
		class    result.Consequence
		notShown bool
		want     bool
	}{{result.Structure, false, false}, {result.Workmanship, false, true}, {result.LifeSafety, true, true}} {
		if got := r.Worse(c.class, c.notShown); got != c.want {
			t.Errorf("%s, %t: %t", c.class, c.notShown, got)
		}
	}
}

// TestUnreadable compares nothing where a side could not be read.
func TestUnreadable(t *testing.T) {
	torn := result.Design{File: "torn.yaml", Problems: []result.Problem{{Message: "torn"}}, Document: source.Unread("torn.yaml", nil)}
	fine := report(t, "is.yaml", after, []result.Result{reading(result.Outside, "/stairs/2/risers", -1)})
	for _, r := range []*Revisions{Between(torn, fine, nil), Between(fine, torn, nil)} {
		if r.Changes != nil || r.Matters != nil {
			t.Errorf("%+v", r)
		}
	}
}
