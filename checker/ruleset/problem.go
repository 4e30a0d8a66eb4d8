package ruleset

import (
	"cmp"
	"errors"
	"fmt"
	"io/fs"
	"slices"

	"plumbrule/checker/source"
	"plumbrule/schema"
)

// problems collects everything wrong in one file, so that an author mends it
// in one go.
type problems struct {
	file string
	list []*source.Error
}

func (p *problems) add(span source.Span, format string, args ...any) {
	p.list = append(p.list, &source.Error{Name: p.file, Span: span, Message: fmt.Sprintf(format, args...)})
}

func (p *problems) schema(found []schema.Problem) {
	for _, problem := range found {
		message := problem.Message
		if problem.Hint != "" {
			message += " (" + problem.Hint + ")"
		}
		p.add(problem.Span, "%s", message)
	}
}

// err joins what was collected: the set's own file first, then its tables by
// name, each in the order of places.
func (p *problems) err() error {
	slices.SortStableFunc(p.list, func(a, b *source.Error) int {
		if a.Name != b.Name {
			if a.Name == p.file {
				return -1
			}
			if b.Name == p.file {
				return 1
			}
		}
		return cmp.Or(cmp.Compare(a.Name, b.Name), cmp.Compare(a.Span.Start.Offset, b.Span.Start.Offset))
	})
	errs := make([]error, len(p.list))
	for i, e := range p.list {
		errs[i] = e
	}
	return errors.Join(errs...)
}

// plain takes the path out of a file error, where the message names the file
// already.
func plain(err error) error {
	var wrapped *fs.PathError
	if errors.As(err, &wrapped) {
		return wrapped.Err
	}
	return err
}
