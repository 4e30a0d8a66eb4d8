package content

import (
	"strings"
	"unicode"
	"unicode/utf8"
)

// Sentence makes a message a sentence. A first word with a digit in it is left
// as it is, since it may be a mark. Nothing stays nothing.
func Sentence(s string) string {
	word, _, _ := strings.Cut(s, " ")
	if first, size := utf8.DecodeRuneInString(s); size > 0 && !strings.ContainsAny(word, "0123456789") {
		s = string(unicode.ToUpper(first)) + s[size:]
	}
	if s != "" && !strings.HasSuffix(s, ".") {
		s += "."
	}
	return s
}

// Sentences makes each message that is not empty a sentence of one text.
func Sentences(messages ...string) string {
	var all []string
	for _, s := range messages {
		if s != "" {
			all = append(all, Sentence(s))
		}
	}
	return strings.Join(all, " ")
}
