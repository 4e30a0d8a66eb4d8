package rules_test

import (
	"io/fs"
	"os"
	"testing"

	"plumbrule/checker/catalog"
	"plumbrule/checker/engine"
	"plumbrule/checker/facts"
	"plumbrule/checker/model"
	"plumbrule/checker/ruleset"
	"plumbrule/checker/source"
	"plumbrule/rules"
)

// BenchmarkNew measures everything from the embedded files to an engine with
// all sets.
func BenchmarkNew(b *testing.B) {
	b.ReportAllocs()
	for b.Loop() {
		if _, err := engine.New(engine.Options{Checks: load(b), Sets: sets(b)}); err != nil {
			b.Fatal(err)
		}
	}
}

func BenchmarkCatalog(b *testing.B) {
	b.ReportAllocs()
	for b.Loop() {
		if _, err := catalog.Load(rules.Checks()); err != nil {
			b.Fatal(err)
		}
	}
}

func BenchmarkSets(b *testing.B) {
	library := ruleset.NewLibrary(rules.Sets(), load(b))
	ids, err := library.IDs()
	if err != nil {
		b.Fatal(err)
	}
	b.ReportAllocs()
	for b.Loop() {
		for _, id := range ids {
			if _, err := library.ByName(id); err != nil {
				b.Fatal(err)
			}
		}
	}
}

// BenchmarkEvaluate runs all checks of all sets on one design.
func BenchmarkEvaluate(b *testing.B) {
	const file = "../fixtures/designs/quarry-hill.deck.yaml"
	text, err := fs.ReadFile(os.DirFS("../fixtures/designs"), "quarry-hill.deck.yaml")
	if err != nil {
		b.Fatal(err)
	}
	doc, err := source.Read(file, text)
	if err != nil {
		b.Fatal(err)
	}
	deck, wrong := model.Read(doc)
	if len(wrong) > 0 {
		b.Fatal(wrong)
	}
	derived, undrawn := facts.Derive(deck)
	if len(undrawn) > 0 {
		b.Fatal(undrawn)
	}
	e, err := engine.New(engine.Options{Checks: load(b), Sets: sets(b)})
	if err != nil {
		b.Fatal(err)
	}
	b.ReportAllocs()
	for b.Loop() {
		if len(e.Evaluate(b.Context(), derived.Facts, doc, deck.System)) == 0 {
			b.Fatal("no results")
		}
	}
}
