package facts_test

import (
	"fmt"
	"testing"
)

// What the codes of other countries ask for beside what the model code asks.

func TestDropsAndSlopeBelowEdges(t *testing.T) {
	f := derive(t, `
platforms:
  - outline: {along_house: 4 m, out_from_house: 3 m}
    edges:
      front: {drop: 900 mm, drop_within_1200_mm: 1050 mm, slope_within_1200_mm: 1 in 3, guard: G}
      left: {drop: 700 mm, drop_within_1200_mm: 1 m, slope_within_1200_mm: 40%, guard: G}
      right: {drop: 800 mm, slope_within_1200_mm: 1 in 2, guard: H}
guards: [{mark: G, infill: {footholds: [100 mm, 950 mm]}}, {mark: H}, {mark: I}]
`)
	drops := f.Guards[0].Drops
	want(t, "greatest drop", drops[0].Drop, "900 mm")
	want(t, "greatest drop within 1200 mm", drops[2].Drop, "1050 mm")
	if drops[0].Partial || drops[2].Partial || !drops[1].Partial {
		t.Errorf("drops %+v, both edges show the first and the last", drops)
	}
	if slope := f.Guards[0].GroundSlope; slope == nil || slope.Value.Rise != 2 || slope.Value.Run != 5 {
		t.Errorf("steepest ground %v, want 2 in 5", slope)
	}
	if holds := f.Guards[0].Footholds; len(holds) != 2 || holds[1].At[0] != "/guards/0/infill/footholds/1" {
		t.Errorf("footholds %v", holds)
	}
	if f.Guards[1].GroundSlope == nil || len(f.Guards[2].Drops) != 0 || f.Guards[2].Drops == nil {
		t.Error("a guard has the ground of its own edges")
	}
}

func TestBlockingBetweenSupports(t *testing.T) {
	for blocking, blocked := range map[string]string{
		"":                               "not shown",
		"blocking: {}":                   "not shown",
		"blocking: {rows_at: [1200 mm]}": "true", "blocking: {rows_at: [2500 mm]}": "false",
		"blocking: {max_spacing: 2 m}": "true", "blocking: {max_spacing: 3 m}": "false",
		"blocking: {rows_at: [2500 mm], max_spacing: 2 m}": "true",
	} {
		f := derive(t, `
platforms:
  - support: ledger
    measured_to: frame
    outline: {along_house: 4 m, out_from_house: 2600 mm}
    ledger: {actual: 45 mm x 190 mm}
    joists: {actual: 45 mm x 190 mm, direction: out_from_house, layout: on_center, spacing: 400 mm, `+blocking+`}
    beams: [{mark: B1, actual: 45 mm x 190 mm, plies: 2, kind: dropped, from_house: 2400 mm}]
`)
		got := "not shown"
		if flag := f.JoistSpans[0].Blocked; flag != nil {
			got = fmt.Sprint(flag.Value)
		}
		if got != blocked {
			t.Errorf("%s: blocked is %s, want %s", blocking, got, blocked)
		}
		want(t, "depth", f.JoistSpans[0].Depth, "190 mm")
		want(t, "thickness", f.JoistSpans[0].Thickness, "45 mm")
	}
}

func TestMaterialsAndLoadsOfOtherCountries(t *testing.T) {
	f := derive(t, `
site: {roof_snow_load: 1.6 kPa}
lumber: {boards: {species: cypress}}
platforms:
  - ledger: {actual: 45 mm x 190 mm, gap_to_house: 12 mm}
    decking: {material: wood, lumber: boards, thickness: 19 mm}
`)
	if s := f.Decking[0].Lumber.Species; s == nil || s.Value != "cypress" {
		t.Errorf("species of the boards %v", s)
	}
	want(t, "gap behind the ledger", f.Ledgers[0].GapToHouse, "12 mm")
	if load := f.Site.RoofSnowLoad; load == nil || load.Value != 1_600_000_000 {
		t.Errorf("snow of roofs %v", load)
	}
}
