package engine

import (
	"errors"
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
		return nil, fmt.Errorf("compiling checks: %w", refused(c.Errors))
	}
	return c, nil
}

// refused words what the compiler complains of, one line each, with the column
// that it leaves out and the nearest name where one is misspelt.
func refused(found ast.Errors) error {
	found.Sort()
	var errs []error
	for _, e := range found {
		message := e.Message
		if detail, ok := e.Details.(*ast.RefErrInvalidDetail); ok && len(detail.OneOf) > 0 {
			message += unknownName(detail)
		}
		if e.Location == nil {
			errs = append(errs, errors.New(message))
			continue
		}
		errs = append(errs, fmt.Errorf("%s:%d:%d: %s", e.Location.File, e.Location.Row, e.Location.Col, message))
	}
	return errors.Join(errs...)
}

func unknownName(detail *ast.RefErrInvalidDetail) string {
	var known []string
	for _, v := range detail.OneOf {
		known = append(known, strings.Trim(v.String(), `"`))
	}
	slices.Sort(known)
	have := strings.Trim(detail.Ref[detail.Pos].String(), `"`)
	if near := catalog.Nearest(have, known); near != "" {
		return fmt.Sprintf("; there is no %s, the nearest is %s", have, near)
	}
	if len(known) > 8 {
		known = append(known[:8], "…")
	}
	return fmt.Sprintf("; there is no %s, there are %s", have, strings.Join(known, ", "))
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

// reachesOut names functions to refuse even if the language calls them
// deterministic: they look at the clock, the time zone of the machine, the
// network or certificates, none of which a deck needs.
func reachesOut(name string) bool {
	switch name {
	case "http.send", "opa.runtime", "json.match_schema", "json.verify_schema":
		return true
	}
	return slices.ContainsFunc([]string{"net.lookup", "time.", "rand.", "uuid.rfc4122", "crypto.", "io.jwt.", "providers."},
		func(prefix string) bool { return strings.HasPrefix(name, prefix) })
}
