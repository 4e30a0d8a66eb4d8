// Package pages writes the part of the documentation that is made from the
// checks, the rule sets and the facts: a page for each check with an example
// that was run, a page for each set with the standing of every figure, and a
// page of the facts.
//
// It judges nothing and invents no words: what a page says of a check stands in
// its METADATA, what it says of a figure in the set, and what the program prints
// was printed by it. The page of commands is made by the command's own tests.
//
// The program does not carry this package. Its test compares the pages with
// those in docs, and writes them: go test ./checker/pages -update.
//
// Floor: above the façade, below the command.
package pages
