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
