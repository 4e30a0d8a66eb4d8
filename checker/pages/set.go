package pages

import (
	"fmt"
	"slices"
	"strings"

	"plumbrule/checker/catalog"
	"plumbrule/checker/caution"
	md "plumbrule/checker/markdown"
	"plumbrule/checker/report/content"
	"plumbrule/checker/result"
	"plumbrule/checker/ruleset"
)

// readIn is the heading of a set's sources.
const readIn = "Read in"

// set writes the page of a set.
func (p *Pages) set(set *ruleset.Set) string {
	var page md.Page
	page.Comment(remark)
	page.Heading(1, set.Title)
	n := set.Summary().Figures
	page.Paragraph(md.Text(set.Scope))
	head := []string{
		"named with " + md.Code("--set "+set.ID),
		"edition: " + md.Text(set.Edition),
		"publisher: " + md.Text(set.Publisher),
		"written in " + set.System.String() + " units",
	}
	if set.Place != "" {
		head = append(head, "place: "+md.Text(set.Place))
	}
	if set.Extends != "" {
		head = append(head, "extends "+p.chain(set))
	}
	page.List(append(head, fmt.Sprintf("%d checks with %d published figures, %d of common practice and %d recalled; every cell of a table is a figure",
		len(set.Checks), n.Published, n.CommonPractice, n.Recalled))...)
	page.Paragraph(md.Text(caution.Decides().In(set.Wording()))+" *Published* figures were read in print, in the source named;",
		"*common practice* is what the trade does without a document; *recalled* figures are from memory and were not read.")
	if set.Extends != "" {
		p.changes(&page, set)
	}
	page.Heading(2, "Not covered")
	var gaps []string
	for _, gap := range set.NotCovered {
		gaps = append(gaps, md.Text(gap))
	}
	page.List(gaps...)
	if set.Extends == "" {
		p.allFigures(&page, set)
	}
	tables(&page, set)
	sources(&page, set)
	return page.String()
}

// chain names the sets below a set, the nearest first.
func (p *Pages) chain(set *ruleset.Set) string {
	var names []string
	for below := p.setOf(set.Extends); below != nil; below = p.setOf(below.Extends) {
		names = append(names, link(md.Code(below.ID), setPage(set.ID), setPage(below.ID)))
	}
	return strings.Join(names, ", which extends ")
}

// allFigures writes every figure of a set by topic.
func (p *Pages) allFigures(page *md.Page, set *ruleset.Set) {
	page.Heading(2, "Figures")
	for _, topic := range p.topics() {
		var rows [][]string
		for i := range set.Checks {
			if c := &set.Checks[i]; strings.HasPrefix(c.ID, topic+"/") {
				rows = append(rows, p.figureRows(set, c)...)
			}
		}
		if len(rows) > 0 {
			page.Heading(3, topic)
			page.Table([]string{"check", "figure", "value", "clause", "status", "note"}, rows)
		}
	}
}

// figureRows has a row for each figure of a check, or one for a check that needs
// none.
func (p *Pages) figureRows(set *ruleset.Set, c *ruleset.Check) [][]string {
	from := setPage(set.ID)
	name := link(md.Code(c.ID), from, checkPage(c.ID))
	if len(c.Figures) == 0 {
		return [][]string{{name, "", "", md.Text(c.Clause), "", md.Text(c.Note)}}
	}
	var rows [][]string
	for i := range c.Figures {
		f := &c.Figures[i]
		rows = append(rows, []string{name, md.Code(f.Name), p.limit(from, set, c.ID, f), md.Text(f.Clause), trust(set, f.Status, f.Source, f.Table), notes(f)})
	}
	if c.Note != "" {
		rows[0][5] = strings.TrimPrefix(rows[0][5]+"; "+md.Text(c.Note), "; ")
	}
	if c.Class != "" {
		rows[0][5] = strings.TrimSuffix("class "+md.Strong(string(c.Class))+"; "+rows[0][5], "; ")
	}
	return rows
}

// limit gives a figure with the relation in which the check holds values
// against it.
func (p *Pages) limit(from string, set *ruleset.Set, check string, f *ruleset.Figure) string {
	text := value(from, set, f)
	if declared := p.checks.Find(check); declared != nil && f.Table == nil {
		if asked := declared.Figure(f.Name); asked != nil && asked.Relation != "" && f.Kind != catalog.Flag {
			return string(asked.Relation) + " " + text
		}
	}
	return text
}

// trust says how far a figure can be trusted, with the short name of its source.
func trust(set *ruleset.Set, status ruleset.Status, source string, table *ruleset.Table) string {
	switch {
	case table != nil:
		return "by cell"
	case source == "":
		return string(status)
	}
	return string(status) + ": " + short(set, source)
}

// short points to a source by its short name, where the set has one.
func short(set *ruleset.Set, title string) string {
	for _, s := range set.Sources {
		if s.Title == title {
			return md.Link(md.Text(s.ID), "#"+md.Anchor(readIn))
		}
	}
	return md.Text(title)
}

// changes writes what a set has in place of what it extends, the changes of the
// sets between them included.
func (p *Pages) changes(page *md.Page, set *ruleset.Set) {
	page.Heading(2, "What it changes")
	from := setPage(set.ID)
	var rows [][]string
	var other []string
	for i := range set.Checks {
		c := &set.Checks[i]
		name := link(md.Code(c.ID), from, checkPage(c.ID))
		if c.Off != nil {
			other = append(other, name+" is "+md.Text(c.Off.String()))
		}
		if c.Class != "" && c.Class != p.classBelow(set, c.ID) {
			other = append(other, name+" is of the class "+md.Strong(string(c.Class)))
		}
		for k := range c.Figures {
			f := &c.Figures[k]
			if f.Amends != nil {
				rows = append(rows, []string{name, md.Code(f.Name), p.limit(from, set, c.ID, f), md.Text(f.Clause), trust(set, f.Status, f.Source, f.Table), notes(f)})
			}
			if f.Table != nil {
				rows = append(rows, cellRows(set, name, f)...)
			}
		}
	}
	page.Table([]string{"check", "figure", "value", "clause", "status", "note"}, rows)
	page.List(other...)
	page.Paragraph("All other figures are those of " + p.chain(set) + ".")
}

// classBelow is the class that a check has in the set that another one extends.
func (p *Pages) classBelow(set *ruleset.Set, check string) result.Consequence {
	if below := p.setOf(set.Extends); below != nil {
		if c := below.Check(check); c != nil {
			return c.Class
		}
	}
	return ""
}

// cellRows has a row for each cell that was changed.
func cellRows(set *ruleset.Set, check string, f *ruleset.Figure) [][]string {
	var rows [][]string
	for _, cell := range f.Table.Amended() {
		note := md.Text(cell.Amended())
		if cell.Note != "" {
			note += "; " + md.Text(cell.Note)
		}
		rows = append(rows, []string{check, md.Code(f.Name) + ": " + md.Text(cell.Row), md.Text(cell.Text), md.Text(cell.Clause), trust(set, cell.Status, cell.Source, nil), note})
	}
	return rows
}

// sources lists where figures of a set were read. A set that extends another
// lists its own only.
func sources(page *md.Page, set *ruleset.Set) {
	used := usedSources(set)
	var rows [][]string
	for _, s := range set.Sources {
		if slices.Contains(used, s.Title) {
			rows = append(rows, []string{md.Text(s.ID), md.Text(s.Title)})
		}
	}
	if len(rows) > 0 {
		page.Heading(2, readIn)
		page.Table([]string{"short", "source"}, rows)
	}
}

// usedSources gives the titles of the sources that the page names.
func usedSources(set *ruleset.Set) []string {
	var titles []string
	for i := range set.Checks {
		for _, f := range set.Checks[i].Figures {
			if set.Extends == "" || f.Amends != nil {
				titles = append(titles, f.Source)
			}
			if f.Table == nil {
				continue
			}
			cells := f.Table.Amended()
			if f.Set == set.ID {
				cells = f.Table.Cells()
			}
			for _, cell := range cells {
				titles = append(titles, cell.Source)
			}
		}
	}
	return titles
}

// title gives a title as a phrase with a capital.
func title(s string) string { return strings.TrimSuffix(content.Sentence(s), ".") }

// topics gives the topics of all checks in order.
func (p *Pages) topics() []string {
	var list []string
	for _, c := range p.checks.Checks() {
		if !slices.Contains(list, c.Topic) {
			list = append(list, c.Topic)
		}
	}
	return list
}
