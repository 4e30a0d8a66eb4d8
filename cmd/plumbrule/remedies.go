package main

import (
	"fmt"
	"slices"

	"plumbrule/checker/report"
)

// wantsRemedies says whether changes that mend findings are tried. Each costs
// as much as checking the design once. Whoever checks one design by itself is
// about to mend it; a run over many is a gate, which they would slow down.
func (f checkFlags) wantsRemedies(designs int, reports []target[report.Format]) (bool, error) {
	switch f.remedies {
	case "on":
		return true, nil
	case "off":
		return false, nil
	case "":
		return designs == 1 && slices.ContainsFunc(reports, f.showsRemedies), nil
	}
	return false, fmt.Errorf("--remedies takes on or off, not %q", f.remedies)
}

// showsRemedies reports whether a report has room for them.
func (f checkFlags) showsRemedies(t target[report.Format]) bool {
	return t.format.Name != "text" || !f.compact
}
