package ruleset

import (
	"slices"

	"plumbrule/checker/catalog"
	"plumbrule/checker/measure"
	"plumbrule/checker/result"
	"plumbrule/checker/wording"
)

// Status says how far a figure can be trusted.
type Status string

// The statuses, the most trustworthy first.
const (
	Published      Status = "published"       // seen in print, in the source named
	CommonPractice Status = "common practice" // known in the trade, without a source
	Recalled       Status = "recalled"        // from memory
)

// weaker gives the less trustworthy of two statuses.
func weaker(a, b Status) Status {
	order := []Status{Published, CommonPractice, Recalled}
	return order[max(slices.Index(order, a), slices.Index(order, b), 0)]
}

// Set is one rule set, ready for the engine. It does not change after it was
// loaded.
type Set struct {
	ID, Title, Edition, Publisher, Scope string
	// Place is the town or state whose rules these are; empty for a model code.
	Place string
	// Extends is the id of the set that this one amends; empty for a set that
	// stands by itself.
	Extends string
	// System is the standard's own system of units.
	System     measure.System
	NotCovered []string
	// Sources are those of the set in the order of its file, then those of the
	// sets below.
	Sources []Source
	Checks  []Check // by id
	// Words are what the set calls things, by phrase: its own and those of the
	// sets below.
	Words []Word
	// File is the set's file under the name it was asked for.
	File   string
	checks *catalog.Catalog
	worded map[string]*catalog.Check // by id
	words  wording.Wording
}

// Catalog describes the checks that the set could name: those of the program
// and those that it brings itself.
func (s *Set) Catalog() *catalog.Catalog { return s.checks }

// Describe describes a check of the set in the set's own words and with the
// class that the set gives it; nil where the set does not have it.
func (s *Set) Describe(id string) *catalog.Check { return s.worded[id] }

// Wording says things in the set's own words.
func (s *Set) Wording() wording.Wording { return s.words }

// Source is a document in which figures were seen in print.
type Source struct{ ID, Title string }

// Check is what a set gives one check.
type Check struct {
	ID     string // never an alias
	Clause string
	Note   string
	// Class is what is at stake under the standard; empty where the check itself
	// says it.
	Class   result.Consequence
	Figures []Figure // in the order in which the check asks for them
	// Off says that and why the check is not to run; its figures stay, as other
	// checks may read them.
	Off *Off
}

// Figure is one figure of a set.
type Figure struct {
	Name string
	Kind catalog.Kind
	// Value is the figure as checks read it: int64, bool, string, []any or
	// map[string]any.
	Value any
	// Text is the figure as the standard writes it; for a table its title.
	Text   string
	Clause string
	// Set is the id of the set that gives the figure.
	Set string
	// Status is that of the weakest cell for a table.
	Status Status
	Source string // title of the source; empty unless published
	Note   string
	Table  *Table // nil for all kinds but a table
	// Amends says what the figure replaced; nil for one of the set that stands
	// by itself.
	Amends *Amends
}

// Check gives what the set has for a check, or nil.
func (s *Set) Check(id string) *Check {
	i := slices.IndexFunc(s.Checks, func(c Check) bool { return c.ID == id })
	if i < 0 {
		return nil
	}
	return &s.Checks[i]
}

// Figure gives the figure of that name, or nil where the set does not give it.
func (c *Check) Figure(name string) *Figure {
	i := slices.IndexFunc(c.Figures, func(f Figure) bool { return f.Name == name })
	if i < 0 {
		return nil
	}
	return &c.Figures[i]
}

// States reports whether a whole number stands in the set as it is: as the
// figure, or in a cell of its table. What a check worked out from the figure and
// the design does not.
func (f *Figure) States(n int64) bool {
	if f.Table == nil {
		return f.Value == n
	}
	return slices.ContainsFunc(f.Table.cells, func(c Cell) bool { return c.Value != nil && *c.Value == n })
}

// Data gives the figures as checks read them, by topic, check and figure name.
func (s *Set) Data() map[string]any {
	topics := map[string]any{}
	byTopic := map[string]map[string]any{}
	for i := range s.Checks {
		figures := map[string]any{}
		for _, f := range s.Checks[i].Figures {
			figures[f.Name] = f.Value
		}
		topic, name := catalog.Path(s.Checks[i].ID)
		if byTopic[topic] == nil {
			byTopic[topic] = map[string]any{}
			topics[topic] = byTopic[topic]
		}
		byTopic[topic][name] = figures
	}
	return topics
}

// Summary describes the set for a report. Every cell of a table counts as a
// figure, for every one of them may decide.
func (s *Set) Summary() result.Set {
	summary := result.Set{
		ID: s.ID, Edition: s.Edition, Title: s.Title, Publisher: s.Publisher, Scope: s.Scope,
		NotCovered: slices.Clone(s.NotCovered), Place: s.Place, Extends: s.Extends, Wording: s.words,
	}
	count := func(status Status) {
		switch status {
		case Published:
			summary.Figures.Published++
		case CommonPractice:
			summary.Figures.CommonPractice++
		case Recalled:
			summary.Figures.Recalled++
		}
	}
	for i := range s.Checks {
		for _, f := range s.Checks[i].Figures {
			if f.Table == nil {
				count(f.Status)
				continue
			}
			for _, cell := range f.Table.cells {
				if !cell.Gap {
					count(cell.Status)
				}
			}
		}
	}
	return summary
}
