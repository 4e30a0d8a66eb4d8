package html

import (
	"html/template"
	"regexp"
	"strings"
	"unicode/utf8"
)

// values are short words in which a hyphen joins a number, 3-1/4", 6'-8" and
// irc-2021. Browsers would end a line behind it.
var values = regexp.MustCompile(`^[^\s/._-]{1,6}['′]?-\d\S{0,7}$`)

// broken says where lines may end inside of words: behind the joints of the path
// of a field or the id of a check, and nowhere else.
func broken(s string) template.HTML {
	const long = 14
	words := strings.Split(s, " ")
	for i, word := range words {
		switch {
		case values.MatchString(word):
			words[i] = `<span class="value">` + template.HTMLEscapeString(word) + "</span>"
		case utf8.RuneCountInString(word) > long:
			words[i] = jointed(word)
		default:
			words[i] = template.HTMLEscapeString(word)
		}
	}
	return template.HTML(strings.Join(words, " "))
}

// jointed is a long word with places to break it.
func jointed(word string) string {
	var b strings.Builder
	for _, r := range word {
		b.WriteString(template.HTMLEscapeString(string(r)))
		if strings.ContainsRune("./_-]", r) {
			b.WriteString("<wbr>")
		}
	}
	return strings.TrimSuffix(b.String(), "<wbr>")
}
