// Package markdown writes comparisons for a pull request or a letter: what was
// changed and what became of the findings as tables and lists, or rule sets in
// the columns of a table.
//
// Whatever comes from a design or a set is escaped.
//
// Floor: above the words of comparisons, beside their other formats.
package markdown
