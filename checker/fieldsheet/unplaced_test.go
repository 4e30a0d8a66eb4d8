package fieldsheet_test

import "testing"

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
