package schema

import (
	"fmt"
	"slices"
	"strconv"
	"strings"
	"unicode"

	"github.com/agnivade/levenshtein"

	"plumbrule/checker/source"
)

const (
	maxList = 8  // how many choices a message lists
	maxText = 60 // how many characters of a wrong text a message repeats
)

// shown puts a text between quotes, cut if it is long. Inch marks stay readable: they are not escaped.
func shown(text string) string {
	if runes := []rune(text); len(runes) > maxText {
		text = string(runes[:maxText-1]) + "…"
	}
	if strings.ContainsFunc(text, func(r rune) bool { return !unicode.IsPrint(r) }) {
		return strconv.Quote(text)
	}
	if strings.Contains(text, `"`) {
		return "`" + text + "`"
	}
	return `"` + text + `"`
}

// list joins choices and says how many it left out.
func list(choices []string) string {
	shownChoices := choices[:min(len(choices), maxList)]
	text := strings.Join(shownChoices, ", ")
	if more := len(choices) - len(shownChoices); more > 0 {
		text += fmt.Sprintf(" and %d more", more)
	}
	return text
}

// nearest gives the choice that a misspelt word most probably is, or "" where none is near. Case, spaces, dashes and
// underscores do not count.
func nearest(word string, choices []string) string {
	word = folded(word)
	tolerated := min(3, len(word)/3) // any two short words are near each other
	best, least := "", tolerated+1
	for _, choice := range choices {
		if d := levenshtein.ComputeDistance(word, folded(choice)); d < least {
			best, least = choice, d
		}
	}
	return best
}

// folded reduces a word to what matters in comparing: small letters, with one underscore for each gap, and without the
// s of a plural.
func folded(word string) string {
	word = strings.Join(strings.FieldsFunc(strings.ToLower(word), func(r rune) bool {
		return r == ' ' || r == '-' || r == '_'
	}), "_")
	if len(word) > 3 && !strings.HasSuffix(word, "ss") {
		word = strings.TrimSuffix(word, "s")
	}
	return word
}

// found says what stands in the document.
func found(n *source.Node) string {
	switch n.Kind {
	case source.Object:
		return "keys with values"
	case source.Array:
		return "a list"
	case source.String:
		return "the text " + shown(n.Text)
	case source.Number:
		return "the number " + n.Text
	case source.Bool:
		return n.Text
	}
	return "nothing"
}

// name is what to call a value in a message: its key where it has one.
func name(n *source.Node) string {
	if n.Parent != nil {
		for _, m := range n.Parent.Members {
			if m.Value == n {
				return shown(m.Key)
			}
		}
		return found(n)
	}
	return "the document"
}

// titled is what to call the thing that a schema object describes.
func titled(s map[string]any) string {
	if title, _ := s["title"].(string); title != "" {
		return "the " + title
	}
	return "this place"
}

// kinds gives the JSON types that a schema object accepts.
func kinds(s map[string]any) map[string]bool {
	wants := make(map[string]bool)
	if kind, ok := s["type"].(string); ok {
		wants[kind] = true
	}
	for _, kind := range texts(s["type"]) {
		wants[kind] = true
	}
	return wants
}

func atLeast(keyword string) string {
	if strings.HasPrefix(keyword, "min") {
		return "at least "
	}
	return "at most "
}

// orWords adds the words that may stand instead.
func orWords(text string, words []string) string {
	if len(words) == 0 {
		return text
	}
	return text + " or " + list(words)
}

// sentences puts a guess before a list of choices.
func sentences(guess, choices string) string {
	switch {
	case guess == "":
		return choices
	case strings.HasSuffix(guess, "?"):
		return guess + " " + choices
	}
	return guess + "; " + choices
}

func orElse(text, otherwise string) string {
	if text == "" {
		return otherwise
	}
	return text
}

func isNumber(text string) bool {
	_, err := strconv.ParseFloat(text, 64)
	return err == nil
}

func sortedKeys(m map[string]any) []string {
	keys := make([]string, 0, len(m))
	for key := range m {
		keys = append(keys, key)
	}
	slices.Sort(keys)
	return keys
}
