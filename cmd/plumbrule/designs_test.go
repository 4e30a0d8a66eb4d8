package main

import (
	"io/fs"
	"os"
	"path/filepath"
	"slices"
	"testing"
)

// TestFoldersThatMayNotBeSearched are among the designs, so that the report says
// that they could not be read and the others are still checked.
func TestFoldersThatMayNotBeSearched(t *testing.T) {
	if os.Geteuid() == 0 {
		t.Skip("the superuser may search every folder")
	}
	dir := t.TempDir()
	closed := filepath.Join(dir, "a", "closed")
	open := filepath.Join(dir, "b", "one.deck.yaml")
	for _, folder := range []string{closed, filepath.Dir(open)} {
		if err := os.MkdirAll(folder, 0o755); err != nil {
			t.Fatal(err)
		}
	}
	if err := os.WriteFile(open, []byte("deck: 1\n"), 0o644); err != nil {
		t.Fatal(err)
	}
	if err := os.Chmod(closed, 0); err != nil {
		t.Fatal(err)
	}
	t.Cleanup(func() { _ = os.Chmod(closed, fs.FileMode(0o755)) })
	inputs, err := readDesigns(environment{}, []string{dir, closed})
	var names []string
	var failed int
	for i := range inputs {
		names = append(names, inputs[i].Name)
		if inputs[i].Err != nil {
			failed++
		}
	}
	if want := []string{closed, open, closed}; err != nil || !slices.Equal(names, want) || failed != 2 {
		t.Errorf("%v, %d of %q failed, want %q", err, failed, names, want)
	}
}
