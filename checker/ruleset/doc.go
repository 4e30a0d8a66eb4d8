// Package ruleset reads rule sets: for each check the clause and the figures
// of one standard, each with the word on how far it can be trusted, and tables
// of figures that hang on several keys.
//
// Figures are converted once, to the whole numbers in which checks compare
// them, by the types that the checks declare. A set that names a check nobody
// has, lacks a figure, mistypes one, or leaves a hole in a table is refused
// with file, line and column.
//
// The package compares nothing and knows no design.
//
// Floor: above the catalog of checks and the facts, below the engine.
package ruleset
