package sarif

import (
	"net/url"
	"path"
	"strings"

	"plumbrule/checker/report/content"
	"plumbrule/checker/result"
	"plumbrule/checker/source"
)

// base stands for the directory that the program was run in.
const base = "%SRCROOT%"

// uri writes a file name as a relative reference. Of an absolute name only the
// last part is left.
func uri(file string) string {
	file = strings.ReplaceAll(file, `\`, "/")
	if path.IsAbs(file) || len(file) > 2 && file[1] == ':' && file[2] == '/' {
		file = path.Base(file)
	}
	return (&url.URL{Path: file}).String()
}

// file is a design with its place among the run's artifacts.
type file struct {
	name  string
	index int
	doc   *source.Document // nil if it could not be opened
}

func (f file) artifact() artifactLocation {
	return artifactLocation{URI: uri(f.name), Base: base, Index: f.index}
}

// at gives a location. What has no place of its own is put at the start of the
// file, since services drop results without a region.
func (f file) at(span source.Span) location {
	start, end := span.Start, span.End
	r := region{StartLine: max(start.Line, 1), StartColumn: max(start.Column, 1)}
	if end.Line > start.Line || end.Line == start.Line && end.Column > start.Column {
		r.EndLine, r.EndColumn = end.Line, end.Column
	}
	return location{Physical: physicalLocation{Artifact: f.artifact(), Region: r}}
}

// place gives the location of a result with the pointer and mark of what is
// there.
func (f file) place(r *result.Result) location {
	at := f.at(r.Span)
	if len(r.At) > 0 && r.At[0] != "" {
		at.Logical = []logical{{Name: r.Mark, QualifiedName: r.At[0]}}
	}
	return at
}

// related gives the second places, numbered so that each has an id.
func (f file) related(r *result.Result) []location {
	var list []location
	for i := range r.Related {
		place := &r.Related[i]
		at := f.at(place.Span)
		at.ID = i + 1
		at.Message = &text{message(content.PlaceName(f.doc, place))}
		at.Logical = []logical{{QualifiedName: place.Pointer}}
		list = append(list, at)
	}
	return list
}

// fixes gives the changes that were tried, as edits of the file.
func (f file) fixes(r *result.Result) []fix {
	var list []fix
	for i := range r.Remedies {
		change := artifactChange{Artifact: f.artifact()}
		for _, c := range r.Remedies[i].Changes {
			start, end := c.Span.Start, c.Span.End
			change.Replacements = append(change.Replacements, replacement{
				Deleted: region{
					StartLine: max(start.Line, 1), StartColumn: max(start.Column, 1), EndLine: max(end.Line, 1), EndColumn: max(end.Column, 1),
				},
				Inserted: text{c.Text},
			})
		}
		list = append(list, fix{Description: text{message(content.Tried(r, &r.Remedies[i]))}, Changes: []artifactChange{change}})
	}
	return list
}
