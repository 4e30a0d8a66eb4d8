package catalog

import (
	"errors"
	"fmt"
	"io/fs"
	"path"
	"slices"
	"strings"

	"github.com/open-policy-agent/opa/v1/ast"

	"plumbrule/checker/source"
)

// Catalog is a collection of checks and the library modules they share. It
// does not change after Load.
type Catalog struct {
	checks  []*Check
	known   map[string]*Check // by id and alias
	modules map[string]*ast.Module
	foreign map[string]Foreign // by name
}

// Load reads every Rego file of a file system but tests (*_test.rego): checks
// in packages below "checks", shared functions below "lib", and in package
// "checks" itself the module that binds the schemas. The error joins
// everything that is wrong, each with file, line and column.
func Load(files fs.FS) (*Catalog, error) {
	c := &Catalog{known: map[string]*Check{}, modules: map[string]*ast.Module{}}
	var found problems
	bound := false
	err := fs.WalkDir(files, ".", func(file string, entry fs.DirEntry, err error) error {
		if err != nil || entry.IsDir() || path.Ext(file) != ".rego" || strings.HasSuffix(file, "_test.rego") {
			return err
		}
		text, err := fs.ReadFile(files, file)
		if err != nil {
			return err
		}
		m, err := ast.ParseModuleWithOpts(file, string(text), ast.ParserOptions{})
		if err != nil {
			found.parse(file, err)
			return nil
		}
		c.modules[file] = m
		switch {
		case m.Package.Path.String() == "data.checks":
			bound = c.bind(file, text, &found) || bound
		case part(m.Package.Path, 1) == "lib":
			checkLibrary(m, &found)
		case part(m.Package.Path, 1) == "checks":
			c.add(m, file, text, &found)
		default:
			found.at(m.Package.Location, "%s is neither below checks nor below lib", m.Package.Path)
		}
		return nil
	})
	if err != nil {
		return nil, fmt.Errorf("reading checks: %w", err)
	}
	slices.SortFunc(c.checks, func(a, b *Check) int { return strings.Compare(a.ID, b.ID) })
	c.checkReads(&found)
	if err := found.err(); err != nil {
		return nil, fmt.Errorf("loading checks: %w", err)
	}
	if !bound {
		return nil, errors.New("loading checks: no module of package checks binds schema.facts to input and schema.figures to data.figures for its subpackages")
	}
	return c, nil
}

// bind parses the module of package checks again, now for its annotations.
func (c *Catalog) bind(file string, text []byte, found *problems) bool {
	m, err := ast.ParseModuleWithOpts(file, string(text), ast.ParserOptions{ProcessAnnotation: true})
	if err != nil {
		found.parse(file, err)
		return false
	}
	c.modules[file] = m
	for _, rule := range m.Rules {
		found.at(rule.Location, "package checks holds no rules, a check has a package of its own below it")
	}
	return bindsSchemas(m)
}

func (c *Catalog) add(m *ast.Module, file string, text []byte, found *problems) {
	check := readMetadata(file, text, found)
	if check == nil {
		return
	}
	check.checkModule(m, found)
	for _, id := range append([]string{check.ID}, check.Aliases...) {
		if other := c.known[id]; other != nil {
			found.at(m.Package.Location, "%s is taken by check %s in %s", id, other.ID, other.File)
			continue
		}
		c.known[id] = check
	}
	c.checks = append(c.checks, check)
}

func (c *Catalog) checkReads(found *problems) {
	for _, check := range c.checks {
		for _, id := range check.Reads {
			if other := c.known[id]; other == nil || other.ID != id {
				found.at(c.modules[check.File].Package.Location, "check %s reads %s, which is no check%s", check.ID, id, nearestOf(id, c.IDs()))
			}
		}
	}
}

// Checks gives all checks, by id.
func (c *Catalog) Checks() []*Check { return slices.Clone(c.checks) }

// Find gives the check of an id or of one of its aliases, or nil.
func (c *Catalog) Find(id string) *Check { return c.known[id] }

// IDs gives the ids of all checks in order, without aliases.
func (c *Catalog) IDs() []string {
	ids := make([]string, len(c.checks))
	for i, check := range c.checks {
		ids[i] = check.ID
	}
	return ids
}

// Modules gives the parsed modules by file name. The compiler copies them;
// others must not change them.
func (c *Catalog) Modules() map[string]*ast.Module { return c.modules }

// FiguresSchema gives the JSON Schema of the figures as checks read them,
// data.figures: topic, check and figure by name.
func (c *Catalog) FiguresSchema() map[string]any {
	byTopic := map[string]map[string]any{}
	for _, check := range c.checks {
		figures := map[string]any{}
		for _, figure := range check.Figures {
			figures[figure.Name] = figure.Kind.Schema()
		}
		topic, name := check.Path()
		if byTopic[topic] == nil {
			byTopic[topic] = map[string]any{}
		}
		byTopic[topic][name] = object(figures)
	}
	topics := make(map[string]any, len(byTopic))
	for topic, checks := range byTopic {
		topics[topic] = object(checks)
	}
	return object(topics)
}

// parse keeps what the Rego parser complains of.
func (p *problems) parse(file string, err error) {
	var wrong ast.Errors
	if !errors.As(err, &wrong) {
		p.list = append(p.list, asError(file, err))
		return
	}
	for _, e := range wrong {
		if e.Location == nil {
			p.add(file, source.Span{}, "%s", e.Message)
			continue
		}
		p.at(e.Location, "%s", e.Message)
	}
}
