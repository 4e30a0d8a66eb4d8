package text

import (
	"bufio"
	"fmt"
	"strings"
)

// printer puts lines out. Errors of the writer stay in the buffer until it is
// flushed.
type printer struct {
	out   *bufio.Writer
	opts  Options
	style style
	cells cells
	open  bool // the last line was not empty
	inRun int  // sets of the whole run
}

// line prints a finished line.
func (p *printer) line(s string) {
	fmt.Fprintln(p.out, s)
	p.open = s != ""
}

// gap sets what follows off by an empty line.
func (p *printer) gap() {
	if p.open {
		p.line("")
	}
}

// detail is the indentation of what belongs to a result; the source line begins
// there too.
const detail = numberWidth + len(" | ")

// paragraph prints a label and text, wrapped, with further lines set in a little
// more than the first.
func (p *printer) paragraph(indent int, label, text string) {
	const hanging = 2
	label = printable(label)
	start := indent
	if label != "" {
		start += p.cells.StringWidth(label) + 1
	}
	first, rest := 0, 0
	if p.opts.Width > 0 {
		first, rest = p.opts.Width-start, p.opts.Width-indent-hanging
	}
	lines := p.cells.wrap(printable(text), first, rest)

	begin := lines[0]
	if label != "" && begin != "" {
		begin = p.style.label(label) + " " + begin
	} else if label != "" {
		begin = p.style.label(label)
	}
	p.line(strings.Repeat(" ", indent) + begin)
	for _, more := range lines[1:] {
		p.line(strings.Repeat(" ", indent+hanging) + more)
	}
}

// heading prints the title of a section. Capitals mark it where there is no
// colour.
func (p *printer) heading(title string) {
	p.gap()
	p.line(p.style.heading(strings.ToUpper(title)))
}

// bars joins what is not empty with upright bars.
func bars(pieces ...string) string {
	var used []string
	for _, piece := range pieces {
		if piece != "" {
			used = append(used, piece)
		}
	}
	return strings.Join(used, " | ")
}
