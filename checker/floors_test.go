package checker_test

import (
	"go/parser"
	"go/token"
	"io/fs"
	"os"
	"path"
	"path/filepath"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"
)

const (
	module = "plumbrule/"
	root   = ".."
)

// floors reads the table of the architecture page: package to floor.
func floors(t *testing.T) map[string]int {
	t.Helper()
	page, err := os.ReadFile(filepath.Join(root, "docs", "architecture.md"))
	if err != nil {
		t.Fatal(err)
	}
	row := regexp.MustCompile(`(?m)^\| (\d+) \| (.+) \|$`)
	name := regexp.MustCompile("`([^`]+)`")
	table := map[string]int{}
	for _, m := range row.FindAllStringSubmatch(string(page), -1) {
		floor, err := strconv.Atoi(m[1])
		if err != nil {
			t.Fatal(err)
		}
		for _, p := range name.FindAllStringSubmatch(m[2], -1) {
			table[p[1]] = floor
		}
	}
	if len(table) == 0 {
		t.Fatal("the architecture page has no table of floors")
	}
	return table
}

// imports lists what each package imports, tests left out: a test may look
// down from any height.
func imports(t *testing.T) map[string][]string {
	t.Helper()
	found := map[string][]string{}
	err := filepath.WalkDir(root, func(file string, entry fs.DirEntry, err error) error {
		if err != nil {
			return err
		}
		name := entry.Name()
		if entry.IsDir() && (name == "testdata" || strings.HasPrefix(name, ".") && name != "..") {
			return fs.SkipDir
		}
		if entry.IsDir() || path.Ext(name) != ".go" || strings.HasSuffix(name, "_test.go") {
			return nil
		}
		parsed, err := parser.ParseFile(token.NewFileSet(), file, nil, parser.ImportsOnly)
		if err != nil {
			return err
		}
		dir, err := filepath.Rel(root, filepath.Dir(file))
		if err != nil {
			return err
		}
		pkg := filepath.ToSlash(dir)
		found[pkg] = append(found[pkg], "")
		for _, spec := range parsed.Imports {
			found[pkg] = append(found[pkg], strings.Trim(spec.Path.Value, `"`))
		}
		return nil
	})
	if err != nil {
		t.Fatal(err)
	}
	return found
}

func TestImportsGoDownFloors(t *testing.T) {
	table := floors(t)
	for pkg, list := range imports(t) {
		floor, ok := table[pkg]
		if !ok {
			t.Errorf("package %s has no floor in docs/architecture.md", pkg)
			continue
		}
		for _, imported := range list {
			below, ours := strings.CutPrefix(imported, module)
			if !ours {
				continue
			}
			if table[below] >= floor {
				t.Errorf("%s (floor %d) imports %s (floor %d)", pkg, floor, below, table[below])
			}
		}
	}
}

func TestWalls(t *testing.T) {
	walls := map[string][]string{
		"github.com/santhosh-tekuri/jsonschema": {"schema"},
		"github.com/open-policy-agent/opa":      {"checker/catalog", "checker/engine"},
		"github.com/spf13/cobra":                {"cmd/plumbrule"},
		"go.yaml.in/yaml":                       {"checker/source"},
		"github.com/go-json-experiment/json":    {"checker/source"},
	}
	for pkg, list := range imports(t) {
		for _, imported := range list {
			for wall, inside := range walls {
				if strings.HasPrefix(imported, wall) && !slices.Contains(inside, pkg) {
					t.Errorf("%s imports %s, which is for %s", pkg, imported, strings.Join(inside, ", "))
				}
			}
		}
	}
}
