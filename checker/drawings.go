package checker

import (
	"context"
	"path"

	"plumbrule/checker/draw"
	"plumbrule/checker/draw/paper"
	"plumbrule/checker/facts"
	"plumbrule/checker/result"
)

// Drawings reads a design and draws it, under the last element of the input's
// name. No check runs; findings that are to be numbered come with the options.
// The sheets are nil where there are problems. The error says that an option is
// unknown.
func Drawings(in Input, options draw.Options) ([]*paper.Sheet, []result.Problem, error) {
	var d result.Design
	derived := read(in, &d)
	if derived == nil {
		return nil, d.Problems, nil
	}
	sheets, err := drawn(in, derived, options)
	return sheets, nil, err
}

// Drawings is the function of that name with the findings numbered, which it
// gets by checking the design. It is laid out once for both.
func (c *Checker) Drawings(ctx context.Context, in Input, options draw.Options) ([]*paper.Sheet, []result.Problem, error) {
	r, report := c.one(ctx, in)
	if report == nil {
		return nil, r.design.Problems, nil
	}
	options.Report = report
	sheets, err := drawn(in, r.derived, options)
	return sheets, nil, err
}

func drawn(in Input, design *facts.Derived, options draw.Options) ([]*paper.Sheet, error) {
	options.Source = path.Base(in.Name)
	if in.Name == "-" {
		options.Source = "standard input"
	}
	return draw.Sheets(design, options)
}
