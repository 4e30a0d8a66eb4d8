package ruleset

import (
	"maps"
	"slices"

	"plumbrule/checker/catalog"
	"plumbrule/checker/source"
)

// inherit gives an overlay everything that it does not say itself.
func (l *loader) inherit(set *Set, root *source.Node, base *Set) {
	set.Extends = base.ID
	if set.ID == base.ID {
		l.problems.add(root.Member("set").Value.Span, "the set has the id of the one that it extends, %s", base.File)
	}
	if root.Member("system") == nil {
		set.System = base.System
	}
	if set.Scope == "" {
		set.Scope = base.Scope
	}
	set.NotCovered = slices.Concat(base.NotCovered, set.NotCovered)
	for _, s := range base.Sources {
		if _, hidden := l.sources[s.ID]; !hidden {
			l.sources[s.ID] = s.Title
			set.Sources = append(set.Sources, s)
		}
	}
	set.Checks = slices.Clone(base.Checks)
	for i := range set.Checks {
		set.Checks[i].Figures = slices.Clone(set.Checks[i].Figures)
	}
}

// change applies what an overlay says of one check: takes it out, brings it
// back, changes figures of it, or adds it whole.
func (l *loader) change(set *Set, declared *catalog.Check, m source.Member) {
	off, existing := m.Value.Member("off"), set.Check(declared.ID)
	out := off != nil && off.Value.Text == "true"
	switch {
	case existing == nil && out:
		l.problems.add(m.KeySpan, "check %s cannot be taken out, the set below does not have it", declared.ID)
	case existing == nil:
		l.addCheck(set, declared, m)
	case out:
		existing.Off = &Off{By: l.by, Clause: text(m.Value, "clause"), Reason: text(m.Value, "reason")}
	case existing.Off != nil && off == nil:
		l.problems.add(m.KeySpan, "check %s was %s; write off: false to have it again", declared.ID, existing.Off)
	default:
		existing.Off = nil
		l.changeCheck(existing, declared, m)
	}
}

// addCheck adds a check that the set below does not have.
func (l *loader) addCheck(set *Set, declared *catalog.Check, m source.Member) {
	for _, key := range []string{"clause", "figures"} {
		if m.Value.Member(key) == nil {
			l.problems.add(m.KeySpan, "the set below does not have check %s, so that %q must stand here", declared.ID, key)
			return
		}
	}
	for _, g := range m.Value.Member("figures").Value.Members {
		if g.Value.Member("value") == nil && g.Value.Member("table") == nil {
			l.problems.add(g.KeySpan, "the set below gives no figure %q to change, so that its value must stand here", g.Key)
			return
		}
	}
	c := l.check(declared, m)
	for i := range c.Figures {
		c.Figures[i].Amends = &Amends{By: l.by}
	}
	set.Checks = append(set.Checks, c)
}

// changeCheck changes clause, remark, class and figures of a check, and adds
// such figures as it may have besides.
func (l *loader) changeCheck(c *Check, declared *catalog.Check, m source.Member) {
	if clause := text(m.Value, "clause"); clause != "" {
		c.Clause = clause
	}
	if note := text(m.Value, "note"); note != "" {
		c.Note = note
	}
	if class := class(m.Value); class != "" {
		c.Class = class
	}
	given := m.Value.Member("figures")
	if given == nil {
		return
	}
	l.knownFigures(declared, given.Value)
	for i := range declared.Figures {
		g := given.Value.Member(declared.Figures[i].Name)
		if g == nil {
			continue
		}
		f, ok := l.changeFigure(&declared.Figures[i], c.Figure(g.Key), *g, text(m.Value, "clause"))
		if !ok {
			continue
		}
		if old := c.Figure(g.Key); old != nil {
			*old = f
		} else {
			c.Figures = append(c.Figures, f)
		}
	}
	order := func(f Figure) int {
		return slices.IndexFunc(declared.Figures, func(d catalog.Figure) bool { return d.Name == f.Name })
	}
	slices.SortFunc(c.Figures, func(a, b Figure) int { return order(a) - order(b) })
}

// changeFigure gives the figure as the overlay has it. The old one is nil where
// the set below gives none.
func (l *loader) changeFigure(declared *catalog.Figure, old *Figure, m source.Member, clause string) (Figure, bool) {
	if own := text(m.Value, "clause"); own != "" {
		clause = own
	}
	switch {
	case clause == "" && m.Value.Member("table") == nil && m.Value.Member("cells") == nil: // a table says its own
		l.problems.add(m.KeySpan, "a changed figure names the clause that changes it, here or for the check")
	case m.Value.Member("value") != nil || m.Value.Member("table") != nil:
		f, ok := l.figure(declared, m, clause)
		if ok {
			f.Amends = l.amends(old)
		}
		return f, ok
	case old == nil:
		l.problems.add(m.KeySpan, "the set below gives no figure %q to change, so that its value must stand here", m.Key)
	case m.Value.Member("cells") != nil:
		return l.changeCells(old, m, clause)
	default:
		return l.confirm(old, m, clause), true
	}
	return Figure{}, false
}

// confirm keeps the value of a figure and says anew where it stands.
func (l *loader) confirm(old *Figure, m source.Member, clause string) Figure {
	f := *old
	f.Set, f.Clause, f.Amends = l.id, clause, l.amends(old)
	if m.Value.Member("status") != nil {
		if f.Table != nil {
			l.problems.add(m.KeySpan, "the status of a table's cells stands in the table")
		}
		f.Status, f.Source = l.trust(m.Value, l.sources, &l.problems)
	}
	if note := text(m.Value, "note"); note != "" {
		f.Note = note
	}
	return f
}

func (l *loader) amends(old *Figure) *Amends {
	if old == nil {
		return &Amends{By: l.by}
	}
	return &Amends{By: l.by, Text: old.Text, Clause: old.Clause, Set: old.Set, Before: old.Amends}
}

// changeCells changes single cells of a table, which stays as it is for those
// who share it.
func (l *loader) changeCells(old *Figure, m source.Member, clause string) (Figure, bool) {
	f := *old
	if f.Table == nil {
		l.problems.add(m.Value.Member("cells").KeySpan, "figure %q is a %s, and has no cells", f.Name, f.Kind)
		return f, false
	}
	t := *f.Table
	t.cells = slices.Clone(t.cells)
	changed := map[int]bool{}
	for _, n := range m.Value.Member("cells").Value.Items {
		at, ok := l.find(&t, n.Member("at").Value)
		if !ok {
			continue
		}
		if changed[at] {
			l.problems.add(n.Member("at").Value.Span, "the cell %s is changed twice", t.describe(at))
			continue
		}
		changed[at] = true
		own := clause
		if c := text(n, "clause"); c != "" {
			own = c
		}
		if own == "" {
			l.problems.add(n.Span, "a changed cell names the clause that changes it, here, for the figure or for the check")
		}
		t.cells[at] = l.changeCell(&t, at, n, old, own)
	}
	f.Table, f.Value, f.Status = &t, t.data(), t.status()
	return f, true
}

// changeCell gives the cell as the overlay has it.
func (l *loader) changeCell(t *Table, at int, n *source.Node, of *Figure, clause string) Cell {
	old := t.cells[at]
	r := tableReader{loader: l, problems: &l.problems, sources: maps.Clone(l.sources)}
	c := r.cell(t.Kind, n, trusted{})
	c.Row, c.Clause = old.Row, clause
	c.Amends = &Amends{By: l.by, Text: old.Text, Clause: old.Clause, Set: of.Set, Before: old.Amends}
	if old.Clause == "" {
		c.Amends.Clause = of.Clause
	}
	if old.Set != "" {
		c.Amends.Set = old.Set
	}
	c.Set = l.id
	return c
}

// find gives the index of the cell that an overlay names by the values of all
// keys.
func (l *loader) find(t *Table, at *source.Node) (int, bool) {
	if len(at.Items) != len(t.Keys) {
		l.problems.add(at.Span, "the cell is named by %d values, the table has the keys %s", len(at.Items), t.keyNames())
		return 0, false
	}
	index := 0
	for i, n := range at.Items {
		key := &t.Keys[i]
		before := len(l.problems.list)
		v := (&tableReader{loader: l, problems: &l.problems}).value(key, n)
		if len(l.problems.list) > before {
			return 0, false
		}
		step := key.position(v)
		if step < 0 {
			l.problems.add(n.Span, "the table has no %s %s; it has %s", key.Name, n.Text, key.values())
			return 0, false
		}
		index = index*len(key.Texts) + step
	}
	return index, true
}
