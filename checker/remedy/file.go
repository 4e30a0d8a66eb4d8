package remedy

import (
	"cmp"
	"strconv"

	"plumbrule/checker/edit"
	"plumbrule/checker/measure"
	"plumbrule/checker/result"
	"plumbrule/checker/source"
)

// file writes the changes that hold into the findings. A change stands under
// every finding that it clears, and of several changes of one field the
// smallest that answers all findings on it.
func (s *search) file() {
	var held []*ladder
	for i := range s.ladders {
		if s.ladders[i].held != nil {
			held = append(held, &s.ladders[i])
		}
	}
	for i := range s.subjects {
		of := &s.subjects[i]
		for _, l := range s.chosen(of, held) {
			remedy := result.Remedy{Changes: l.by.typed(s.design.Document), Clears: s.cleared(l)}
			for _, k := range of.findings {
				f := &s.design.Findings[k]
				remedy.Text = l.by.text(of, s.design, &l.held.design, func(text string) string { return s.say(f.Set, text) }) + s.burden(f)
				f.Remedies = append(f.Remedies, remedy)
			}
		}
	}
}

// burden remarks on a change to the structure of a platform that carries more
// than the loads that checks reckon with.
func (s *search) burden(f *result.Result) string {
	if f.Consequence != result.Structure {
		return ""
	}
	for node := s.design.Document.Find(first(f.At)); node != nil; node = node.Parent {
		if m := node.Member("loads"); m != nil && len(m.Value.Items) > 0 {
			return "; the loads described on the platform are not counted"
		}
	}
	return ""
}

// chosen picks the changes for one subject: for each field one, those first that
// were looked for on its account.
func (s *search) chosen(of *subject, held []*ladder) []*ladder {
	var list []*ladder
	consider := func(l *ladder) {
		for i, other := range list {
			if order, alike := l.by.compare(other.by, s.design.Document); alike || l.held == other.held {
				if order < 0 {
					list[i] = l
				}
				return
			}
		}
		list = append(list, l)
	}
	for _, own := range []bool{true, false} {
		for _, l := range held {
			if (l.subject == of) == own && s.inside(of, l.by, l.held) {
				consider(l)
			}
		}
	}
	return list[:min(len(list), perFinding)]
}

// cleared lists the findings that a change brings inside, in their order.
func (s *search) cleared(l *ladder) []result.Cleared {
	var list []result.Cleared
	for i := range s.subjects {
		of := &s.subjects[i]
		if !s.inside(of, l.by, l.held) {
			continue
		}
		for _, k := range of.findings {
			f := &s.design.Findings[k]
			list = append(list, result.Cleared{
				Check: f.Check, Title: f.Title, Set: f.Set, At: first(f.At), Mark: f.Mark, Span: f.Span, Fingerprint: f.Fingerprint,
			})
		}
	}
	return list
}

// compare says which of two changes of the same field moves it less. Changes of
// different fields, and those that are no question of more or less, cannot be
// compared.
func (r *rung) compare(other *rung, doc *source.Document) (order int, alike bool) {
	a, ok := r.changes[0].distance(doc)
	b, too := other.changes[0].distance(doc)
	if !ok || !too || r.field() != other.field() {
		return 0, false
	}
	return cmp.Or(cmp.Compare(a, b), cmp.Compare(len(r.changes), len(other.changes))), true
}

// distance is how far a change moves a length, a number or a size.
func (c *change) distance(doc *source.Document) (int64, bool) {
	old := doc.Find(c.pointer)
	if old == nil {
		return 0, false
	}
	for _, size := range []func(string) (int64, bool){ofLength, ofCount, ofSection} {
		from, ok := size(old.Text)
		to, too := size(c.to.Text)
		if ok && too {
			return max(to-from, from-to), true
		}
	}
	return 0, false
}

func ofLength(text string) (int64, bool) {
	l, _, err := measure.ParseLength(text)
	return int64(l), err == nil
}

func ofCount(text string) (int64, bool) {
	n, err := strconv.ParseInt(text, 10, 64)
	return n, err == nil
}

// ofSection is the section of a size in square millimetres.
func ofSection(text string) (int64, bool) {
	if size, err := measure.ParseNominal(text); err == nil {
		return int64(size.Thickness/measure.Millimetre) * int64(size.Depth/measure.Millimetre), true
	}
	size, _, err := measure.ParseActual(text)
	return int64(size.Thickness/measure.Millimetre) * int64(size.Depth/measure.Millimetre), err == nil
}

// typed gives the changes of a rung that was tried, as they are typed in.
func (r *rung) typed(doc *source.Document) []result.Change {
	list := make([]result.Change, len(r.changes))
	for i, c := range r.changes {
		list[i] = result.Change{Pointer: c.pointer, To: edit.Written(c.to)}
		if old := doc.Find(c.pointer); old != nil {
			list[i].From = edit.Written(old)
		}
		if places, err := edit.Replacements(doc, []edit.Edit{{Pointer: c.pointer, Value: c.to}}); err == nil {
			list[i].Span, list[i].Text = places[0].Span, places[0].Text
		}
	}
	return list
}
