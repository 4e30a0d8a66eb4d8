package golden

import (
	"bytes"
	"errors"
	"flag"
	"io/fs"
	"os"
	"path/filepath"
	"testing"

	"github.com/rogpeppe/go-internal/diff"
)

var update = flag.Bool("update", false, "rewrite golden files with what the tests produce")

// Equal fails the test unless got equals testdata/name, and shows how they
// differ and what rewrites the file.
func Equal(t *testing.T, name string, got []byte) {
	t.Helper()
	path := filepath.Join("testdata", filepath.FromSlash(name))
	if *update {
		if err := os.MkdirAll(filepath.Dir(path), 0o755); err != nil {
			t.Fatal(err)
		}
		if err := os.WriteFile(path, got, 0o644); err != nil {
			t.Fatal(err)
		}
		return
	}
	want, err := os.ReadFile(path)
	if err != nil && !errors.Is(err, fs.ErrNotExist) {
		t.Fatal(err)
	}
	// A missing file counts as empty, so that the difference shows all of got.
	if err == nil && bytes.Equal(want, got) {
		return
	}
	t.Errorf("%s differs; to rewrite it: go test -run '^%s$' . -update\n%s",
		filepath.ToSlash(path), t.Name(), diff.Diff("want", want, "got", got))
}
