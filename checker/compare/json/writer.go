package json

import (
	"encoding/json"
	"fmt"
	"io"

	"plumbrule/checker/compare"
	"plumbrule/checker/report/content"
	"plumbrule/checker/result"
)

// Revisions writes what lies between two revisions as one JSON value. The error
// is that of the underlying writer.
func Revisions(to io.Writer, r *compare.Revisions) error {
	return write(to, comparison{
		Sets: each(r.Sets, convertSet),
		Revisions: &revisions{
			Old: convertDesign(&r.Was), New: convertDesign(&r.Is),
			Changes: each(r.Changes, convertChange), Findings: each(r.Matters, convertMatter),
		},
		Waivers: convertWaivers(r.Waivers),
	}, r.Sets)
}

// Sets writes what rule sets make of a design beside each other as one JSON
// value. The error is that of the underlying writer.
func Sets(to io.Writer, s *compare.Sets) error {
	sets := each(s.Sets, convertSet)
	for i := range sets {
		for _, g := range s.Gaps[i] {
			sets[i].Lacks = append(sets[i].Lacks, g.Check)
		}
	}
	subjects := make([]subject, len(s.Rows))
	for i := range s.Rows {
		subjects[i] = convertRow(&s.Rows[i], s.Sets)
	}
	return write(to, comparison{
		Sets:     sets,
		RuleSets: &ruleSets{Design: convertDesign(&s.Design), Subjects: subjects, Same: s.Same},
		Waivers:  convertWaivers(s.Waivers),
	}, s.Sets)
}

func write(to io.Writer, c comparison, sets []result.Set) error {
	c.Version, c.Cautions = version, content.Cautions(sets)
	encoder := json.NewEncoder(to)
	encoder.SetEscapeHTML(false)
	encoder.SetIndent("", "  ")
	if err := encoder.Encode(c); err != nil {
		return fmt.Errorf("writing the comparison as JSON: %w", err)
	}
	return nil
}

// each converts a list; an empty one stays a list, never null.
func each[From, To any](from []From, convert func(*From) To) []To {
	to := make([]To, len(from))
	for i := range from {
		to[i] = convert(&from[i])
	}
	return to
}

func convertWaivers(files []result.Design) []remark {
	var list []remark
	for i := range files {
		for k := range files[i].Findings {
			f := &files[i].Findings[k]
			list = append(list, remark{File: files[i].File, Check: f.Check, Start: convertPosition(f.Span.Start), Message: content.Message(f)})
		}
	}
	return list
}
