// Package lines sets text in lines for a terminal: it measures in cells, wraps,
// indents, and sets headings and columns. All text formats use it.
//
// It knows nothing of designs and findings, and does not ask whether there is a
// terminal, how wide it is or whether it has color.
//
// Floor: above package content, below the formats.
package lines
