// Package shape has the parts that the JSON files of reports and of comparisons
// have in common: rule sets, counts, places, values, margins. Both write them
// with the same keys, which their schemas describe.
//
// What is in a file as a whole, and in which order, belongs to its format.
//
// Floor: above result and source, below the formats.
package shape
