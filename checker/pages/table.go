package pages

import (
	"slices"
	"strings"

	md "plumbrule/checker/markdown"
	"plumbrule/checker/ruleset"
)

// Bounds of what is set out as a table: more cells than this, or more columns,
// nobody can read.
const (
	mostCells   = 1500
	mostColumns = 12
)

// tableAnchor is where a table stands on the page of its set.
func tableAnchor(t *ruleset.Table) string { return md.Anchor(tableHeading(t)) }

func tableHeading(t *ruleset.Table) string { return "Table " + t.Name }

// tables writes the tables that a set gives itself.
func tables(page *md.Page, set *ruleset.Set) {
	var written []string
	for i := range set.Checks {
		check := &set.Checks[i]
		for k := range check.Figures {
			f := &check.Figures[k]
			if f.Table == nil || f.Set != set.ID || slices.Contains(written, f.Table.Name) {
				continue
			}
			if len(written) == 0 {
				page.Heading(2, "Tables")
				page.Paragraph("A cell followed by *r* is recalled, one followed by *c* is common practice, all others are published. *none* means not permitted. An asterisk points to the remarks below the table.")
			}
			written = append(written, f.Table.Name)
			table(page, set, check.ID, f)
		}
	}
}

// table writes one table with what is to be known of it.
func table(page *md.Page, set *ruleset.Set, check string, f *ruleset.Figure) {
	t := f.Table
	cells := t.Cells()
	page.Heading(3, tableHeading(t))
	name := md.Strong(md.Text(t.Title))
	if !strings.Contains(t.Title, t.Clause) {
		name += ", " + md.Text(t.Clause)
	}
	page.Paragraph(name+".", "For "+link(md.Code(check), setPage(set.ID), checkPage(check))+".", title(count(cells))+".")
	g := newGrid(t)
	page.Paragraph(g.caption())
	if len(cells) > mostCells {
		page.Paragraph("Too large to be set out here; the file of the set has it.")
	} else {
		g.write(page, cells)
	}
	remarks(page, set, t, cells)
}

// remarks says where the published cells were read, and what is noted of cells.
func remarks(page *md.Page, set *ruleset.Set, t *ruleset.Table, cells []ruleset.Cell) {
	var entries, read, texts []string
	if t.Note != "" {
		entries = append(entries, md.Text(t.Note))
	}
	rows := map[string][]string{}
	for i := range cells {
		c := &cells[i]
		if source := short(set, c.Source); c.Source != "" && !slices.Contains(read, source) {
			read = append(read, source)
		}
		if c.Note == "" {
			continue
		}
		if rows[c.Note] == nil {
			texts = append(texts, c.Note)
		}
		rows[c.Note] = append(rows[c.Note], c.Row)
	}
	if len(read) > 0 {
		entries = append(entries, "published cells were read in "+strings.Join(read, ", "))
	}
	for _, text := range texts {
		entries = append(entries, "\\* "+md.Text(text)+": "+md.Text(strings.Join(rows[text], "; ")))
	}
	page.List(entries...)
}

// grid says which keys of a table go down, which goes across, and which have
// one value only and go into the caption.
type grid struct {
	table        *ruleset.Table
	single, down []int
	across       int // -1 for none
}

func newGrid(t *ruleset.Table) grid {
	g := grid{table: t, across: -1}
	for i := range t.Keys {
		if len(t.Keys[i].Texts) == 1 {
			g.single = append(g.single, i)
		} else {
			g.down = append(g.down, i)
		}
	}
	if n := len(g.down); n > 1 && len(t.Keys[g.down[n-1]].Texts) <= mostColumns {
		g.across = g.down[n-1]
		g.down = g.down[:n-1]
	}
	return g
}

// caption names what holds for all cells, and what goes across.
func (g *grid) caption() string {
	var parts []string
	for _, i := range g.single {
		key := &g.table.Keys[i]
		parts = append(parts, g.name(i)+": "+md.Text(key.Shown(0)))
	}
	if g.across >= 0 {
		parts = append(parts, "across: "+g.name(g.across))
	}
	if len(parts) == 0 {
		return ""
	}
	return title(strings.Join(parts, "; ")) + "."
}

func (g *grid) name(key int) string {
	return md.Text(strings.ReplaceAll(g.table.Keys[key].Name, "_", " "))
}

// write sets the cells out, with a table for each value of the first key where
// two or more others go down.
func (g *grid) write(page *md.Page, cells []ruleset.Cell) {
	if len(g.down) < 2 {
		page.Table(g.head(g.down), g.rows(g.down, map[int]int{}, cells))
		return
	}
	first, rest := g.down[0], g.down[1:]
	for n := range g.table.Keys[first].Texts {
		page.Paragraph(title(g.name(first)) + ": " + md.Strong(md.Text(g.table.Keys[first].Shown(n))))
		page.Table(g.head(rest), g.rows(rest, map[int]int{first: n}, cells))
	}
}

func (g *grid) head(down []int) []string {
	var head []string
	for _, i := range down {
		head = append(head, g.name(i))
	}
	if g.across < 0 {
		return append(head, "value")
	}
	for n := range g.table.Keys[g.across].Texts {
		head = append(head, md.Text(g.table.Keys[g.across].Shown(n)))
	}
	return head
}

// rows gives a row for each combination of the keys that go down, the others
// being at the given values.
func (g *grid) rows(down []int, at map[int]int, cells []ruleset.Cell) [][]string {
	if len(down) == 0 {
		return [][]string{g.row(at, cells)}
	}
	var rows [][]string
	for n := range g.table.Keys[down[0]].Texts {
		text := g.table.Keys[down[0]].Shown(n)
		at[down[0]] = n
		for _, row := range g.rows(down[1:], at, cells) {
			rows = append(rows, append([]string{md.Text(text)}, row...))
		}
	}
	return rows
}

func (g *grid) row(at map[int]int, cells []ruleset.Cell) []string {
	if g.across < 0 {
		return []string{mark(&cells[g.index(at)])}
	}
	var row []string
	for n := range g.table.Keys[g.across].Texts {
		at[g.across] = n
		row = append(row, mark(&cells[g.index(at)]))
	}
	return row
}

// index gives the place of a cell among all; keys not named are at their first
// value.
func (g *grid) index(at map[int]int) int {
	index := 0
	for i := range g.table.Keys {
		index = index*len(g.table.Keys[i].Texts) + at[i]
	}
	return index
}

// mark gives a cell with the sign of how far it can be trusted.
func mark(c *ruleset.Cell) string {
	text := md.Text(c.Text)
	if c.Value == nil {
		text = "none"
	}
	switch c.Status {
	case ruleset.Recalled:
		text += " *r*"
	case ruleset.CommonPractice:
		text += " *c*"
	case ruleset.Published:
	}
	if c.Note != "" {
		text += " \\*"
	}
	return text
}
