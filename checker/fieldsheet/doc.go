// Package fieldsheet lays out on one or two pages the numbers that a crew works
// by: diagonals and tapes, strings, joist marks, cut lengths, ledger fasteners,
// posts and footings, stairs, balusters, corner cuts, boards, and counts.
//
// [Build] gives a [Sheet] of sections and tables whose cells hold exact values;
// [Table.Grid] turns a table into the texts that every format prints. A length is
// printed in feet, inches and sixteenths, in decimal inches and in millimetres,
// each rounded by itself from the exact value: no rounded number is ever added
// up. What a design does not show is listed as not shown and never taken from
// anywhere else.
//
// The package judges nothing: it knows no limit of any code and runs no rule set.
// It does not write text, HTML or PDF; packages below its folder do.
//
// Floor: above facts and the words that all reports share; below the formats.
package fieldsheet
