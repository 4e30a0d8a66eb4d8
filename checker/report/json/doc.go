// Package json writes a report for other programs, in the shape that
// report.schema.json describes.
//
// The shape is versioned: within a version keys are added, never renamed,
// removed or given another meaning. A key is absent where there is nothing to
// say; lists that a reader would loop over are always there. Every margin is a
// number in the unit of "have".
//
// Findings carry the numbers of their items, which a later run reads back with
// ReadPrevious, so that the numbers last over the cycles of a review.
//
// Output is indented by two blanks, its keys always stand in the same order, and
// it ends with a line break. The characters <, > and & are written as they are.
//
// Floor: above packages content and items, below package report.
package json
