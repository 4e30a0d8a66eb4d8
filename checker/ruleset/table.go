package ruleset

import (
	"encoding/json"
	"fmt"
	"slices"
	"strings"

	"plumbrule/checker/catalog"
)

// Table holds figures that hang on several keys. Every combination of key
// values has a cell.
type Table struct {
	Name, Title, Clause, Note string
	Kind                      catalog.Kind // of the cells
	Keys                      []Key        // the outermost first
	cells                     []Cell       // all combinations, the last key running fastest
}

// Key is one thing that the cells of a table hang on.
type Key struct {
	Name string
	Kind catalog.Kind // catalog.Words, or a kind of whole number
	// Texts are its values as the table writes them: words as they come in
	// the file, measures ascending.
	Texts []string
	// Unit is what a count counts; empty for all other kinds.
	Unit catalog.Unit
	// Breaks are the values of a measure, ascending; nil for words.
	Breaks []int64
}

// Cell is one figure of a table.
type Cell struct {
	// Value is the figure; nil where the table says that it is not permitted,
	// and where the set does not hold the cell.
	Value  *int64
	Gap    bool   // the set does not hold the cell, though the standard may
	Text   string // as the table writes it
	Status Status
	Source string // title of the source; empty unless published
	Note   string
	// Clause is that of an amended cell; empty for one of the table itself.
	Clause string
	Amends *Amends // what an amended cell replaced
	Set    string  // id of the set that amended the cell; empty for one of the table itself
	// Row says which cell it is, in the table's own words.
	Row string
}

// Cell looks up a cell by the path that a check gives: for each key its word,
// or the index of its break.
func (t *Table) Cell(path []any) (Cell, error) {
	if len(path) != len(t.Keys) {
		return Cell{}, fmt.Errorf("table %s has %d keys, the path has %d", t.Name, len(t.Keys), len(path))
	}
	at := 0
	for i, step := range path {
		key := &t.Keys[i]
		n, err := key.index(step)
		if err != nil {
			return Cell{}, fmt.Errorf("table %s: %w", t.Name, err)
		}
		at = at*len(key.Texts) + n
	}
	return t.cells[at], nil
}

// Shown gives a value of the key by its index, with what it counts.
func (k *Key) Shown(i int) string { return k.Unit.After(k.Texts[i]) }

// Cells gives all cells, the last key running fastest.
func (t *Table) Cells() []Cell { return slices.Clone(t.cells) }

func (k *Key) index(step any) (int, error) {
	n := -1
	switch step := step.(type) {
	case string:
		if k.Breaks == nil {
			n = slices.Index(k.Texts, step)
		}
	case json.Number:
		if i, err := step.Int64(); err == nil && k.Breaks != nil && i >= 0 && i < int64(len(k.Breaks)) {
			n = int(i)
		}
	}
	if n < 0 {
		return 0, fmt.Errorf("key %s has no value %v", k.Name, step)
	}
	return n, nil
}

// status gives the weakest status of any cell.
func (t *Table) status() Status {
	weakest := Published
	for _, cell := range t.cells {
		if cell.Gap {
			continue
		}
		weakest = weaker(weakest, cell.Status)
	}
	return weakest
}

// data gives the table as checks read it: the breaks of its measures, and the
// cells nested by key, words as objects and measures as arrays. A leaf is a whole
// number, null where nothing is permitted, or a text where the cell is left out.
func (t *Table) data() map[string]any {
	breaks := map[string]any{}
	for _, key := range t.Keys {
		if key.Breaks == nil {
			continue
		}
		values := make([]any, len(key.Breaks))
		for i, b := range key.Breaks {
			values[i] = b
		}
		breaks[key.Name] = values
	}
	return map[string]any{"breaks": breaks, "cells": t.nest(0, 0)}
}

func (t *Table) nest(depth, at int) any {
	if depth == len(t.Keys) {
		switch cell := &t.cells[at]; {
		case cell.Gap:
			return notInTable
		case cell.Value != nil:
			return *cell.Value
		}
		return nil
	}
	key := &t.Keys[depth]
	words, measures := map[string]any{}, []any{}
	for i, text := range key.Texts {
		below := t.nest(depth+1, at*len(key.Texts)+i)
		words[text] = below
		measures = append(measures, below)
	}
	if key.Breaks == nil {
		return words
	}
	return measures
}

// Amended lists the cells that an overlay changed, in the order of the table.
func (t *Table) Amended() []Cell {
	var cells []Cell
	for _, c := range t.cells {
		if c.Amends != nil {
			cells = append(cells, c)
		}
	}
	return cells
}

func (t *Table) keyNames() string {
	var names []string
	for _, key := range t.Keys {
		names = append(names, key.Name)
	}
	return strings.Join(names, ", ")
}

// values lists the values of a key, cut at twelve.
func (k *Key) values() string {
	texts := k.Texts
	if len(texts) > 12 {
		texts = append(slices.Clone(texts[:12]), "…")
	}
	return strings.Join(texts, ", ")
}

// describe names a cell by the values of its keys.
func (t *Table) describe(at int) string {
	texts := make([]string, len(t.Keys))
	for i := len(t.Keys) - 1; i >= 0; i-- {
		n := len(t.Keys[i].Texts)
		texts[i] = t.Keys[i].Shown(at % n)
		at /= n
	}
	return strings.Join(texts, ", ")
}
