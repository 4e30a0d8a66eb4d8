package markdown

import (
	"fmt"
	"slices"
	"strings"
	"unicode"
)

// Page is a page that grows from its top. The zero value is an empty one.
type Page struct {
	text    strings.Builder
	anchors map[string]int
}

// Comment adds a remark that is not shown, for whoever opens the file.
func (p *Page) Comment(text string) {
	for strings.Contains(text, "--") {
		text = strings.ReplaceAll(text, "--", "- -")
	}
	p.block("<!-- " + text + " -->")
}

// Heading adds a heading of a level, 1 for the title, and gives its anchor.
func (p *Page) Heading(level int, text string) string {
	p.block(strings.Repeat("#", level) + " " + Text(text))
	return p.anchor(text)
}

// anchor counts an anchor that is there already, as hosts do.
func (p *Page) anchor(heading string) string {
	if p.anchors == nil {
		p.anchors = map[string]int{}
	}
	name := Anchor(heading)
	n := p.anchors[name]
	p.anchors[name]++
	if n > 0 {
		return fmt.Sprintf("%s-%d", name, n)
	}
	return name
}

// Paragraph adds a paragraph of Markdown; parts that are empty are left out.
func (p *Page) Paragraph(parts ...string) {
	parts = slices.DeleteFunc(parts, func(s string) bool { return s == "" })
	if len(parts) > 0 {
		p.block(strings.Join(parts, " "))
	}
}

// List adds a list of entries in Markdown.
func (p *Page) List(entries ...string) {
	if len(entries) > 0 {
		p.block("- " + strings.Join(entries, "\n- "))
	}
}

// Code adds a block of code of a kind, as yaml. Its lines stand as they are.
func (p *Page) Code(kind, text string) {
	fence := strings.Repeat("`", max(3, longest(text, '`')+1))
	p.block(fence + kind + "\n" + strings.TrimRight(text, "\n") + "\n" + fence)
}

// Table adds a table whose cells are in Markdown. Columns in which no row has
// anything are left out, and so is a table without rows.
func (p *Page) Table(head []string, rows [][]string) {
	if len(rows) == 0 {
		return
	}
	var kept []int
	for i := range head {
		if slices.ContainsFunc(rows, func(row []string) bool { return row[i] != "" }) {
			kept = append(kept, i)
		}
	}
	lines := []string{line(head, kept), "|" + strings.Repeat("---|", len(kept))}
	for _, row := range rows {
		lines = append(lines, line(row, kept))
	}
	p.block(strings.Join(lines, "\n"))
}

func line(cells []string, kept []int) string {
	var b strings.Builder
	b.WriteString("|")
	for _, i := range kept {
		b.WriteString(" " + cell(cells[i]) + " |")
	}
	return b.String()
}

// cell keeps a text within its cell: a bar would end it, in code too, and a
// line break the table.
func cell(text string) string {
	text = strings.ReplaceAll(text, "\n", " ")
	return strings.ReplaceAll(strings.ReplaceAll(text, `\|`, "|"), "|", `\|`)
}

func (p *Page) block(text string) {
	if p.text.Len() > 0 {
		p.text.WriteString("\n")
	}
	p.text.WriteString(text + "\n")
}

// String gives the page.
func (p *Page) String() string { return p.text.String() }

// Anchor gives the name under which hosts let a link point to a heading: its
// letters, digits, hyphens and underscores in lower case, with hyphens for
// spaces.
func Anchor(heading string) string {
	return strings.Map(func(r rune) rune {
		switch {
		case r == ' ':
			return '-'
		case wordRune(r), r == '-', r == '_':
			return unicode.ToLower(r)
		}
		return -1
	}, strings.TrimSpace(heading))
}
