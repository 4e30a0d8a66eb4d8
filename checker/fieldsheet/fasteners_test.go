package fieldsheet

import (
	"math/rand/v2"
	"testing"

	"plumbrule/checker/geometry"
	"plumbrule/checker/measure"
)

// On random ledgers, in whole units of a sixteenth, stepping off keeps the
// spacing, stays clear of joists and of the ends, and takes the fewest fasteners
// that a search over all places finds.
func TestFastenersStepOff(t *testing.T) {
	const unit = measure.Inch / 16
	r := rand.New(rand.NewPCG(5, 6))
	laid, refused := 0, 0
	for range 400 {
		length, end, spacing := 600+r.IntN(1500), 20+r.IntN(60), 60+r.IntN(220)
		run := fastenerRun{length: measure.Length(length) * unit, end: measure.Length(end) * unit, spacing: measure.Length(spacing) * unit}
		taken := make([]bool, length+1)
		for at := 0; at < length; at += 90 + r.IntN(170) {
			from, to := at-r.IntN(40), at+24+r.IntN(40)
			run.taken = append(run.taken, geometry.Interval{From: measure.Length(from) * unit, To: measure.Length(to) * unit})
			for k := max(from+1, 0); k < min(to, length+1); k++ {
				taken[k] = true
			}
		}
		spots, ok := run.even()
		fewest := search(taken, end, length-end, spacing)
		if ok != (fewest > 0) {
			t.Fatalf("laid out is %v, the search takes %d", ok, fewest)
		}
		if !ok {
			refused++
			continue
		}
		laid++
		if len(spots) != fewest {
			t.Fatalf("%d fasteners, %d would do", len(spots), fewest)
		}
		for i, s := range spots {
			for _, stretch := range run.taken {
				if stretch.From < s.at && s.at < stretch.To {
					t.Fatalf("fastener %d stands behind a joist", i+1)
				}
			}
			if s.at < run.end || s.at > run.length-run.end {
				t.Fatalf("fastener %d stands too near an end", i+1)
			}
			if i > 0 && (s.at <= spots[i-1].at || s.at-spots[i-1].at > run.spacing) {
				t.Fatalf("fastener %d stands %d/16 behind the one before", i+1, (s.at-spots[i-1].at)/unit)
			}
		}
		if widest(spots) > run.spacing {
			t.Fatalf("widest %v over %v", widest(spots), run.spacing)
		}
	}
	t.Logf("%d laid out, %d refused", laid, refused)
	if laid < 100 || refused < 20 {
		t.Error("the sizes tried are one-sided")
	}
}

// search is the fewest places from the first free one to the last free one with
// no step over the spacing; 0 if there is no way.
func search(taken []bool, first, last, spacing int) int {
	for first <= last && taken[first] {
		first++
	}
	for last > first && taken[last] {
		last--
	}
	if first >= last {
		return 0
	}
	best := make([]int, last+1)
	best[first] = 1
	for k := first + 1; k <= last; k++ {
		for from := max(k-spacing, first); !taken[k] && from < k; from++ {
			if best[from] > 0 && (best[k] == 0 || best[from]+1 < best[k]) {
				best[k] = best[from] + 1
			}
		}
	}
	return best[last]
}

// Places that are drawn stay where they are unless something is in their way.
func TestDrawnFastenersMoveOnlyWhereTheyMust(t *testing.T) {
	in := func(f float64) measure.Length { return measure.Length(f * float64(measure.Inch)) }
	run := fastenerRun{
		length: in(60), spacing: in(16), drawn: []measure.Length{in(56), in(4), in(17), in(30), in(43)},
		taken: []geometry.Interval{{From: in(16.5), To: in(20)}, {From: in(30), To: in(33.5)}},
	}
	spots, ok := run.asDrawn()
	if !ok {
		t.Fatal("no layout")
	}
	// 17 lies behind a joist, free from 16.5 back; 30 is just free.
	for i, want := range []spot{{in(4), false}, {in(16.5), true}, {in(30), false}, {in(43), false}, {in(56), false}} {
		if spots[i] != want {
			t.Errorf("fastener %d is %v, want %v", i+1, spots[i], want)
		}
	}
	run.spacing = in(12)
	if _, ok := run.asDrawn(); ok {
		t.Error("places over the spacing were taken")
	}
}
