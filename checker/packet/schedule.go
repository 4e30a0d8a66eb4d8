package packet

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"plumbrule/checker/report/content"
	"plumbrule/checker/result"
)

// schedule is every answer of every check of every set, by topic.
func (b *builder) schedule() Section {
	s := Section{
		ID: "schedule", Title: "Schedule of checks",
		Notes: []string{"Every check of every rule set of the title block, on every subject that it found, with what was measured and how far that is from the limit. Checks without anything to look at stand here with their reason."},
	}
	order := map[string]int{}
	for i := range b.sets {
		order[b.sets[i].ID] = i
	}
	rows := slices.Clone(b.results)
	slices.SortStableFunc(rows, func(x, y *result.Result) int {
		return cmp.Or(
			strings.Compare(topic(x), topic(y)), strings.Compare(x.Check, y.Check),
			cmp.Compare(order[x.Set], order[y.Set]), cmp.Compare(x.Span.Start.Offset, y.Span.Start.Offset),
		)
	})
	for len(rows) > 0 {
		name := topic(rows[0])
		end := slices.IndexFunc(rows, func(r *result.Result) bool { return topic(r) != name })
		if end < 0 {
			end = len(rows)
		}
		t := &Table{Caption: "Checks of the topic " + name, Columns: []Column{
			{"Check and subject", 3.1}, {"Measured", 0.95}, {"Limit", 1.25}, {"Margin", 1.15}, {"Set and clause", 1.55}, {"Figure", 1.05}, {"Outcome", 0.95},
		}}
		for _, r := range rows[:end] {
			t.Rows = append(t.Rows, b.scheduled(r))
		}
		s.Parts = append(s.Parts, Part{Title: capital(name), Table: t})
		rows = rows[end:]
	}
	return s
}

// topic is the part of a check's id before the slash.
func topic(r *result.Result) string {
	t, _, _ := strings.Cut(r.Check, "/")
	return t
}

// scheduled is the row of one result.
func (b *builder) scheduled(r *result.Result) Row {
	cells := []Cell{b.subject(r)}
	if r.Outcome == result.NotShown || r.Outcome == result.DoesNotApply || r.Outcome == result.CouldNotRun {
		cells = append(cells, Cell{Text: orDash(instead(r)), Span: 3})
	} else {
		cells = append(cells, text(measured(r)), limit(r), text(content.Margin(r)))
	}
	clause := Cell{Text: r.Set, More: content.Clause(r)}
	if r.Row != "" {
		clause.More = strings.TrimPrefix(clause.More+"; row "+r.Row, "; ")
	}
	outcome := Cell{Text: string(r.Outcome)}
	if n := b.numbers[r]; n > 0 {
		outcome.Item, outcome.Strong = n, true
	}
	return Row{Cells: append(cells, clause, b.status(r), outcome)}
}

// limit is a limit with that of the standard below it, where it is printed in
// other units there.
func limit(r *result.Result) Cell {
	words, standard := content.Limits(r)
	c := text(words)
	c.More = standard
	return c
}

// subject names check and element.
func (b *builder) subject(r *result.Result) Cell {
	var more []string
	if where := content.Where(r.See, r.Mark); where != "" {
		more = append(more, where)
	}
	switch {
	case r.Message != "" && r.Message != r.Title && r.Outcome != result.CouldNotRun:
		more = append(more, r.Message)
	case len(r.At) > 0:
		more = append(more, place(r.At[0]))
	}
	words := strings.Join(more, ": ")
	if e := content.Engineered(r); e != "" && !strings.Contains(words, r.Engineered.Limit.Text) {
		words += "; by engineering " + e
	}
	return Cell{Text: content.Title(r), More: words}
}

// instead stands where there is no value: the reason, or the field that would
// answer.
func instead(r *result.Result) string {
	if r.Outcome == result.NotShown {
		return "to be shown: " + r.Needs
	}
	return r.Reason
}

// status is how far a figure can be trusted, with the number of its source.
func (b *builder) status(r *result.Result) Cell {
	c := text(r.Status)
	if r.Source != "" {
		c.More = fmt.Sprintf("source %d", b.source(r))
	}
	if r.Amended != "" {
		c.More = strings.TrimPrefix(c.More+"; "+r.Amended, "; ")
	}
	return c
}

// capital makes the first letter large, without a full stop.
func capital(s string) string {
	out := content.Sentence(s)
	if !strings.HasSuffix(s, ".") {
		out = strings.TrimSuffix(out, ".")
	}
	return out
}
