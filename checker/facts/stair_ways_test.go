package facts_test

import (
	"fmt"
	"testing"
)

// Landings of 30 in along the house and 50 in out from it, below stairs of
// which more or less is shown.
func TestSidesOfALanding(t *testing.T) {
	const stair = `
platforms: %s
stairs:
  - {%s landing_bottom: %s}
`
	const (
		platform = "[{mark: A, outline: {along_house: 16 ft, out_from_house: 12 ft}}]"
		clipped  = "[{mark: A, outline: {walk: [{edge: house, go: 20 ft, turn: 90}, {edge: right, go: 11 ft, turn: 45}, " +
			"{edge: clip, go: 4 ft 2-29/32 in, turn: 45}, {edge: front, go: 17 ft, turn: 90}, {edge: left, go: 14 ft, turn: 90}]}}]"
		landing = "{along: 30 in, out: 50 in}"
	)
	cases := []struct {
		name, platforms, fields, landing string
		depth, width, lesser, greater    string
		missing                          string
	}{
		{"off the front", platform, "from: {platform: A, edge: front},", landing, "50 in", "30 in", "", "", ""},
		{"off a side", platform, "from: {platform: A, edge: left},", landing, "30 in", "50 in", "", "", ""},
		{"nothing shown", "[]", "", landing, "", "", "30 in", "50 in", "stairs[].from.edge"},
		{"millimeters", "[]", "", "{along: 1200 mm, out: 900 mm}", "", "", "900 mm", "1200 mm", "stairs[].from.edge"},
		{"square", "[]", "", "{along: 30 in, out: 762 mm}", "30 in", "30 in", "", "", ""},
		{"one side shown", "[]", "", "{out: 50 in}", "", "", "", "", ""},
		{"edge not shown", platform, "from: {platform: A},", landing, "", "", "30 in", "50 in", "stairs[].from.edge"},
		{"outline not shown", "[{mark: A}]", "from: {platform: A, edge: front},", landing, "", "", "30 in", "50 in", "platforms[].outline"},
		{"platform not shown", "[{mark: A}, {mark: B}]", "from: {edge: front},", landing, "", "", "30 in", "50 in", "stairs[].from.platform"},
		{"at an angle", clipped, "from: {platform: A, edge: clip},", landing, "", "", "30 in", "50 in", "stairs[].landing_bottom"},
		{
			"after a quarter turn", platform, "from: {platform: A, edge: front}, flights: [{risers: 4}, {risers: 4}], landing_between: {turn: 90},",
			landing, "30 in", "50 in", "", "", "",
		},
		{
			"after a half turn", platform, "from: {platform: A, edge: front}, flights: [{risers: 4}, {risers: 4}], landing_between: {turn: -180},",
			landing, "50 in", "30 in", "", "", "",
		},
		{
			"after an eighth of a turn", platform, "from: {platform: A, edge: front}, flights: [{risers: 4}, {risers: 4}], landing_between: {turn: 45},",
			landing, "", "", "30 in", "50 in", "stairs[].landing_bottom",
		},
	}
	for _, c := range cases {
		t.Run(c.name, func(t *testing.T) {
			list := derive(t, fmt.Sprintf(stair, c.platforms, c.fields, c.landing)).Landings
			l := list[len(list)-1]
			want(t, "depth", l.Depth, c.depth)
			want(t, "width", l.Width, c.width)
			want(t, "lesser side", l.LesserSide, c.lesser)
			want(t, "greater side", l.GreaterSide, c.greater)
			if l.WayMissing != c.missing {
				t.Errorf("asks for %q, want %q", l.WayMissing, c.missing)
			}
		})
	}
}

// A stair that turns lands elsewhere than as far out as it is long, so that the
// slope of the ground does not say how deep.
func TestGroundBelowAStairThatTurns(t *testing.T) {
	const stair = `
site: {grade_fall: {direction: out, slope: 1 in 12}}
platforms:
  - {mark: A, outline: {along_house: 16 ft, out_from_house: 12 ft}, edges: {front: {drop: 80 in}}}
stairs:
  - {from: {platform: A, edge: front, at: 4 ft}, to: grade, flights: [{risers: 7, tread_depth: 11 in}, {risers: 6, tread_depth: 11 in}],
     landing_between: {along: 44 in, out: 40 in%s}}
`
	near(t, "straight on", derive(t, fmt.Sprintf(stair, "")).Stairs[0].TotalRise, "93.41667 in")
	near(t, "no turn", derive(t, fmt.Sprintf(stair, ", turn: 0")).Stairs[0].TotalRise, "93.41667 in")
	want(t, "a quarter turn", derive(t, fmt.Sprintf(stair, ", turn: 90")).Stairs[0].TotalRise, "")
}

// Where it is not shown which side of a landing is its depth, a stated run may
// be meant with either: 10 treads of 10 in and a landing of 40 or 50 in.
func TestStatedRunWithALandingEitherWay(t *testing.T) {
	const stair = `
stairs:
  - {total_run: %s, flights: [{risers: 6, tread_depth: 10 in}, {risers: 6, tread_depth: 10 in}], landing_between: {along: 40 in, out: 50 in}}
`
	for stated, difference := range map[string]string{"140 in": "0 in", "150 in": "0 in", "100 in": "0 in", "144 in": "4 in", "147 in": "3 in", "3810 mm": "0 in"} {
		run := derive(t, fmt.Sprintf(stair, stated)).StatedRuns[0]
		want(t, stated, run.Difference, difference)
	}
}

// Slopes of a landing in both directions make different falls across a stair
// 48 in wide: 0.48 in and 0.96 in.
func TestFallAcrossEitherWay(t *testing.T) {
	const stair = `
stairs:
  - {width: 48 in, risers: 4, landing_bottom: {along: 60 in, out: 60 in, slope_along: %s, slope_out: %s}}
`
	for _, slopes := range [][2]string{{"1%", "2%"}, {"2%", "-1%"}} {
		flight := derive(t, fmt.Sprintf(stair, slopes[0], slopes[1])).Flights[0]
		want(t, "known", flight.CrossFall, "")
		want(t, "lesser", flight.CrossFallLesser, "0.48 in")
		want(t, "greater", flight.CrossFallGreater, "0.96 in")
		if flight.CrossSlope != nil || flight.CrossSlopeGreater.Value.Run != 50 || flight.WayMissing != "stairs[].from.edge" {
			t.Errorf("slope across %v, steeper of the two %v, asks for %q", flight.CrossSlope, flight.CrossSlopeGreater, flight.WayMissing)
		}
	}
	one := derive(t, "stairs:\n  - {width: 48 in, risers: 4, landing_bottom: {slope_along: 1%}}\n").Flights[0]
	want(t, "one slope shown", one.CrossFallLesser, "")
}
