// Package junit writes a report as JUnit XML, for build servers.
//
// The format has no standard; this is the shape that its readers have in
// common: a suite for each design, a case for each result. A failure is a result
// outside its limit; what is not shown, does not apply or is excused is skipped,
// with the reason; a check that could not run and a design that cannot be read
// are errors. There are no times, so that the same run gives the same bytes.
//
// The sets are properties of each suite, the cautions its standard output.
//
// Floor: above package content, below package report.
package junit
