// Package rulesettest lets tests hold the tables of the rule sets against a
// second reading of the printed tables, which another reader typed from other
// copies.
//
// It knows how a line of that reading is written, which sets carry the line,
// and how to walk the cells of a set. It judges nothing and no program imports
// it.
//
// Floor: test support beside ruleset.
package rulesettest
