package measure

import (
	"strconv"
	"strings"
	"unicode"
)

// SpellingError reports a text that is not a quantity of the kind expected.
type SpellingError struct {
	Kind    string // what was expected: length, pressure, force, angle, slope, size
	Text    string // as typed, cut if it is very long
	Problem string // what is wrong with it
	Meant   string // the spelling, or the choice of spellings, probably meant; empty if unknown
}

// Error gives kind, text, problem and the spelling probably meant in one line.
func (e *SpellingError) Error() string {
	line := e.Kind + " " + quoted(e.Text) + ": " + e.Problem
	if e.Meant != "" {
		line += "; write " + e.Meant
	}
	return line
}

// reason tells a text of the wrong shape from one whose shape is right and whose value is not. The patterns describe
// the shape only.
type reason uint8

const (
	wrongShape reason = iota
	outOfRange
	zeroDenominator
	needsCarry // a part is so large that it belongs into the part before it
)

// fault is a refusal before it is known to which text it belongs.
type fault struct {
	reason  reason
	problem string
	try     []string // repairs worth offering, of which only those that can be read are offered
}

// noUnit is the problem of a number alone, for which SuggestLength looks.
const noUnit = "no unit"

func misshapen(problem string, try ...string) *fault {
	return &fault{reason: wrongShape, problem: problem, try: try}
}

// read folds the typography of a text, hands it to a reader and makes a SpellingError of its refusal. The reader is
// asked again about every repair, so that no hint is printed that would be refused in its turn.
func read[T any](kind, text string, reader func(folded string) (T, *fault)) (T, error) {
	folded, wrong := fold(text)
	if wrong == nil {
		var value T
		if value, wrong = reader(folded); wrong == nil {
			return value, nil
		}
	}
	var offers []string
	for _, try := range wrong.try {
		if _, again := reader(try); again == nil {
			offers = append(offers, try)
		}
	}
	var none T
	return none, &SpellingError{Kind: kind, Text: shortened(text), Problem: wrong.problem, Meant: choice(offers)}
}

// choice lists alternatives as a sentence does: a, b or c.
func choice(offers []string) string {
	if len(offers) < 2 {
		return strings.Join(offers, "")
	}
	last := len(offers) - 1
	return strings.Join(offers[:last], ", ") + " or " + offers[last]
}

func shortened(text string) string {
	runes := []rune(text)
	if len(runes) <= maxText {
		return text
	}
	return string(runes[:maxText-1]) + "…"
}

// quoted puts a text between marks that it does not contain, because inch marks behind backslashes cannot be read.
func quoted(text string) string {
	if strings.ContainsFunc(text, func(r rune) bool { return !unicode.IsPrint(r) || r == unicode.ReplacementChar }) {
		return strconv.Quote(text)
	}
	for _, mark := range []string{`"`, "`"} {
		if !strings.Contains(text, mark) {
			return mark + text + mark
		}
	}
	return strconv.Quote(text)
}
