package result_test

import (
	"testing"

	"plumbrule/checker/result"
)

func TestDispose(t *testing.T) {
	outside := func(c result.Consequence) result.Result {
		return result.Result{Outcome: result.Outside, Consequence: c}
	}
	var (
		within   = result.Result{Outcome: result.Within}
		notShown = result.Result{Outcome: result.NotShown, Consequence: result.LifeSafety}
		excused  = result.Result{Outcome: result.Excused, Consequence: result.LifeSafety}
		failed   = result.Result{Outcome: result.CouldNotRun}
		apart    = result.Result{Outcome: result.DoesNotApply}
	)
	cases := []struct {
		name               string
		findings, readings []result.Result
		want               result.Disposition
	}{
		{"life safety", []result.Result{notShown, outside(result.LifeSafety)}, nil, result.ReviseAndResubmit},
		{"structure", []result.Result{outside(result.Structure)}, nil, result.ReviseAndResubmit},
		{"durability", []result.Result{outside(result.Durability)}, nil, result.CorrectionsNoted},
		{"workmanship beside something not shown", []result.Result{outside(result.Workmanship), notShown}, nil, result.CorrectionsNoted},
		{"not shown", []result.Result{notShown}, []result.Result{within}, result.CannotCheck},
		{"could not run", []result.Result{failed}, []result.Result{within}, result.CannotCheck},
		{"excused only", []result.Result{excused}, []result.Result{within}, result.NoExceptions},
		{"all within", nil, []result.Result{within, apart}, result.NoExceptions},
		{"nothing applies", nil, []result.Result{apart}, result.NotReviewed},
	}
	for _, c := range cases {
		t.Run(c.name, func(t *testing.T) {
			if got := result.Dispose(c.findings, c.readings); got != c.want {
				t.Errorf("%q, want %q", got, c.want)
			}
		})
	}
}

func TestConsequencesGravestFirst(t *testing.T) {
	list := result.Consequences()
	for i := 1; i < len(list); i++ {
		if !list[i-1].AtLeast(list[i]) || list[i].AtLeast(list[i-1]) {
			t.Errorf("%q is not graver than %q", list[i-1], list[i])
		}
	}
	if result.Consequence("other").AtLeast(result.Workmanship) {
		t.Error("an unknown class counts as workmanship")
	}
}
