// Package catalog reads the checks: the Rego modules, and the METADATA block
// at the head of each that says who the check is, which figures a set must
// give it, and every word it says to people.
//
// It refuses, with the place, a check whose metadata does not fit the schema,
// whose package is not named as its id, that defines a rule with a name of its
// own choosing where others could rely on it, that returns a row with a key or
// a figure nobody declared, or that reads figures it did not ask for.
//
// It compiles and runs nothing, and holds no figure.
//
// Floor: beside facts; above result and schema, below the rule sets.
package catalog
