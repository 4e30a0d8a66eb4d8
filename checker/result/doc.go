// Package result holds what a run of the checker found: outcomes, values,
// places and the disposition of each design. It is plain data. It does not
// judge, format or print; those who write reports read it.
//
// Floor: above measure and source, beside model.
package result
