package config

import (
	"os"
	"path/filepath"
)

// FileName is the name of a configuration.
const FileName = "plumbrule.yaml"

// repository is what the root of a repository holds: a directory, or a file in
// a second working tree of it.
const repository = ".git"

// Find gives the configuration nearest at or above a directory, given by its
// absolute path; "" where there is none below the root of the repository or of
// the file system.
func Find(dir string) string {
	for {
		file := filepath.Join(dir, FileName)
		if info, err := os.Stat(file); err == nil && !info.IsDir() {
			return file
		}
		if _, err := os.Stat(filepath.Join(dir, repository)); err == nil {
			return ""
		}
		parent := filepath.Dir(dir)
		if parent == dir {
			return ""
		}
		dir = parent
	}
}
