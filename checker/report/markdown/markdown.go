package markdown

import (
	"strings"

	"plumbrule/checker/markdown"
	"plumbrule/checker/report/content"
)

// Plain makes s stand in Markdown as it is, on one line, and lets it call nobody
// where the page is a remark on a change.
func Plain(s string) string { return markdown.Mute(content.Printable(s)) }

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
