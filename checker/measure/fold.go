package measure

import (
	"fmt"
	"strings"
	"unicode/utf8"
)

// maxText is the number of bytes beyond which a text is refused unread. The longest sensible spelling is well below it.
const maxText = 96

// fold trims a text and replaces the marks that word processors and drawing programs put in place of the plain ones.
// Vulgar fractions stay: 6½ must not turn into 61/2.
func fold(text string) (string, *fault) {
	if len(text) > maxText {
		return "", &fault{reason: outOfRange, problem: fmt.Sprintf("longer than %d bytes", maxText)}
	}
	folded := text
	if !plain(text) {
		folded = strings.ReplaceAll(strings.Map(foldRune, text), "''", `"`)
	}
	folded = strings.Trim(folded, " ")
	if folded == "" {
		return "", misshapen("empty")
	}
	return folded, nil
}

// plain reports whether folding would change nothing but the spaces at the ends.
func plain(text string) bool {
	for i := range len(text) {
		if c := text[i]; c >= utf8.RuneSelf || c == '\t' || c == '\'' && i > 0 && text[i-1] == '\'' {
			return false
		}
	}
	return true
}

func foldRune(r rune) rune {
	switch r {
	case '\t', '\u00a0', '\u2007', '\u2009', '\u202f':
		return ' '
	case '‘', '’', '′':
		return '\''
	case '“', '”', '″':
		return '"'
	case '\u2010', '\u2011', '\u2012', '\u2013', '\u2212':
		return '-'
	case '\u2044', '\u2215':
		return '/'
	case '×':
		return 'x'
	}
	return r
}

// vulgar gives the value of a fraction that is one character.
func vulgar(r rune) (num, den uint64, ok bool) {
	switch r {
	case '½':
		return 1, 2, true
	case '⅓':
		return 1, 3, true
	case '⅔':
		return 2, 3, true
	case '¼':
		return 1, 4, true
	case '¾':
		return 3, 4, true
	case '⅕':
		return 1, 5, true
	case '⅖':
		return 2, 5, true
	case '⅗':
		return 3, 5, true
	case '⅘':
		return 4, 5, true
	case '⅙':
		return 1, 6, true
	case '⅚':
		return 5, 6, true
	case '⅐':
		return 1, 7, true
	case '⅛':
		return 1, 8, true
	case '⅜':
		return 3, 8, true
	case '⅝':
		return 5, 8, true
	case '⅞':
		return 7, 8, true
	case '⅑':
		return 1, 9, true
	case '⅒':
		return 1, 10, true
	}
	return 0, 0, false
}
