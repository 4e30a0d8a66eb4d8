package content_test

import (
	"testing"

	"plumbrule/checker/report/content"
	"plumbrule/checker/result"
)

// What else a change clears is named once by check and place, whatever the
// number of sets, and in a report of items by the number of the item.
func TestTried(t *testing.T) {
	own := result.Result{Check: "joists/span", Set: "irc-2021", At: []string{"/platforms/0/joists/size"}}
	remedy := result.Remedy{Text: "joists 2x10 instead of 2x8", Clears: []result.Cleared{
		{Check: "joists/span", Set: "irc-2021", At: "/platforms/0/joists/size", Mark: "A"},
		{Check: "joists/span", Set: "common-practice", At: "/platforms/0/joists/size", Mark: "A"},
		{Check: "joists/cantilever", Set: "irc-2021", At: "/platforms/0/beams/0/from_house", Mark: "B1"},
		{Check: "joists/cantilever", Set: "common-practice", At: "/platforms/0/beams/0/from_house", Mark: "B1"},
		{Check: "ledger/size", Set: "irc-2021", At: "/platforms/0/ledger/size"},
		{Check: "office/whole", Set: "office", At: ""},
	}}
	const want = "joists 2x10 instead of 2x8; this also clears: joists/cantilever (B1 from_house); ledger/size (size); office/whole (the file)"
	if got := content.Tried(&own, &remedy); got != want {
		t.Errorf("got  %s\nwant %s", got, want)
	}
	items := map[string]int{"joists/span": 3, "joists/cantilever": 7, "ledger/size": 3}
	const numbered = "joists 2x10 instead of 2x8; this also clears: item 7, joists/cantilever (B1 from_house); office/whole (the file)"
	if got := content.TriedIn(&own, &remedy, func(c *result.Cleared) int { return items[c.Check] }); got != numbered {
		t.Errorf("got  %s\nwant %s", got, numbered)
	}
	alone := result.Remedy{Text: "a row of blocking at 4 ft", Clears: remedy.Clears[:2]}
	if got := content.Tried(&own, &alone); got != alone.Text {
		t.Errorf("got %s", got)
	}
}
