package facts_test

import (
	"fmt"
	"testing"
)

// A beam carries where its middle lies below the frame, which may end up to 2 in
// behind a fascia and 12 in behind boards that end at 12 ft.
func TestSupportBehindTheOutline(t *testing.T) {
	const (
		edge = "from_house: 11 ft 10-1/2 in"
		deep = "{along_house: 16 ft, out_from_house: 12 ft}"
	)
	cases := map[string]struct {
		outline, shown, outer string
		open                  bool
	}{
		"what it was measured to":       {deep, "", edge, true},
		"frame":                         {deep, "measured_to: frame", edge, false},
		"frame behind a fascia":         {deep, "measured_to: frame, fascia: {material: wood}", edge, false},
		"boards":                        {deep, "measured_to: decking", edge, true},
		"boards of 1 in":                {deep, "measured_to: decking, decking: {material: wood, overhang: 1 in}", edge, false},
		"fascia":                        {deep, "measured_to: fascia", edge, true},
		"fascia past the beam":          {deep, "measured_to: fascia", "from_house: 11 ft 9-63/64 in", false},
		"boards past a fascia":          {deep, "measured_to: decking, fascia: {material: wood}, decking: {material: wood, overhang: 1 in}", "from_house: 11 ft 8-63/64 in", false},
		"boards far past a fascia":      {deep, "measured_to: decking, fascia: {material: wood}, decking: {material: wood, overhang: 1 in}", "from_house: 11 ft 9-1/64 in", true},
		"far in":                        {deep, "", "from_house: 10 ft", false},
		"a fascia and boards in":        {deep, "", "from_house: 10 ft 9-63/64 in", false},
		"less than that":                {deep, "", "from_house: 10 ft 10-1/64 in", true},
		"begins where joists may start": {deep, "", "from_house: 10 ft, start: 1/2 in", false},
		"ends where a joist may lie":    {deep, "measured_to: decking", "from_house: 10 ft, end: 15 ft 11-1/2 in", false},
		"no room for the frame":         {deep, "measured_to: decking, decking: {material: wood, overhang: 8 ft}", "from_house: 3 ft", true},
	}
	for name, c := range cases {
		t.Run(name, func(t *testing.T) {
			shown := ""
			if c.shown != "" {
				shown = ", " + c.shown
			}
			f := derive(t, fmt.Sprintf(`
platforms:
  - {mark: A, support: freestanding, outline: %s%s,
     joists: {size: 2x10, direction: out_from_house, layout: on_center, spacing: 16 in},
     beams: [{mark: B1, size: 2x10, plies: 2, kind: dropped, from_house: 6 ft}, {mark: B2, size: 2x10, plies: 2, kind: dropped, %s}]}
`, c.outline, shown, c.outer))
			if len(f.Unsupported) > 0 {
				t.Fatalf("%d joists are lost below the outline", f.Unsupported[0].Count)
			}
			if got := f.Joists[0].SupportOpen; got != c.open {
				t.Errorf("open %t, want %t", got, c.open)
			}
		})
	}
}
