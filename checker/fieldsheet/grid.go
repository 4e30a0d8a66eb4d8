package fieldsheet

import (
	"math"
	"strconv"
	"strings"

	"plumbrule/checker/measure"
)

// Grid is a table in texts, every length and volume in its three spellings.
type Grid struct {
	Heads []Field  // over one or more parts
	Parts []string // the spelling below each head; all "" where no column has parts
	Right []bool   // numbers stand at the right of their part
	Rows  [][]Field
}

// Field is a text over one or more parts of a grid. In a row, one over several
// parts is no number of any of them and belongs at their left, where it cannot
// be read as so many millimetres.
type Field struct {
	Text string
	Span int
	// Kind is that of the cell, so that a format can set off what is unknown.
	Kind Kind
}

// NotShown is what stands in a cell that the design does not show.
const NotShown = "not shown"

// Grid spells the table out for the system that the design was typed in, which
// decides which spelling comes first.
func (t *Table) Grid(sys measure.System) Grid {
	var g Grid
	for _, c := range t.Columns {
		names := parts(c.Kind, sys)
		g.Heads = append(g.Heads, Field{Text: c.Head, Span: len(names), Kind: c.Kind})
		for _, name := range names {
			g.Parts = append(g.Parts, name)
			g.Right = append(g.Right, c.Kind != Words)
		}
	}
	for _, row := range t.Rows {
		var fields []Field
		for i := range row {
			fields = append(fields, spell(&row[i], t.Columns[i].Kind, sys)...)
		}
		g.Rows = append(g.Rows, fields)
	}
	return g
}

// parts names the spellings of a kind of value, the one of the system first.
func parts(k Kind, sys measure.System) []string {
	names := []string{""}
	switch k {
	case Length:
		names = []string{"ft-in 1/16", "in", "mm"}
	case Volume:
		names = []string{"cu ft", "cu yd", "m³"}
	}
	if sys == measure.Metric && len(names) == 3 {
		names[0], names[2] = names[2], names[0]
	}
	return names
}

// spell gives the fields of a cell in a column of some kind. A cell of another
// kind than its column spans it.
func spell(c *Cell, column Kind, sys measure.System) []Field {
	texts := c.texts(sys)
	span := len(parts(column, sys))
	if c.Kind == column && len(texts) == span {
		fields := make([]Field, span)
		for i, s := range texts {
			fields[i] = Field{Text: s, Span: 1, Kind: c.Kind}
		}
		return fields
	}
	if c.Kind == Volume {
		names := parts(Volume, sys)
		for i := range texts {
			texts[i] += " " + names[i]
		}
	}
	return []Field{{Text: strings.Join(texts, " = "), Span: span, Kind: c.Kind}}
}

// texts gives the spellings of a cell, that of the system first.
func (c *Cell) texts(sys measure.System) []string {
	var list []string
	switch c.Kind {
	case Words:
		return []string{c.Text}
	case Count:
		return []string{strconv.FormatInt(c.Count, 10)}
	case Angle:
		return []string{decimal(int64(c.Angle), int64(measure.Degree)/100, 2) + "°"}
	case Unknown:
		return []string{NotShown}
	case Length:
		list = []string{
			c.Length.Sixteenths(),
			decimal(int64(c.Length), int64(measure.Inch)/1000, 3),
			decimal(int64(c.Length), int64(measure.Millimetre)/10, 1),
		}
	case Volume:
		list = []string{fixed(c.Volume/cubicFoot, 3), fixed(c.Volume/cubicYard, 3), fixed(c.Volume, 4)}
	}
	if sys == measure.Metric {
		list[0], list[2] = list[2], list[0]
	}
	return list
}

// Volumes in cubic metres.
const (
	cubicFoot = 0.3048 * 0.3048 * 0.3048
	cubicYard = 27 * cubicFoot
)

func fixed(v float64, places int) string { return strconv.FormatFloat(v, 'f', places, 64) }

// decimal prints a whole number of small units in steps of so many of them, with
// the decimals that a step stands for. It rounds once, halves away from zero.
func decimal(v, step int64, places int) string {
	sign := ""
	if v < 0 {
		sign, v = "-", -v
	}
	steps := (v + step/2) / step
	if steps == 0 {
		sign = ""
	}
	per := int64(math.Pow10(places))
	fraction := strconv.FormatInt(per+steps%per, 10)[1:]
	return sign + strconv.FormatInt(steps/per, 10) + "." + fraction
}
