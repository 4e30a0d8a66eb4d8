// Package engine runs the checks of a catalog with the figures of rule sets on
// the facts of a design, and turns what they return into results: outcomes
// with values, margins, places and words.
//
// All checks are compiled once. They cannot reach a network, a clock, chance
// or the environment: those functions do not exist for them. A misspelt field
// of facts or figures is refused when they are loaded. Each check of each set
// is a query of its own, so that one that fails costs only itself.
//
// The engine derives no facts, holds no figures, excuses nothing and prints
// nothing.
//
// Floor: above facts, catalog and ruleset, below the reports.
package engine
