package catalog

import (
	"strings"

	"github.com/open-policy-agent/opa/v1/ast"
)

// checkModule refuses what a module of a check must not have: a package that
// is not named as the id, rules under free names, data it did not ask for.
func (c *Check) checkModule(m *ast.Module, found *problems) {
	topic, name := c.Path()
	if want := "data.checks." + topic + "." + name; m.Package.Path.String() != want {
		found.at(m.Package.Location, "the package of check %s must be %s", c.ID, strings.TrimPrefix(want, "data."))
	}
	for _, rule := range m.Rules {
		name := rule.Head.Ref()[0].String()
		switch name {
		case RuleReadings, RuleUnknown, RuleExempt:
			if rule.Head.RuleKind() != ast.MultiValue {
				found.at(rule.Location, "%s must be a set: %s contains {...} if {...}", name, name)
			}
			c.checkRow(name, rule.Head, found)
		case RuleApplies:
			if rule.Head.RuleKind() != ast.SingleValue {
				found.at(rule.Location, "applies must be a single yes or no: applies if {...}")
			}
		default:
			if !strings.HasPrefix(name, "_") {
				found.at(rule.Location, "rule %q is none that a check has; name it with a leading underscore", name)
			}
			continue
		}
		if !c.Defines(name) {
			c.Rules = append(c.Rules, name)
		}
	}
	for _, rule := range []string{RuleApplies, RuleReadings} {
		if !c.Defines(rule) {
			found.at(m.Package.Location, "check %s has no rule %q", c.ID, rule)
		}
	}
	allowed := []string{c.ID}
	allowed = append(allowed, c.Reads...)
	eachDataRef(m, func(ref ast.Ref, at *ast.Location) {
		if part(ref, 1) == "lib" {
			return
		}
		for _, id := range allowed {
			topic, name := Path(id)
			if part(ref, 1) == "figures" && part(ref, 2) == topic && part(ref, 3) == name {
				return
			}
		}
		found.at(at, "%s is neither a figure of the check, nor of one that it names under reads, nor in lib", ref)
	})
}

// checkLibrary refuses a shared module that reads anything but its arguments:
// nothing would tell a misspelt field there from one not shown.
func checkLibrary(m *ast.Module, found *problems) {
	eachDataRef(m, func(ref ast.Ref, at *ast.Location) {
		if part(ref, 1) != "lib" {
			found.at(at, "%s is out of reach of lib, hand it over as an argument", ref)
		}
	})
	ast.WalkRefs(m, func(ref ast.Ref) bool {
		if ref[0].Equal(ast.InputRootDocument) {
			found.at(ref[0].Location, "%s is out of reach of lib, hand it over as an argument", ref)
		}
		return false
	})
}

// eachDataRef visits every reference into data, imports included.
func eachDataRef(m *ast.Module, visit func(ast.Ref, *ast.Location)) {
	own := m.Package.Path
	ast.WalkRefs(m, func(ref ast.Ref) bool {
		if ref[0].Equal(ast.DefaultRootDocument) && !ref.Equal(own) {
			visit(ref, ref[0].Location)
		}
		return false
	})
}

func part(ref ast.Ref, i int) string {
	if i < len(ref) {
		if s, ok := ref[i].Value.(ast.String); ok {
			return string(s)
		}
	}
	return ""
}

// bindsSchemas reports whether a module binds the schemas of facts and figures
// to everything below its package.
func bindsSchemas(m *ast.Module) bool {
	input, figures := false, false
	for _, a := range m.Annotations {
		if a.Scope != "subpackages" {
			continue
		}
		for _, s := range a.Schemas {
			input = input || s.Path.String() == "input" && s.Schema.String() == "schema.facts"
			figures = figures || s.Path.String() == "data.figures" && s.Schema.String() == "schema.figures"
		}
	}
	return input && figures
}
