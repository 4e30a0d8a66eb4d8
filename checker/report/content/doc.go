// Package content settles what every report for people says, and in which
// order, before a format lays it out: the sections of a design, results that
// belong together, the words for a measured value and its limit, the closest
// margins, and the cautions.
//
// It does no layout, no colour and no wrapping, and it judges nothing: all
// outcomes are taken from the result as they are.
//
// Floor: above result, below the formats beside it.
package content
