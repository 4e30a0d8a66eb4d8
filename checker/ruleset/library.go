package ruleset

import (
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"strings"

	"plumbrule/checker/catalog"
)

// setFile is the file of a set in its directory.
const setFile = "set.yaml"

// Library finds sets: those that come with the program by their id, others by
// the path of their file.
type Library struct {
	sets   fs.FS
	checks *catalog.Catalog
}

// NewLibrary makes a library of the sets in a file system, one directory for
// each set id, for the checks of a catalog.
func NewLibrary(sets fs.FS, checks *catalog.Catalog) *Library {
	return &Library{sets: sets, checks: checks}
}

// IDs gives the ids of the sets that come with the program, in order.
func (l *Library) IDs() ([]string, error) {
	files, err := fs.Glob(l.sets, "*/"+setFile)
	if err != nil {
		return nil, fmt.Errorf("listing rule sets: %w", err)
	}
	for i, file := range files {
		files[i] = strings.TrimSuffix(file, "/"+setFile)
	}
	return files, nil
}

// ByName loads a set. A name with a slash or a file ending is the path of a
// set's file or of the directory that holds its set.yaml; any other name is
// the id of a set that comes with the program.
func (l *Library) ByName(name string) (*Set, error) {
	if strings.ContainsAny(name, `/\`) || filepath.Ext(name) == ".yaml" || filepath.Ext(name) == ".yml" || filepath.Ext(name) == ".json" {
		return l.byPath(name)
	}
	set, err := Load(l.sets, name+"/"+setFile, name+"/"+setFile, l.checks)
	if errors.Is(err, fs.ErrNotExist) || errors.Is(err, fs.ErrInvalid) {
		ids, err := l.IDs()
		if err != nil {
			return nil, err
		}
		return nil, fmt.Errorf("there is no rule set %q%s; there are %s, and a file of your own is named by its path",
			name, nearest(name, ids), strings.Join(ids, ", "))
	}
	if err == nil && set.ID != name {
		return nil, fmt.Errorf("loading rule set: %s: the set calls itself %q", set.File, set.ID)
	}
	return set, err
}

func (l *Library) byPath(name string) (*Set, error) {
	if info, err := os.Stat(name); err == nil && info.IsDir() {
		name = filepath.Join(name, setFile)
	}
	dir, file := filepath.Split(name)
	return Load(os.DirFS(filepath.Clean(dir)), file, filepath.ToSlash(name), l.checks)
}
