package schema

import (
	"embed"
	"fmt"
	"io/fs"
	"strings"
)

//go:embed *.schema.json
var files embed.FS

const (
	suffix = ".schema.json"
	// base is where the schemas say that they live. The host does not exist: nothing is ever fetched.
	base = "https://plumbrule.invalid/schema/"
)

// Names gives the names of the published schemas, sorted: "design" for design.schema.json.
func Names() []string {
	entries, err := fs.Glob(files, "*"+suffix)
	if err != nil {
		return nil // only a malformed pattern does that
	}
	names := make([]string, len(entries))
	for i, entry := range entries {
		names[i] = strings.TrimSuffix(entry, suffix)
	}
	return names
}

// JSON gives the text of a published schema. The error names a schema that does not exist.
func JSON(name string) ([]byte, error) {
	data, err := files.ReadFile(name + suffix)
	if err != nil {
		return nil, fmt.Errorf("no schema is named %q; there are %s", name, strings.Join(Names(), ", "))
	}
	return data, nil
}
