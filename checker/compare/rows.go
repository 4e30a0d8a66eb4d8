package compare

import (
	"slices"
	"strconv"
	"strings"

	"plumbrule/checker/result"
	"plumbrule/checker/source"
)

// line is a row while it is put together: for each set its result, or nil.
type line []*subject

// tabulate lays the results of the sets beside each other.
func tabulate(d *result.Design, sets []result.Set) []line {
	all := subjects(d, pointer)
	var lines []line
	for i := range sets {
		var own []*subject
		for _, s := range all {
			if s.Set == sets[i].ID {
				s.set = "" // whichever set a counterpart is of
				own = append(own, s)
			}
		}
		reps := make([]*subject, len(lines))
		at := map[*subject]int{}
		for k := range lines {
			reps[k] = lines[k].first()
			at[reps[k]] = k
		}
		found := matched(reps, own, pointer)
		for _, s := range own {
			if rep := found[s]; rep != nil {
				lines[at[rep]][i] = s
				continue
			}
			fresh := make(line, len(sets))
			fresh[i] = s
			lines = append(lines, fresh)
		}
	}
	return fill(lines)
}

func (l line) first() *subject {
	for _, s := range l {
		if s != nil {
			return s
		}
	}
	return nil
}

// value reports whether a result came of a value held against a limit.
func (s *subject) value() bool {
	return s.Outcome == result.Outside || s.Outcome == result.Within || s.Outcome == result.Excused
}

// finish makes a row of a line.
func (l line) finish(given [][]Given) Row {
	first := l.first()
	row := Row{
		Check: first.Check, Title: first.Title, Consequence: first.Consequence, Count: 1,
		Mark: first.Mark, See: first.See, Pointer: first.first(), Span: first.Span,
	}
	if len(first.nodes) > 0 && first.nodes[0].Parent != nil {
		row.Name = name(first.nodes[0])
	}
	for i, s := range l {
		cell := Cell{}
		if s != nil {
			cell.Result = s.Result
		}
		if k := slices.IndexFunc(given[i], func(g Given) bool { return g.Check == first.Check }); k >= 0 {
			cell.Has = true
			if s != nil && s.Outcome == result.NotShown {
				cell.Figures = given[i][k].Figures
			}
		}
		if s != nil && s.Consequence.Rank() < row.Consequence.Rank() { // sets may take a check for more or less grave
			row.Consequence = s.Consequence
		}
		row.Cells = append(row.Cells, cell)
	}
	row.Difference = row.differ()
	row.trim()
	return row
}

// refer says where sets that are silent on the row have put what they say.
func (r *Row) refer(lines []line) {
	for i := range r.Cells {
		if !r.Cells[i].Has || r.Cells[i].Result != nil {
			continue
		}
		for _, l := range lines {
			if s := l[i]; s != nil && s.Check == r.Check && !slices.Contains(r.Cells[i].Elsewhere, s.Span.Start) {
				r.Cells[i].Elsewhere = append(r.Cells[i].Elsewhere, s.Span.Start)
			}
		}
		slices.SortFunc(r.Cells[i].Elsewhere, func(a, b source.Position) int { return a.Offset - b.Offset })
	}
}

// trim keeps of the figures those by which a row of that difference differs.
func (r *Row) trim() {
	values := map[string]map[string]bool{}
	for i := range r.Cells {
		for _, f := range r.Cells[i].Figures {
			if values[f.Name] == nil {
				values[f.Name] = map[string]bool{}
			}
			values[f.Name][f.Value] = true
		}
	}
	for i := range r.Cells {
		var kept []Figure
		for _, f := range r.Cells[i].Figures {
			if r.Difference == InLimit && len(values[f.Name]) > 1 {
				kept = append(kept, f)
			}
		}
		r.Cells[i].Figures = kept
	}
}

// differ says in what the cells of a row differ most.
func (r *Row) differ() Difference {
	outcomes, limits := map[result.Outcome]bool{}, map[string]bool{}
	lacking := false
	for i := range r.Cells {
		cell := &r.Cells[i]
		if !cell.Has {
			lacking = true
			continue
		}
		outcomes[outcome(cell.Result)] = true
		limits[cell.limit()] = true
	}
	switch {
	case len(outcomes) > 1:
		return InOutcome
	case len(limits) > 1:
		return InLimit
	case lacking:
		return InCheck
	}
	return None
}

// limit tells limits apart: by value, unit and relation where a value was held
// against one, by the figures of the check where none was. Units are those of
// the design, so that 36 in and 914.4 mm are one limit. The value belongs to it,
// as sets may measure one thing in two ways: a span clear or between centers.
func (c *Cell) limit() string {
	if c.Result != nil && c.Result.Limit != nil {
		return string(c.Result.Limit.Relation) + " " + exact(c.Result.Limit) + " " + exact(c.Result.Have)
	}
	var figures []string
	for _, f := range c.Figures {
		figures = append(figures, f.Name+" "+f.Value)
	}
	return strings.Join(figures, "\x00")
}

// exact writes a value as finely as results give it.
func exact(v *result.Value) string {
	switch {
	case v == nil:
		return ""
	case v.Unit == "":
		return v.Text
	}
	return strconv.FormatFloat(v.Number, 'f', 5, 64) + " " + v.Unit
}

// alike reports whether two rows say the same of two subjects at one place, as
// of posts that share one description.
func (r *Row) alike(o *Row) bool {
	if r.Check != o.Check || r.Pointer != o.Pointer || r.Difference != o.Difference {
		return false
	}
	return slices.EqualFunc(r.Cells, o.Cells, func(a, b Cell) bool {
		x, y := a.Result, b.Result
		if x == nil || y == nil {
			return x == y && a.Has == b.Has
		}
		return x.Outcome == y.Outcome && x.Clause == y.Clause && x.Status == y.Status && statement(x) == statement(y) && x.Reason == y.Reason && x.Needs == y.Needs &&
			exact(x.Have) == exact(y.Have) && exact(x.Limit) == exact(y.Limit) && (x.Limit != nil || x.Message == y.Message)
	})
}

// statement is the place where the design states a limit itself.
func statement(r *result.Result) string {
	if r.Listing == nil {
		return ""
	}
	return r.Listing.Pointer
}
