package caution

import (
	"slices"
	"strings"

	"plumbrule/checker/wording"
)

// Line is a remark, its terms in braces.
type Line string

// In gives the remark in the words of wordings. A term that they say
// differently stands in the words of each, in their order: "stories / storeys".
// Without a wording it stands in the words of the program.
func (l Line) In(wordings ...wording.Wording) string {
	if len(wordings) == 0 {
		wordings = []wording.Wording{{}}
	}
	return l.each(func(term string) string {
		var ways []string
		for _, w := range wordings {
			if said := w.Say(term); !slices.Contains(ways, said) {
				ways = append(ways, said)
			}
		}
		return strings.Join(ways, " / ")
	})
}

// Replaced gives the phrases that a wording replaces in the remark.
func (l Line) Replaced(w wording.Wording) []string {
	var phrases []string
	l.each(func(term string) string {
		said, replaced := w.Replace(term)
		phrases = append(phrases, replaced...)
		return said
	})
	return phrases
}

// each gives the remark with its terms said by a function.
func (l Line) each(say func(term string) string) string {
	var out strings.Builder
	rest := string(l)
	for {
		plain, behind, ok := strings.Cut(rest, "{")
		out.WriteString(plain)
		if !ok {
			return out.String()
		}
		var term string
		term, rest, _ = strings.Cut(behind, "}")
		out.WriteString(say(term))
	}
}
