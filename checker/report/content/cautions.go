package content

import (
	"plumbrule/checker/caution"
	"plumbrule/checker/result"
	"plumbrule/checker/wording"
)

// Cautions gives the remarks that stand in every report, whatever was found, in
// the words of its sets.
func Cautions(sets []result.Set) []string {
	lines := caution.Closing()
	said := make([]string, len(lines))
	for i, line := range lines {
		said[i] = line.In(wordings(sets)...)
	}
	return said
}

// Caution is the one line left of the cautions where a report has room for no
// more.
func Caution(sets []result.Set) string { return caution.Short().In(wordings(sets)...) }

// Decides says who decides, in the words of the sets.
func Decides(sets []result.Set) string { return caution.Decides().In(wordings(sets)...) }

// Agreed says terms in the words of the sets where all of them say it alike, and
// as they are where they do not: what stands once for all sets has room for one
// word.
func Agreed(sets []result.Set) func(term string) string {
	return func(term string) string {
		said := term
		for i := range sets {
			way := sets[i].Wording.Say(term)
			if i > 0 && way != said {
				return term
			}
			said = way
		}
		return said
	}
}

func wordings(sets []result.Set) []wording.Wording {
	list := make([]wording.Wording, len(sets))
	for i := range sets {
		list[i] = sets[i].Wording
	}
	return list
}

// NothingChecked is all that stands in place of rule sets and cautions on a
// terminal where not one file could be read: the list would drown the reasons.
func NothingChecked() string {
	return "nothing was checked, which says nothing of the deck; the authority at the place and licensed practice decide"
}
