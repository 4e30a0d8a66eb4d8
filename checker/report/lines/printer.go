package lines

import (
	"bufio"
	"fmt"
	"io"
	"strings"

	"plumbrule/checker/report/content"
)

// Printer puts lines out. Errors of the writer stay in it until Flush.
type Printer struct {
	Cells Cells
	// Width is the number of cells in a line; 0 breaks no line.
	Width int
	// Label and Title paint the labels of paragraphs and the headings.
	Label, Title Paint

	out  *bufio.Writer
	open bool // the last line was not empty
}

// NewPrinter gives a printer of lines of that width.
func NewPrinter(to io.Writer, width int, label, title Paint) *Printer {
	return &Printer{Cells: NewCells(), Width: width, Label: label, Title: title, out: bufio.NewWriter(to)}
}

// Flush writes what is left, and gives the first error of the writer.
func (p *Printer) Flush() error { return p.out.Flush() }

// Line prints a finished line.
func (p *Printer) Line(s string) {
	fmt.Fprintln(p.out, s)
	p.open = s != ""
}

// Gap sets what follows off by an empty line.
func (p *Printer) Gap() {
	if p.open {
		p.Line("")
	}
}

// Paragraph prints a label and text, wrapped, with further lines set in a little
// more than the first. Both are made printable.
func (p *Printer) Paragraph(indent int, label, text string) {
	const hanging = 2
	label = content.Printable(label)
	start := indent
	if label != "" {
		start += p.Cells.StringWidth(label) + 1
	}
	first, rest := 0, 0
	if p.Width > 0 {
		first, rest = p.Width-start, p.Width-indent-hanging
	}
	lines := p.Cells.Wrap(content.Printable(text), first, rest)

	begin := lines[0]
	if label != "" && begin != "" {
		begin = p.Label(label) + " " + begin
	} else if label != "" {
		begin = p.Label(label)
	}
	p.Line(strings.Repeat(" ", indent) + begin)
	for _, more := range lines[1:] {
		p.Line(strings.Repeat(" ", indent+hanging) + more)
	}
}

// Heading prints the title of a section. Capitals mark it where there is no
// color.
func (p *Printer) Heading(title string) {
	p.Gap()
	p.Line(p.Title(strings.ToUpper(title)))
}

// Bars joins what is not empty with upright bars.
func Bars(pieces ...string) string {
	var used []string
	for _, piece := range pieces {
		if piece != "" {
			used = append(used, piece)
		}
	}
	return strings.Join(used, " | ")
}
