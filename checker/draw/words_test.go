package draw_test

import (
	"strings"
	"testing"

	"plumbrule/checker/draw"
	"plumbrule/checker/result"
	"plumbrule/checker/wording"
)

// TestLabelsInWordsOfTheSets draws under sets that call things otherwise. Marks
// stay, also one that reads like a word, and so do labels for which two sets
// have two words.
func TestLabelsInWordsOfTheSets(t *testing.T) {
	islands := wording.New(map[string]string{"ledger": "wall plate", "beam": "bearer", "guard": "barrier", "stringer": "string", "center": "centre"})
	other := wording.New(map[string]string{"ledger": "wall plate", "beam": "girder"})
	told := func(wordings ...wording.Wording) string {
		report := run()
		report.Sets = nil
		for _, w := range wordings {
			report.Sets = append(report.Sets, result.Set{ID: "town", Title: "Rules of a town", Edition: "7", Wording: w})
		}
		var all []string
		for _, sheet := range sheets(t, fixture("alder-lane"), draw.Options{Report: report}) {
			all = append(all, lines(sheet), sheet.About)
			apart(t, "alder-lane", sheet)
		}
		return strings.ToLower(strings.Join(strings.Fields(strings.Join(all, " ")), " "))
	}
	for name, tt := range map[string]struct {
		said     string
		has, not []string
	}{
		"one": {told(islands), []string{
			"bearer b1,", "wall plate 2x10", "barrier g1, 36-1/2\" high", "cut strings", "bearer below the joists",
			"drops and barriers", "the house at the top: wall plate, joists, bearers", "treads, string,", "the top of the wall plate is drawn",
		}, []string{"beam", "ledger 2x10", "guard g1", "stringers", "center"}},
		"two that differ": {told(islands, other), []string{"beam b1,", "wall plate 2x10", "guard g1,", "cut stringers"}, []string{"bearer", "girder"}},
		"none":            {told(wording.Wording{}), []string{"beam b1,", "ledger 2x10", "guard g1,", "cut stringers"}, []string{"bearer", "wall plate"}},
	} {
		for _, want := range tt.has {
			if !strings.Contains(tt.said, want) {
				t.Errorf("%s: %q is not said", name, want)
			}
		}
		for _, word := range tt.not {
			if at := strings.Index(tt.said, word); at >= 0 {
				t.Errorf("%s: %q is said: %s", name, word, tt.said[max(at-40, 0):min(at+60, len(tt.said))])
			}
		}
	}
}
