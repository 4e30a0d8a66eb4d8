package text

import (
	"fmt"
	"io"
	"strings"

	"github.com/fatih/color"

	"plumbrule/checker/report/content"
	"plumbrule/checker/report/lines"
	"plumbrule/checker/result"
	"plumbrule/checker/source"
)

// narrowest is the least width that lines are fitted to.
const narrowest = 40

// Options say how to lay a comparison out.
type Options struct {
	// Width is the number of cells in a line; 0 breaks no line. A width below 40
	// counts as 40.
	Width int
	// Colour adds colour codes.
	Colour bool
	// Verbose adds what did not change.
	Verbose bool
}

type printer struct {
	*lines.Printer
	opts        Options
	path, faint lines.Paint
	alarm       lines.Paint
}

func newPrinter(to io.Writer, opts Options) *printer {
	if opts.Width > 0 {
		opts.Width = max(opts.Width, narrowest)
	}
	brush := func(a ...color.Attribute) lines.Paint { return lines.Brush(opts.Colour, a...) }
	return &printer{
		Printer: lines.NewPrinter(to, max(opts.Width, 0), brush(color.FgGreen), brush(color.Bold, color.Underline)),
		opts:    opts, path: brush(color.Bold), faint: brush(color.Faint), alarm: brush(color.FgRed, color.Bold),
	}
}

// block prints rows of a title block between two rules.
func (p *printer) block(rows [][2]string) {
	const usual = 72
	width := usual
	if p.Width > 0 {
		width = min(p.Width, usual)
	}
	rule := strings.Repeat("-", width)
	p.Line(rule)
	for _, row := range rows {
		if row[1] != "" {
			p.Paragraph(0, fmt.Sprintf("%-8s", row[0]), row[1])
		}
	}
	p.Line(rule)
}

// place gives "path:line:column".
func place(file string, at source.Position) string {
	return fmt.Sprintf("%s:%d:%d", content.Printable(file), max(at.Line, 1), max(at.Column, 1))
}

// closing prints the findings on files of waivers, the rule sets and the
// cautions.
func (p *printer) closing(sets []result.Set, waivers []result.Design) {
	if len(waivers) > 0 {
		p.Heading("waivers")
	}
	for i := range waivers {
		for k := range waivers[i].Findings {
			r := &waivers[i].Findings[k]
			p.Paragraph(2, place(waivers[i].File, r.Span.Start)+":", content.Headline(r))
		}
	}
	p.Heading("rule sets in use")
	if len(sets) == 0 {
		p.Line("  none")
	}
	for i := range sets {
		p.Paragraph(2, sets[i].ID+":", content.Edition(&sets[i]))
		if len(sets[i].NotCovered) > 0 {
			p.Paragraph(4, "does not cover:", strings.Join(sets[i].NotCovered, "; "))
		}
	}
	p.Heading("cautions")
	for _, caution := range content.Cautions(sets) {
		p.Paragraph(2, "-", caution)
	}
}
