package catalog

import (
	"cmp"
	"errors"
	"fmt"
	"io/fs"
	"maps"
	"path"
	"slices"
	"strings"

	"plumbrule/checker/source"
)

// Foreign is a Rego file that a rule set brings. It is text that nobody here
// has looked into but for its METADATA.
type Foreign struct {
	Name  string // within the set: checks/office/stair-width/stair_width.rego
	Shown string // as messages name it
	Text  string
}

// Source says where With finds the Rego of a rule set.
type Source struct {
	Files fs.FS // with the directories "checks" and "lib" at its root
	Shown string
	// Carried says that the files hold the checks of the program as well, as a
	// bundle does for others to run; they are left aside.
	Carried bool
}

// With gives a catalog that has, besides, the checks that a rule set brings:
// every Rego file but tests in checks/<topic>/<check>/, and the library of
// their own in lib/. Of such a file only the METADATA is read; it is neither
// parsed nor compiled here. The error joins everything that is wrong.
func (c *Catalog) With(from Source) (*Catalog, error) {
	wider := &Catalog{checks: slices.Clone(c.checks), known: maps.Clone(c.known), modules: c.modules, foreign: maps.Clone(c.foreign)}
	if wider.foreign == nil {
		wider.foreign = map[string]Foreign{}
	}
	var found problems
	for _, root := range []string{"checks", "lib"} {
		if err := wider.bring(from, root, &found); err != nil {
			return nil, fmt.Errorf("reading the checks of a rule set: %w", err)
		}
	}
	slices.SortFunc(wider.checks, func(a, b *Check) int { return strings.Compare(a.ID, b.ID) })
	wider.checkForeignReads(&found)
	if err := found.err(); err != nil {
		return nil, err
	}
	return wider, nil
}

func (c *Catalog) bring(from Source, root string, found *problems) error {
	if _, err := fs.Stat(from.Files, root); err != nil {
		if errors.Is(err, fs.ErrNotExist) {
			return nil
		}
		return err
	}
	return fs.WalkDir(from.Files, root, func(file string, entry fs.DirEntry, err error) error {
		if err != nil || entry.IsDir() || path.Ext(file) != ".rego" || strings.HasSuffix(file, "_test.rego") {
			return err
		}
		if from.Carried && c.ours(file) {
			return nil
		}
		text, err := fs.ReadFile(from.Files, file)
		if err != nil {
			return err
		}
		m := Foreign{Name: file, Shown: path.Join(from.Shown, file), Text: string(text)}
		if other, taken := c.foreign[file]; taken || c.modules[file] != nil {
			found.add(m.Shown, top(), "the name %s is taken by %s", file, cmp.Or(other.Shown, "the program"))
			return nil
		}
		c.foreign[file] = m
		if root == "checks" {
			c.addForeign(m, found)
		}
		return nil
	})
}

// ours reports whether a file of a bundle is one of the program's own, or
// would be in another version of it.
func (c *Catalog) ours(file string) bool {
	steps := strings.Split(file, "/")
	return c.modules[file] != nil || steps[0] == "checks" && (len(steps) == 2 || slices.Contains(c.topics(), steps[1]))
}

// topics lists those of the program's own checks.
func (c *Catalog) topics() []string {
	var topics []string
	for _, check := range c.checks {
		if !check.Foreign && !slices.Contains(topics, check.Topic) {
			topics = append(topics, check.Topic)
		}
	}
	return topics
}

// addForeign adds the check that a file says it holds. Whether it does, the
// process that runs it finds out.
func (c *Catalog) addForeign(m Foreign, found *problems) {
	check := readMetadata(m.Shown, []byte(m.Text), found)
	if check == nil {
		return
	}
	check.Foreign = true
	topic, name := check.Path()
	if want := path.Join("checks", topic, name); path.Dir(m.Name) != want {
		found.add(m.Shown, top(), "check %s stands in the directory %s", check.ID, want)
	}
	for _, id := range append([]string{check.ID}, check.Aliases...) {
		topic, _ := Path(id)
		switch other := c.known[id]; {
		case slices.Contains(c.topics(), topic):
			found.add(m.Shown, top(), "%s lies in the topic %q of the program; a check of your own has a topic of its own", id, topic)
		case other != nil:
			found.add(m.Shown, top(), "%s is taken by check %s in %s", id, other.ID, other.File)
		default:
			c.known[id] = check
		}
	}
	c.checks = append(c.checks, check)
}

func (c *Catalog) checkForeignReads(found *problems) {
	for _, check := range c.checks {
		for _, id := range check.Reads {
			if other := c.known[id]; check.Foreign && (other == nil || other.ID != id) {
				found.add(check.File, top(), "check %s reads %s, which is no check%s", check.ID, id, nearestOf(id, c.IDs()))
			}
		}
	}
}

// Foreign gives the Rego files that sets brought, by name.
func (c *Catalog) Foreign() []Foreign {
	all := make([]Foreign, 0, len(c.foreign))
	for _, name := range slices.Sorted(maps.Keys(c.foreign)) {
		all = append(all, c.foreign[name])
	}
	return all
}

// Join gives a catalog with the checks of all of them. Sets may share a check
// that they bring, but not have two under one id.
func Join(first *Catalog, more ...*Catalog) (*Catalog, error) {
	joined := &Catalog{checks: slices.Clone(first.checks), known: maps.Clone(first.known), modules: first.modules, foreign: maps.Clone(first.foreign)}
	if joined.foreign == nil {
		joined.foreign = map[string]Foreign{}
	}
	var found problems
	for _, other := range more {
		for _, m := range other.Foreign() {
			if have, ok := joined.foreign[m.Name]; ok && have.Text != m.Text {
				found.add(m.Shown, top(), "differs from %s of another set that is active", have.Shown)
			}
			joined.foreign[m.Name] = m
		}
		for _, check := range other.checks {
			if joined.known[check.ID] != nil {
				continue
			}
			joined.checks = append(joined.checks, check)
			for _, id := range append([]string{check.ID}, check.Aliases...) {
				if taken := joined.known[id]; taken != nil {
					found.add(check.File, top(), "%s is taken by check %s in %s", id, taken.ID, taken.File)
				}
				joined.known[id] = check
			}
		}
	}
	slices.SortFunc(joined.checks, func(a, b *Check) int { return strings.Compare(a.ID, b.ID) })
	if err := found.err(); err != nil {
		return nil, fmt.Errorf("putting rule sets together: %w", err)
	}
	return joined, nil
}

// top is the place of what is wrong with a file as a whole.
func top() source.Span {
	start := source.Position{Line: 1, Column: 1}
	return source.Span{Start: start, End: start}
}
