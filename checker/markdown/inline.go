package markdown

import (
	"regexp"
	"strings"
	"unicode"
	"unicode/utf8"
)

// Text makes s stand in Markdown as it is, on one line.
func Text(s string) string {
	s = oneLine(s)
	var b strings.Builder
	for i, r := range s {
		if strings.ContainsRune("\\`*[]<>|~$", r) || r == '_' && !insideWord(s, i) || r == '&' && entity.MatchString(s[i:]) {
			b.WriteByte('\\')
		}
		b.WriteRune(r)
	}
	return b.String()
}

// entity is what hosts print another character for.
var entity = regexp.MustCompile(`^&(#[0-9]+|#[xX][0-9a-fA-F]+|[A-Za-z][A-Za-z0-9]*);`)

// insideWord tells the underscore of bearing_length, which means nothing, from
// one that would begin or end something.
func insideWord(s string, i int) bool {
	before, _ := utf8.DecodeLastRuneInString(s[:i])
	after, _ := utf8.DecodeRuneInString(s[i+1:])
	return wordRune(before) && wordRune(after)
}

func wordRune(r rune) bool { return unicode.IsLetter(r) || unicode.IsDigit(r) }

// Code sets s as code on one line, with as many accents round it as it takes.
func Code(s string) string {
	s = oneLine(s)
	if s == "" {
		return ""
	}
	fence := strings.Repeat("`", longest(s, '`')+1)
	if strings.HasPrefix(s, "`") || strings.HasSuffix(s, "`") {
		s = " " + s + " "
	}
	return fence + s + fence
}

// Link points from a text, in Markdown already, to a target.
func Link(text, target string) string {
	return "[" + text + "](" + strings.NewReplacer(" ", "%20", "(", "%28", ")", "%29").Replace(target) + ")"
}

// Strong sets a text, in Markdown already, in bold letters.
func Strong(text string) string { return "**" + text + "**" }

func oneLine(s string) string { return strings.Join(strings.Fields(s), " ") }

// longest gives the length of the longest run of a character.
func longest(s string, of rune) int {
	most, run := 0, 0
	for _, r := range s {
		run++
		if r != of {
			run = 0
		}
		most = max(most, run)
	}
	return most
}
