package rules_test

import (
	"regexp"
	"testing"

	"github.com/open-policy-agent/opa/v1/ast"

	"plumbrule/schema"
)

var fieldPath = regexp.MustCompile(`^[a-z_]+(\[\])?(\.[a-z0-9_<>]+(\[\])?)+$`)

// TestFieldsThatChecksAskForExist resolves every path of a field that a check
// names, as guards[].height, in the schema of designs: a field that is not
// shown must be one that can be shown, and what stands for a name of the
// author's own stands in brackets.
func TestFieldsThatChecksAskForExist(t *testing.T) {
	found := 0
	for file, m := range load(t).Modules() {
		ast.WalkTerms(m, func(term *ast.Term) bool {
			path, ok := term.Value.(ast.String)
			if !ok || !fieldPath.MatchString(string(path)) {
				return false
			}
			found++
			field, ok := schema.FieldAt("design", string(path))
			if !ok {
				t.Errorf("%s:%d: the language of designs has no field %s", file, term.Location.Row, path)
			}
			for _, name := range field.OwnNames {
				t.Errorf("%s:%d: %s names %s, which is for the author of a design: put it in brackets, <%s>", file, term.Location.Row, path, name, name)
			}
			return false
		})
	}
	if found < 20 {
		t.Errorf("only %d paths found in all checks", found)
	}
}
