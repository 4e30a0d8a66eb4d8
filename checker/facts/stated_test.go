package facts_test

import (
	"strings"
	"testing"

	"plumbrule/checker/measure"
)

// Five treads of 10 in are 50 in. A stair of two such flights reaches 100 in by
// its treads and 140 in over the ground, with 40 in of landing between; where the
// top tread lies flush with the decking the last riser stands 10 in further in.
func TestStatedRuns(t *testing.T) {
	const flight = "risers: 6, tread_depth: 10 in"
	const two = "flights: [{" + flight + "}, {" + flight + "}], landing_between: {along: 40 in, out: 40 in}"
	const flushTop = "flights: [{" + flight + ", flush_top_tread: true}, {" + flight + "}], landing_between: {along: 40 in, out: 40 in}"
	for _, c := range []struct{ name, stair, derived, apart, missing string }{
		{"one flight", flight + ", total_run: 51 in", "50 in", "1 in", ""},
		{"flush top tread, counted", flight + ", flush_top_tread: true, total_run: 60 in", "60 in", "0 in", ""},
		{"flush top tread, to the last riser", flight + ", flush_top_tread: true, total_run: 50 in", "50 in", "0 in", ""},
		{"two flights over the ground", two + ", total_run: 139 in", "140 in", "1 in", ""},
		{"two flights without the landing", two + ", total_run: 101 in", "100 in", "1 in", ""},
		{"two flights to the last riser", flushTop + ", total_run: 140 in", "140 in", "0 in", ""},
		{"landing not shown", strings.Split(two, ", landing_between")[0] + ", total_run: 140 in", "100 in", "40 in", ""},
		{"of a flight", "flights: [{" + flight + ", total_run: 52 in}, {" + flight + "}]", "50 in", "2 in", ""},
		{"as measured", "measured_risers: [7 in, 7 in, 7 in], measured_treads: [10 in, 10-1/4 in], total_run: 20 in", "20-1/4 in", "1/4 in", ""},
		{"tread not shown", "risers: 6, total_run: 50 in", "", "", "stairs[].tread_depth"},
		{"risers of a flight not shown", "flights: [{tread_depth: 10 in}, {" + flight + "}], total_run: 50 in", "", "", "stairs[].flights[].risers"},
	} {
		t.Run(c.name, func(t *testing.T) {
			list := derive(t, "stairs:\n  - {"+c.stair+"}\n").StatedRuns
			if len(list) != 1 {
				t.Fatalf("%d stated runs", len(list))
			}
			want(t, "derived", list[0].Derived, c.derived)
			want(t, "difference", list[0].Difference, c.apart)
			if got := strings.Join(list[0].Missing, " "); got != c.missing {
				t.Errorf("missing %q, want %q", got, c.missing)
			}
		})
	}
}

// Supports are told from the top of the stair: of flights of 60 in with a
// landing of 40 in between, one at 130 in lies 30 in down the second.
func TestStringersEndAtSupports(t *testing.T) {
	const flights = "flights: [{risers: 7, tread_depth: 10 in}, {risers: 7, tread_depth: 10 in}]"
	for _, c := range []struct{ name, stair, first, second, stated string }{
		{"one support", "risers: 7, tread_depth: 10 in, stringers: {supports_at: [35 in], stated_horizontal_span: 40 in}", "35 in", "", "5 in"},
		{"two, not in order", "risers: 7, tread_depth: 10 in, stringers: {supports_at: [44 in, 20 in], stated_horizontal_span: 24 in}", "24 in", "", "0 in"},
		{"past the foot", "risers: 7, tread_depth: 10 in, stringers: {supports_at: [60 in], stated_horizontal_span: 60 in}", "60 in", "", "0 in"},
		{"in the second flight", flights + ", landing_between: {along: 40 in, out: 40 in}, stringers: {supports_at: [130 in], stated_horizontal_span: 30 in}", "60 in", "30 in", "0 in"},
		{"second flight of unknown start", flights + ", stringers: {supports_at: [130 in], stated_horizontal_span: 30 in}", "60 in", "60 in", "30 in"},
	} {
		t.Run(c.name, func(t *testing.T) {
			f := derive(t, "stairs:\n  - {"+c.stair+"}\n")
			want(t, "first flight", f.Flights[0].StringerRun, c.first)
			if c.second != "" {
				want(t, "second flight", f.Flights[1].StringerRun, c.second)
			}
			want(t, "stated against it", f.StatedStringers[0].Difference, c.stated)
			if f.Flights[0].Run.Value != 60*measure.Inch {
				t.Error("a support shortens the run")
			}
		})
	}
}

// A height may lie anywhere between the grounds that are shown. Above all of
// them it is refuted once every drop is shown; below, only with the ground at
// the house, or where the ground is level.
func TestStatedHeights(t *testing.T) {
	const sloped = "edges: {left: {drop: 50 in}, front: {drop: 56 in}, right: {drop: 52 in}}"
	const level = "edges: {left: {drop: 50 in}, front: {drop: 50 in}, right: {drop: 50 in}}"
	const rise, fall = "platforms[].grade_at", "site: {grade_fall: {direction: out, slope: 1 in 20}}\n"
	for _, c := range []struct{ name, before, height, ground, derived, missing string }{
		{"between the drops", "", "53 in", sloped, "53 in", ""},
		{"above them", "", "58 in", sloped, "56 in", ""},
		{"a greater drop within 36 in", "", "58 in", "edges: {left: {drop: 50 in}, front: {drop: 56 in, drop_within_36_in: 59 in}, right: {drop: 52 in}}", "58 in", ""},
		{"above, one drop not shown", "", "58 in", "edges: {left: {drop: 50 in}, front: {drop: 56 in}}", "56 in", "platforms[].edges.<right>.drop"},
		{"below, nothing at the house", "", "40 in", sloped, "50 in", rise},
		{"below, higher at the house", "", "46 in", sloped + ", grade_at: [{at: [3 ft, 0 ft], below_surface: 44 in}]", "46 in", ""},
		{"below that of the house", "", "40 in", sloped + ", grade_at: [{at: [3 ft, 0 ft], below_surface: 44 in}]", "44 in", ""},
		{"below, ground known off the house only", "", "40 in", sloped + ", grade_at: [{at: [3 ft, 1 ft], below_surface: 44 in}]", "44 in", rise},
		{"below the drop at the house", "", "40 in", strings.Replace(sloped, "{left", "{house: {drop: 45 in}, left", 1), "45 in", ""},
		{"below level ground", "", "40 in", level, "50 in", ""},
		{"below alike drops on a slope", fall, "40 in", level, "50 in", rise},
		{"a post that stands lower", "", "58 in", sloped + ", posts: {each: [{mark: P1, ground_below_surface: 59 in}]}", "58 in", ""},
	} {
		t.Run(c.name, func(t *testing.T) {
			f := derive(t, c.before+"platforms:\n  - {outline: {along_house: 12 ft, out_from_house: 8 ft}, surface_above_grade: "+c.height+", "+c.ground+"}\n")
			if len(f.StatedHeights) != 1 {
				t.Fatalf("%d stated heights", len(f.StatedHeights))
			}
			h := f.StatedHeights[0]
			want(t, "height", &h.Derived, c.derived)
			if off := h.Difference.Value; off != max(h.Stated.Value-h.Derived.Value, h.Derived.Value-h.Stated.Value) {
				t.Errorf("they are %s apart", off.Text(measure.Imperial))
			}
			if got := strings.Join(h.Missing, " "); got != c.missing {
				t.Errorf("missing %q, want %q", got, c.missing)
			}
		})
	}
	if f := derive(t, "platforms:\n  - {surface_above_grade: 40 in}\n  - {edges: {front: {drop: 40 in}}, outline: {along_house: 8 ft, out_from_house: 8 ft}}\n"); len(f.StatedHeights) != 0 {
		t.Errorf("%d heights are compared with nothing", len(f.StatedHeights))
	}
}

// The rises of all flights make the rise of the stair. Where that is stated as
// well, or the ground gives it, the two are held against each other.
func TestRiseOfFlights(t *testing.T) {
	const flights = "flights: [{risers: 6, tread_depth: 10 in, total_rise: 42 in}, {risers: 6, tread_depth: 10 in, total_rise: 43 in}]"
	const ground = "grade_at_foot: {from_edge: 30 in, below_surface: 31 in}, from: {platform: A, edge: front, at: 1 ft}, to: grade"
	for _, c := range []struct{ name, stair, total, derived, apart string }{
		{"of one flight", "flights: [{risers: 4, total_rise: 30 in}]", "30 in", "", ""},
		{"of two flights", flights, "85 in", "", ""},
		{"stated besides", flights + ", total_rise: 84 in", "84 in", "85 in", "1 in"},
		{"one flight does not show it", strings.Replace(flights, ", total_rise: 43 in", "", 1) + ", total_rise: 84 in", "84 in", "", ""},
		{"against the ground", "flights: [{risers: 4, tread_depth: 10 in, total_rise: 30 in}], " + ground, "30 in", "31 in", "1 in"},
		{"the ground is further off", "flights: [{risers: 4, tread_depth: 10 in, total_rise: 30 in}], total_rise: 29-1/2 in, " + ground, "29-1/2 in", "31 in", "1-1/2 in"},
		{"the flights are further off", "flights: [{risers: 4, tread_depth: 10 in, total_rise: 30 in}], total_rise: 32 in, " + ground, "32 in", "30 in", "2 in"},
	} {
		t.Run(c.name, func(t *testing.T) {
			f := derive(t, "platforms: [{mark: A, outline: {along_house: 12 ft, out_from_house: 8 ft}}]\nstairs:\n  - {"+c.stair+"}\n")
			want(t, "total rise", f.Stairs[0].TotalRise, c.total)
			want(t, "derived", f.Stairs[0].DerivedRise, c.derived)
			want(t, "apart", f.Stairs[0].RiseDifference, c.apart)
		})
	}
	f := derive(t, "stairs:\n  - {flights: [{risers: 7, total_rise: 50 in}, {risers: 7, total_rise: 50 in}]}\n")
	want(t, "rise of a flight", f.Flights[1].Rise, "50 in") // not seven times the rounded riser
}
