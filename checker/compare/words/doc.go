// Package words puts comparisons into the words that all formats share: the
// headings, what became of a finding, what a rule set makes of a subject.
//
// It lays nothing out; the formats do.
//
// Floor: above packages compare and content, below the formats.
package words
