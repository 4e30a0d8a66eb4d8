package checker_test

import (
	"context"
	"io/fs"
	"path/filepath"
	"strings"
	"testing"

	"plumbrule/checker"
	"plumbrule/checker/result"
)

// everyFixture lists the whole designs and those of the checks.
func everyFixture(t *testing.T) []string {
	t.Helper()
	var files []string
	for _, root := range []string{"../fixtures/designs", checkFixtures} {
		err := filepath.WalkDir(root, func(file string, entry fs.DirEntry, err error) error {
			if err == nil && !entry.IsDir() && strings.Contains(entry.Name(), ".deck.") {
				files = append(files, file)
			}
			return err
		})
		if err != nil {
			t.Fatal(err)
		}
	}
	if len(files) < 500 {
		t.Fatalf("%d designs only", len(files))
	}
	return files
}

// A check has something to say of every design, whatever figures a set gives it
// and whatever the design leaves open: no fixture, each meant for one check and
// one set, makes any check fail under any set.
func TestNoFixtureMakesACheckFail(t *testing.T) {
	if testing.Short() {
		t.Skip("checks every fixture under every set")
	}
	c := everySet(t)
	var inputs []checker.Input
	for _, file := range everyFixture(t) {
		input := readInput(t, file)
		input.Name = strings.TrimPrefix(filepath.ToSlash(file), "../fixtures/")
		inputs = append(inputs, input)
	}
	for _, d := range c.Check(context.Background(), inputs...).Designs {
		for _, p := range d.Problems {
			t.Errorf("%s cannot be read: %s", d.File, p.Message)
		}
		for i := range d.Findings {
			if r := &d.Findings[i]; r.Outcome == result.CouldNotRun {
				t.Errorf("%s: %s of %s could not run: %s", d.File, r.Check, r.Set, r.Reason)
			}
		}
	}
}
