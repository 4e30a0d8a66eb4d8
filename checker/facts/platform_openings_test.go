package facts_test

import (
	"fmt"
	"slices"
	"testing"
)

func TestOpeningsInAPlatform(t *testing.T) {
	const design = `
%s
platforms:
  - mark: A
    outline: {along_house: 16 ft, out_from_house: 12 ft}
    joists: {openings: [{%s}]}
    %s
guards: [{mark: G1, height: 36 in}]
`
	const (
		square = "what: tree, corners: [[3 ft, 6 ft], [6 ft, 6 ft], [6 ft, 9 ft], [3 ft, 9 ft]]"
		slot   = "corners: [[1000 mm, 1000 mm], [1300 mm, 1000 mm], [1300 mm, 2000 mm], [1000 mm, 2000 mm]]"
		fall   = "site: {grade_fall: {direction: out, slope: 1 in 12}}"
	)
	cases := []struct {
		name, site, opening, platform string
		called, gap, drop, guard      string
		told, covered                 bool
	}{
		{name: "nothing shown", opening: "what: tree", called: "tree opening"},
		{name: "two sides", opening: slot, called: "opening", gap: "300 mm"},
		{name: "its own drop", opening: square + ", drop: 5 ft", platform: "surface_above_grade: 4 ft", called: "tree opening", gap: "3 ft", drop: "5 ft"},
		{name: "height of the surface", opening: square, platform: "surface_above_grade: 1200 mm", called: "tree opening", gap: "3 ft", drop: "1200 mm"},
		{name: "falling ground", site: fall, opening: square, platform: "surface_above_grade: 4 ft", called: "tree opening", gap: "3 ft"},
		{
			name: "ground at a point", site: fall, opening: square, platform: "grade_at: [{at: [0 ft, 0 ft], below_surface: 4 ft 6 in}]",
			called: "tree opening", gap: "3 ft", drop: "5 ft 3 in", // 9 ft out on 1 in 12
		},
		{name: "guarded", opening: square + ", guard: G1", called: "tree opening", gap: "3 ft", guard: "G1", told: true},
		{name: "no guard", opening: square + ", guard: none", called: "tree opening", gap: "3 ft", told: true},
		{name: "covered", opening: square + ", covered: true", called: "tree opening", gap: "3 ft", covered: true},
		{name: "open", opening: square + ", covered: false", called: "tree opening", gap: "3 ft"},
	}
	for _, c := range cases {
		t.Run(c.name, func(t *testing.T) {
			o := derive(t, fmt.Sprintf(design, c.site, c.opening, c.platform)).PlatformOpenings[0]
			want(t, "gap", o.Gap, c.gap)
			want(t, "drop", o.Drop, c.drop)
			if o.Name != c.called || o.Guard != c.guard || o.Guarded != (c.guard != "") || o.Told != c.told || o.Covered != c.covered {
				t.Errorf("got %+v", o)
			}
		})
	}
}

// A guard round an opening stands over the drop below that, however low the
// edges are.
func TestGuardRoundAnOpening(t *testing.T) {
	f := derive(t, `
platforms:
  - outline: {along_house: 16 ft, out_from_house: 12 ft}
    joists: {openings: [{corners: [[3 ft, 6 ft], [6 ft, 6 ft], [6 ft, 9 ft]], drop: 40 in, guard: G1}]}
    edges: {front: {drop: 20 in, drop_within_36_in: 20 in, guard: G1}}
guards: [{mark: G1, height: 36 in}]
`)
	g := f.Guards[0]
	if !slices.Equal(g.Edges, []string{"front", "opening"}) {
		t.Errorf("stands on %q", g.Edges)
	}
	want(t, "drop", g.Drops[0].Drop, "40 in")
	want(t, "drop within 36 in", g.Drops[1].Drop, "40 in")
}
