package remedy

import (
	"testing"

	"plumbrule/checker/mending"
)

// Every kind that a check may name is one that is made somewhere, and says what
// it does; another is none.
func TestEveryKindIsMade(t *testing.T) {
	seen := map[mending.Kind]bool{}
	for _, d := range mending.Kinds() {
		if len(moves(d.Kind)) == 0 || d.About == "" || d.About != d.Kind.About() || seen[d.Kind] {
			t.Errorf("%s is not made, says nothing or stands twice", d.Kind)
		}
		seen[d.Kind] = true
	}
	if moves("hope") != nil || mending.Kind("hope").About() != "" {
		t.Error("there is a kind that there is not")
	}
	if len(mending.Names()) != len(seen) {
		t.Errorf("%d names for %d kinds", len(mending.Names()), len(seen))
	}
}
