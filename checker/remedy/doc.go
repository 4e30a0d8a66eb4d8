// Package remedy looks for changes of a design that mend what was found outside
// a limit: the next stock size, a closer standard spacing, one more riser, a
// value moved to the limit and rounded to what a crew would mark. Each change
// is made in the text of the design, the changed design is checked again, and
// the change is kept only if the finding is inside and nothing else got worse.
//
// It does not know any limit, computes no result and prefers nothing to the
// check: measured value, limit and margin in its texts are those of the changed
// design. It never writes a file. Not finding a change says nothing, since only
// single changes of usual kinds are tried, and not many of each.
//
// Floor: above edit, measure and result; whoever runs checks hands them in.
package remedy
