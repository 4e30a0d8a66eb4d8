package archive_test

import (
	"errors"
	"io/fs"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"plumbrule/checker/archive"
)

// small are limits that tests reach in no time.
func small() archive.Limits {
	return archive.Limits{File: 100, Total: 250, Entries: 5, Ratio: 20}
}

func write(t *testing.T, dir, name, text string) {
	t.Helper()
	full := filepath.Join(dir, filepath.FromSlash(name))
	if err := os.MkdirAll(filepath.Dir(full), 0o755); err != nil {
		t.Fatal(err)
	}
	if err := os.WriteFile(full, []byte(text), 0o644); err != nil {
		t.Fatal(err)
	}
}

// readAll reads every file of a file system.
func readAll(files fs.FS) error {
	return fs.WalkDir(files, ".", func(name string, entry fs.DirEntry, err error) error {
		if err != nil || entry.IsDir() {
			return err
		}
		_, err = fs.ReadFile(files, name)
		return err
	})
}

// refused asks for an *archive.Error that names the entry and says why.
func refused(t *testing.T, err error, entry, problem string) {
	t.Helper()
	var found *archive.Error
	if !errors.As(err, &found) || found.Entry != entry || !strings.Contains(found.Problem, problem) {
		t.Errorf("%q: got %v, want it to be refused: %s", entry, err, problem)
	}
}

func TestDirReadsPlainFiles(t *testing.T) {
	dir := t.TempDir()
	write(t, dir, "set.yaml", "set: a")
	write(t, dir, "tables/one.yaml", "table: one")
	files := archive.Dir(dir, small())
	for range 10 { // what is read twice counts once
		text, err := fs.ReadFile(files, "tables/one.yaml")
		if err != nil || string(text) != "table: one" {
			t.Fatalf("%q, %v", text, err)
		}
		if err := readAll(files); err != nil {
			t.Fatal(err)
		}
	}
	if _, err := fs.Stat(files, "absent.yaml"); !errors.Is(err, fs.ErrNotExist) {
		t.Errorf("an absent file gives %v", err)
	}
	for _, name := range []string{"../set.yaml", "/etc/hosts", "tables/../../x"} {
		if _, err := fs.ReadFile(files, name); !errors.Is(err, fs.ErrInvalid) {
			t.Errorf("%s gives %v", name, err)
		}
	}
}

// TestDirRefuses shows of each hostile entry that an ordinary reader follows
// it, and that Dir does not.
func TestDirRefuses(t *testing.T) {
	secret := filepath.Join(t.TempDir(), "secret")
	if err := os.WriteFile(secret, []byte("secret"), 0o600); err != nil {
		t.Fatal(err)
	}
	for _, test := range []struct {
		name    string
		make    func(dir string) error
		read    string
		entry   string
		problem string
	}{
		{"link to a file outside", func(dir string) error { return os.Symlink(secret, filepath.Join(dir, "set.yaml")) },
			"set.yaml", "set.yaml", "symbolic link"},
		{"link to a file inside", func(dir string) error { return os.Symlink("plain", filepath.Join(dir, "set.yaml")) },
			"set.yaml", "set.yaml", "symbolic link"},
		{"link to a directory", func(dir string) error { return os.Symlink(filepath.Dir(secret), filepath.Join(dir, "tables")) },
			"tables/secret", "tables", "symbolic link"},
		{"hard link", func(dir string) error { return os.Link(secret, filepath.Join(dir, "set.yaml")) },
			"set.yaml", "set.yaml", "hard link"},
	} {
		t.Run(test.name, func(t *testing.T) {
			dir := t.TempDir()
			write(t, dir, "plain", "plain")
			if err := test.make(dir); err != nil {
				t.Skip("cannot be made here:", err)
			}
			if _, err := fs.ReadFile(os.DirFS(dir), test.read); err != nil {
				t.Fatalf("an ordinary reader stops at it too: %v", err)
			}
			_, err := fs.ReadFile(archive.Dir(dir, small()), test.read)
			refused(t, err, test.entry, test.problem)
			refused(t, readAll(archive.Dir(dir, small())), test.entry, test.problem)
		})
	}
}

func TestDirLimits(t *testing.T) {
	t.Run("file", func(t *testing.T) {
		dir := t.TempDir()
		write(t, dir, "at", strings.Repeat("x", 100))
		write(t, dir, "over", strings.Repeat("x", 101))
		files := archive.Dir(dir, small())
		if _, err := fs.ReadFile(files, "at"); err != nil {
			t.Error(err)
		}
		_, err := fs.ReadFile(files, "over")
		refused(t, err, "over", "limit for a file is 100 bytes")
		_, err = fs.ReadFile(files, "over")
		refused(t, err, "over", "limit for a file is 100 bytes")
	})
	t.Run("total", func(t *testing.T) {
		dir := t.TempDir()
		for _, name := range []string{"a", "b", "c"} {
			write(t, dir, name, strings.Repeat("x", 90))
		}
		refused(t, readAll(archive.Dir(dir, small())), "c", "all files together is 250 bytes")
	})
	t.Run("entries", func(t *testing.T) {
		dir := t.TempDir()
		for _, name := range []string{"a", "b/c", "b/d", "b/e", "b/f"} {
			write(t, dir, name, "")
		}
		refused(t, readAll(archive.Dir(dir, small())), "b/f", "limit is 5")
	})
}
