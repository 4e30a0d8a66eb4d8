package json

import (
	"plumbrule/checker/compare"
	"plumbrule/checker/report/content"
	"plumbrule/checker/result"
	"plumbrule/checker/source"
)

func convertSet(s *result.Set) set {
	out := set{ID: s.ID, Edition: s.Edition, Title: s.Title, Place: s.Place, Extends: s.Extends, NotCovered: s.NotCovered}
	if out.NotCovered == nil {
		out.NotCovered = []string{}
	}
	return out
}

func convertDesign(d *result.Design) design {
	return design{
		File: d.File, Title: d.Title, Revision: d.Revision, System: d.System.String(), Disposition: string(d.Disposition),
		Counts: counts{
			Outside: d.Counts.Outside, Within: d.Counts.Within, NotShown: d.Counts.NotShown,
			DoesNotApply: d.Counts.DoesNotApply, Excused: d.Counts.Excused, CouldNotRun: d.Counts.CouldNotRun,
		},
	}
}

func convertChange(c *compare.Change) change {
	return change{Kind: string(c.Kind), Name: c.Name, Old: convertPlace(&c.Was), New: convertPlace(&c.Is)}
}

func convertPlace(p *compare.Place) place {
	return place{At: p.Pointer, Start: convertPosition(p.Span.Start), End: convertPosition(p.Span.End), Text: p.Text, Missing: p.Missing}
}

// convertPosition puts what has no place in the file at its start, as lines and
// columns count from 1.
func convertPosition(p source.Position) position {
	return position{Line: max(p.Line, 1), Column: max(p.Column, 1)}
}

func convertMatter(m *compare.Matter) finding {
	r := m.Result()
	out := finding{
		State: string(m.State), Trend: string(m.Trend), Reason: string(m.Reason),
		Check: r.Check, Title: r.Title, Set: r.Set, Consequence: string(r.Consequence), Mark: r.Mark, See: r.See,
		Message: content.Message(r), Old: convertResult(m.Was), New: convertResult(m.Is),
	}
	if m.Field != nil {
		field := convertPlace(m.Field)
		out.Shown = &field
	}
	return out
}

func convertListing(l *result.Listing) *listing {
	if l == nil {
		return nil
	}
	return &listing{At: l.Pointer, Start: convertPosition(l.Span.Start), End: convertPosition(l.Span.End), Text: l.Text, Product: l.Product}
}

func convertResult(r *result.Result) *answer {
	if r == nil {
		return nil
	}
	out := &answer{
		Outcome: string(r.Outcome), Start: convertPosition(r.Span.Start), End: convertPosition(r.Span.End),
		Clause: r.Clause, Status: r.Status, Listing: convertListing(r.Listing), Amended: r.Amended, Have: convertValue(r.Have), Limit: convertValue(r.Limit),
		Needs: r.Needs, Reason: r.Reason, Message: r.Message, Fingerprint: r.Fingerprint,
	}
	if len(r.At) > 0 {
		out.At = r.At[0]
	}
	if r.Margin != nil {
		out.MarginText = r.Margin.Text
		if r.Margin.Unit != "" {
			out.Margin = &r.Margin.Number
		}
	}
	return out
}

func convertValue(v *result.Value) *value {
	if v == nil {
		return nil
	}
	out := &value{Unit: v.Unit, Text: v.Text, Relation: string(v.Relation), Standard: v.Standard}
	if v.Unit != "" {
		out.Value = &v.Number
	}
	return out
}

func convertRow(r *compare.Row, sets []result.Set) subject {
	out := subject{
		Difference: string(r.Difference), Check: r.Check, Title: r.Title, Consequence: string(r.Consequence), Name: r.Name,
		Mark: r.Mark, See: r.See, At: r.Pointer, Start: convertPosition(r.Span.Start), End: convertPosition(r.Span.End), Count: r.Count,
	}
	for i := range r.Cells {
		cell := &r.Cells[i]
		one := bySet{Set: sets[i].ID, Has: cell.Has, Answer: convertResult(cell.Result)}
		for _, f := range cell.Figures {
			one.Figures = append(one.Figures, figure{Name: f.Name, Text: f.Text, Clause: f.Clause, Status: f.Status})
		}
		for _, at := range cell.Elsewhere {
			one.Elsewhere = append(one.Elsewhere, convertPosition(at))
		}
		out.BySet = append(out.BySet, one)
	}
	return out
}
