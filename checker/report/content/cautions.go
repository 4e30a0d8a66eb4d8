package content

import (
	"plumbrule/checker/caution"
	"plumbrule/checker/result"
	"plumbrule/checker/wording"
)

// Cautions gives the remarks that stand in every report, whatever was found, in
// the words of its sets: what these say differently stands once in the words of
// each.
func Cautions(sets []result.Set) []string { return caution.Said(caution.Closing(), wordings(sets)) }

// Caution gives what is left of the cautions where a report has room for no
// more: a line, or one for each way in which the sets say it.
func Caution(sets []result.Set) []string {
	return caution.Said([]caution.Line{caution.Short()}, wordings(sets))
}

// Decides says who decides, in the words of the sets.
func Decides(sets []result.Set) []string {
	return caution.Said([]caution.Line{caution.Decides()}, wordings(sets))
}

func wordings(sets []result.Set) []wording.Wording {
	list := make([]wording.Wording, len(sets))
	for i := range sets {
		list[i] = sets[i].Wording
	}
	return list
}
