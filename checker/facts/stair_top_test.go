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
		{"covered", "{covered: true, corners: [[8 ft, 5 ft], [9 ft, 5 ft], [9 ft, 8 ft], [8 ft, 8 ft]]}", front, "6 ft", "12 ft"},
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
