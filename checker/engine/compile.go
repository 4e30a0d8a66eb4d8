package engine

import (
	"fmt"
	"slices"
	"strings"

	"github.com/open-policy-agent/opa/v1/ast"

	"plumbrule/checker/catalog"
	"plumbrule/checker/facts"
)

// Compiler gives a compiler set up for the checks of a catalog but with no
// module compiled yet: strict, without functions that reach out or vary, and
// with the schemas of facts and figures. The tests of the checks run under it
// too.
func Compiler(checks *catalog.Catalog) *ast.Compiler {
	schemas := ast.NewSchemaSet()
	schemas.Put(ast.MustParseRef("schema.facts"), facts.Schema())
	schemas.Put(ast.MustParseRef("schema.figures"), checks.FiguresSchema())
	return ast.NewCompiler().
		WithStrict(true).
		WithCapabilities(capabilities()).
		WithSchemas(schemas).
		WithUseTypeCheckAnnotations(true)
}

// compile compiles all modules of a catalog together.
func compile(checks *catalog.Catalog) (*ast.Compiler, error) {
	c := Compiler(checks)
	if c.Compile(checks.Modules()); c.Failed() {
		c.Errors.Sort()
		return nil, fmt.Errorf("compiling checks: %w", c.Errors)
	}
	return c, nil
}

// capabilities lists what the language may do in a check: everything whose
// result depends on its arguments alone.
func capabilities() *ast.Capabilities {
	c := ast.CapabilitiesForThisVersion()
	c.Builtins = slices.DeleteFunc(c.Builtins, func(b *ast.Builtin) bool {
		return b.IsNondeterministic() || reachesOut(b.Name)
	})
	c.AllowNet = []string{}
	return c
}

// reachesOut names functions to refuse even if a later version of the language
// should call them deterministic.
func reachesOut(name string) bool {
	switch name {
	case "http.send", "opa.runtime", "print", "trace":
		return true
	}
	return strings.HasPrefix(name, "net.lookup") || strings.HasPrefix(name, "time.now") ||
		strings.HasPrefix(name, "rand.") || strings.HasPrefix(name, "uuid.rfc4122")
}
