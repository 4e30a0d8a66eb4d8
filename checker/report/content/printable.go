package content

import (
	"strings"
	"unicode"
)

// Printable takes out of s what would move the cursor, switch the terminal's
// modes or turn the direction of writing. White space becomes a blank, the rest
// the replacement character, so that the result is one line.
func Printable(s string) string {
	return strings.Map(func(r rune) rune {
		switch {
		case r == '\t' || r == '\n' || r == '\r':
			return ' '
		case r == zeroWidthJoiner:
			return r // holds composed emoji together
		case unicode.In(r, unicode.Cc, unicode.Cf, unicode.Zl, unicode.Zp):
			return unicode.ReplacementChar
		}
		return r
	}, s)
}

const zeroWidthJoiner = '\u200d'
