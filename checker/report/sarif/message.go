package sarif

import (
	"strings"

	"plumbrule/checker/report/content"
	"plumbrule/checker/result"
)

// words says of a result what services show next to its line.
func words(r *result.Result) string {
	basis := "rule set " + r.Set
	if clause := content.Clause(r); clause != "" {
		basis += ", " + clause
	}
	return content.Sentences(append(append([]string{content.Headline(r)}, content.Details(r)...), basis)...)
}

// message escapes what the format would take for a placeholder or a link
// (SARIF 2.1.0, 3.11.5 and 3.11.6). Square brackets as in guards[].height are no
// link and stay as they are.
func message(s string) string {
	s = strings.NewReplacer("{", "{{", "}", "}}").Replace(content.Printable(s))
	if strings.Contains(s, "](") {
		s = strings.NewReplacer("[", `\[`, "]", `\]`).Replace(s)
	}
	return s
}
