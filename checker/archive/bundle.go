package archive

import (
	"archive/tar"
	"compress/gzip"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
	"path"
	"strings"
	"testing/fstest"
)

// Bundle reads a gzipped tar file on disk whole into memory. What is no plain
// file of bounded size under a name of its own is refused with an *Error.
func Bundle(name string, limits Limits) (fs.FS, error) {
	file, err := os.Open(name)
	if err != nil {
		return nil, err
	}
	defer func() { _ = file.Close() }() // it was only read from
	if info, err := file.Stat(); err != nil || !info.Mode().IsRegular() {
		return nil, &Error{Name: name, Problem: "is not a file"}
	}
	return Read(name, file, limits)
}

// Read reads a gzipped tar file from r, called name in messages.
func Read(name string, r io.Reader, limits Limits) (fs.FS, error) {
	packed := &counter{r: r}
	unzipped, err := gzip.NewReader(packed)
	if err != nil {
		return nil, &Error{Name: name, Problem: "is no bundle, which is a gzipped tar file"}
	}
	b := bundle{name: name, tally: tally{limits: limits}, packed: packed, unpacked: &counter{r: unzipped}, files: fstest.MapFS{}}
	entries := tar.NewReader(b.unpacked)
	for {
		header, err := entries.Next()
		if errors.Is(err, io.EOF) {
			return b.files, nil
		}
		if err != nil {
			return nil, &Error{Name: name, Problem: "is damaged: " + err.Error()}
		}
		if err := b.add(header, entries); err != nil {
			return nil, err
		}
	}
}

// bundle collects the files of a tar file.
type bundle struct {
	name             string
	tally            tally
	packed, unpacked *counter
	files            fstest.MapFS
}

func (b *bundle) add(header *tar.Header, content io.Reader) error {
	entry := strings.TrimSuffix(header.Name, "/")
	for _, problem := range []string{b.tally.entry(), wayOut(entry), irregular(header.Typeflag), b.ratio()} {
		if problem != "" {
			return &Error{Name: b.name, Entry: header.Name, Problem: problem}
		}
	}
	entry = path.Clean(entry) // ./set.yaml
	if header.Typeflag == tar.TypeDir {
		return nil // the files in it say so themselves
	}
	if problem := b.taken(entry); problem != "" {
		return &Error{Name: b.name, Entry: header.Name, Problem: problem}
	}
	// The header may lie about the size; what counts is what comes.
	data, err := io.ReadAll(io.LimitReader(content, b.tally.limits.File+1))
	if err != nil {
		return &Error{Name: b.name, Entry: header.Name, Problem: "is damaged: " + err.Error()}
	}
	for _, problem := range []string{b.tally.bytes(int64(len(data))), b.ratio()} {
		if problem != "" {
			return &Error{Name: b.name, Entry: header.Name, Problem: problem}
		}
	}
	b.files[entry] = &fstest.MapFile{Data: data, Mode: 0o444}
	return nil
}

// wayOut says what is wrong with a name that leads out of the bundle, or that
// could on another system.
func wayOut(name string) string {
	switch clean := path.Clean(name); {
	case path.IsAbs(name) || strings.ContainsAny(name, "\\:"):
		return "is an absolute path, or one on another system"
	case clean == ".." || strings.HasPrefix(clean, "../") || strings.Contains("/"+name+"/", "/../"):
		return "climbs out of its directory"
	case !fs.ValidPath(clean) || strings.ContainsFunc(name, func(r rune) bool { return r < ' ' || r == 0x7f }):
		return "is no name of a file"
	}
	return ""
}

func irregular(kind byte) string {
	switch kind {
	case tar.TypeReg, tar.TypeDir:
		return ""
	case tar.TypeSymlink:
		return "is a symbolic link"
	case tar.TypeLink:
		return "is a hard link"
	}
	return "is neither a file nor a directory"
}

// taken refuses a second entry of one name, and a file where a directory is or
// the other way round.
func (b *bundle) taken(entry string) string {
	if _, err := fs.Stat(b.files, entry); err == nil {
		return "is there twice"
	}
	for dir := path.Dir(entry); dir != "."; dir = path.Dir(dir) {
		if b.files[dir] != nil {
			return fmt.Sprintf("lies in %q, which is a file", dir)
		}
	}
	return ""
}

func (b *bundle) ratio() string {
	if b.unpacked.n > free && b.unpacked.n > b.tally.limits.Ratio*b.packed.n {
		return fmt.Sprintf("unpacks to more than %d times its packed size", b.tally.limits.Ratio)
	}
	return ""
}

// counter counts the bytes that pass it.
type counter struct {
	r io.Reader
	n int64
}

func (c *counter) Read(p []byte) (int, error) {
	n, err := c.r.Read(p)
	c.n += int64(n)
	return n, err
}
