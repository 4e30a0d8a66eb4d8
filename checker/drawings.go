package checker

import (
	"path"

	"plumbrule/checker/draw"
	"plumbrule/checker/draw/paper"
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
	options.Source = path.Base(in.Name)
	if in.Name == "-" {
		options.Source = "standard input"
	}
	sheets, err := draw.Sheets(derived, options)
	return sheets, nil, err
}
