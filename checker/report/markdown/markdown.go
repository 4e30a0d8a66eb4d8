package markdown

import (
	"strings"
	"unicode"
	"unicode/utf8"

	"plumbrule/checker/report/content"
)

// Plain makes s stand in Markdown as it is.
func Plain(s string) string {
	s = content.Printable(s)
	var b strings.Builder
	for i, r := range s {
		// What is left alone otherwise: a joint between words, as in bearing_length.
		if strings.ContainsRune("\\`*[]<>|~$&", r) || r == '_' && !insideWord(s, i) {
			b.WriteByte('\\')
		}
		b.WriteRune(r)
	}
	return b.String()
}

func insideWord(s string, i int) bool {
	before, _ := utf8.DecodeLastRuneInString(s[:i])
	after, _ := utf8.DecodeRuneInString(s[i+1:])
	return wordRune(before) && wordRune(after)
}

func wordRune(r rune) bool { return unicode.IsLetter(r) || unicode.IsDigit(r) }

// Code sets s as code; a grave accent, which would end it, becomes a quote.
func Code(s string) string {
	s = strings.NewReplacer("`", "'", "|", "¦").Replace(content.Printable(s))
	if strings.TrimSpace(s) == "" {
		return ""
	}
	return "`" + s + "`"
}

// Title makes the first letter a capital, for headings.
func Title(s string) string { return strings.TrimSuffix(content.Sentence(s), ".") }
