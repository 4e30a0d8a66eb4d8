package catalog

import (
	"cmp"
	"errors"
	"fmt"
	"slices"

	"github.com/open-policy-agent/opa/v1/ast"

	"plumbrule/checker/source"
	"plumbrule/schema"
)

// problems collects everything wrong, so that an author mends it in one go.
type problems struct {
	list []*source.Error
}

func (p *problems) add(file string, span source.Span, format string, args ...any) {
	p.list = append(p.list, &source.Error{Name: file, Span: span, Message: fmt.Sprintf(format, args...)})
}

func (p *problems) at(loc *ast.Location, format string, args ...any) {
	place := source.Position{Offset: loc.Offset, Line: loc.Row, Column: loc.Col}
	p.add(loc.File, source.Span{Start: place, End: place}, format, args...)
}

func (p *problems) schema(file string, found []schema.Problem) {
	for _, problem := range found {
		message := problem.Message
		if problem.Hint != "" {
			message += " (" + problem.Hint + ")"
		}
		p.add(file, problem.Span, "%s", message)
	}
}

// err joins what was collected, in the order of files and places.
func (p *problems) err() error {
	slices.SortStableFunc(p.list, func(a, b *source.Error) int {
		return cmp.Or(cmp.Compare(a.Name, b.Name), cmp.Compare(a.Span.Start.Line, b.Span.Start.Line), cmp.Compare(a.Span.Start.Column, b.Span.Start.Column))
	})
	errs := make([]error, len(p.list))
	for i, e := range p.list {
		errs[i] = e
	}
	return errors.Join(errs...)
}
