package markdown

import (
	"cmp"
	"fmt"
	"io"
	"strings"

	"plumbrule/checker/compare"
	"plumbrule/checker/compare/words"
	"plumbrule/checker/report/markdown"
)

// Sets writes what rule sets make of a design beside each other. The error is
// that of the underlying writer.
func Sets(to io.Writer, s *compare.Sets) error {
	p := markdown.NewPage(to)
	p.Heading(2, "Rule sets compared: "+markdown.Plain(cmp.Or(s.Design.Title, s.Design.File)))
	p.Block("Drawings: " + markdown.Plain(words.Drawing(&s.Design)) + ", typed in as " + markdown.Code(s.Design.File) + ". Subjects: " + strings.Join(words.SetSummary(s), ", ") + ".")
	for _, d := range words.Differences() {
		section(p, s, d)
	}
	p.Heading(3, "Checks that only other sets have")
	var gaps []string
	for i := range s.Sets {
		gaps = append(gaps, fmt.Sprintf("- **%s** (%d): %s", markdown.Plain(s.Sets[i].ID), len(s.Gaps[i]), markdown.Plain(cmp.Or(words.Gap(s.Gaps[i]), "none"))))
	}
	p.Block(gaps...)
	closing(p, s.Sets, s.Waivers)
	return p.Flush()
}

func section(p *markdown.Page, s *compare.Sets, d compare.Difference) {
	list, left := words.Listed(s, d)
	if len(list) == 0 && left == 0 {
		return
	}
	p.Heading(3, fmt.Sprintf("%s (%d)", markdown.Title(words.Difference(d)), s.Count(d)))
	for _, row := range list {
		if d == compare.InCheck {
			lines(p, s, row)
		} else {
			table(p, s, row)
		}
	}
	if left > 0 {
		p.Block(markdown.Title(words.Left(left)) + ".")
	}
}

// head names a subject.
func head(row *compare.Row) string {
	return fmt.Sprintf("**%s**, %s: %s, line %d (%s)", markdown.Plain(row.Title), row.Consequence, markdown.Plain(words.Subject(row)),
		max(row.Span.Start.Line, 1), markdown.Code(row.Check))
}

// lines prints a subject with a line for each set.
func lines(p *markdown.Page, s *compare.Sets, row *compare.Row) {
	list := []string{head(row), ""}
	names, said := words.Stacked(row, s.Sets, func(s string) string { return s })
	for i := range names {
		list = append(list, "- "+markdown.Plain(names[i])+": "+markdown.Plain(said[i]))
	}
	p.Block(list...)
}

// table prints a subject with the sets in columns.
func table(p *markdown.Page, s *compare.Sets, row *compare.Row) {
	p.Block(head(row))
	heads, rule := []string{""}, []string{"---"}
	for i := range s.Sets {
		heads, rule = append(heads, markdown.Plain(s.Sets[i].ID)), append(rule, "---")
	}
	rows := []string{markdown.Row(heads...), markdown.Row(rule...)}
	for _, a := range words.Aspects(row) {
		cells := []string{a.Name}
		for _, w := range a.Words {
			cells = append(cells, markdown.Plain(w))
		}
		rows = append(rows, markdown.Row(cells...))
	}
	p.Block(rows...)
}
