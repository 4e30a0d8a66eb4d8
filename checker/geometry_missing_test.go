package checker_test

import (
	"context"
	"os"
	"slices"
	"strings"
	"testing"

	"plumbrule/checker"
	"plumbrule/checker/result"
)

// Beams, posts and footings that are described are judged, or said to be not
// shown, whatever the design leaves out of the geometry around them: their
// checks never turn to does not apply.
func TestStructureWithoutItsGeometry(t *testing.T) {
	plain, err := os.ReadFile("../fixtures/designs/alder-lane.deck.yaml")
	if err != nil {
		t.Fatal(err)
	}
	shallow := strings.Replace(string(plain), "diameter: 20 in, thickness: 10 in, depth: 36 in", "diameter: 12 in, thickness: 5 in, depth: 8 in", 1)
	_, joists, _ := strings.Cut(shallow, "    joists:\n")
	joists, _, _ = strings.Cut(joists, "    rim_joist:")
	joists = "    joists:\n" + joists
	apply := []string{
		"beams/span", "beams/cantilever", "beams/support", "posts/size", "posts/height", "posts/footing",
		"footings/area", "footings/thickness", "footings/depth", "ledger/fastener-spacing",
	}
	for name, change := range map[string][2]string{
		"as it is":            {"", ""},
		"frame not told":      {"    measured_to: frame\n", ""},
		"no outline":          {"    outline: {along_house: 16 ft, out_from_house: 12 ft}", "   "},
		"direction not shown": {"      direction: out_from_house\n", ""},
		"layout not shown":    {"      layout: equal\n", ""},
		"spacing not shown":   {"      max_spacing: 16 in\n", ""},
		"beam without place":  {"        from_house: 10 ft ", "       "},
		"posts without place": {"        posts_at: [1 ft 6 in, 8 ft, 14 ft 6 in]", "       "},
		"joists along house":  {"direction: out_from_house", "direction: along_house"},
		"no joists":           {joists, ""},
	} {
		t.Run(name, func(t *testing.T) {
			text := strings.Replace(shallow, change[0], change[1], 1)
			if text == shallow && change[0] != "" {
				t.Fatalf("the design says nothing of %q any more", change[0])
			}
			d := &checkerFor(t, "irc-2021").Check(context.Background(), checker.Input{Name: "a.deck.yaml", Data: []byte(text)}).Designs[0]
			if len(d.Problems) > 0 {
				t.Fatal(d.Problems)
			}
			outcomes := map[string][]result.Outcome{}
			for _, r := range append(d.Findings, d.Readings...) {
				outcomes[r.Check] = append(outcomes[r.Check], r.Outcome)
			}
			for _, check := range apply {
				for _, outcome := range outcomes[check] {
					if outcome == result.DoesNotApply || outcome == result.CouldNotRun {
						t.Errorf("%s: %s", check, outcome)
					}
				}
				if len(outcomes[check]) == 0 {
					t.Errorf("%s says nothing", check)
				}
			}
			for _, check := range []string{"footings/thickness", "footings/depth"} {
				if !slices.Contains(outcomes[check], result.Outside) {
					t.Errorf("%s of a footing that is too small: %v", check, outcomes[check])
				}
			}
		})
	}
}
