package archive

import (
	"cmp"
	"errors"
	"io"
	"io/fs"
	"os"
	"path"
	"slices"
	"strings"
	"sync"
	"testing/fstest"
)

// Dir opens a directory on disk. Nothing is read before it is asked for; what
// is asked for and is no plain file or directory of bounded size is refused
// with an *Error. The directory itself may be reached through a link, as its
// name is the user's own.
func Dir(name string, limits Limits) fs.FS {
	return &directory{name: name, tally: tally{limits: limits}, seen: map[string]bool{}}
}

// directory reads files whole when they are opened, so that what was measured
// is what is used.
type directory struct {
	name  string
	mutex sync.Mutex
	tally tally
	seen  map[string]bool // files that were counted
}

// Open implements fs.FS.
func (d *directory) Open(name string) (fs.File, error) {
	if !fs.ValidPath(name) {
		return nil, &fs.PathError{Op: "open", Path: name, Err: fs.ErrInvalid}
	}
	root, err := os.OpenRoot(d.name)
	if err != nil {
		return nil, err
	}
	defer func() { _ = root.Close() }() // it was only read from
	info, err := d.look(root, name)
	if err != nil {
		return nil, err
	}
	if info.IsDir() {
		return d.list(root, name)
	}
	return d.read(root, name)
}

// look follows a name step by step and refuses what is no plain file or
// directory on the way.
func (d *directory) look(root *os.Root, name string) (fs.FileInfo, error) {
	steps := strings.Split(name, "/")
	var info fs.FileInfo
	for i := range steps {
		step := path.Join(steps[:i+1]...)
		var err error
		if info, err = root.Lstat(step); err != nil {
			return nil, &fs.PathError{Op: "open", Path: name, Err: reason(err)}
		}
		if problem := kind(info); problem != "" {
			return nil, d.refuse(step, problem)
		}
	}
	return info, nil
}

func reason(err error) error {
	var wrapped *fs.PathError
	if errors.As(err, &wrapped) {
		return wrapped.Err
	}
	return err
}

// kind says what is wrong with the kind of an entry, "" if nothing.
func kind(info fs.FileInfo) string {
	switch mode := info.Mode(); {
	case mode&fs.ModeSymlink != 0:
		return "is a symbolic link; put the file itself there"
	case mode.IsDir():
		return ""
	case !mode.IsRegular():
		return "is neither a file nor a directory"
	case links(info) > 1:
		return "is a hard link to a file that has other names; put a copy there"
	}
	return ""
}

func (d *directory) read(root *os.Root, name string) (fs.File, error) {
	file, err := root.Open(name)
	if err != nil {
		return nil, &fs.PathError{Op: "open", Path: name, Err: reason(err)}
	}
	defer func() { _ = file.Close() }() // it was only read from
	data, err := io.ReadAll(io.LimitReader(file, d.tally.limits.File+1))
	if err != nil {
		return nil, err
	}
	if problem := d.count(name, int64(len(data))); problem != "" {
		return nil, d.refuse(name, problem)
	}
	return fstest.MapFS{name: {Data: data, Mode: 0o444}}.Open(name)
}

// count counts a file once, however often it is read.
func (d *directory) count(name string, size int64) string {
	d.mutex.Lock()
	defer d.mutex.Unlock()
	if d.seen[name] && size <= d.tally.limits.File {
		return ""
	}
	d.seen[name] = true
	return d.tally.bytes(size)
}

// list opens a directory, in which every entry must be one that can be opened.
func (d *directory) list(root *os.Root, name string) (fs.File, error) {
	file, err := root.Open(name)
	if err != nil {
		return nil, &fs.PathError{Op: "open", Path: name, Err: reason(err)}
	}
	defer func() { _ = file.Close() }() // it was only read from
	entries, err := file.ReadDir(d.tally.limits.Entries + 1)
	if err != nil && !errors.Is(err, io.EOF) {
		return nil, err
	}
	slices.SortFunc(entries, func(a, b fs.DirEntry) int { return cmp.Compare(a.Name(), b.Name()) })
	listed := fstest.MapFS{name: {Mode: fs.ModeDir | 0o555}}
	for _, entry := range entries {
		full := path.Join(name, entry.Name())
		info, err := entry.Info()
		if err != nil {
			return nil, err
		}
		problem := kind(info)
		if problem == "" {
			problem = d.countEntry(full)
		}
		if problem != "" {
			return nil, d.refuse(full, problem)
		}
		listed[full] = &fstest.MapFile{Mode: info.Mode()}
	}
	return listed.Open(name)
}

// countEntry counts an entry once, however often its directory is listed.
func (d *directory) countEntry(name string) string {
	d.mutex.Lock()
	defer d.mutex.Unlock()
	if d.seen["entry "+name] {
		return ""
	}
	d.seen["entry "+name] = true
	return d.tally.entry()
}

func (d *directory) refuse(entry, problem string) error {
	return &Error{Name: d.name, Entry: entry, Problem: problem}
}
