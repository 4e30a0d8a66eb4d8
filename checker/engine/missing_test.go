package engine_test

import (
	"fmt"
	"strings"
	"testing"

	"plumbrule/checker/facts"
	"plumbrule/checker/measure"
)

// TestMissingIsWordedFromPlaceAndField has one check ask for fields at places.
func TestMissingIsWordedFromPlaceAndField(t *testing.T) {
	const text = `deck: 1
site: {live_load: 40 psf}
platforms:
  - mark: P1
    edges: {left: {guard: G1}}
    joists: {size: 2x8}
    outline: {along_house: 8 ft}
stairs:
  - {mark: ST1, see: S3, flights: [{risers: 3}, {tread_depth: 10 in}], handrail: {sides: 1}}
  - {handrail: {sides: 1}}
house: {openings: [{kind: door}, {kind: window, mark: 7}]}
`
	tests := []struct{ at, needs, want string }{
		{"/stairs/0", "stairs[].risers", "stair ST1: risers are not shown"},
		{"/stairs/0/handrail", "stairs[].handrail.height", "stair ST1: handrail height is not shown"},
		{"/stairs/1/handrail", "stairs[].handrail.clearance", "stair 2: handrail clearance is not shown"},
		{"/stairs/1", "stairs[].landing_bottom.slope_along", "stair 2: landing bottom slope along is not shown"},
		{"/stairs/0/flights/1", "stairs[].flights[].risers", "stair ST1: flight 2 risers are not shown"},
		{"/stairs/0", "stairs[].flights[].risers", "stair ST1: flight risers are not shown"},
		{"/platforms/0/edges/left", "platforms[].edges.<edge>.drop_within_36_in", "platform P1: edge left drop within 36 in is not shown"},
		{"/platforms/0/outline", "platforms[].edges.<edge>.drop", "platform P1: edge drop is not shown"},
		{"/platforms/0/joists", "platforms[].joists.lateral_restraint.at_beams", "platform P1: joists lateral restraint at beams is not shown"},
		{"/platforms/0/joists", "site.ground_snow_load", "platform P1: site ground snow load is not shown"},
		{"/site", "site.frost_depth", "site frost depth is not shown"},
		{"", "site.soil_bearing", "site soil bearing is not shown"},
		{"/house/openings/1", "house.openings[].clear_path_height", "opening 7: clear path height is not shown"},
		{"/house/openings/0", "house.openings[].swings_over_deck", "opening 1: swings over deck is not shown"},
		{"/house/openings/0", "house.openings[].clear_width", "opening 1: clear width is not shown"},
		{"/stairs/0/handrail", "stairs[].handrail.thickness", "stair ST1: handrail thickness is not shown"},
		{"/stairs/0/handrail", "stairs[].handrail.continuous", "stair ST1: handrail continuous is not shown"},
	}
	var rows strings.Builder
	for _, tt := range tests {
		fmt.Fprintf(&rows, "unknown contains {\"at\": [%q], \"needs\": %q} if count(input.guards) > 0\n\n", tt.at, tt.needs)
	}
	e, err := build(t, replace(openingFile, "unknown contains", rows.String()+"unknown contains"), imperialSet)
	if err != nil {
		t.Fatal(err)
	}
	f := &facts.Facts{Guards: []facts.Guard{{At: []string{"/deck"}, Opening: length(measure.Inch, "/deck")}}}
	said := map[string]string{}
	prints := map[string]string{}
	for _, r := range e.Evaluate(t.Context(), f, document(t, text), measure.Imperial) {
		if r.Needs == "" {
			continue
		}
		key := r.At[0] + " " + r.Needs
		said[key] = r.Message
		if other := prints[r.Fingerprint]; other != "" {
			t.Errorf("%s and %s have the same fingerprint", key, other)
		}
		prints[r.Fingerprint] = key
	}
	for _, tt := range tests {
		if got := said[tt.at+" "+tt.needs]; got != tt.want {
			t.Errorf("%s at %s: %q, want %q", tt.needs, tt.at, got, tt.want)
		}
	}
}
