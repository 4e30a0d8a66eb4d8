package markdown

import (
	"regexp"
	"strings"
	"unicode"
	"unicode/utf8"
)

// Text makes s stand in Markdown as it is, on one line, wherever on its line:
// it begins no heading, list or rule, and no address in it becomes a link.
func Text(s string) string { return escaped(s, false) }

// Mute is Text for a page that a host shows among remarks of people, where a
// name behind an @ calls somebody and a number behind # ties one thread to
// another: a space of no width parts them. What is copied from there has it, so
// it is not for pages to copy from.
func Mute(s string) string { return escaped(s, true) }

func escaped(s string, mute bool) string {
	s = oneLine(s)
	var b strings.Builder
	for i, r := range s {
		if special(s, i, r) {
			b.WriteByte('\\')
		}
		b.WriteRune(r)
		if mute && calls.MatchString(s[i:]) {
			b.WriteString(gap)
		}
	}
	return b.String()
}

// gap is a space of no width. Hosts look for what calls after all escapes are
// gone, so that no escape helps; other programs that leave remarks do the same.
const gap = "&#8203;"

// calls is a mention, an address of mail, or the number of something of the host.
var calls = regexp.MustCompile(`^(@[\pL\pN_-]|#[0-9])`)

// special reports whether the rune at i would be read as more than itself.
func special(s string, i int, r rune) bool {
	switch r {
	case '\\', '`', '*', '[', ']', '<', '>', '|', '~', '$':
		return true
	case '_':
		return !insideWord(s, i)
	case '&':
		return entity.MatchString(s[i:])
	case ':':
		return scheme.MatchString(s[:i]) || marksOnly.MatchString(s) && i == 0
	case '.', ')':
		return ordinal.MatchString(s[:i]) && ends(s, i+1) || r == '.' && host.MatchString(s[:i])
	case '-', '+', '=':
		return i == 0 && (ends(s, 1) || marksOnly.MatchString(s))
	case '#':
		return strings.Trim(s[:i], "#") == "" && !calls.MatchString(s[i:]) || strings.Trim(s[i:], "#") == ""
	}
	return false
}

// ends reports whether a word ends before i.
func ends(s string, i int) bool { return i == len(s) || s[i] == ' ' }

var (
	// entity is what hosts print another character for.
	entity = regexp.MustCompile(`^&(#[0-9]+|#[xX][0-9a-fA-F]+|[A-Za-z][A-Za-z0-9]*);`)
	// scheme and host stand before the mark that makes an address of them.
	scheme = regexp.MustCompile(`(?i)(https?|ftp|mailto|xmpp)$`)
	host   = regexp.MustCompile(`(?i)(^|[^\pL\pN])www$`)
	// ordinal begins an entry of a list.
	ordinal = regexp.MustCompile(`^[0-9]{1,9}$`)
	// marksOnly is a rule, the line under a heading or the head of a table.
	marksOnly = regexp.MustCompile(`^[-=:+ ]+$`)
)

// insideWord tells the underscore of bearing_length, which means nothing, from
// one that would begin or end something.
func insideWord(s string, i int) bool {
	before, _ := utf8.DecodeLastRuneInString(s[:i])
	after, _ := utf8.DecodeRuneInString(s[i+1:])
	return wordRune(before) && wordRune(after)
}

func wordRune(r rune) bool { return unicode.IsLetter(r) || unicode.IsDigit(r) }
