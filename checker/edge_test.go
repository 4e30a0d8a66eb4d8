package checker_test

import (
	"fmt"
	"testing"

	"plumbrule/checker/result"
)

// edgeDeck is measured to the edge of its decking, and does not say how far
// that reaches past the frame. The beam lies 2 m behind the one near the edge.
const edgeDeck = `deck: 1
platforms:
  - mark: A
    support: freestanding
    measured_to: decking
    outline: {along_house: 4800 mm, out_from_house: %s}
    joists: {actual: 45 mm x 140 mm, direction: out_from_house, layout: on_center, spacing: 450 mm}
    beams:
      - {mark: B1, actual: 90 mm x 190 mm, plies: 1, from_house: %s}
      - {mark: B2, actual: 90 mm x 190 mm, plies: 1, from_house: 2500 mm}
`

// Joists that are inside up to the edge of the decking are so wherever the
// frame ends behind it; only those past it wait for the overhang. Along the
// house the frame ends with the outline, and what is outside there is so.
func TestCantileverToTheEdgeOfTheOutline(t *testing.T) {
	for _, c := range []struct {
		out, first string
		want       map[result.Outcome]int
	}{
		{"3833.33 mm", "500 mm", map[result.Outcome]int{result.Within: 2}},
		{"150 in", "500 mm", map[result.Outcome]int{result.Within: 2}},
		{"3833.34 mm", "500 mm", map[result.Outcome]int{result.Within: 1, result.NotShown: 1}},
		{"151 in", "500 mm", map[result.Outcome]int{result.Within: 1, result.NotShown: 1}},
		{"3 m", "1000 mm", map[result.Outcome]int{result.Within: 2}},
		{"3 m", "1000.01 mm", map[result.Outcome]int{result.Within: 1, result.Outside: 1}},
	} {
		text := fmt.Sprintf(edgeDeck, c.out, c.first)
		got := map[result.Outcome]int{}
		for _, r := range outcomes(t, "new-zealand", "joists/cantilever", "edge.deck.yaml", []byte(text)) {
			got[r.Outcome]++
			if r.Outcome == result.NotShown && r.Needs != "platforms[].decking.overhang" {
				t.Errorf("%s: asks for %s", c.out, r.Needs)
			}
		}
		if fmt.Sprint(got) != fmt.Sprint(c.want) {
			t.Errorf("%s out, first beam at %s: %v, want %v", c.out, c.first, got, c.want)
		}
	}
}
