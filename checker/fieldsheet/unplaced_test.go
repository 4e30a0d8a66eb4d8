package fieldsheet_test

import (
	"math"
	"strings"
	"testing"
)

// A beam has its place whether or not joists can be laid out; what it carries,
// and so its posts, has not.
func TestBeamsBelowJoistsOfUnknownLayout(t *testing.T) {
	sheet := inline(t, `
platforms:
  - support: freestanding
    measured_to: frame
    outline: {along_house: 16 ft, out_from_house: 12 ft}
    joists: {size: 2x8, direction: out_from_house}
    beams:
      - {mark: B1, size: 2x10, plies: 2, kind: dropped, from_house: 10 ft, posts_at: [1 ft, 15 ft]}
`)
	near(t, sheet, "Strings > B1 start > Along, from left end", 0, 6)
	near(t, sheet, "Strings > B1 end > Along, from left end", 192, 6)
	near(t, sheet, "Strings > B1 end > Out from the house", 120, 6)
	near(t, sheet, "Cut lengths > Ledger, rims, beams > beam B1, each ply, 2x10 > Length", 192, 6)
	found := false
	for _, m := range sheet.NotShown {
		found = found || m.What == "height of posts" && m.Needs == "platforms[].joists.spacing"
	}
	if !found {
		t.Errorf("not shown: %v", sheet.NotShown)
	}
}

// Posts whose beam or whose places are not shown are not counted as none.
func TestPostsWithoutPlace(t *testing.T) {
	for beam, needs := range map[string]string{
		"{mark: B1, size: 2x10, plies: 2, kind: dropped, posts_at: [1 ft, 15 ft]}":                  "platforms[].beams",
		"{mark: B1, size: 2x10, plies: 2, kind: dropped, from_house: 10 ft}":                        "platforms[].beams[].posts_at",
		"{mark: B1, size: 2x10, from_house: 10 ft, posts_at: [1 ft]}, {mark: B2, posts_at: [1 ft]}": "platforms[].beams[].from_house",
	} {
		sheet := inline(t, `
platforms:
  - support: freestanding
    measured_to: frame
    outline: {along_house: 16 ft, out_from_house: 12 ft}
    joists: {size: 2x8, direction: out_from_house, layout: on_center, spacing: 16 in}
    posts: {size: 6x6}
    beams: [`+beam+`]
`)
		told := false
		for _, m := range sheet.NotShown {
			told = told || strings.HasSuffix(m.What, "posts and footings") && m.Needs == needs
		}
		if !told {
			t.Errorf("%s: not shown are %v", beam, sheet.NotShown)
		}
		open := false
		for name, n := range numbers(t, sheet) {
			open = open || strings.HasPrefix(name, "Counts > posts") && math.IsNaN(n)
		}
		if !open {
			t.Errorf("%s: the number of posts is given as whole", beam)
		}
	}
}
