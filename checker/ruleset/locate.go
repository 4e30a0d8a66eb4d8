package ruleset

import (
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path"
	"path/filepath"
	"strings"

	"plumbrule/checker/archive"
	"plumbrule/checker/catalog"
)

// origin is where the file of a set lies.
type origin struct {
	files   fs.FS
	file    string // its name in files
	shown   string // its name in messages
	disk    bool   // shown is a path of the system
	own     bool   // the set comes with the program
	carried bool   // files hold the program's checks as well
	key     string // the same for all names of one file
}

// IsPath tells the path of a file from the id of a set.
func IsPath(name string) bool {
	switch filepath.Ext(name) {
	case ".yaml", ".yml", ".json", ".gz", ".tgz":
		return true
	}
	return strings.ContainsAny(name, `/\`)
}

// own is a set that comes with the program.
func (l *Library) own(file string) origin {
	return origin{files: l.sets, file: file, shown: file, own: true, key: "\x00" + file}
}

// byPath is a set's file on disk, the set.yaml of a directory or that of a
// bundle. Strangers may have written all of them.
func byPath(name string) (origin, error) {
	if !isBundle(name) {
		return onDisk(name), nil
	}
	files, err := archive.Bundle(name, archive.Default())
	if err != nil {
		return origin{}, err
	}
	if _, err := fs.Stat(files, setFile); err != nil {
		return origin{}, fmt.Errorf("%s: the bundle has no %s in it", filepath.ToSlash(name), setFile)
	}
	return origin{files: files, file: setFile, shown: path.Join(filepath.ToSlash(name), setFile), carried: true, key: keyOf(name)}, nil
}

func isBundle(name string) bool {
	ext := filepath.Ext(name)
	return ext == ".gz" || ext == ".tgz"
}

// keyOf is the same for all names of one file.
func keyOf(name string) string {
	if target, err := filepath.EvalSymlinks(name); err == nil {
		name = target
	}
	if absolute, err := filepath.Abs(name); err == nil {
		name = absolute
	}
	return name
}

// onDisk is a set's file on disk, or the set.yaml of a directory.
func onDisk(name string) origin {
	if info, err := os.Stat(name); err == nil && info.IsDir() || strings.HasSuffix(name, "/") {
		name = filepath.Join(name, setFile)
	}
	dir, file := filepath.Split(name)
	return origin{
		files: archive.Dir(filepath.Clean(dir), archive.Default()), file: file, shown: filepath.ToSlash(name),
		disk: true, key: keyOf(name),
	}
}

// beside is the set that a set extends: a name with a slash or a file ending
// is a path from the extending set's own directory, any other an id.
func (l *Library) beside(from origin, name string) (origin, error) {
	switch {
	case !IsPath(name):
		if err := l.knows(name); err != nil {
			return origin{}, err
		}
		return l.own(name + "/" + setFile), nil
	case path.IsAbs(name) || filepath.IsAbs(name) || filepath.VolumeName(name) != "":
		return origin{}, fmt.Errorf("%q is no path from this file's directory", name)
	case from.disk:
		var link *archive.Error
		if _, err := fs.Stat(from.files, path.Clean(name)); errors.As(err, &link) {
			return origin{}, link // one of its directories may lead elsewhere
		}
		return byPath(filepath.Join(filepath.Dir(from.shown), filepath.FromSlash(name)))
	}
	file := path.Join(path.Dir(from.file), name)
	if !fs.ValidPath(file) {
		return origin{}, fmt.Errorf("%q leads out of the sets", name)
	}
	return origin{files: from.files, file: file, shown: path.Join(path.Dir(from.shown), name), key: "\x00" + file}, nil
}

// knows refuses an id that no set of the program has.
func (l *Library) knows(id string) error {
	if l.sets != nil {
		_, err := fs.Stat(l.sets, id+"/"+setFile)
		if !errors.Is(err, fs.ErrNotExist) && !errors.Is(err, fs.ErrInvalid) {
			return err
		}
	}
	ids, err := l.IDs()
	if err != nil {
		return err
	}
	if near := catalog.Nearest(strings.ToLower(id), ids); near != "" {
		return fmt.Errorf("there is no rule set %q; did you mean %s? A file of your own is named by its path, as ./%s.yaml", id, near, id)
	}
	return fmt.Errorf("there is no rule set %q; there are %s, and a file of your own is named by its path", id, strings.Join(ids, ", "))
}
