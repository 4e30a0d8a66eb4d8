package engine

import (
	"maps"
	"slices"
	"strconv"
	"strings"

	"github.com/open-policy-agent/opa/v1/ast"
)

// factsRead lists the fields of input that a compiled check reads. It follows
// variables, arguments of functions and the rules of check and library to where
// their values came from, so that a field of an element shows under the list
// that holds the element.
func factsRead(check *ast.Module, all map[string]*ast.Module) []string {
	r := reader{from: map[string]string{}, rules: slices.Clone(check.Rules)}
	for _, file := range slices.Sorted(maps.Keys(all)) {
		if all[file].Package.Path.HasPrefix(ast.MustParseRef("data.lib")) {
			r.rules = append(r.rules, all[file].Rules...)
		}
	}
	for more := true; more; { // rules may stand before those that they read
		before := len(r.from)
		for i := range r.rules {
			r.learnRule(i)
		}
		more = len(r.from) > before
	}
	read := map[string]bool{}
	for i, rule := range r.rules {
		ast.WalkRefs(rule, func(ref ast.Ref) bool {
			if path, ok := r.resolve(ref, i); ok {
				read[field(path)] = true
			}
			return false
		})
	}
	return leaves(slices.Sorted(maps.Keys(read)))
}

// reader knows of variables and rules where in input their values come from:
// "flights[]" for an element of flights.
type reader struct {
	rules []*ast.Rule
	from  map[string]string
}

// learnRule learns from the nth rule: variables bound to a reference, what it
// hands to functions, and the rule itself where its value is such a variable.
func (r *reader) learnRule(n int) {
	rule := r.rules[n]
	ast.WalkExprs(rule, func(e *ast.Expr) bool {
		switch {
		case e.IsEquality() || e.IsAssignment():
			r.bind(e.Operand(0), e.Operand(1), n)
			r.bind(e.Operand(1), e.Operand(0), n)
		case e.IsCall():
			r.learnArguments(e, n)
		}
		return false
	})
	value := rule.Head.Value
	if rule.Head.RuleKind() == ast.MultiValue {
		value = rule.Head.Key
	}
	if value == nil || len(rule.Head.Args) > 0 {
		return
	}
	if path, ok := r.term(value, n); ok {
		r.learn(rule.Ref().String(), path)
	}
}

// learnArguments binds the parameters of a function to what a call hands over.
func (r *reader) learnArguments(call *ast.Expr, caller int) {
	for n, rule := range r.rules {
		if !rule.Ref().Equal(call.Operator()) {
			continue
		}
		for i, parameter := range rule.Head.Args {
			v, ok := parameter.Value.(ast.Var)
			if operand := call.Operand(i); ok && operand != nil {
				if path, ok := r.term(operand, caller); ok {
					r.learn(scoped(v, n), path)
				}
			}
		}
	}
}

func (r *reader) bind(to, from *ast.Term, rule int) {
	if v, ok := to.Value.(ast.Var); ok {
		if path, ok := r.term(from, rule); ok {
			r.learn(scoped(v, rule), path)
		}
	}
}

func (r *reader) learn(name, path string) {
	if _, known := r.from[name]; !known {
		r.from[name] = path
	}
}

// scoped keeps variables of different rules apart.
func scoped(v ast.Var, rule int) string { return string(v) + "@" + strconv.Itoa(rule) }

func (r *reader) term(t *ast.Term, rule int) (string, bool) {
	switch v := t.Value.(type) {
	case ast.Ref:
		return r.resolve(v, rule)
	case ast.Var:
		path, ok := r.from[scoped(v, rule)]
		return path, ok
	}
	return "", false
}

// resolve gives the path in input that a reference leads to.
func (r *reader) resolve(ref ast.Ref, rule int) (string, bool) {
	head, ok := ref[0].Value.(ast.Var)
	switch {
	case !ok:
		return "", false
	case ref[0].Equal(ast.InputRootDocument):
		return extend("", ref[1:]), true
	case ref[0].Equal(ast.DefaultRootDocument):
		return r.resolveRule(ref)
	}
	path, ok := r.from[scoped(head, rule)]
	return extend(path, ref[1:]), ok
}

// resolveRule follows a reference to a rule that gives one value, or one for
// each key or member.
func (r *reader) resolveRule(ref ast.Ref) (string, bool) {
	for _, rule := range r.rules {
		name := rule.Ref()
		keys := len(name)
		if rule.Head.RuleKind() == ast.MultiValue {
			keys++
		}
		path, ok := r.from[name.String()]
		if ok && len(ref) >= keys && ref.HasPrefix(name.GroundPrefix()) {
			return extend(path, ref[keys:]), true
		}
	}
	return "", false
}

func extend(path string, rest ast.Ref) string {
	for _, t := range rest {
		if name, ok := t.Value.(ast.String); ok {
			path = strings.TrimPrefix(path+"."+string(name), ".")
		} else {
			path += "[]"
		}
	}
	return path
}

// field cuts what every value has, so that its field alone remains.
func field(path string) string {
	if element, _, computed := strings.Cut(path, "[][]"); computed {
		return element + "[]" // a field whose name the check works out
	}
	if path == "at" || strings.HasSuffix(path, ".at") {
		return strings.TrimSuffix(strings.TrimSuffix(path, "at"), ".")
	}
	path, _, _ = strings.Cut(path, ".at[]")
	return strings.TrimSuffix(path, ".value")
}

// leaves drops a path where a longer one says more.
func leaves(sorted []string) []string {
	var kept []string
	for _, path := range sorted {
		longer := slices.ContainsFunc(sorted, func(other string) bool {
			return strings.HasPrefix(other, path+".") || strings.HasPrefix(other, path+"[")
		})
		if !longer && path != "" {
			kept = append(kept, path)
		}
	}
	return kept
}
