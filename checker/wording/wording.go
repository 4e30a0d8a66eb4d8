package wording

import (
	"cmp"
	"slices"
	"strings"
	"unicode"
	"unicode/utf8"
)

// Wording replaces phrases in texts. The zero value replaces none. It does not
// change and is safe for concurrent use.
type Wording struct {
	entries []entry // the longest first, as it decides
}

// entry is one phrase as it stands in texts, and what stands in its place.
type entry struct {
	from, to string
	phrase   string // as given: that of a plural is the singular
	begins   string // from at the beginning of a sentence
}

// New makes a wording of what takes the place of phrases. A phrase stands for
// its plural too, unless that is there by itself, and for itself at the
// beginning of a sentence; one that is written with a capital stands for the
// beginning of a sentence only.
func New(phrases map[string]string) Wording {
	var w Wording
	for from, to := range phrases {
		w.entries = append(w.entries, entry{from, to, from, capital(from)})
		if _, given := phrases[plural(from)]; !given && endsInLetter(from) && endsInLetter(to) {
			w.entries = append(w.entries, entry{plural(from), plural(to), from, capital(plural(from))})
		}
	}
	slices.SortFunc(w.entries, func(a, b entry) int {
		return cmp.Or(len(b.from)-len(a.from), strings.Compare(a.from, b.from), strings.Compare(a.phrase, b.phrase))
	})
	return w
}

// Empty reports whether the wording replaces nothing.
func (w Wording) Empty() bool { return len(w.entries) == 0 }

// Say gives the text in the words of the wording.
func (w Wording) Say(text string) string {
	said, _ := w.Replace(text)
	return said
}

// Replace gives the text in the words of the wording, and the phrases that it
// replaced.
func (w Wording) Replace(text string) (said string, phrases []string) {
	if w.Empty() {
		return text, nil
	}
	var out strings.Builder
	for at := 0; at < len(text); {
		e, ok := w.at(text, at)
		if !ok {
			_, size := utf8.DecodeRuneInString(text[at:])
			out.WriteString(text[at : at+size])
			at += size
			continue
		}
		to := e.to
		if lead := text[at : at+len(e.from)]; lead != e.from {
			to = capital(to)
		}
		before := article(out.String(), to)
		out.Reset()
		out.WriteString(before + to)
		phrases = append(phrases, e.phrase)
		at += len(e.from)
	}
	return out.String(), phrases
}

// at finds the longest phrase that begins there.
func (w Wording) at(text string, at int) (entry, bool) {
	if before, _ := utf8.DecodeLastRuneInString(text[:at]); joins(before) {
		return entry{}, false
	}
	for _, e := range w.entries {
		end := at + len(e.from)
		if end > len(text) || text[at:end] != e.from && text[at:end] != e.begins {
			continue
		}
		if after, _ := utf8.DecodeRuneInString(text[end:]); !joins(after) {
			return e, true
		}
	}
	return entry{}, false
}

// joins reports whether a character makes one word of those beside it. A
// hyphen does, as a back-span is another thing than a span, and so does what
// holds ids and names of fields together.
func joins(r rune) bool {
	return r != utf8.RuneError && (unicode.IsLetter(r) || unicode.IsDigit(r) || strings.ContainsRune("-/_[]", r))
}

// article sets the article at the end of a text for the word that follows.
func article(text, next string) string {
	head, ok := strings.CutSuffix(text, "an ")
	if !ok {
		head, ok = strings.CutSuffix(text, "a ")
	}
	upper := false
	if !ok {
		upper = true
		if head, ok = strings.CutSuffix(text, "An "); !ok {
			head, ok = strings.CutSuffix(text, "A ")
		}
	}
	if before, _ := utf8.DecodeLastRuneInString(head); !ok || joins(before) {
		return text
	}
	a := "a "
	if strings.ContainsRune("aeiouAEIOU", []rune(next + " ")[0]) {
		a = "an "
	}
	if upper {
		a = capital(a)
	}
	return head + a
}

func capital(text string) string {
	if text == "" {
		return ""
	}
	first, size := utf8.DecodeRuneInString(text)
	return string(unicode.ToUpper(first)) + text[size:]
}

// plural gives the regular plural; a wording holds others by themselves.
func plural(word string) string {
	switch {
	case strings.HasSuffix(word, "s"), strings.HasSuffix(word, "x"), strings.HasSuffix(word, "ch"), strings.HasSuffix(word, "sh"):
		return word + "es"
	case strings.HasSuffix(word, "y") && len(word) > 1 && !strings.ContainsRune("aeiou", rune(word[len(word)-2])):
		return word[:len(word)-1] + "ies"
	}
	return word + "s"
}

func endsInLetter(text string) bool {
	last, _ := utf8.DecodeLastRuneInString(text)
	return unicode.IsLetter(last)
}
