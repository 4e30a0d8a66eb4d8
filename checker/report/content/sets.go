package content

import (
	"strings"

	"plumbrule/checker/result"
)

// Edition gives a set's title, edition and publisher, as far as known, and the
// set that it amends.
func Edition(set *result.Set) string {
	var words []string
	if set.Title != "" {
		words = append(words, set.Title)
	}
	if set.Edition != "" {
		words = append(words, "edition "+set.Edition)
	}
	if set.Publisher != "" {
		words = append(words, set.Publisher)
	}
	if set.Extends != "" {
		words = append(words, "amends "+set.Extends)
	}
	return strings.Join(words, ", ")
}

// SetNames gives the sets with their editions: "irc-2021 (edition 2021)". It is
// "none" where there are none.
func SetNames(sets []result.Set) string {
	names := make([]string, len(sets))
	for i := range sets {
		names[i] = sets[i].ID
		if edition := sets[i].Edition; edition != "" {
			names[i] += " (edition " + edition + ")"
		}
	}
	if len(names) == 0 {
		return "none"
	}
	return strings.Join(names, ", ")
}
