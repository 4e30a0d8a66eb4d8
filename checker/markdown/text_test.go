package markdown_test

import (
	"bytes"
	"html"
	"regexp"
	"strings"
	"testing"
	"unicode/utf8"

	"github.com/yuin/goldmark"
	"github.com/yuin/goldmark/extension"

	"plumbrule/checker/markdown"
)

// hostile are texts that a design could have for a title or a mark.
func hostile() []string {
	return []string{
		"# heading", "###### six", "#", "deck ##", "- item", "+ item", "* item", "1. first", "12) twelfth", "-", "---", "- - -", "===", ":--", ":-: :-:",
		"> quote", "> [!WARNING]", "[ ] task", "```", "~~~ sh", "~~gone~~", "    code", "\tcode", "a | b", "<b>bold</b>", "<!-- note -->", "<https://example.org>",
		"https://example.org/a", "see HTTP://example.org", "ftp://example.org", "www.example.org", "(www.example.org)", "mailto:carpenter@example.org",
		"carpenter@example.org", "@carpenter", "ask @carpenter-crew/lumber", "post #2", "#2 grade", "GH-2", "[a](https://example.org)", "![a](b)", "[a]: b", "[^1]: b",
		"*a* _b_ **c**", "a\\", "\\# a", "&lt;b&gt;", "&#35; a", "$x$", "a  \nb", "a\n\n# b", "1986. A great deck", "7-3/4\" of 2x8", "1.5 in", "-3 in", "+3 in", "a_b_c", "a: b", "Sheet S1. Detail 2",
	}
}

// places are where texts stand on pages, with the place of the text as X.
func places() []string {
	return []string{"X", "word X word", "before\nX", "before\nX\nafter", "- X", "- X\n- other", "1. X", "# X", "**1.** X", "before\n\nX\n\nafter", "> X", "| a |\n|---|\n| X |"}
}

// TestTextStaysText gives pages with hostile texts on them to a reader of
// Markdown as hosts of code have it. The page must come out as one with a plain
// word in the place of the text.
func TestTextStaysText(t *testing.T) {
	for _, text := range hostile() {
		staysText(t, text)
	}
	for text, want := range map[string]string{ // and what needs no escape has none
		"7-3/4\" of 2x8": "7-3/4\" of 2x8", "1.5 in": "1.5 in", "-3 in": "-3 in", "a: b": "a: b", "a_b": "a_b", "1 - 2": "1 - 2", "Sheet S1. Detail 2": "Sheet S1. Detail 2",
		"by 8#10": "by 8#10", "at @ 16 in": "at @ 16 in", "1. a": `1\. a`, "# a": `\# a`, "a #": `a \#`, "http://a": `http\://a`, "www.a": `www\.a`, "@a": "@a", "#2": "#2",
	} {
		if got := markdown.Text(text); got != want {
			t.Errorf("%q: %q, want %q", text, got, want)
		}
	}
}

func TestMute(t *testing.T) {
	for text, want := range map[string]string{
		"ask @carpenter": "ask @&#8203;carpenter", "grade #2": "grade #&#8203;2", "at @ 16 in": "at @ 16 in", "# 2": `\# 2`, "a@b.c": "a@&#8203;b.c",
	} {
		if got := markdown.Mute(text); got != want {
			t.Errorf("%q: %q, want %q", text, got, want)
		}
	}
}

func FuzzTextStaysText(f *testing.F) {
	for _, text := range hostile() {
		f.Add(text)
	}
	f.Fuzz(func(t *testing.T, text string) {
		if !utf8.ValidString(text) || strings.ContainsFunc(text, func(r rune) bool { return r < ' ' && r != '\n' && r != '\t' || r == 0x7F || r == 0xFFFD }) {
			t.Skip("reports print no such characters")
		}
		staysText(t, text)
	})
}

const (
	standIn  = "Xyzzy"
	zeroWide = "\u200b"
)

var links = regexp.MustCompile(`@[\pL\pN_-]|#[0-9]`)

func staysText(t *testing.T, text string) {
	t.Helper()
	want := strings.Join(strings.Fields(text), " ")
	if want == "" || strings.Contains(want, zeroWide) {
		return
	}
	for _, place := range places() {
		plain := strings.Replace(html.UnescapeString(render(t, strings.Replace(place, "X", standIn, 1))), standIn, want, 1)
		page := strings.Replace(place, "X", markdown.Mute(text), 1)
		got := html.UnescapeString(render(t, page))
		if strings.ReplaceAll(got, zeroWide, "") != plain {
			t.Errorf("%q as %q:\n%s\nnot\n%s", text, page, got, plain)
		}
		if found := links.FindString(got); found != "" {
			t.Errorf("%q as %q: %q is left", text, page, found)
		}
		if strings.Contains(text, "@") {
			continue // an address of mail becomes a link where nobody is called by it
		}
		page = strings.Replace(place, "X", markdown.Text(text), 1)
		if got := html.UnescapeString(render(t, page)); got != plain {
			t.Errorf("%q as %q:\n%s\nnot\n%s", text, page, got, plain)
		}
	}
}

func render(t *testing.T, page string) string {
	t.Helper()
	var out bytes.Buffer
	if err := goldmark.New(goldmark.WithExtensions(extension.GFM, extension.Footnote)).Convert([]byte(page), &out); err != nil {
		t.Fatal(err)
	}
	return out.String()
}
