package text

import "plumbrule/checker/report/lines"

// printer puts a report out.
type printer struct {
	*lines.Printer
	opts  Options
	style style
	cells cells
	inRun int // sets of the whole run
}

// detail is the indentation of what belongs to a result; the source line begins
// there too.
const detail = numberWidth + len(" | ")

func (p *printer) line(s string)                            { p.Line(s) }
func (p *printer) gap()                                     { p.Gap() }
func (p *printer) heading(title string)                     { p.Heading(title) }
func (p *printer) paragraph(indent int, label, text string) { p.Paragraph(indent, label, text) }

func bars(pieces ...string) string { return lines.Bars(pieces...) }
