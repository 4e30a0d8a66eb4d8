package json

import (
	"plumbrule/checker/compare"
	"plumbrule/checker/report/content"
	"plumbrule/checker/report/shape"
	"plumbrule/checker/result"
)

func convertSet(s *result.Set) set { return set{Set: shape.SetOf(s)} }

func convertDesign(d *result.Design) design {
	return design{
		File: d.File, Title: d.Title, Revision: d.Revision, System: d.System.String(), Disposition: string(d.Disposition),
		Counts: shape.CountsOf(d.Counts),
	}
}

func convertChange(c *compare.Change) change {
	return change{Kind: string(c.Kind), Name: c.Name, Old: convertPlace(&c.Was), New: convertPlace(&c.Is)}
}

func convertPlace(p *compare.Place) place {
	return place{Place: shape.PlaceOf(p.Pointer, p.Span, p.Text), Missing: p.Missing}
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

func convertResult(r *result.Result) *answer {
	if r == nil {
		return nil
	}
	start, end := shape.SpanOf(r.Span)
	out := &answer{
		Outcome: string(r.Outcome), At: shape.PointerOf(r), Start: start, End: end,
		Clause: r.Clause, Status: r.Status, Listing: shape.ListingOf(r.Listing), Amended: r.Amended, Have: shape.ValueOf(r.Have), Limit: shape.ValueOf(r.Limit),
		Needs: r.Needs, Reason: r.Reason, Message: r.Message, Fingerprint: r.Fingerprint,
	}
	out.Margin, out.MarginText = shape.MarginOf(r.Margin)
	return out
}

func convertRow(r *compare.Row, sets []result.Set) subject {
	out := subject{
		Difference: string(r.Difference), Check: r.Check, Title: r.Title, Consequence: string(r.Consequence), Name: r.Name,
		Mark: r.Mark, See: r.See, At: r.Pointer, Start: shape.PositionOf(r.Span.Start), End: shape.PositionOf(r.Span.End), Count: r.Count,
	}
	for i := range r.Cells {
		cell := &r.Cells[i]
		one := bySet{Set: sets[i].ID, Has: cell.Has, Answer: convertResult(cell.Result)}
		for _, f := range cell.Figures {
			one.Figures = append(one.Figures, figure{Name: f.Name, Text: f.Text, Clause: f.Clause, Status: f.Status})
		}
		for _, at := range cell.Elsewhere {
			one.Elsewhere = append(one.Elsewhere, shape.PositionOf(at))
		}
		out.BySet = append(out.BySet, one)
	}
	return out
}
