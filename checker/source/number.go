package source

import (
	"fmt"
	"math/big"
	"regexp"
	"strings"
)

// numeral is JSON's number, the only spelling that both formats read alike.
var numeral = regexp.MustCompile(`^-?(0|[1-9][0-9]*)(\.[0-9]+)?([eE][-+]?[0-9]+)?$`)

// Spellings that one YAML reader or another takes for a number and JSON does
// not.
var (
	infinite   = regexp.MustCompile(`^[-+]?(\.(inf|Inf|INF)|Infinity)$`)
	notNumber  = regexp.MustCompile(`^(\.(nan|NaN|NAN)|NaN)$`)
	based      = regexp.MustCompile(`^[-+]?0(x[0-9a-fA-F_]+|o[0-7_]+|b[01_]+)$`)
	underlined = regexp.MustCompile(`^[-+]?[0-9][0-9_]*_[0-9_]*(\.[0-9_]*)?$`)
	decimal    = regexp.MustCompile(`^([-+]?)([0-9]*)(\.[0-9]*)?([eE][-+]?[0-9]+)?$`)
)

// longestNumber is the length in bytes from which bare text is no longer looked
// at as a mistyped number: nobody types one so long, and rewriting it in
// decimal would cost quadratic time.
const longestNumber = 64

// mayBeNumber is a cheap test that every number, well spelt or not, passes.
func mayBeNumber(text string) bool {
	return text != "" && strings.IndexByte("+-.0123456789IN", text[0]) >= 0
}

// misspelt says why text, written bare, looks like a number and still is none
// that two readers would agree about, and what was probably meant. Both are ""
// for text that does not look like a number, or is a plain one.
func misspelt(text string) (problem, hint string) {
	if !mayBeNumber(text) || len(text) > longestNumber || numeral.MatchString(text) {
		return "", ""
	}
	or := fmt.Sprintf(`, or "%s" in quotes if it is text`, text)
	switch {
	case infinite.MatchString(text):
		return text + " is not a finite number", "leave the value out if it is not known" + or
	case notNumber.MatchString(text):
		return text + " is not a number", "leave the value out if it is not known" + or
	case based.MatchString(text):
		return text + " is not a decimal number", "write " + rebased(text) + or
	case underlined.MatchString(text):
		plain := trimNumber(strings.ReplaceAll(text, "_", ""))
		return text + " has underscores inside a number", "write " + plain + or
	}
	parts := decimal.FindStringSubmatch(text)
	if parts == nil || !strings.ContainsAny(parts[2]+parts[3], "0123456789") {
		return "", ""
	}
	meant := "write " + trimNumber(text) + or
	switch whole := parts[2]; {
	case parts[1] == "+":
		return text + " has a plus sign", meant
	case whole == "":
		return text + " has no digit before the decimal point", meant
	case parts[3] == ".":
		return text + " has no digit after the decimal point", meant
	default: // leading zeros are all that is left
		return text + " starts with a zero, which some readers take for an octal number", meant
	}
}

// trimNumber rewrites a decimal spelling that differs from JSON's only by its
// sign, leading zeros or a bare decimal point.
func trimNumber(text string) string {
	parts := decimal.FindStringSubmatch(text)
	if parts == nil {
		return text
	}
	sign, whole, fraction := strings.TrimPrefix(parts[1], "+"), strings.TrimLeft(parts[2], "0"), parts[3]
	if whole == "" {
		whole = "0"
	}
	if fraction == "." {
		fraction = ""
	}
	return sign + whole + fraction + parts[4]
}

// rebased gives the decimal spelling of a hexadecimal, octal or binary number.
func rebased(text string) string {
	n, ok := new(big.Int).SetString(strings.TrimPrefix(strings.ReplaceAll(text, "_", ""), "+"), 0)
	if !ok {
		return "it as a decimal number"
	}
	return n.String()
}
