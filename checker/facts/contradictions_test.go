package facts_test

import (
	"strings"
	"testing"

	"plumbrule/checker/facts"
	"plumbrule/checker/model"
	"plumbrule/checker/source"
)

// faults reads a design and gives the problems that it is refused for.
func faults(t *testing.T, design string) []facts.Problem {
	t.Helper()
	doc, err := source.Read("test.deck.yaml", []byte("deck: 1\n"+design))
	if err != nil {
		t.Fatal(err)
	}
	deck, problems := model.Read(doc)
	for _, p := range problems {
		t.Fatalf("%v: %s", p.Node.Span.Start, p.Message)
	}
	derived, list := facts.Derive(deck)
	if (derived == nil) != (len(list) > 0) {
		t.Errorf("derived: %v, with %d problems", derived != nil, len(list))
	}
	return list
}

// Each pair of designs differs in one value: as it stands first they agree with
// themselves, as it stands second they do not.
func TestContradictions(t *testing.T) {
	const (
		plan  = "outline: {along_house: 16 ft, out_from_house: 12 ft}"
		beam  = "platforms:\n  - {" + plan + ", beams: [{mark: B1, "
		stair = "platforms:\n  - {" + plan + "}\nstairs:\n  - {"
		joist = "platforms:\n  - {" + plan + ", joists: {size: 2x8, direction: out_from_house, "
	)
	for _, c := range []struct{ design, agrees, not, at, message string }{
		{"platforms:\n  - {support: VALUE, ledger: {size: 2x8}}\n", "ledger", "freestanding", "/platforms/0/ledger", "the platform is said to be freestanding, and has a ledger"},
		{"platforms:\n  - {lateral_devices: {count: VALUE, positions: [1 ft, 15 ft]}}\n", "2", "4", "/platforms/0/lateral_devices/count", "4 lateral devices are counted, and places given for 2"},
		{joist + "layout: on_center, spacing: VALUE}}\n", "16 in", "0.01 in", "/platforms/0/joists/spacing", "joists cannot be laid out at this spacing: 19050 bays are more than the 10000 that are worked out"},
		{beam + "from_house: VALUE}]}\n", "10 ft", "13 ft", "/platforms/0/beams/0/from_house", "beam \"B1\" lies outside the outline"},
		{beam + "line: [[2 ft, VALUE], [14 ft, VALUE]]}]}\n", "10 ft", "13 ft", "/platforms/0/beams/0/line", "beam \"B1\" lies outside the outline"},
		{beam + "from_house: 10 ft, end: VALUE}]}\n", "16 ft", "17 ft", "/platforms/0/beams/0/end", "the beam ends beyond the outline, which ends at 16'-0\" along it"},
		{beam + "from_house: 10 ft, end: 8 ft, start: VALUE}]}\n", "2 ft", "8 ft", "/platforms/0/beams/0/start", "the beam starts where it has ended already"},
		{beam + "from_house: 10 ft, posts_at: [1 ft, VALUE]}]}\n", "15 ft", "17 ft", "/platforms/0/beams/0/posts_at/1", "this post stands beyond beam \"B1\", which runs from 0\" to 16'-0\""},
		{beam + "from_house: 10 ft, posts_at: [1 ft, VALUE]}]}\n", "15 ft", "1 ft", "/platforms/0/beams/0/posts_at/1", "two posts of beam \"B1\" stand at 12\""},
		{beam + "from_house: 10 ft, posts_at: [1 ft, 15 ft]}], posts: {each: [{beam: B1, at: VALUE}]}}\n", "15 ft", "14 ft", "/platforms/0/posts/each/0/at", "beam \"B1\" has no post at 14'-0\""},
		{stair + "risers: VALUE}\n", "12", "10001", "/stairs/0/risers", "10001 risers are more than any stair has"},
		{stair + "from: {edge: VALUE, at: 1 ft}}\n", "front", "house", "/stairs/0/from/edge", "edge \"house\" lies against the house: no stair leaves there"},
		{stair + "width: 3 ft, from: {edge: front, at: VALUE}}\n", "13 ft", "14 ft", "/stairs/0/from/at", "a stair 36\" wide does not fit here: edge \"front\" is 16'-0\" long"},
		{"platforms:\n  - {outline: {corners: VALUE}}\n", "[[0 ft, 0 ft], [8 ft, 0 ft], [8 ft, 8 ft]]", "[[0 ft, 0 ft], [8 ft, 8 ft], [8 ft, 0 ft]]", "/platforms/0/outline", "the outline runs the wrong way round: list it from the house's left end along the house, then out"},
	} {
		if list := faults(t, strings.ReplaceAll(c.design, "VALUE", c.agrees)); len(list) > 0 {
			t.Errorf("%s at %s: %s", c.agrees, list[0].At, list[0].Message)
		}
		list := faults(t, strings.ReplaceAll(c.design, "VALUE", c.not))
		if len(list) != 1 || list[0].At != c.at || list[0].Message != c.message {
			t.Errorf("%s: %+v, want %s at %s", c.not, list, c.message, c.at)
		}
	}
}
