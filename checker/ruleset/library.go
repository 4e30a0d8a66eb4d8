package ruleset

import (
	"fmt"
	"io/fs"
	"path"
	"slices"
	"strings"

	"plumbrule/checker/catalog"
)

// setFile is the file of a set in its directory.
const setFile = "set.yaml"

// Library finds sets: those that come with the program by their id, others by
// the path of their file.
type Library struct {
	sets   fs.FS // nil for a library without sets of its own
	checks *catalog.Catalog
}

// NewLibrary makes a library of the sets in a file system, one directory for
// each set id, for the checks of a catalog.
func NewLibrary(sets fs.FS, checks *catalog.Catalog) *Library {
	return &Library{sets: sets, checks: checks}
}

// IDs gives the ids of the sets that come with the program, in order.
func (l *Library) IDs() ([]string, error) {
	if l.sets == nil {
		return nil, nil
	}
	files, err := fs.Glob(l.sets, "*/"+setFile)
	if err != nil {
		return nil, fmt.Errorf("listing rule sets: %w", err)
	}
	for i, file := range files {
		files[i] = strings.TrimSuffix(file, "/"+setFile)
	}
	return files, nil
}

// ByName loads a set, with the sets that it extends and the checks that it
// brings. A name with a slash or a file ending is the path of a set's file, of
// the directory that holds its set.yaml, or of a bundle; any other name is the
// id of a set that comes with the program.
func (l *Library) ByName(name string) (*Set, error) {
	at, err := l.locate(name)
	if err != nil {
		return nil, err
	}
	set, err := l.open(at)
	if err == nil && at.own && set.ID != name {
		return nil, fmt.Errorf("loading rule set: %s: the set calls itself %q", set.File, set.ID)
	}
	return set, err
}

func (l *Library) locate(name string) (origin, error) {
	if IsPath(name) {
		at, err := byPath(name)
		if err != nil {
			return origin{}, fmt.Errorf("loading rule set: %w", err)
		}
		return at, nil
	}
	if err := l.knows(name); err != nil {
		return origin{}, err
	}
	return l.own(name + "/" + setFile), nil
}

// Files gives the files among which the file of a set lies, and its name there.
func (l *Library) Files(name string) (files fs.FS, file string, err error) {
	at, err := l.locate(name)
	return at.files, at.file, err
}

// Load reads the set in a file, and its tables from the directory "tables"
// beside it. Messages name the file as shown, the tables likewise. What the set
// extends is a file of the same file system. The error joins everything that is
// wrong, each with file, line and column.
func Load(files fs.FS, file, shown string, checks *catalog.Catalog) (*Set, error) {
	return NewLibrary(nil, checks).open(origin{files: files, file: file, shown: shown, key: "\x00" + file})
}

func (l *Library) open(at origin) (*Set, error) {
	set, err := l.read(at, nil)
	if err != nil {
		return nil, fmt.Errorf("loading rule set: %w", err)
	}
	return set, nil
}

// read loads a set that the sets above extend, the first of them being the one
// that was asked for.
func (l *Library) read(at origin, above []origin) (*Set, error) {
	r := newLoader(at)
	doc, err := r.document(at.file, at.shown, "set", &r.problems)
	if err != nil {
		return nil, err
	}
	var base *Set
	if extends := doc.Root.Member("extends"); extends != nil {
		below, err := l.beside(at, extends.Value.Text)
		if err != nil {
			r.problems.add(extends.Value.Span, "%v", err)
			return nil, r.problems.err()
		}
		above = append(slices.Clone(above), at)
		if i := slices.IndexFunc(above, func(o origin) bool { return o.key == below.key }); i >= 0 {
			r.problems.add(extends.Value.Span, "the set extends itself: %s", ring(above[i:]))
			return nil, r.problems.err()
		}
		if _, err := fs.Stat(below.files, below.file); err != nil {
			r.problems.add(extends.Value.Span, "the set %s cannot be read: %v", below.shown, plain(err))
			return nil, r.problems.err()
		}
		if base, err = l.read(below, above); err != nil {
			return nil, err
		}
	}
	if r.checks, err = l.checksOf(at, base); err != nil {
		return nil, err
	}
	set := r.set(doc.Root, base)
	if err := r.problems.err(); err != nil {
		return nil, err
	}
	return set, nil
}

// checksOf gives the checks that a set may name: those of the program, those
// that the set below brings, and those that lie beside its own set.yaml.
func (l *Library) checksOf(at origin, base *Set) (*catalog.Catalog, error) {
	checks := l.checks
	if base != nil {
		checks = base.checks
	}
	if at.own || path.Base(at.file) != setFile {
		return checks, nil
	}
	dir := path.Dir(at.file)
	files, err := fs.Sub(at.files, dir)
	if err != nil {
		return nil, err
	}
	return checks.With(catalog.Source{Files: files, Shown: path.Dir(at.shown), Carried: at.carried})
}

// ring names the files of a chain that leads back to its first.
func ring(chain []origin) string {
	var names []string
	for _, o := range chain {
		names = append(names, o.shown)
	}
	return strings.Join(append(names, chain[0].shown), " extends ")
}
