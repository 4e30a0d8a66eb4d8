package sarif

import (
	"strings"

	"plumbrule/checker/report/content"
	"plumbrule/checker/result"
)

// words says of a result what services show next to its line.
func words(r *result.Result) string {
	parts := []string{content.Headline(r), strings.Join(content.Values(r), ", ")}
	if r.Needs != "" {
		parts = append(parts, "to be shown: "+r.Needs)
	}
	if r.Outcome == result.Excused && r.Reason != "" {
		parts = append(parts, "excused: "+r.Reason)
	}
	for _, mend := range r.Mend {
		parts = append(parts, "to mend: "+mend)
	}
	parts = append(parts, content.Where(r.See, r.Mark))
	basis := "rule set " + r.Set
	if r.Clause != "" && r.Clause != r.Status {
		basis += ", " + r.Clause
	}
	return content.Sentences(append(parts, basis)...)
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
