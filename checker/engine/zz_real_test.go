package engine_test

import (
	"os"
	"path/filepath"
	"testing"

	"plumbrule/checker/catalog"
	"plumbrule/checker/engine"
	"plumbrule/checker/ruleset"
)

func TestZZReal(t *testing.T) {
	root := os.Getenv("RC")
	cat, err := catalog.Load(os.DirFS(root))
	if err != nil {
		t.Fatal(err)
	}
	lib := ruleset.NewLibrary(os.DirFS(filepath.Join(root, "sets")), cat)
	var sets []*ruleset.Set
	for _, id := range []string{"irc-2021", "common-practice"} {
		s, err := lib.ByName(id)
		if err != nil {
			t.Error(err)
			continue
		}
		sets = append(sets, s)
	}
	_, err = engine.New(engine.Options{Checks: cat, Sets: sets})
	if err != nil {
		t.Fatal(err)
	}
}
