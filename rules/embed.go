// Package rules carries the checks (Rego, how to compare) and the rule sets
// (YAML, the figures) inside the program.
//
// It reads and judges nothing; packages catalog, ruleset and engine do. A new
// check or set is there by having its folder, no list names it.
//
// Floor: below everything that loads rules; it imports nothing of this module.
package rules

import (
	"embed"
	"io/fs"
)

//go:embed checks lib sets
var files embed.FS

// Checks gives the checks and the library that they share, under "checks" and
// "lib". Sets lie in it too, and no Rego file lies among them.
func Checks() fs.FS { return files }

// Sets gives the rule sets, one directory per set id.
func Sets() fs.FS {
	sets, err := fs.Sub(files, "sets")
	if err != nil {
		return files // only a malformed path does that
	}
	return sets
}
