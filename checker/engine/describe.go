package engine

import (
	"plumbrule/checker/catalog"
)

// Description is a check with what it reads, for people who want to know it.
type Description struct {
	*catalog.Check
	// Facts are the fields of the facts document that the check reads, as
	// flights[].riser_max, in order.
	Facts []string
}

// Catalog describes every check, by id, whether a set gives figures for it or
// not.
func (e *Engine) Catalog() []Description {
	checks := e.catalog.Checks()
	all := make([]Description, len(checks))
	for i, check := range checks {
		all[i] = e.describe(check)
	}
	return all
}

// Describe describes the check of an id or an alias.
func (e *Engine) Describe(id string) (Description, bool) {
	check := e.catalog.Find(id)
	if check == nil {
		return Description{}, false
	}
	return e.describe(check), true
}

func (e *Engine) describe(check *catalog.Check) Description {
	return Description{Check: check, Facts: factsRead(e.compiler.Modules[check.File], e.compiler.Modules)}
}
