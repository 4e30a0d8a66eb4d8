// Package model is the deck as described: every field of the design file,
// typed, with lengths, loads and angles parsed exactly and each value carrying
// the JSON pointer of its place. It adds nothing: what the file leaves out is
// nil here. It refuses what no drawing can mean: a negative length, a stair
// from a platform that does not exist.
//
// Floor: above measure and source; it knows nothing of geometry or of rules.
package model
