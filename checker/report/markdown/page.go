package markdown

import (
	"bufio"
	"fmt"
	"io"
	"strings"
)

// Page puts blocks out. Errors of the writer stay in it until Flush.
type Page struct {
	out  *bufio.Writer
	used bool // something was printed before
}

// NewPage gives an empty page.
func NewPage(to io.Writer) *Page { return &Page{out: bufio.NewWriter(to)} }

// Flush writes what is left, and gives the first error of the writer.
func (p *Page) Flush() error { return p.out.Flush() }

// Block prints lines that belong together, set off by an empty line.
func (p *Page) Block(lines ...string) {
	if p.used {
		fmt.Fprintln(p.out)
	}
	p.used = true
	for _, line := range lines {
		fmt.Fprintln(p.out, line)
	}
}

// Heading prints a heading of a level from 1.
func (p *Page) Heading(level int, words string) {
	p.Block(strings.Repeat("#", level) + " " + words)
}

// Row sets cells as a row of a table.
func Row(cells ...string) string { return "| " + strings.Join(cells, " | ") + " |" }
