package pages

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"plumbrule/checker/catalog"
	md "plumbrule/checker/markdown"
	"plumbrule/checker/result"
	"plumbrule/checker/ruleset"
)

// figures writes what the check asks of a set, and what each set gives it.
func (p *Pages) figures(page *md.Page, c *catalog.Check) {
	page.Heading(2, headFigures)
	with := p.setsWith(c.ID)
	switch {
	case len(c.Figures) == 0:
		page.Paragraph("It needs no figure; it runs in " + p.linkSets(checkPage(c.ID), with) + ".")
	case len(with) == 0:
		page.Paragraph("No set that comes with the program gives figures for it. A set of your own can.")
	}
	for _, f := range limitsFirst(c.Figures) {
		rows, none := p.given(c, &f), ""
		if len(rows) == 0 && len(with) > 0 {
			none = "No set that comes with the program gives it."
		}
		page.Paragraph(md.Code(f.Name), "("+asked(&f)+"):", md.Text(f.About)+".", none)
		page.Table([]string{"set", "value", "clause", "status", "note"}, rows)
	}
	p.classes(page, c, with)
	p.amendments(page, c, with)
}

// classes says which sets give the check a class of their own.
func (p *Pages) classes(page *md.Page, c *catalog.Check, with []*ruleset.Set) {
	for _, class := range result.Consequences() {
		var sets []*ruleset.Set
		for _, set := range with {
			if set.Check(c.ID).Class == class {
				sets = append(sets, set)
			}
		}
		if len(sets) > 0 {
			page.Paragraph("It is of the class " + md.Strong(string(class)) + " in " + p.linkSets(checkPage(c.ID), sets) + ".")
		}
	}
}

// limitsFirst puts what values are held against before what it depends on.
func limitsFirst(figures []catalog.Figure) []catalog.Figure {
	ordered := slices.Clone(figures)
	slices.SortStableFunc(ordered, func(a, b catalog.Figure) int {
		return cmp.Compare(min(len(b.Relation), 1), min(len(a.Relation), 1))
	})
	return ordered
}

// asked says what kind of figure a check asks for.
func asked(f *catalog.Figure) string {
	words := string(f.Kind)
	if f.Kind == catalog.Table {
		if f.Cells != "" {
			words += " of " + plural(f.Cells)
		}
		if len(f.Keys) > 0 {
			words += " by " + strings.ReplaceAll(strings.Join(f.Keys, ", "), "_", " ")
		}
	}
	if f.Relation != "" {
		words += ", " + string(f.Relation)
	}
	if f.Optional {
		words += ", optional"
	}
	return words
}

// plural names several values of a kind.
func plural(kind catalog.Kind) string {
	switch kind {
	case catalog.Words:
		return string(kind)
	default:
		return string(kind) + "s"
	}
}

// setsWith gives the sets that take part in a check.
func (p *Pages) setsWith(id string) []*ruleset.Set {
	var list []*ruleset.Set
	for _, set := range p.sets {
		if set.Check(id) != nil {
			list = append(list, set)
		}
	}
	return list
}

// given has a row for each set that gives the figure itself, or for several that
// give the same. Sets that take it over from another are named under the tables.
func (p *Pages) given(c *catalog.Check, asked *catalog.Figure) [][]string {
	from := checkPage(c.ID)
	var rows [][]string
	for _, set := range p.sets {
		check := set.Check(c.ID)
		if check == nil {
			continue
		}
		f := check.Figure(asked.Name)
		if f == nil || !owns(set, f) {
			continue
		}
		row := []string{link(md.Code(set.ID), from, setPage(set.ID)), value(from, set, f), md.Text(f.Clause), standing(f), notes(f)}
		same := func(other []string) bool { return slices.Equal(other[1:], row[1:]) }
		if i := slices.IndexFunc(rows, same); i >= 0 {
			rows[i][0] += ", " + row[0]
			continue
		}
		rows = append(rows, row)
	}
	return rows
}

// owns reports whether a set gives the figure itself, or cells of it, and does
// not take all of it over from the set that it extends.
func owns(set *ruleset.Set, f *ruleset.Figure) bool {
	return f.Set == set.ID || f.Table != nil && slices.ContainsFunc(f.Table.Amended(), func(c ruleset.Cell) bool { return c.Set == set.ID })
}

// value gives a figure as its set writes it; a table by a link to it.
func value(from string, set *ruleset.Set, f *ruleset.Figure) string {
	if f.Table != nil {
		if f.Set != set.ID {
			return fmt.Sprintf("%d cells changed in the table of %s", len(f.Table.Amended()), md.Code(f.Set))
		}
		cells := f.Table.Cells()
		return link(md.Text(f.Table.Title), from, setPage(set.ID)+"#"+tableAnchor(f.Table)) + ", " + count(cells)
	}
	groups, ok := f.Value.(map[string]any)
	if !ok || f.Kind != catalog.Groups {
		return md.Text(f.Text)
	}
	var names []string
	for name := range groups {
		names = append(names, name)
	}
	slices.SortFunc(names, func(a, b string) int {
		return cmp.Or(cmp.Compare(strings.Index(f.Text, a), strings.Index(f.Text, b)), cmp.Compare(a, b))
	})
	for i, name := range names {
		names[i] = md.Strong(md.Text(name)) + ": " + md.Text(members(groups[name]))
	}
	return strings.Join(names, "; ")
}

func members(list any) string {
	values, _ := list.([]any)
	var texts []string
	for _, v := range values {
		texts = append(texts, fmt.Sprint(v))
	}
	return strings.Join(texts, ", ")
}

// count says how many cells there are, and how far they can be trusted.
func count(cells []ruleset.Cell) string {
	n := map[ruleset.Status]int{}
	for i := range cells {
		n[cells[i].Status]++
	}
	var parts []string
	for _, status := range []ruleset.Status{ruleset.Published, ruleset.CommonPractice, ruleset.Recalled} {
		if n[status] > 0 {
			parts = append(parts, fmt.Sprintf("%d %s", n[status], status))
		}
	}
	if len(cells) == 1 {
		return "1 cell: " + parts[0]
	}
	return fmt.Sprintf("%d cells: %s", len(cells), strings.Join(parts, ", "))
}

// standing says how far a figure can be trusted, and where it was read. That of
// a table stands with its cells.
func standing(f *ruleset.Figure) string {
	switch {
	case f.Table != nil:
		return "by cell"
	case f.Source != "":
		return string(f.Status) + ": " + md.Text(f.Source)
	}
	return string(f.Status)
}

func notes(f *ruleset.Figure) string {
	var parts []string
	for _, part := range []string{f.Amended(), f.Note} {
		if part != "" {
			parts = append(parts, md.Text(part))
		}
	}
	return strings.Join(parts, "; ")
}

// amendments names the sets that change nothing of the check, and those that
// take it out.
func (p *Pages) amendments(page *md.Page, c *catalog.Check, with []*ruleset.Set) {
	from := checkPage(c.ID)
	same := map[string][]*ruleset.Set{}
	var bases, lines []string
	for _, set := range with {
		check := set.Check(c.ID)
		switch {
		case check.Off != nil:
			lines = append(lines, link(md.Code(set.ID), from, setPage(set.ID))+": "+md.Text(check.Off.String()))
		case set.Extends != "" && !gives(set, c.ID):
			base := p.giver(set, c.ID)
			if same[base] == nil {
				bases = append(bases, base)
			}
			same[base] = append(same[base], set)
		}
		if check.Note != "" && set.Extends == "" {
			lines = append(lines, link(md.Code(set.ID), from, setPage(set.ID))+": "+md.Text(check.Note))
		}
	}
	page.List(lines...)
	for _, base := range bases {
		page.Paragraph("The same as in "+md.Code(base)+", which they amend elsewhere:", p.linkSets(from, same[base])+".")
	}
}

// gives reports whether a set gives a figure of a check itself.
func gives(set *ruleset.Set, check string) bool {
	c := set.Check(check)
	return c != nil && slices.ContainsFunc(c.Figures, func(f ruleset.Figure) bool { return owns(set, &f) })
}

// giver gives the nearest set below one that gives a figure of a check itself,
// or the last of the chain.
func (p *Pages) giver(set *ruleset.Set, check string) string {
	for below := p.setOf(set.Extends); below != nil; below = p.setOf(below.Extends) {
		if below.Extends == "" || gives(below, check) {
			return below.ID
		}
	}
	return set.Extends
}

func (p *Pages) linkSets(from string, sets []*ruleset.Set) string {
	var names []string
	for _, set := range sets {
		names = append(names, link(md.Code(set.ID), from, setPage(set.ID)))
	}
	return strings.Join(names, ", ")
}
