// Package reporttest holds one report with everything in it that a format has to
// cope with, for the tests of the formats. All jobs, sets and clauses in it are
// invented.
//
// Floor: none of its own; nothing but tests imports it.
package reporttest
