package fieldsheet

import "plumbrule/checker/measure"

// Sheet is a whole field sheet.
type Sheet struct {
	Title    string // of the job; "" where it is not shown
	Revision string // "" where it is not shown
	File     string // as named on the command line
	System   measure.System
	Basis    []string // how to read the sheet
	Sections []Section
	NotShown []Missing
	Cautions []string
}

// Section is what belongs to one step of the work.
type Section struct {
	Title  string
	Notes  []string
	Tables []Table
}

// Table is rows under common headings. The first column says what a row is.
type Table struct {
	Title   string // "" where the section's title says enough
	Columns []Column
	Rows    [][]Cell // each as long as Columns
	Notes   []string
}

// Column is one heading. Its kind is that of most of its cells.
type Column struct {
	Head string
	Kind Kind
}

// Kind is what a cell holds.
type Kind uint8

// The kinds of cell.
const (
	Words   Kind = iota
	Length       // printed three times: sixteenths, decimal inches, millimetres
	Angle        // printed in hundredths of a degree
	Count        // a whole number
	Volume       // printed three times: cubic feet, cubic yards, cubic metres
	Unknown      // the design does not show it
)

// Cell is one value, exact. The field of its kind is the one that counts.
type Cell struct {
	Kind   Kind
	Text   string
	Length measure.Length
	Angle  measure.Angle
	Count  int64
	Volume float64 // cubic metres
}

// Missing is a number of the sheet that the design does not show enough for.
type Missing struct {
	What  string // the number, in trade words
	Needs string // the field that would give it, as platforms[].decking.overhang
}

func text(s string) Cell              { return Cell{Kind: Words, Text: s} }
func length(l measure.Length) Cell    { return Cell{Kind: Length, Length: l} }
func count[T int | int64](n T) Cell   { return Cell{Kind: Count, Count: int64(n)} }
func angle(a measure.Angle) Cell      { return Cell{Kind: Angle, Angle: a} }
func volume(cubicMetres float64) Cell { return Cell{Kind: Volume, Volume: cubicMetres} }
func unknown() Cell                   { return Cell{Kind: Unknown} }

// row adds a row.
func (t *Table) row(cells ...Cell) { t.Rows = append(t.Rows, cells) }

// list is a table of one thing and its value a row.
func list(title string) Table {
	return Table{Title: title, Columns: []Column{{"", Words}, {"", Length}}}
}

// add puts a table into the section unless it is empty.
func (s *Section) add(t Table) {
	if len(t.Rows) > 0 {
		s.Tables = append(s.Tables, t)
	}
}
