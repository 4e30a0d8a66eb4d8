package ruleset_test

import (
	"plumbrule/checker/catalog"
	"plumbrule/checker/ruleset"
	"plumbrule/rules"
	"testing"
)

func TestZZ(t *testing.T) {
	cat, err := catalog.Load(rules.Checks())
	if err != nil {
		t.Fatal(err)
	}
	lib := ruleset.NewLibrary(rules.Sets(), cat)
	ids, _ := lib.IDs()
	for _, id := range ids {
		s, err := lib.ByName(id)
		if err != nil {
			t.Error(err)
			continue
		}
		t.Log(id, len(s.Checks), s.Summary().Figures)
	}
}
