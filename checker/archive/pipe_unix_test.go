//go:build unix

package archive_test

import (
	"io/fs"
	"path/filepath"
	"syscall"
	"testing"

	"plumbrule/checker/archive"
)

// A pipe without a writer would hold a reader for ever.
func TestDirRefusesPipe(t *testing.T) {
	dir := t.TempDir()
	if err := syscall.Mkfifo(filepath.Join(dir, "set.yaml"), 0o600); err != nil {
		t.Skip("cannot be made here:", err)
	}
	_, err := fs.ReadFile(archive.Dir(dir, small()), "set.yaml")
	refused(t, err, "set.yaml", "neither a file nor a directory")
}
