package pages_test

import (
	"context"
	"flag"
	"io/fs"
	"maps"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"sync"
	"testing"

	"plumbrule/checker"
	"plumbrule/checker/pages"
)

const (
	root = "../.."
	docs = root + "/docs"
)

var update = flag.Bool("update", false, "write the pages anew")

// load reads checks and sets and runs the examples once for all tests, and
// makeAll makes the pages once.
var (
	load    = sync.OnceValues(func() (*pages.Pages, error) { return pages.Load(context.Background(), root) })
	makeAll = sync.OnceValues(func() (map[string]string, error) {
		p, err := load()
		if err != nil {
			return nil, err
		}
		return p.All()
	})
)

func loaded(t *testing.T) *pages.Pages {
	t.Helper()
	p, err := load()
	if err != nil {
		t.Fatal(err)
	}
	return p
}

// made gives the pages as their sources make them.
func made(t *testing.T) map[string]string {
	t.Helper()
	all, err := makeAll()
	if err != nil {
		t.Fatal(err)
	}
	return all
}

// TestPagesArePublished compares the pages in docs with what they are made from,
// and looks for pages that nothing makes any more.
func TestPagesArePublished(t *testing.T) {
	all := made(t)
	for _, name := range slices.Sorted(maps.Keys(all)) {
		file := filepath.Join(docs, filepath.FromSlash(name))
		have, err := os.ReadFile(file)
		switch {
		case *update:
			write(t, file, all[name])
		case err != nil:
			t.Errorf("%s is missing", name)
		case string(have) != all[name]:
			t.Errorf("%s is not what its source makes%s", name, difference(string(have), all[name]))
		}
	}
	for _, name := range published(t) {
		switch _, ok := all[name]; {
		case ok:
		case *update:
			if err := os.Remove(filepath.Join(docs, name)); err != nil {
				t.Error(err)
			}
		default:
			t.Errorf("nothing makes %s any more", name)
		}
	}
	if t.Failed() {
		t.Log("to write the pages anew: go test ./checker/pages -update")
	}
}

func write(t *testing.T, file, text string) {
	t.Helper()
	if err := os.MkdirAll(filepath.Dir(file), 0o755); err != nil {
		t.Fatal(err)
	}
	if err := os.WriteFile(file, []byte(text), 0o644); err != nil {
		t.Fatal(err)
	}
}

// difference shows the first line in which two texts differ.
func difference(have, want string) string {
	lines := strings.Split(want, "\n")
	for i, line := range strings.Split(have, "\n") {
		if i >= len(lines) || lines[i] != line {
			made := ""
			if i < len(lines) {
				made = lines[i]
			}
			return ":\nit has  " + line + "\nmade is " + made
		}
	}
	return ""
}

// published lists what lies in the folders of generated pages, by its name below
// docs.
func published(t *testing.T) []string {
	t.Helper()
	var names []string
	for _, folder := range []string{"checks", "sets"} {
		err := filepath.WalkDir(filepath.Join(docs, folder), func(file string, entry fs.DirEntry, err error) error {
			if err != nil || entry.IsDir() {
				return err
			}
			name, err := filepath.Rel(docs, file)
			names = append(names, filepath.ToSlash(name))
			return err
		})
		if err != nil && !os.IsNotExist(err) {
			t.Fatal(err)
		}
	}
	return names
}

// TestEveryCheckAndSetHasAPage asks the program, not the pages, what there is.
func TestEveryCheckAndSetHasAPage(t *testing.T) {
	checks, err := checker.Checks()
	if err != nil {
		t.Fatal(err)
	}
	var names []string
	for _, id := range checks.IDs() {
		names = append(names, "checks/"+id+".md")
	}
	for _, set := range sets(t) {
		names = append(names, "sets/"+set.ID+".md")
	}
	for _, name := range names {
		page, err := os.ReadFile(filepath.Join(docs, name))
		if err != nil {
			t.Errorf("%s is missing", name)
			continue
		}
		id := strings.TrimSuffix(name[strings.Index(name, "/")+1:], ".md")
		if !strings.Contains(string(page), id) {
			t.Errorf("%s does not name %s", name, id)
		}
	}
}

// TestPagesAreAlwaysTheSame makes them a second time.
func TestPagesAreAlwaysTheSame(t *testing.T) {
	second, err := loaded(t).All()
	if err != nil {
		t.Fatal(err)
	}
	for name, text := range made(t) {
		if second[name] != text {
			t.Errorf("%s differs from run to run", name)
		}
	}
}
