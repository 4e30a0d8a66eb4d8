// Package text writes a report for the terminal.
//
// Each result begins with a line that programs can read,
//
//	path:line:column: consequence: message [set check clause]
//
// and a design that cannot be read with lines of the form
//
//	path:line:column: cannot read: message
//
// Both are what the regular expression FirstLine matches, with colour and
// without, and nothing else in a report matches it. These lines are never
// wrapped. The message of a result that is not outside its limit names the
// outcome. What follows, indented, is for people and may change its wording: the
// line of the file with a mark under the value, related places, values, how to
// mend it, and where it is drawn.
//
// Text from the design is printed without control characters, so that a file
// cannot steer the terminal.
//
// The package does not decide whether there is a terminal, how wide it is or
// whether it has colour; Options say so.
//
// Floor: above package content, below package report.
package text
