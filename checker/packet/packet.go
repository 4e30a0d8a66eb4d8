package packet

import (
	"plumbrule/checker/draw/paper"
	"plumbrule/checker/measure"
	"plumbrule/checker/result"
)

// Packet is a whole packet, in words ready to print.
type Packet struct {
	// Title is that of the job, or the name of the file where the design has
	// none; Revision is "" where it is not shown.
	Title, Revision string
	File            string
	System          measure.System
	// Disposition is the stamp with the number of questions left open.
	Disposition string
	Counts      result.Counts
	// Block is the title block.
	Block    []Line
	Sections []Section
}

// Line is a term and what there is to say on it.
type Line struct{ Term, Text string }

// Section is one entry of the list of contents. Its ID is unique in the packet.
type Section struct {
	ID, Title string
	Notes     []string
	Parts     []Part
}

// Part is a stretch of a section; what is empty is left out.
type Part struct {
	Title   string // "" where the section's says enough
	Notes   []string
	List    []string
	Table   *Table
	Items   []Item
	Drawing *Drawing
}

// Table is rows under headings. The first cell of a row says what the row is of.
type Table struct {
	Caption string
	Columns []Column
	Rows    []Row
}

// Column is a heading and how much of the width it wants beside the others.
type Column struct {
	Head  string
	Share float64
}

// Row is the cells of one line.
type Row struct {
	// Item is the number of the finding that the row is; 0 for none.
	Item  int
	Cells []Cell
}

// Cell is words. Span is how many columns they take, 0 being 1.
type Cell struct {
	Text string
	Span int
	// More stands below the text, in smaller letters.
	More string
	// Item is the number of the finding that the cell refers to; 0 for none.
	Item int
	// Strong is set for what is outside or open.
	Strong bool
}

// Columns is how many columns the cell takes.
func (c *Cell) Columns() int { return max(c.Span, 1) }

// Item is one finding in full.
type Item struct {
	Number  int
	ID      string // for people, short
	Outcome result.Outcome
	Class   result.Consequence
	Head    string // what was found, a sentence
	Lines   []Line
}

// Drawing is a sheet with the words that go with it.
type Drawing struct {
	Sheet *paper.Sheet
	Title string
	Scale string // in words; "" on a sheet of notes
	// Alt says what is drawn, for those who cannot see it.
	Alt string
	// Findings are the numbers marked on the sheet.
	Findings []int
}

// text is a cell of plain words, or a dash where there are none.
func text(s string) Cell {
	if s == "" {
		s = none
	}
	return Cell{Text: s}
}

// none stands where there is nothing to say.
const none = "–"
