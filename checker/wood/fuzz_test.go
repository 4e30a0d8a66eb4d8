package wood_test

import (
	"math"
	"testing"

	"plumbrule/checker/measure"
	"plumbrule/checker/wood"
)

// Whatever the layout and the loads, nothing panics, and the reactions balance the load.
func FuzzEnvelope(f *testing.F) {
	f.Add(int64(0), int64(132), int64(30), int64(0), int64(162), 66.7, int64(220))
	f.Add(int64(-5), int64(1), int64(0), int64(9), int64(3), -1.0, int64(0))
	f.Fuzz(func(t *testing.T, first, back, beyond, from, to int64, line float64, lb int64) {
		inch := func(v int64) measure.Length { return measure.Length(v%10_000) * measure.Inch }
		l := wood.Layout{To: inch(first) + inch(back) + inch(beyond), Supports: []measure.Length{inch(first), inch(first) + inch(back)}}
		if math.Abs(line) > 1e6 {
			line = 1e6
		}
		action := wood.Action{From: inch(from), To: inch(to), Line: line, Permanent: true}
		e, err := l.Envelope(1e8, []wood.Action{action, {From: inch(from), Force: measure.Force(lb % 1e12), Permanent: true}})
		if err != nil || lb%1e12 == 0 {
			return
		}
		total := line/12*float64((inch(to)-inch(from))/measure.Inch) + float64(lb%1e12)/4448221.6152605
		sum := e.Reactions[0].Most + e.Reactions[1].Most
		size := math.Abs(e.Reactions[0].Most) + math.Abs(e.Reactions[1].Most) + math.Abs(total)
		if math.Abs(sum-total) > 1e-6*size+1e-5 {
			t.Errorf("%+v: reactions %v balance %g lb, load %g lb", l, e.Reactions, sum, total)
		}
	})
}

// No text makes the readers panic, and what they read is in the tables or refused.
func FuzzParse(f *testing.F) {
	f.Add("southern pine", "No. 2")
	f.Add("S-P-F (S)", "#1")
	f.Fuzz(func(t *testing.T, species, grade string) {
		s, ok := wood.ParseSpecies(species)
		if ok == (s == "") {
			t.Errorf("%q: %q, %t", species, s, ok)
		}
		g, ok := wood.ParseGrade(grade)
		if ok == (g == "") {
			t.Errorf("%q: %q, %t", grade, g, ok)
		}
	})
}
