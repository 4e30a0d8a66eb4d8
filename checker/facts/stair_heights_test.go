package facts_test

import (
	"fmt"
	"slices"
	"testing"
)

// The height of a stair is told once: by its risers as measured where each of
// them was, else by the rise as drawn.
func TestHeightOfAStairAsBuilt(t *testing.T) {
	const stair = `
platforms:
  - {mark: A, outline: {along_house: 16 ft, out_from_house: 12 ft}, edges: {front: {%s}}}
stairs:
  - {from: {platform: A, edge: front, at: 4 ft}, riser_opening: 4 in, %s}
`
	cases := []struct{ name, edge, fields, top, rise string }{
		{"as drawn", "drop: 31 in", "total_rise: 31 in, risers: 4", "23-1/4 in", "31 in"},
		{"the top one taller", "", "total_rise: 31 in, measured_risers: [7-3/4 in, 7-3/4 in, 7-3/4 in, 8-1/4 in]", "23-1/4 in", "31-1/2 in"},
		{"over level ground", "drop: 31 in", "total_rise: 31 in, measured_risers: [7-3/4 in, 7-3/4 in, 7-3/4 in, 8-1/4 in]", "23-1/4 in", "31-1/2 in"},
		{"lower ones taller", "drop: 31 in", "total_rise: 31 in, measured_risers: [8-1/4 in, 7-3/4 in, 7-3/4 in, 7-3/4 in]", "23-3/4 in", "31-1/2 in"},
		{"millimeters", "drop: 800 mm", "total_rise: 800 mm, measured_risers: [210 mm, 200 mm, 200 mm, 200 mm]", "610 mm", "810 mm"},
		{"ground lower at the edge", "drop: 40 in", "total_rise: 31 in, measured_risers: [8-1/4 in, 7-3/4 in, 7-3/4 in, 7-3/4 in]", "32-3/4 in", "31-1/2 in"},
		{"ground lower close to it", "drop: 31 in, drop_within_36_in: 40 in", "total_rise: 31 in, risers: 4", "32-1/4 in", "31 in"},
		{"ground close to it alone", "drop_within_36_in: 25 in", "total_rise: 31 in, risers: 4", "23-1/4 in", "31 in"},
		{"lower ground close to it alone", "drop_within_36_in: 33 in", "total_rise: 31 in, risers: 4", "25-1/4 in", "31 in"},
		{"one riser left out", "", "total_rise: 31 in, risers: 4, measured_risers: [7-3/4 in, 7-3/4 in, 8-1/4 in]", "22-3/4 in", "31 in"},
		{"only measured", "", "measured_risers: [8 in, 8 in, 7 in]", "16 in", "23 in"},
		{"only the drop", "drop: 31 in", "risers: 4", "31 in", ""},
	}
	for _, c := range cases {
		t.Run(c.name, func(t *testing.T) {
			f := derive(t, fmt.Sprintf(stair, c.edge, c.fields))
			want(t, "guard", f.StairGuards[0].Drop, c.top)
			want(t, "handrail", f.Handrails[0].Rise, c.rise)
			want(t, "opening between treads", f.Flights[0].OpeningAbove, c.rise)
		})
	}
}

// A stair that starts from a landing of its own is as high as that; where
// platforms are described their edges are judged, and the stair stays below them.
func TestHeightOfAStairWithALandingOfItsOwn(t *testing.T) {
	cases := []struct{ name, design, top string }{
		{"inches", "stairs:\n  - {total_rise: 24 in, risers: 3, landing_top: {along: 6 ft, out: 4 ft}}\n", "24 in"},
		{"millimeters", "stairs:\n  - {total_rise: 600 mm, risers: 3, landing_top: {along: 1800 mm, out: 1200 mm}}\n", "600 mm"},
		{"as measured", "stairs:\n  - {total_rise: 24 in, measured_risers: [8 in, 8 in, 8-1/4 in], landing_top: {along: 6 ft}}\n", "24-1/4 in"},
		{"rise not shown", "stairs:\n  - {risers: 3, landing_top: {along: 6 ft}}\n", ""},
		{"no landing", "stairs:\n  - {total_rise: 24 in, risers: 3}\n", "16 in"},
		{
			"landing on a platform", "platforms: [{mark: A, outline: {along_house: 16 ft, out_from_house: 12 ft}}]\n" +
				"stairs:\n  - {from: {platform: A, edge: front}, total_rise: 24 in, risers: 3, landing_top: {along: 6 ft, out: 4 ft}}\n", "16 in",
		},
	}
	for _, c := range cases {
		t.Run(c.name, func(t *testing.T) {
			want(t, "guard", derive(t, c.design).StairGuards[0].Drop, c.top)
		})
	}
	f := derive(t, cases[0].design)
	if at := f.StairGuards[0].Drop.At; !slices.Equal(at, []string{"/stairs/0/total_rise", "/stairs/0/landing_top"}) {
		t.Errorf("the height comes from %q", at)
	}
}

// The two sums furthest apart of every tread with the risers before and behind
// it, worked out by hand.
func TestTwoRisersAndATread(t *testing.T) {
	cases := []struct {
		name, fields                    string
		least, most                     string
		leastRiser, leastTread          int64
		mostRiser, mostTread            int64
		leastPlaceFirst, mostPlaceFirst string
	}{
		{"alike", "total_rise: 28 in, risers: 4, tread_depth: 11 in", "25 in", "25 in", 0, 0, 0, 0, "/stairs/0/tread_depth", "/stairs/0/tread_depth"},
		{
			"risers measured", "total_rise: 28 in, tread_depth: 11 in, measured_risers: [7 in, 6-1/2 in, 7 in, 7-1/2 in]",
			"24 in", "26 in", 2, 0, 4, 0, "/stairs/0/measured_risers/1", "/stairs/0/measured_risers/3",
		},
		{
			"treads measured", "total_rise: 700 mm, risers: 4, measured_treads: [280 mm, 270 mm, 290 mm]",
			"620 mm", "640 mm", 0, 2, 0, 3, "/stairs/0/measured_treads/1", "/stairs/0/measured_treads/2",
		},
		{
			"both", "measured_risers: [7 in, 7 in, 7-1/4 in, 7 in], measured_treads: [11 in, 10-3/4 in, 11 in]",
			"24-3/4 in", "25-1/2 in", 2, 2, 3, 3, "/stairs/0/measured_risers/1", "/stairs/0/measured_risers/2",
		},
		{"a last riser apart", "total_rise: 28 in, risers: 4, last_riser: 6 in, tread_depth: 11 in", "23 in", "25 in", 4, 0, 1, 0, "/stairs/0/last_riser", "/stairs/0/risers"},
		{"treads left out", "measured_risers: [7 in, 7 in, 7 in, 8 in], measured_treads: [11 in, 10 in]", "24 in", "25 in", 2, 2, 1, 1, "/stairs/0/measured_risers/1", "/stairs/0/measured_risers/0"},
	}
	for _, c := range cases {
		t.Run(c.name, func(t *testing.T) {
			f := derive(t, fmt.Sprintf("stairs:\n  - {%s}\n", c.fields)).Flights[0]
			want(t, "least", f.ComfortLeast, c.least)
			want(t, "most", f.ComfortMost, c.most)
			got := [4]int64{f.ComfortLeastRiser, f.ComfortLeastTread, f.ComfortMostRiser, f.ComfortMostTread}
			if got != [4]int64{c.leastRiser, c.leastTread, c.mostRiser, c.mostTread} {
				t.Errorf("at risers and treads %d", got)
			}
			if least, most := f.ComfortLeast.At[0], f.ComfortMost.At[0]; least != c.leastPlaceFirst || most != c.mostPlaceFirst {
				t.Errorf("at %s and %s", least, most)
			}
		})
	}
}
