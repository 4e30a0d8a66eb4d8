package waive

import (
	"cmp"
	"errors"
	"fmt"
	"slices"

	"github.com/bmatcuk/doublestar/v4"

	"plumbrule/checker/catalog"
	"plumbrule/checker/source"
	"plumbrule/schema"
)

// List is one file of waivers. It does not change after Read.
type List struct {
	// Name is the file's name in reports.
	Name string
	// Dir is the directory from which the waivers' paths of designs count, in
	// the form in which designs are given to Apply.
	Dir     string
	doc     *source.Document
	waivers []waiver
}

// waiver is one entry of a list.
type waiver struct {
	check              string // never an alias
	design             string // pattern; empty for all
	place, fingerprint string
	sets               []string // empty for all
	by, reason         string
	until              Date // empty for no end
	document           string
	node               *source.Node
}

// Read reads a file of waivers for the checks of a catalog. Paths of designs in
// it count from dir. The error joins everything that is wrong, each with file,
// line and column.
func Read(name, dir string, data []byte, checks *catalog.Catalog) (*List, error) {
	doc, err := source.Read(name, data)
	if err != nil {
		return nil, fmt.Errorf("reading waivers: %w", err)
	}
	var found []*source.Error
	for _, p := range schema.Validate("waivers", doc) {
		found = append(found, p.In(name))
	}
	list := &List{Name: name, Dir: dir, doc: doc}
	if len(found) == 0 {
		for _, n := range doc.Root.Member("waivers").Value.Items {
			w, wrong := readWaiver(n, checks)
			for _, e := range wrong {
				e.Name = name
				found = append(found, e)
			}
			list.waivers = append(list.waivers, w)
		}
	}
	slices.SortStableFunc(found, func(a, b *source.Error) int { return cmp.Compare(a.Span.Start.Offset, b.Span.Start.Offset) })
	var errs []error
	for _, e := range found {
		errs = append(errs, e)
	}
	if err := errors.Join(errs...); err != nil {
		return nil, fmt.Errorf("reading waivers: %w", err)
	}
	return list, nil
}

func readWaiver(n *source.Node, checks *catalog.Catalog) (waiver, []*source.Error) {
	w := waiver{
		check: text(n, "check"), design: text(n, "design"), place: text(n, "place"), fingerprint: text(n, "fingerprint"),
		by: text(n, "by"), reason: text(n, "reason"), document: text(n, "document"), node: n,
	}
	var wrong []*source.Error
	refuse := func(key, format string, args ...any) {
		wrong = append(wrong, &source.Error{Span: n.Member(key).Value.Span, Message: fmt.Sprintf(format, args...)})
	}
	if check := checks.Find(w.check); check != nil {
		w.check = check.ID
	} else if near := catalog.Nearest(w.check, checks.IDs()); near != "" {
		refuse("check", "there is no check %q; did you mean %s?", w.check, near)
	} else {
		refuse("check", "there is no check %q", w.check)
	}
	if !doublestar.ValidatePattern(w.design) {
		refuse("design", "%q is no pattern of a path", w.design)
	}
	if m := n.Member("sets"); m != nil {
		for _, item := range m.Value.Items {
			w.sets = append(w.sets, item.Text)
		}
	}
	if m := n.Member("until"); m != nil {
		var err error
		if w.until, err = ParseDate(m.Value.Text); err != nil {
			refuse("until", "%v", err)
		}
	}
	return w, wrong
}

// Dated reports whether a waiver of the list has a last day, so that applying
// the list takes knowing which day it is.
func (l *List) Dated() bool {
	return slices.ContainsFunc(l.waivers, func(w waiver) bool { return w.until != "" })
}

func (w *waiver) expired(today Date) bool { return w.until != "" && w.until < today }

func text(n *source.Node, key string) string {
	if m := n.Member(key); m != nil {
		return m.Value.Text
	}
	return ""
}
