package json

import (
	"plumbrule/checker/report/content"
	"plumbrule/checker/report/items"
	"plumbrule/checker/report/shape"
	"plumbrule/checker/result"
)

func convert(r *result.Report, previous items.Previous) report {
	out := report{
		Version:  version,
		Sets:     shape.Each(r.Sets, convertSet),
		Designs:  shape.Each(r.Designs, convertDesign),
		Cautions: content.Cautions(r.Sets),
	}
	for i := range r.Designs {
		if r.Designs[i].Kind != "" {
			continue
		}
		list := items.Number(r, i, previous)
		numbers := list.Numbers()
		for j := range r.Designs[i].Findings {
			out.Designs[i].Findings[j].Item = numbers[&r.Designs[i].Findings[j]]
		}
		out.Designs[i].Earlier = shape.Each(list.Past, convertPast)
	}
	return out
}

func convertPast(p *items.Past) earlier {
	e := earlier{Item: p.Number, State: stateOpen, Outcome: string(p.Outcome), Reason: p.Reason, Now: p.Now, At: p.At, Mark: p.Mark, See: p.See, Message: p.Message}
	if p.Closed {
		e.State = stateClosed
	}
	for _, f := range p.Found {
		e.Found = append(e.Found, found(f))
	}
	return e
}

func convertSet(s *result.Set) set {
	return set{Set: shape.SetOf(s), Figures: figures(s.Figures)}
}

func convertDesign(d *result.Design) design {
	out := design{
		File:        d.File,
		Kind:        d.Kind,
		Sets:        d.Sets,
		Title:       d.Title,
		Revision:    d.Revision,
		Sheets:      d.Sheets,
		Against:     d.ReviewedAgainst,
		Disposition: string(d.Disposition),
		Counts:      shape.CountsOf(d.Counts),
		Problems:    shape.Each(d.Problems, convertProblem),
		Unread:      shape.Each(d.Unread, convertUnread),
		Findings:    shape.Each(d.Findings, convertFinding),
		Readings:    shape.Each(d.Readings, convertReading),
	}
	// Of a design that could not be read the system is not known.
	if len(d.Problems) == 0 {
		out.System = d.System.String()
	}
	return out
}

func convertUnread(p *result.Place) unread {
	start, end := shape.SpanOf(p.Span)
	return unread{At: p.Pointer, Start: start, End: end}
}

func convertProblem(p *result.Problem) problem {
	start, end := shape.SpanOf(p.Span)
	return problem{At: p.Pointer, Start: start, End: end, Message: p.Message, Hint: p.Hint}
}

func convertFinding(r *result.Result) finding {
	return finding{
		subject:     convertSubject(r),
		Message:     content.Message(r),
		Needs:       r.Needs,
		Why:         r.Why,
		Mend:        shape.List(r.Mend),
		Remedies:    shape.Each(r.Remedies, convertRemedy),
		Fingerprint: r.Fingerprint,
		Waiver:      convertWaiver(r.Waiver),
	}
}

func convertRemedy(r *result.Remedy) remedy {
	clears := shape.Each(r.Clears, func(c *result.Cleared) cleared { return cleared{c.Check, c.Set, c.At, c.Fingerprint} })
	return remedy{Text: r.Text, Clears: clears, Changes: shape.Each(r.Changes, func(c *result.Change) change {
		return change{At: c.Pointer, From: c.From, To: c.To}
	})}
}

func convertWaiver(w *result.Waiver) *waiver {
	if w == nil {
		return nil
	}
	return &waiver{By: w.By, Reason: w.Reason, Until: w.Until, Document: w.Document}
}

func convertReading(r *result.Result) reading {
	return reading{subject: convertSubject(r), Message: r.Message, Fingerprint: r.Fingerprint}
}

func convertSubject(r *result.Result) subject {
	start, end := shape.SpanOf(r.Span)
	s := subject{
		Check:       r.Check,
		Title:       r.Title,
		Set:         r.Set,
		Clause:      r.Clause,
		Status:      r.Status,
		Source:      r.Source,
		Listing:     shape.ListingOf(r.Listing),
		Amended:     r.Amended,
		Outcome:     string(r.Outcome),
		Consequence: string(r.Consequence),
		At:          shape.PointerOf(r),
		Mark:        r.Mark,
		See:         r.See,
		Start:       start,
		End:         end,
		Related:     shape.Each(r.Related, convertPlace),
		Have:        shape.ValueOf(r.Have),
		Limit:       shape.ValueOf(r.Limit),
		Reason:      r.Reason,
		Notes:       r.Notes,
		Engineered:  engineered(r.Engineered),
		Table:       r.Table,
		Row:         r.Row,
	}
	s.Margin, s.MarginText = shape.MarginOf(r.Margin)
	return s
}

func convertPlace(p *result.Place) shape.Place { return shape.PlaceOf(p.Pointer, p.Span, p.Text) }

func engineered(e *result.Engineered) *engineering {
	if e == nil {
		return nil
	}
	return &engineering{Value: e.Limit.Number, Unit: e.Limit.Unit, Text: e.Limit.Text, Governs: e.Governs, Working: e.Working}
}
