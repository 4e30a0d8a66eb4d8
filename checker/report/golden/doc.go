// Package golden compares what a test produced with a file under testdata.
//
// It is for tests only: importing it registers the flag -update, which rewrites
// the files instead of comparing them.
//
// Floor: none of its own; nothing but tests imports it.
package golden
