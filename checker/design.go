package checker

import (
	"cmp"
	"context"
	"errors"
	"slices"

	"plumbrule/checker/facts"
	"plumbrule/checker/model"
	"plumbrule/checker/result"
	"plumbrule/checker/source"
	"plumbrule/checker/waive"
	"plumbrule/schema"
)

// review is one design on its way through a run.
type review struct {
	in     Input
	design result.Design
	// derived is what was laid out; nil where there are problems.
	derived *facts.Derived
	// uses says what became of each list of waivers on the design.
	uses []waive.Use
}

// design checks one design, and says what became of each list of waivers on it.
func (c *Checker) design(ctx context.Context, in Input) (result.Design, []waive.Use) {
	r := c.open(in)
	c.judge(ctx, r)
	return r.design, r.uses
}

// one checks one design and keeps what was laid out, for those who draw it. The
// report is nil where there are problems.
func (c *Checker) one(ctx context.Context, in Input) (*review, *result.Report) {
	r := c.open(in)
	if r.derived == nil {
		return r, nil
	}
	c.each(1, func(int) { c.judge(ctx, r) })
	report := c.report(ctx, r)
	return r, &report
}

// open reads a design and lays it out. No check runs.
func (c *Checker) open(in Input) *review {
	r := &review{in: in, design: result.Design{File: in.Name, Disposition: result.NotReviewed, Sets: c.setsOf(in)}}
	d := &r.design
	if r.derived = read(in, d); r.derived == nil {
		return r
	}
	deck := r.derived.Deck
	d.System = deck.System
	if in.System != nil {
		d.System = *in.System
	}
	for _, n := range deck.Unread {
		d.Unread = append(d.Unread, result.Place{Pointer: n.Pointer, Span: n.Span, Text: n.Text})
	}
	titleBlock(d, deck.Job)
	return r
}

// judge holds a design that was opened against the sets that are for it. One
// with problems stays as it is.
func (c *Checker) judge(ctx context.Context, r *review) {
	d := &r.design
	if r.derived == nil || len(d.Sets) == 0 { // naming none to the engine would mean all
		return
	}
	for _, one := range c.engine.Evaluate(ctx, r.derived.Facts, d.Document, d.System, d.Sets...) {
		if one.Outcome == result.Within || one.Outcome == result.DoesNotApply {
			d.Readings = append(d.Readings, one)
		} else {
			d.Findings = append(d.Findings, one)
		}
	}
	r.uses = c.excuse(d, r.in)
	d.Counts = result.Tally(d.Findings, d.Readings)
	d.Disposition = result.Dispose(d.Findings, d.Readings)
}

// setsOf gives the ids of the sets that are for a design.
func (c *Checker) setsOf(in Input) []string {
	var ids []string
	for _, set := range c.sets {
		if in.Sets == nil || slices.ContainsFunc(in.Sets, func(name string) bool { return c.ids[name] == set.ID }) {
			ids = append(ids, set.ID)
		}
	}
	return ids
}

// titleBlock copies what the drawings say about themselves.
func titleBlock(d *result.Design, job *model.Job) {
	if job == nil {
		return
	}
	for _, entry := range []struct {
		to   *string
		from *model.Words
	}{
		{&d.Title, job.Title},
		{&d.Revision, job.Revision},
		{&d.Sheets, job.Sheets},
		{&d.ReviewedAgainst, job.ReviewedAgainst},
	} {
		if entry.from != nil {
			*entry.to = entry.from.V
		}
	}
}

// read takes a design from bytes to facts. It stops behind the stage that
// finds problems: what comes after would only repeat them. The result is nil
// where there are any.
func read(in Input, d *result.Design) *facts.Derived {
	if in.Err != nil {
		d.Problems = []result.Problem{{Message: reason(in.Err)}}
		return nil
	}
	doc, err := source.Read(in.Name, in.Data)
	if err != nil {
		d.Problems = []result.Problem{unreadable(err)}
		d.Document = source.Unread(in.Name, in.Data)
		return nil
	}
	d.Document = doc
	for _, p := range schema.Validate("design", doc) {
		d.Problems = append(d.Problems, result.Problem{Span: p.Span, Pointer: p.Pointer, Message: p.Message, Hint: p.Hint})
	}
	if len(d.Problems) > 0 {
		return nil
	}
	deck, problems := model.Read(doc)
	for _, p := range problems {
		d.Problems = append(d.Problems, result.Problem{Span: p.Node.Span, Pointer: p.Node.Pointer, Message: p.Message, Hint: p.Hint})
	}
	if len(d.Problems) == 0 {
		derived, faults := facts.Derive(deck)
		for _, p := range faults {
			d.Problems = append(d.Problems, result.Problem{Span: place(doc, p.At), Pointer: p.At, Message: p.Message, Hint: p.Hint})
		}
		if len(faults) == 0 {
			return derived
		}
	}
	slices.SortStableFunc(d.Problems, func(a, b result.Problem) int { return cmp.Compare(a.Span.Start.Offset, b.Span.Start.Offset) })
	return nil
}

// unreadable is the problem of a text that is no YAML or JSON.
func unreadable(err error) result.Problem {
	var fault *source.Error
	if errors.As(err, &fault) {
		return result.Problem{Span: fault.Span, Message: fault.Message, Hint: fault.Hint}
	}
	return result.Problem{Message: err.Error()}
}

// place is where a pointer stands; the start of the file where it does not.
func place(doc *source.Document, pointer string) source.Span {
	if n := doc.Find(pointer); n != nil {
		return n.Span
	}
	return doc.Root.Span
}

// Facts reads a design and derives its facts without checking it. The facts
// are nil where there are problems.
func Facts(in Input) (*facts.Facts, []result.Problem) {
	var d result.Design
	derived := read(in, &d)
	if derived == nil {
		return nil, d.Problems
	}
	return derived.Facts, nil
}
