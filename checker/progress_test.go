package checker_test

import (
	"context"
	"slices"
	"testing"

	"plumbrule/checker"
)

// Designs are done in any order and counted in one. The callback writes without
// a lock of its own, which the race detector would notice.
func TestProgressCountsEveryDesign(t *testing.T) {
	var told []int
	c, err := checker.New(checker.Options{Sets: []string{"us-nj-light"}, Progress: func(done int) { told = append(told, done) }})
	if err != nil {
		t.Fatal(err)
	}
	broken := checker.Input{Name: "broken.deck.yaml", Data: []byte("deck: [")}
	design := checker.Input{Name: "steep.deck.yaml", Data: []byte(steepDeck)}
	c.Check(context.Background(), design, broken, design, broken, design)
	if want := []int{1, 2, 3, 4, 5}; !slices.Equal(told, want) {
		t.Errorf("told %v, want %v", told, want)
	}
}

// Changes that are tried are counted from 1, for the design that they are tried
// on, and none where nothing is tried.
func TestTrialsAreTold(t *testing.T) {
	for _, remedies := range []bool{true, false} {
		told := map[int][]int{}
		c, err := checker.New(checker.Options{Sets: []string{"irc-2021"}, Remedies: remedies, Trying: func(design, done, most int) {
			told[design] = append(told[design], done)
			if done > most {
				t.Errorf("%d of at most %d", done, most)
			}
		}})
		if err != nil {
			t.Fatal(err)
		}
		broken := checker.Input{Name: "broken.deck.yaml", Data: []byte("deck: [")}
		high := checker.Input{Name: "high.deck.yaml", Data: []byte("deck: 1\nstairs: [{mark: ST1, handrail: {sides: 1, height: 39 in}}]\n")}
		c.Check(context.Background(), broken, high)
		if got := told[2]; len(told[1]) > 0 || remedies != (len(got) > 0 && got[0] == 1 && got[len(got)-1] == len(got)) {
			t.Errorf("remedies %v: told %v", remedies, told)
		}
	}
}
