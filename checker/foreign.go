package checker

import (
	"context"
	"io"

	"plumbrule/checker/catalog"
	"plumbrule/checker/engine"
	"plumbrule/rules"
)

// ServeForeign answers one question about the checks that a rule set brings:
// it is what a process does that a Sandbox started, after sandbox.Confine.
func ServeForeign(ctx context.Context, in io.Reader, out io.Writer) error {
	return engine.Serve(ctx, in, out, rules.Checks())
}

// Checks describes the checks that come with the program.
func Checks() (*catalog.Catalog, error) { return catalog.Load(rules.Checks()) }

// joinChecks adds the checks that the sets bring to those of the program.
func (c *Checker) joinChecks() (err error) {
	var brought []*catalog.Catalog
	for _, set := range c.sets {
		brought = append(brought, set.Catalog())
	}
	c.catalog, err = catalog.Join(c.catalog, brought...)
	return err
}
