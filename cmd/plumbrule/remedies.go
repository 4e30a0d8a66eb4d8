package main

import (
	"fmt"
	"slices"

	"github.com/spf13/pflag"

	"plumbrule/checker/report"
)

// remediesFlag is --remedies as typed.
type remediesFlag string

// add adds the flag to a command. Usual says what it is where it is not typed.
func (r *remediesFlag) add(f *pflag.FlagSet, usual string) {
	f.StringVar((*string)(r), "remedies", "", "try changes that mend what is outside: `on or off` (default "+usual+")")
}

// on reads the flag.
func (r remediesFlag) on(usual bool) (bool, error) {
	switch r {
	case "on":
		return true, nil
	case "off":
		return false, nil
	case "":
		return usual, nil
	}
	return false, fmt.Errorf("--remedies takes on or off, not %q", string(r))
}

// wantsRemedies says whether changes that mend findings are tried. Each costs
// as much as checking the design once. Whoever checks one design by itself is
// about to mend it; a run over many is a gate, which they would slow down.
func (f checkFlags) wantsRemedies(designs int, reports []target[report.Format]) (bool, error) {
	return f.remedies.on(designs == 1 && slices.ContainsFunc(reports, f.showsRemedies))
}

// showsRemedies reports whether a report has room for them.
func (f checkFlags) showsRemedies(t target[report.Format]) bool {
	return t.format.Name != "text" || !f.compact
}
