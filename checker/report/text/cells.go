package text

import (
	"strings"
	"unicode"

	"github.com/mattn/go-runewidth"
)

// cells measures text in the cells of a terminal. It does not ask the locale,
// as the library's own default would, so that the same report has the same
// bytes everywhere.
type cells struct{ *runewidth.Condition }

func newCells() cells {
	return cells{&runewidth.Condition{StrictEmojiNeutral: true}}
}

// tabStop is the distance of tab stops in a source line.
const tabStop = 4

// expand replaces tabs by blanks up to the next stop, for text that begins in
// the given cell, and makes the rest printable.
func (c cells) expand(s string, start int) string {
	if !strings.Contains(s, "\t") {
		return printable(s)
	}
	var b strings.Builder
	at := start
	for i, piece := range strings.Split(s, "\t") {
		if i > 0 {
			n := tabStop - at%tabStop
			b.WriteString(strings.Repeat(" ", n))
			at += n
		}
		piece = printable(piece)
		b.WriteString(piece)
		at += c.StringWidth(piece)
	}
	return b.String()
}

// printable takes out of s what would move the cursor, switch the terminal's
// modes or turn the direction of writing. White space becomes a blank, the rest
// the replacement character.
func printable(s string) string {
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
