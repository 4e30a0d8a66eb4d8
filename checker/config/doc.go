// Package config reads plumbrule.yaml: which rule sets the designs below a
// directory are held against, from which class on a run fails, where waivers
// stand and which reports are written. The file nearest above a design counts;
// the search ends at the root of a repository.
//
// It knows no rule set and no format by name, and opens neither.
//
// Floor: above the schemas and results, beside the rule sets.
package config
