// Package measure reads and prints the quantities that a deck is described with: lengths, pressures, forces, angles,
// slopes and lumber sizes, each with its unit, in the spellings that drawings and tape measures use.
//
// A quantity is held as a whole number of a unit small enough that everything anybody types is exact: 1/64 in is
// 396 875 nm and 0.01 mm is 10 000 nm. Two values that were typed equal therefore compare equal, whichever unit they
// were typed in, and a value that no whole number can hold (1/3 in, 40 psf) is rounded once, to the nearest, on reading.
//
// The patterns in this package say as a regular expression what the parsers accept, so that an editor can underline a
// bad spelling before the program runs. A spelling that fits its pattern is still refused when its value makes no
// sense: a zero denominator, twelve inches or more after feet, a fraction of one or more after a whole number, a
// value out of range.
//
// The package does no geometry, knows no limits and no rule sets, and does not read files.
//
// Floor: the lowest, beside source. It imports nothing of this module.
package measure
