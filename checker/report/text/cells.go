package text

import (
	"strings"

	"plumbrule/checker/report/content"
	"plumbrule/checker/report/lines"
)

// cells measures text and keeps source lines within what there is room for.
type cells struct{ lines.Cells }

func newCells() cells { return cells{lines.NewCells()} }

func (c cells) keep(s string) string { return c.Keep(s) }

// tabStop is the distance of tab stops in a source line.
const tabStop = 4

// expand replaces tabs by blanks up to the next stop, for text that begins in
// the given cell, and makes the rest printable.
func (c cells) expand(s string, start int) string {
	if !strings.Contains(s, "\t") {
		return printable(s)
	}
	var b strings.Builder
	at := start
	for i, piece := range strings.Split(s, "\t") {
		if i > 0 {
			n := tabStop - at%tabStop
			b.WriteString(strings.Repeat(" ", n))
			at += n
		}
		piece = printable(piece)
		b.WriteString(piece)
		at += c.StringWidth(piece)
	}
	return b.String()
}

// printable is for everything that comes from a design or a set.
func printable(s string) string { return content.Printable(s) }
