package catalog

import (
	"errors"
	"regexp"
	"slices"
	"strings"

	"github.com/agnivade/levenshtein"

	"plumbrule/checker/source"
)

var snakeCase = regexp.MustCompile(`^[a-z][a-z0-9_]*$`)

func isName(s string) bool { return snakeCase.MatchString(s) }

// list prints names in order, cut at eight.
func list(names []string) string {
	sorted := slices.Sorted(slices.Values(names))
	switch {
	case len(sorted) == 0:
		return "none"
	case len(sorted) > 8:
		sorted = append(sorted[:8], "…")
	}
	return strings.Join(sorted, ", ")
}

// Nearest gives the candidate spelled most like the word, the first in order
// among equals, or "" where none comes near.
func Nearest(word string, candidates []string) string {
	best, distance := "", 2+len(word)/4
	for _, candidate := range slices.Sorted(slices.Values(candidates)) {
		if d := levenshtein.ComputeDistance(word, candidate); d < distance && d < len(candidate) {
			best, distance = candidate, d
		}
	}
	return best
}

// nearestOf words a suggestion to stand behind a message.
func nearestOf(word string, candidates []string) string {
	if near := Nearest(word, candidates); near != "" {
		return "; did you mean " + near + "?"
	}
	return ""
}

// asError gives an error of the source package, or wraps another as one
// without a place.
func asError(file string, err error) *source.Error {
	var e *source.Error
	if errors.As(err, &e) {
		return e
	}
	return &source.Error{Name: file, Message: err.Error()}
}
