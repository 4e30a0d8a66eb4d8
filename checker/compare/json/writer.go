package json

import (
	"fmt"
	"io"

	"plumbrule/checker/compare"
	"plumbrule/checker/report/content"
	"plumbrule/checker/report/shape"
	"plumbrule/checker/result"
)

// Revisions writes what lies between two revisions as one JSON value. The error
// is that of the underlying writer.
func Revisions(to io.Writer, r *compare.Revisions) error {
	return write(to, comparison{
		Sets: shape.Each(r.Sets, convertSet),
		Revisions: &revisions{
			Old: convertDesign(&r.Was), New: convertDesign(&r.Is),
			Changes: shape.Each(r.Changes, convertChange), Findings: shape.Each(r.Matters, convertMatter),
		},
		Waivers: convertWaivers(r.Waivers),
	}, r.Sets)
}

// Sets writes what rule sets make of a design beside each other as one JSON
// value. The error is that of the underlying writer.
func Sets(to io.Writer, s *compare.Sets) error {
	sets := shape.Each(s.Sets, convertSet)
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
	if err := shape.Write(to, c); err != nil {
		return fmt.Errorf("writing the comparison as JSON: %w", err)
	}
	return nil
}

func convertWaivers(files []result.Design) []remark {
	var list []remark
	for i := range files {
		for k := range files[i].Findings {
			f := &files[i].Findings[k]
			list = append(list, remark{File: files[i].File, Check: f.Check, Start: shape.PositionOf(f.Span.Start), Message: content.Message(f)})
		}
	}
	return list
}
