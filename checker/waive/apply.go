package waive

import (
	"fmt"
	"path/filepath"
	"slices"
	"strings"

	"github.com/bmatcuk/doublestar/v4"

	"plumbrule/checker/result"
	"plumbrule/checker/source"
)

// Use is what became of the waivers of a list on one design, in their order.
type Use []use

// use is what became of one waiver on one design.
type use struct {
	covers  bool // its check ran there, so that it had its chance
	excused int
	stands  int // findings that it would excuse, had it not run out
}

// Apply excuses the findings of a design that waivers name, and notes on those
// that stand again which waiver has run out. The path tells the design from
// others, as the list's Dir does; it is empty for one that is no file, which
// only waivers for all designs cover.
func (l *List) Apply(d *result.Design, path string, today Date) Use {
	used := make(Use, len(l.waivers))
	if len(d.Problems) > 0 {
		return used
	}
	path = l.relative(path)
	for i := range l.waivers {
		used[i].covers = l.waivers[i].covers(path) && l.waivers[i].ran(d)
	}
	for i := range d.Findings {
		r := &d.Findings[i]
		if r.Outcome == result.Outside {
			l.excuse(d, r, used, today)
		}
	}
	return used
}

// relative gives a design's path from the directory of the list.
func (l *List) relative(path string) string {
	if l.Dir == "" || path == "" {
		return filepath.ToSlash(path)
	}
	if relative, err := filepath.Rel(l.Dir, path); err == nil {
		path = relative
	}
	return filepath.ToSlash(path)
}

// excuse applies the first waiver of a finding that holds, else notes those
// that have run out.
func (l *List) excuse(d *result.Design, r *result.Result, used Use, today Date) {
	var over []int
	for i := range l.waivers {
		w := &l.waivers[i]
		if !used[i].covers || !w.names(d.Document, r) {
			continue
		}
		if w.expired(today) {
			over = append(over, i)
			continue
		}
		used[i].excused++
		r.Outcome = result.Excused
		r.Waiver = &result.Waiver{By: w.by, Reason: w.reason, Until: string(w.until), Document: w.document}
		r.Reason = describe(r.Waiver)
		return
	}
	for _, i := range over {
		w := &l.waivers[i]
		used[i].stands++
		r.Notes = append(slices.Clone(r.Notes), fmt.Sprintf("the waiver by %s ran out on %s (%s:%d)", w.by, w.until, l.Name, w.node.Span.Start.Line))
	}
}

// describe says on one line by whom, until when, where and why.
func describe(w *result.Waiver) string {
	line := "waived by " + w.By
	if w.Until != "" {
		line += " until " + w.Until
	}
	if w.Document != "" {
		line += ", " + w.Document
	}
	return strings.Join(strings.Fields(line+": "+w.Reason), " ")
}

func (w *waiver) covers(path string) bool {
	return w.design == "" || path != "" && doublestar.MatchUnvalidated(strings.TrimPrefix(w.design, "./"), path)
}

// ran reports whether the waiver's check came to an answer under one of the
// waiver's sets.
func (w *waiver) ran(d *result.Design) bool {
	answered := func(r result.Result) bool {
		return r.Check == w.check && w.under(r.Set) && r.Outcome != result.CouldNotRun
	}
	return slices.ContainsFunc(d.Findings, answered) || slices.ContainsFunc(d.Readings, answered)
}

func (w *waiver) under(set string) bool { return len(w.sets) == 0 || slices.Contains(w.sets, set) }

// names reports whether the waiver is for a finding, the design aside.
func (w *waiver) names(doc *source.Document, r *result.Result) bool {
	if r.Check != w.check || !w.under(r.Set) || w.fingerprint != "" && w.fingerprint != r.Fingerprint {
		return false
	}
	switch {
	case w.place == "":
		return true
	case len(r.At) == 0:
		return false
	case strings.HasPrefix(w.place, "/"):
		return r.At[0] == w.place || strings.HasPrefix(r.At[0], w.place+"/")
	}
	return marked(doc, r.At[0], w.place)
}

// marked reports whether a place lies in an element with the mark.
func marked(doc *source.Document, pointer, mark string) bool {
	for n := doc.Find(pointer); n != nil; n = n.Parent {
		if m := n.Member("mark"); m != nil && m.Value.Text == mark {
			return true
		}
	}
	return false
}
