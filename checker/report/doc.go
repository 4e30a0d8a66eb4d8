// Package report lists the formats that the outcome of a run can be written in.
// The flag's help and the documentation are made from the list, so a format is
// added by its package and one entry in Formats.
//
// It does no layout itself; that is the formats' own, in the packages below.
// What all of them say alike stands in package content.
//
// Floor: above the formats, below the façade.
package report
