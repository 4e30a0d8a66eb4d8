package facts_test

import (
	"testing"

	"plumbrule/checker/facts"
)

// Differences by hand: 160, 175, 180, 172 planned at 700/4 = 175.
func TestSteps(t *testing.T) {
	f := derive(t, `
stairs:
  - {total_rise: 700 mm, measured_risers: [160 mm, 175 mm, 180 mm, 172 mm], measured_treads: [280 mm, 284 mm, 279 mm]}
  - {total_rise: 175 mm, risers: 1}
  - {measured_risers: [180 mm, 170 mm]}
  - {risers: 4}
`)
	built := f.Flights[0]
	want(t, "step", built.RiserStep, "15 mm")
	want(t, "step above the lowest", built.UpperStep, "8 mm")
	want(t, "off the plan above the lowest", built.UpperOff, "5 mm")
	want(t, "lowest off the plan", built.BottomOff, "15 mm")
	want(t, "lowest lower", built.BottomLower, "12 mm")
	want(t, "tread step", built.TreadStep, "5 mm")
	if built.RiserMinN != 1 || built.TreadMaxN != 2 {
		t.Errorf("smallest riser %d, greatest tread %d", built.RiserMinN, built.TreadMaxN)
	}
	single := f.Flights[1]
	want(t, "step of one riser", single.RiserStep, "0 mm")
	want(t, "one riser off the plan", single.BottomOff, "0 mm")
	absent(t, "one riser and those above it", single.BottomLower, single.UpperStep, single.UpperOff)
	unplanned := f.Flights[2]
	want(t, "lowest higher", unplanned.BottomLower, "-10 mm")
	absent(t, "two risers without a plan", unplanned.UpperStep, unplanned.UpperOff, unplanned.BottomOff)
	absent(t, "no risers", f.Flights[3].RiserStep, f.Flights[3].TreadStep)
}

func absent(t *testing.T, what string, list ...*facts.Length) {
	t.Helper()
	for _, l := range list {
		if l != nil {
			t.Errorf("%s: %v is shown", what, l.Value)
		}
	}
}

func TestAttached(t *testing.T) {
	f := derive(t, `
platforms:
  - {mark: A, support: ledger}
  - {mark: B, support: freestanding}
  - {mark: C, ledger: {size: 2x10}}
  - {mark: D}
stairs:
  - {from: {platform: A}}
  - {from: {platform: B}}
  - {from: {platform: C}}
  - {from: {platform: D}}
  - {risers: 3}
`)
	for i, want := range []string{"true", "false", "true", "", ""} {
		if got := yesNo(f.Flights[i].Attached); got != want {
			t.Errorf("stair %d: attached %q, want %q", i+1, got, want)
		}
	}
}

func yesNo(f *facts.Flag) string {
	switch {
	case f == nil:
		return ""
	case f.Value:
		return "true"
	}
	return "false"
}

// Doors on the platform decide; one that does not keep clear does so whatever
// is not shown of others.
func TestDoorsApart(t *testing.T) {
	for doors, want := range map[string]string{
		"{kind: door, platform: A, sliding: true, required_egress_door: false}":                                                                             "true",
		"{kind: door, platform: A, swings_over_deck: false, required_egress_door: false}":                                                                   "true",
		"{kind: door, platform: A, swings_over_deck: true, required_egress_door: false}":                                                                    "false",
		"{kind: door, platform: A, sliding: true, required_egress_door: true}":                                                                              "false",
		"{kind: door, platform: A, sliding: true}":                                                                                                          "",
		"{kind: door, platform: A, required_egress_door: false}":                                                                                            "",
		"{kind: door, platform: A}, {kind: door, platform: A, swings_over_deck: true}":                                                                      "false",
		"{kind: door, platform: B, swings_over_deck: true}, {kind: window, platform: A}":                                                                    "",
		"{kind: door, platform: B, swings_over_deck: true}, {kind: door, platform: A, swings_over_deck: false, sliding: true, required_egress_door: false}": "true",
	} {
		f := derive(t, "house: {openings: ["+doors+"]}\nplatforms: [{mark: A}, {mark: B}]\nstairs: [{from: {platform: A}, risers: 3}]")
		if got := yesNo(f.Landings[0].DoorsApart); got != want {
			t.Errorf("%s: apart %q, want %q", doors, got, want)
		}
		if f.Landings[0].Risers.Value != 3 || f.Landings[1].Risers != nil {
			t.Errorf("risers at the landings: %v, %v", f.Landings[0].Risers, f.Landings[1].Risers)
		}
	}
}

func TestStairStock(t *testing.T) {
	f := derive(t, `
house: {openings: [{kind: door, platform: A, threshold_above_decking: 50 mm}]}
platforms: [{mark: A, surface_above_grade: 520 mm}]
stairs:
  - from: {platform: A}
    use: secondary
    riser_opening: closed
    risers_carry_treads: true
    nosing_radius: 8 mm
    width: 900 mm
    total_rise: 1 m
    tread: {slope: 2%, slip_class: P4}
    winders: {count: 3, turn: 90}
    stringers: {actual: 38 mm x 235 mm, supported_along: true}
    landing_bottom: {turn: 45, door_swings_over: true, clear_of_door: 420 mm}
`)
	s, flight, landing := f.Stairs[0], f.Flights[0], f.Landings[1]
	want(t, "depth", s.StringerDepth, "235 mm")
	want(t, "thickness", s.StringerThick, "38 mm")
	want(t, "radius", s.NosingRadius, "8 mm")
	want(t, "clear of the door", landing.DoorClear, "420 mm")
	want(t, "rise at the handrail", f.Handrails[0].Rise, "1 m")
	want(t, "width at the handrail", f.Handrails[0].Width, "900 mm")
	want(t, "threshold above grade", f.Doors[0].AboveGrade, "570 mm")
	if yesNo(s.StringersHeld)+yesNo(s.RisersCarry)+yesNo(s.RisersClosed)+yesNo(landing.DoorSwings) != "truetruetruetrue" {
		t.Errorf("held %v, carry %v, closed %v, swings %v", s.StringersHeld, s.RisersCarry, s.RisersClosed, landing.DoorSwings)
	}
	if flight.Use.Value != "secondary" || s.SlipClass.Value != "P4" || s.TreadSlope.Value != (facts.Ratio{Rise: 1, Run: 50}) {
		t.Errorf("use %v, slip class %v, slope %v", flight.Use, s.SlipClass, s.TreadSlope)
	}
	if s.WinderCount.Value != 3 || s.WinderTurn.Value != 90_000_000 || landing.Turn.Value != 45_000_000 || s.Flights != 1 {
		t.Errorf("winders %v over %v, turn %v, %d flights", s.WinderCount, s.WinderTurn, landing.Turn, s.Flights)
	}
}
