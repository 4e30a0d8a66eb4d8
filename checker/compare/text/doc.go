// Package text writes comparisons for the terminal.
//
// Of two revisions it prints what was changed, each value with its places in
// both files, then what became of the findings, worst first, then counts and
// stamps. Of rule sets it prints a block for each subject on which they differ,
// with a column for each set; where the line is too narrow for columns, the sets
// stand under each other.
//
// Text from a design is printed without control characters. Color repeats what
// the words say.
//
// Floor: above the words of comparisons, beside their other formats.
package text
