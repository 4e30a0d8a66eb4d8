package engine_test

import (
	"fmt"
	"os"
	"path/filepath"
	"testing"

	"plumbrule/checker/catalog"
	"plumbrule/checker/engine"
	"plumbrule/checker/facts"
	"plumbrule/checker/model"
	"plumbrule/checker/ruleset"
	"plumbrule/checker/source"
)

func TestZZRun(t *testing.T) {
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
	e, err := engine.New(engine.Options{Checks: cat, Sets: sets})
	if err != nil {
		t.Fatal(err)
	}
	files, _ := filepath.Glob("../../fixtures/designs/*.yaml")
	for _, f := range files {
		data, _ := os.ReadFile(f)
		doc, err := source.Read(filepath.Base(f), data)
		if err != nil {
			t.Fatal(err)
		}
		deck, problems := model.Read(doc)
		if len(problems) > 0 {
			t.Fatal(problems)
		}
		fa, p2 := facts.Derive(deck)
		if len(p2) > 0 {
			t.Fatal(p2)
		}
		fmt.Println("=====", f)
		for _, r := range e.Evaluate(t.Context(), fa, doc, deck.System) {
			if r.Outcome == "does not apply" {
				continue
			}
			m := ""
			if r.Margin != nil {
				m = "margin " + r.Margin.Text
			}
			if r.Have != nil {
				m += " have " + r.Have.Text
			}
			if r.Limit != nil {
				m += " limit " + r.Limit.Text + " " + r.Limit.Standard
			}
			fmt.Printf("%d:%d %s %s [%s %s %s] %s | %s %v\n", r.Span.Start.Line, r.Span.Start.Column, r.Outcome, r.Message, r.Set, r.Check, r.Clause, m, r.Mark, r.Notes)
		}
	}
}
