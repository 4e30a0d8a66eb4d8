package facts_test

import (
	"fmt"
	"testing"
)

// A platform of 16 ft by 12 ft with one opening, and a stair 3 ft wide: from the
// front at 6 ft it stands before 7 ft to 10 ft along the house, from the left at
// 3 ft before 6 ft to 9 ft out from it.
func TestDepthBehindAStairStopsAtAnOpening(t *testing.T) {
	const design = `
platforms:
  - mark: A
    outline: {along_house: 16 ft, out_from_house: 12 ft}
    joists: {openings: [%s]}
stairs:
  - {from: {platform: A, edge: %s, at: %s}, width: 3 ft}
`
	const front, left = "front", "left"
	cases := []struct{ name, openings, edge, at, depth string }{
		{"none", "", front, "6 ft", "12 ft"},
		{"in the way", "{corners: [[8 ft, 5 ft], [9 ft, 5 ft], [9 ft, 8 ft], [8 ft, 8 ft]]}", front, "6 ft", "4 ft"},
		{"wider than the stair", "{corners: [[5 ft, 5 ft], [12 ft, 5 ft], [12 ft, 8 ft], [5 ft, 8 ft]]}", front, "6 ft", "4 ft"},
		{"as wide as the stair", "{corners: [[7 ft, 5 ft], [10 ft, 5 ft], [10 ft, 8 ft], [7 ft, 8 ft]]}", front, "6 ft", "4 ft"},
		{"beside it", "{corners: [[5 ft, 5 ft], [7 ft, 5 ft], [7 ft, 8 ft], [5 ft, 8 ft]]}", front, "6 ft", "12 ft"},
		{"a sixteenth within its side", "{corners: [[5 ft, 5 ft], [7 ft 1/16 in, 5 ft], [7 ft 1/16 in, 8 ft], [5 ft, 8 ft]]}", front, "6 ft", "4 ft"},
		{"beside it in millimeters", "{corners: [[3048 mm, 5 ft], [4000 mm, 5 ft], [4000 mm, 8 ft], [3048 mm, 8 ft]]}", front, "6 ft", "12 ft"},
		{"a millimeter within its side", "{corners: [[3047 mm, 5 ft], [4000 mm, 5 ft], [4000 mm, 8 ft], [3047 mm, 8 ft]]}", front, "6 ft", "4 ft"},
		{
			"the nearer of two", "{corners: [[8 ft, 2 ft], [9 ft, 2 ft], [9 ft, 3 ft], [8 ft, 3 ft]]}, " +
				"{corners: [[7 ft, 6 ft], [8 ft, 6 ft], [8 ft, 9 ft], [7 ft, 9 ft]]}", front, "6 ft", "3 ft",
		},
		{"a corner of it", "{corners: [[8 ft, 9 ft], [6 ft, 7 ft], [8 ft, 5 ft], [10 ft, 7 ft]]}", front, "6 ft", "3 ft"},
		{"cut at the side", "{corners: [[6 ft, 9 ft], [4 ft, 7 ft], [6 ft, 5 ft], [8 ft, 7 ft]]}", front, "6 ft", "4 ft"},
		{"from another side", "{corners: [[4 ft, 5 ft], [6 ft, 5 ft], [6 ft, 8 ft], [4 ft, 8 ft]]}", left, "3 ft", "4 ft"},
		{"beside it from another side", "{corners: [[4 ft, 3 ft], [6 ft, 3 ft], [6 ft, 6 ft], [4 ft, 6 ft]]}", left, "3 ft", "16 ft"},
	}
	for _, c := range cases {
		t.Run(c.name, func(t *testing.T) {
			f := derive(t, fmt.Sprintf(design, c.openings, c.edge, c.at))
			want(t, "depth", f.Landings[0].Depth, c.depth)
		})
	}
}

// One height stated for the whole surface is the drop at an edge of which
// nothing is shown, unless ground shown elsewhere tells otherwise.
func TestDropFromTheHeightOfTheSurface(t *testing.T) {
	const design = `
%s
platforms:
  - {mark: A, outline: {along_house: 16 ft, out_from_house: 12 ft}, %s}
`
	cases := []struct {
		name, site, fields, drop string
		level                    bool
	}{
		{"nothing stated", "", "support: freestanding", "", false},
		{"stated", "", "surface_above_grade: 300 mm", "300 mm", true},
		{"its own drop", "", "surface_above_grade: 12 in, edges: {right: {drop: 10 in}}", "10 in", false},
		{"its own drop close by", "", "surface_above_grade: 12 in, edges: {right: {drop_within_36_in: 10 in}}", "", false},
		{"as high elsewhere", "", "surface_above_grade: 12 in, edges: {front: {drop: 12 in}}", "12 in", true},
		{"higher elsewhere", "", "surface_above_grade: 12 in, edges: {front: {drop: 12-1/64 in}}", "", false},
		{"higher elsewhere in millimeters", "", "surface_above_grade: 300 mm, edges: {front: {drop: 300.01 mm}}", "", false},
		{"higher further out", "", "surface_above_grade: 300 mm, edges: {front: {drop_within_1200_mm: 310 mm}}", "", false},
		{"ground at points", "", "surface_above_grade: 12 in, grade_at: [{at: [0 ft, 0 ft], below_surface: 12 in}]", "", false},
		{"falling ground", "site: {grade_fall: {direction: out, slope: 1 in 12}}", "surface_above_grade: 12 in", "", false},
		{"level ground", "site: {grade_fall: {direction: out, slope: 0 in 12}}", "surface_above_grade: 12 in", "12 in", true},
	}
	for _, c := range cases {
		t.Run(c.name, func(t *testing.T) {
			for _, e := range derive(t, fmt.Sprintf(design, c.site, c.fields)).Edges {
				if e.Name == "house" {
					want(t, "house", e.Drops[0].Drop, "")
				}
				if e.Name != "right" {
					continue
				}
				want(t, "right", e.Drops[0].Drop, c.drop)
				if e.Drops[0].Level != c.level {
					t.Errorf("taken from the whole surface: %t", e.Drops[0].Level)
				}
			}
		})
	}
}
