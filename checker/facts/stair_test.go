package facts_test

import (
	"fmt"
	"testing"

	"plumbrule/checker/facts"
	"plumbrule/checker/measure"
)

// The expected figures are worked examples of stair layout in the handbook
// manner: rise over the fewest risers, run over the treads, the right triangle
// of rise and run for pitch and stringer line, depth of the stringer less the
// height of the notch for the throat.
func TestFlight(t *testing.T) {
	f := derive(t, `
stairs:
  - {total_rise: 52 in, risers: 7, tread_depth: 10-1/4 in, nosing: 1 in, width: 36 in, riser_opening: closed,
     tread: {material: wood, thickness: 1 in}, stringers: {kind: cut, size: 2x12, count: 3}}
`)
	flight := f.Flights[0]
	near(t, "unit rise", flight.UnitRise, "7.42857 in")
	want(t, "run", flight.Run, "61-1/2 in")
	want(t, "rise", flight.Rise, "52 in") // not seven times the rounded riser
	near(t, "stringer line", flight.StringerLine, "75.953 in")
	near(t, "throat", flight.Throat, "5.23506 in")
	want(t, "spread", flight.RiserSpread, "0 in")
	near(t, "first drop", flight.FirstDrop, "8.42857 in")
	near(t, "bottom cut", flight.BottomCut, "6.42857 in")
	near(t, "two risers and a tread at the least", flight.ComfortLeast, "25.10714 in")
	near(t, "two risers and a tread at the most", flight.ComfortMost, "25.10714 in")
	if got := fmt.Sprintf("%.3f", float64(flight.Pitch.Value)/1e6); got != "35.932" {
		t.Errorf("pitch %s, want 35.932", got)
	}
	want(t, "stringer spacing", f.Stairs[0].StringerSpacing, "17-1/4 in")
	if flight.TreadsExpected.Value != 6 {
		t.Errorf("%d treads, want 6", flight.TreadsExpected.Value)
	}
}

func TestRiserExtremes(t *testing.T) {
	f := derive(t, `
stairs:
  - {total_rise: 31 in, measured_risers: [7-3/4 in, 7-1/2 in, 8 in, 7-3/4 in], measured_treads: [10 in, 9-7/8 in, 10-1/4 in]}
  - {total_rise: 31 in, risers: 4, tread_depth: 10 in, last_riser: 6 in}
`)
	measured, described := f.Flights[0], f.Flights[1]
	want(t, "greatest", measured.RiserMax, "8 in")
	want(t, "smallest", measured.RiserMin, "7-1/2 in")
	want(t, "spread", measured.RiserSpread, "1/2 in")
	want(t, "shortest tread", measured.TreadMin, "9-7/8 in")
	want(t, "tread spread", measured.TreadSpread, "3/8 in")
	want(t, "run as measured", measured.Run, "30-1/8 in")
	if measured.RiserMaxN != 3 || measured.TreadMinN != 2 || measured.Risers.Value != 4 {
		t.Errorf("greatest riser %d of %d, shortest tread %d", measured.RiserMaxN, measured.Risers.Value, measured.TreadMinN)
	}
	want(t, "measured sum", f.Stairs[0].MeasuredSum, "31 in")
	want(t, "against the rise", f.Stairs[0].SumDifference, "0 in")
	want(t, "last riser apart", described.RiserMin, "6 in")
	want(t, "spread with it", described.RiserSpread, "1-3/4 in")
}

// grade is a stair off the front of a platform whose ground falls.
const grade = `
site: {grade_fall: {direction: %s, slope: %s}}
platforms:
  - {mark: A, outline: {along_house: 16 ft, out_from_house: 12 ft}, edges: {front: {drop: %s}, left: {drop: %s}}}
stairs:
  - {from: {platform: A, edge: %s, at: 4 ft}, to: grade, width: 36 in, risers: %d, tread_depth: %s}
`

// Worked examples of a stair on sloping ground: 40 in at the edge, 3/4 in per
// ft, runs of 10-1/2 in: six risers land 52-1/2 in out, 3.28125 in lower.
func TestTotalRiseFromGrade(t *testing.T) {
	cases := []struct {
		name, direction, slope, edge string
		risers                       int
		tread, total, unit           string
	}{
		{"falls away", "out", "1 in 16", "front", 6, "10-1/2 in", "43.28125 in", "7.21354 in"},
		{"an inch per foot", "out", "1 in 12", "front", 6, "10 in", "40.16667 in", "6.69444 in"},
		{"rises", "in", "1 in 16", "front", 6, "10-1/2 in", "36.71875 in", "6.11979 in"},
		{"falls sideways", "left", "1 in 16", "front", 6, "10-1/2 in", "40 in", "6.66667 in"},
		{"stair to the left on ground that falls left", "left", "1 in 16", "left", 6, "10-1/2 in", "43.28125 in", "7.21354 in"},
		{"stair to the left on ground that falls right", "right", "1 in 16", "left", 6, "10-1/2 in", "36.71875 in", "6.11979 in"},
	}
	for _, c := range cases {
		t.Run(c.name, func(t *testing.T) {
			drop := "40 in"
			if c.slope == "1 in 12" {
				drop = "36 in"
			}
			f := derive(t, fmt.Sprintf(grade, c.direction, c.slope, drop, drop, c.edge, c.risers, c.tread))
			near(t, "total rise", f.Stairs[0].TotalRise, c.total)
			near(t, "unit rise", f.Flights[0].UnitRise, c.unit)
		})
	}
}

func TestRiseAtTheFoot(t *testing.T) {
	const stair = `
platforms:
  - {mark: A, outline: {along_house: 16 ft, out_from_house: 12 ft}, edges: {front: {drop: 40 in}}}
stairs:
  - {from: {platform: A, edge: front, at: 4 ft}, to: grade, risers: 6, tread_depth: 12 in, %s}
`
	cases := []struct{ name, fields, total, derived, difference string }{
		{"ground shown where the stair lands", "grade_at_foot: {from_edge: 60 in, below_surface: 45 in}", "45 in", "", ""},
		{"shown nearer: the line on from the edge", "grade_at_foot: {from_edge: 48 in, below_surface: 44 in}", "45 in", "", ""},
		{"finish still to come raises the landing", "grade_at_foot: {from_edge: 60 in, below_surface: 45 in}, landing_bottom: {finish_to_come: 1-1/2 in}", "43-1/2 in", "", ""},
		{"stated beside it", "total_rise: 44-3/4 in, grade_at_foot: {from_edge: 60 in, below_surface: 45 in}", "44-3/4 in", "45 in", "1/4 in"},
		{"level ground is not assumed", "lighting: true", "", "", ""},
	}
	for _, c := range cases {
		t.Run(c.name, func(t *testing.T) {
			s := derive(t, fmt.Sprintf(stair, c.fields)).Stairs[0]
			want(t, "total rise", s.TotalRise, c.total)
			want(t, "derived rise", s.DerivedRise, c.derived)
			want(t, "difference", s.RiseDifference, c.difference)
		})
	}
}

func TestFlightsWithALanding(t *testing.T) {
	f := derive(t, `
site: {grade_fall: {direction: out, slope: 1 in 12}}
platforms:
  - {mark: A, outline: {along_house: 16 ft, out_from_house: 12 ft}, edges: {front: {drop: 80 in}}}
stairs:
  - {from: {platform: A, edge: front, at: 4 ft}, to: grade, width: 42 in,
     flights: [{risers: 7, tread_depth: 11 in}, {risers: 6, tread_depth: 11 in}], landing_between: {along: 44 in, out: 40 in},
     landing_bottom: {along: 48 in, out: 48 in, slope_along: 1%}}
`)
	// 6 and 5 treads of 11 in and a landing of 40 in: 161 in out, 13.41667 in lower.
	near(t, "total rise", f.Stairs[0].TotalRise, "93.41667 in")
	near(t, "unit rise", f.Flights[1].UnitRise, "7.18590 in")
	near(t, "rise of the upper flight", f.Flights[0].Rise, "50.30128 in")
	want(t, "cross fall at the pad", f.Flights[1].CrossFall, "0.42 in")
	want(t, "cross fall above", f.Flights[0].CrossFall, "")
	landings := f.Landings
	if len(landings) != 3 {
		t.Fatalf("%d landings, want top, between and bottom", len(landings))
	}
	want(t, "top landing is the platform", landings[0].Depth, "12 ft")
	want(t, "landing between, in the direction of travel", landings[1].Depth, "40 in")
	want(t, "and across it", landings[1].Width, "44 in")
}

// The pad of a stair off a side edge is deep along the house.
func TestTravelAlongTheHouse(t *testing.T) {
	f := derive(t, `
platforms:
  - {mark: A, outline: {along_house: 16 ft, out_from_house: 12 ft}, edges: {left: {drop: 40 in}}}
stairs:
  - {from: {platform: A, edge: left, at: 2 ft}, to: grade, width: 36 in, landing_bottom: {along: 30 in, out: 50 in}}
`)
	want(t, "depth off a side", f.Landings[1].Depth, "30 in")
	want(t, "width off a side", f.Landings[1].Width, "50 in")
	want(t, "top landing off a side", f.Landings[0].Depth, "16 ft")
}

func TestNothingIsAssumed(t *testing.T) {
	f := derive(t, "stairs:\n  - {mark: S}\n")
	s, flight := f.Stairs[0], f.Flights[0]
	for name, l := range map[string]*facts.Length{
		"total rise": s.TotalRise, "width": s.Width, "headroom": s.Headroom, "riser": flight.RiserMax, "tread": flight.TreadMin,
		"nosing": flight.Nosing, "throat": flight.Throat, "opening": flight.RiserOpening, "run": flight.Run,
	} {
		if l != nil {
			t.Errorf("%s is %s, the design does not show it", name, l.Value.Text(measure.Imperial))
		}
	}
	if f.Handrails[0].Present || f.StairGuards[0].Present || s.Lighting != nil || flight.RisersClosed != nil {
		t.Error("a handrail, a guard, light or closed risers were assumed")
	}
}

// TestNoneOnPurpose reads the word none for a handrail or a guard as one that
// is not there, at its own place: as nothing of it is shown, but said.
func TestNoneOnPurpose(t *testing.T) {
	f := derive(t, "stairs:\n  - {handrail: none, guard: none}\n  - {handrail: {sides: 0}, guard: {height: 36 in}}\n")
	for i := range 2 {
		if h := f.Handrails[i]; h.Present || h.Sides == nil || h.Sides.Value != 0 || h.At[0] != fmt.Sprintf("/stairs/%d/handrail", i) {
			t.Errorf("handrail %d: %+v", i, h)
		}
	}
	if g := f.StairGuards[0]; g.Present || g.At[0] != "/stairs/0/guard" || g.Height != nil {
		t.Errorf("no guard: %+v", g)
	}
	if g := f.StairGuards[1]; !g.Present || g.Height == nil {
		t.Errorf("a guard: %+v", g)
	}
}
