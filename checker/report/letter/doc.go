// Package letter writes the review letter in Markdown: for each design a header,
// the stamp, the numbered items by sheet with what is outside first and what is
// not shown in a section of its own, what became of earlier items, and a table
// to answer in.
//
// Numbers come from package items; the same item has the same number in the
// report that is written as JSON, and keeps it in the next letter.
//
// Whatever comes from a design or a set is escaped, so that a mark or a title
// can neither lay out the page nor put a link or HTML into it.
//
// It does not wrap lines, and it addresses, dates and signs nothing.
//
// Floor: above packages content and items, below package report.
package letter
