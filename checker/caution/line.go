package caution

import (
	"slices"
	"strings"

	"plumbrule/checker/wording"
)

// Line is a remark, its terms in braces.
type Line string

// String gives the remark in the words of the program.
func (l Line) String() string {
	said, _ := l.In(wording.Wording{})
	return said
}

// In gives the remark with its terms in the words of a wording, and the phrases
// that were replaced.
func (l Line) In(w wording.Wording) (said string, phrases []string) {
	var out strings.Builder
	rest := string(l)
	for {
		plain, behind, ok := strings.Cut(rest, "{")
		out.WriteString(plain)
		if !ok {
			return out.String(), phrases
		}
		var term string
		term, rest, _ = strings.Cut(behind, "}")
		worded, replaced := w.Replace(term)
		out.WriteString(worded)
		phrases = append(phrases, replaced...)
	}
}

// Said gives each of some remarks in all of the wordings: in the order of the
// remarks, and each distinct way of saying one once, in the order of the
// wordings. Without a wording they stand in the words of the program, so that
// none is ever left out.
func Said(lines []Line, wordings []wording.Wording) []string {
	if len(wordings) == 0 {
		wordings = []wording.Wording{{}}
	}
	var all []string
	for _, line := range lines {
		var ways []string
		for _, w := range wordings {
			if said, _ := line.In(w); !slices.Contains(ways, said) {
				ways = append(ways, said)
			}
		}
		all = append(all, ways...)
	}
	return all
}
