package checker

import (
	"path"

	"plumbrule/checker/fieldsheet"
	"plumbrule/checker/result"
)

// FieldSheet reads a design and lays out its field sheet, under the last element
// of the input's name. No check runs. The sheet is nil where there are problems.
func FieldSheet(in Input) (*fieldsheet.Sheet, []result.Problem) {
	var d result.Design
	derived := read(in, &d)
	if derived == nil {
		return nil, d.Problems
	}
	return fieldsheet.Build(path.Base(in.Name), derived), nil
}
