package pages_test

import (
	"io/fs"
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"testing"

	"plumbrule/checker/markdown"
)

var (
	fenced  = regexp.MustCompile("(?ms)^(```+)[^\n]*\n.*?^```+$")
	code    = regexp.MustCompile("`[^`\n]*`")
	target  = regexp.MustCompile(`\]\(([^()\s]+)\)`)
	heading = regexp.MustCompile(`(?m)^#+ (.+)$`)
	escaped = regexp.MustCompile("\\\\([\\\\`*\\[\\]<>|~$&_])")
)

// guide is a page as a reader finds it: where its links lead, and what links
// can lead to.
type guide struct {
	links   []string
	anchors map[string]bool
}

func readGuide(t *testing.T, file string) guide {
	t.Helper()
	text, err := os.ReadFile(file)
	if err != nil {
		t.Fatal(err)
	}
	page := fenced.ReplaceAllString(string(text), "")
	g := guide{anchors: map[string]bool{}}
	for _, m := range heading.FindAllStringSubmatch(page, -1) {
		plain := strings.ReplaceAll(escaped.ReplaceAllString(m[1], "$1"), "`", "")
		g.anchors[markdown.Anchor(plain)] = true
	}
	for _, m := range target.FindAllStringSubmatch(code.ReplaceAllString(page, "code"), -1) {
		g.links = append(g.links, m[1])
	}
	return g
}

// guides reads every page of the documentation, generated or not.
func guides(t *testing.T) map[string]guide {
	t.Helper()
	all := map[string]guide{}
	for _, file := range []string{"README.md", "DEVELOPERS.md"} {
		all[filepath.Join(root, file)] = readGuide(t, filepath.Join(root, file))
	}
	err := filepath.WalkDir(docs, func(file string, entry fs.DirEntry, err error) error {
		if err == nil && !entry.IsDir() && filepath.Ext(file) == ".md" {
			all[filepath.Clean(file)] = readGuide(t, file)
		}
		return err
	})
	if err != nil {
		t.Fatal(err)
	}
	return all
}

// TestLinksLeadSomewhere follows every link within the repository, to the
// heading that it names.
func TestLinksLeadSomewhere(t *testing.T) {
	all := guides(t)
	followed := 0
	for file, g := range all {
		for _, link := range g.links {
			if strings.Contains(link, "://") {
				continue
			}
			followed++
			to, anchor, _ := strings.Cut(link, "#")
			name := file
			if to != "" {
				name = filepath.Join(filepath.Dir(file), filepath.FromSlash(to))
			}
			if _, err := os.Stat(name); err != nil {
				t.Errorf("%s links to %s, which is not there", file, link)
				continue
			}
			if page, known := all[name]; anchor != "" && (!known || !page.anchors[anchor]) {
				t.Errorf("%s links to %s, which has no such heading", file, link)
			}
		}
	}
	if followed < 1000 {
		t.Errorf("only %d links found", followed)
	}
}

// TestTablesAreWhole asks of every table that all its rows have as many cells
// as its head.
func TestTablesAreWhole(t *testing.T) {
	tables := 0
	for name, text := range made(t) {
		columns := 0
		for i, line := range strings.Split(fenced.ReplaceAllString(text, ""), "\n") {
			cells := strings.Count(strings.ReplaceAll(line, `\|`, ""), "|") - 1
			switch {
			case !strings.HasPrefix(line, "|"):
				columns = 0
			case columns == 0:
				columns = cells
				tables++
			case cells != columns:
				t.Errorf("%s, line %d: %d cells below %d columns: %s", name, i+1, cells, columns, line)
			}
		}
	}
	if tables < 300 {
		t.Errorf("only %d tables found", tables)
	}
}
