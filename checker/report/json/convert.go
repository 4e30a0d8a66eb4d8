package json

import (
	"plumbrule/checker/report/content"
	"plumbrule/checker/report/items"
	"plumbrule/checker/result"
	"plumbrule/checker/source"
)

func convert(r *result.Report, previous items.Previous) report {
	out := report{
		Version:  version,
		Sets:     each(r.Sets, convertSet),
		Designs:  each(r.Designs, convertDesign),
		Cautions: content.Cautions(),
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
		out.Designs[i].Earlier = each(list.Past, convertPast)
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

// each converts a list; an empty one stays a list, never null.
func each[From, To any](from []From, convert func(*From) To) []To {
	to := make([]To, len(from))
	for i := range from {
		to[i] = convert(&from[i])
	}
	return to
}

func convertSet(s *result.Set) set {
	return set{
		ID:         s.ID,
		Edition:    s.Edition,
		Title:      s.Title,
		Publisher:  s.Publisher,
		Place:      s.Place,
		Extends:    s.Extends,
		Scope:      s.Scope,
		NotCovered: list(s.NotCovered),
		Figures:    figures(s.Figures),
	}
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
		Counts: counts{
			Outside:      d.Counts.Outside,
			Within:       d.Counts.Within,
			NotShown:     d.Counts.NotShown,
			DoesNotApply: d.Counts.DoesNotApply,
			Excused:      d.Counts.Excused,
			CouldNotRun:  d.Counts.CouldNotRun,
		},
		Problems: each(d.Problems, convertProblem),
		Unread:   each(d.Unread, convertUnread),
		Findings: each(d.Findings, convertFinding),
		Readings: each(d.Readings, convertReading),
	}
	// Of a design that could not be read the system is not known.
	if len(d.Problems) == 0 {
		out.System = d.System.String()
	}
	return out
}

func convertUnread(p *result.Place) unread {
	start, end := convertSpan(p.Span)
	return unread{At: p.Pointer, Start: start, End: end}
}

func convertProblem(p *result.Problem) problem {
	start, end := convertSpan(p.Span)
	return problem{At: p.Pointer, Start: start, End: end, Message: p.Message, Hint: p.Hint}
}

func convertFinding(r *result.Result) finding {
	return finding{
		subject:     convertSubject(r),
		Message:     content.Message(r),
		Needs:       r.Needs,
		Why:         r.Why,
		Mend:        list(r.Mend),
		Remedies:    each(r.Remedies, convertRemedy),
		Fingerprint: r.Fingerprint,
		Waiver:      convertWaiver(r.Waiver),
	}
}

func convertRemedy(r *result.Remedy) remedy {
	clears := each(r.Clears, func(c *result.Cleared) cleared { return cleared{c.Check, c.Set, c.At, c.Fingerprint} })
	return remedy{Text: r.Text, Clears: clears, Changes: each(r.Changes, func(c *result.Change) change {
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
	start, end := convertSpan(r.Span)
	s := subject{
		Check:       r.Check,
		Title:       r.Title,
		Set:         r.Set,
		Clause:      r.Clause,
		Status:      r.Status,
		Source:      r.Source,
		Amended:     r.Amended,
		Outcome:     string(r.Outcome),
		Consequence: string(r.Consequence),
		Mark:        r.Mark,
		See:         r.See,
		Start:       start,
		End:         end,
		Related:     each(r.Related, convertPlace),
		Have:        convertValue(r.Have),
		Limit:       convertValue(r.Limit),
		Reason:      r.Reason,
		Notes:       r.Notes,
		Engineered:  engineered(r.Engineered),
		Table:       r.Table,
		Row:         r.Row,
	}
	// A check that failed as a whole has no place; the root stands for it.
	if len(r.At) > 0 {
		s.At = r.At[0]
	}
	if r.Margin != nil {
		s.MarginText = r.Margin.Text
		if r.Margin.Unit != "" {
			s.Margin = &r.Margin.Number
		}
	}
	return s
}

func convertPlace(p *result.Place) place {
	start, end := convertSpan(p.Span)
	return place{At: p.Pointer, Start: start, End: end, Text: p.Text}
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

// convertSpan puts what has no place in the file at its start, as lines and
// columns count from 1.
func convertSpan(s source.Span) (start, end position) {
	return convertPosition(s.Start), convertPosition(s.End)
}

func convertPosition(p source.Position) position {
	return position{Line: max(p.Line, 1), Column: max(p.Column, 1)}
}

func list(words []string) []string {
	if words == nil {
		return []string{}
	}
	return words
}

func engineered(e *result.Engineered) *engineering {
	if e == nil {
		return nil
	}
	return &engineering{Value: e.Limit.Number, Unit: e.Limit.Unit, Text: e.Limit.Text, Governs: e.Governs, Working: e.Working}
}
