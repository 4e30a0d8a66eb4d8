package rulesettest

import (
	"encoding/json"
	"fmt"
	"iter"
	"strconv"
	"strings"

	"plumbrule/checker/catalog"
	"plumbrule/checker/measure"
	"plumbrule/checker/ruleset"
)

// NotPermitted is the text of a cell that allows nothing.
const NotPermitted = "not permitted"

// NotInTable is the text of a cell that a set does not hold.
const NotInTable = "not in this table"

// Place names a cell by the set, the table and the values of the table's keys
// in their order, written in any spelling of their kind.
type Place struct {
	Set, Table string
	At         []string
}

func (p Place) String() string { return p.Set + " " + p.Table + " [" + strings.Join(p.At, " | ") + "]" }

// Expected is a cell as a reading has it.
type Expected struct {
	Place
	Text      string // value, NotPermitted or NotInTable
	Published bool
	Line      int // of the reading
}

// Whole gives the value as the whole number that checks compare. The second
// result is false where the cell allows nothing or is left out.
func (e Expected) Whole(kind catalog.Kind) (int64, bool, error) {
	if e.Text == NotPermitted || e.Text == NotInTable {
		return 0, false, nil
	}
	v, err := Whole(kind, e.Text)
	return v, true, err
}

// Whole reads a value of a kind that is one whole number.
func Whole(kind catalog.Kind, text string) (int64, error) {
	switch kind {
	case catalog.Length:
		v, _, err := measure.ParseLength(text)
		return int64(v), err
	case catalog.Pressure:
		v, _, err := measure.ParsePressure(text)
		return int64(v), err
	case catalog.Count:
		return strconv.ParseInt(text, 10, 64)
	}
	return 0, fmt.Errorf("no table has values of the kind %s", kind)
}

// Found is a cell of a set.
type Found struct {
	Check, Figure string
	Table         *ruleset.Table
	At            []string // values of the keys, as the table writes them
	Path          []any    // the path by which checks name the cell
	Cell          ruleset.Cell
	id            string
}

// Cells walks all cells of all tables of a set, a table as often as figures
// name it.
func Cells(set *ruleset.Set) iter.Seq[Found] {
	return func(yield func(Found) bool) {
		for i := range set.Checks {
			for _, f := range set.Checks[i].Figures {
				if f.Table == nil {
					continue
				}
				if !walk(Found{Check: set.Checks[i].ID, Figure: f.Name, Table: f.Table}, yield) {
					return
				}
			}
		}
	}
}

// walk visits the cells below the keys that at and path name already.
func walk(found Found, yield func(Found) bool) bool {
	depth := len(found.Path)
	if depth == len(found.Table.Keys) {
		cell, err := found.Table.Cell(found.Path)
		if err != nil {
			panic(err) // the path was made from the table's own keys
		}
		found.Cell = cell
		found.id, _ = identity(found.Table, found.At)
		return yield(found)
	}
	key := found.Table.Keys[depth]
	for i, text := range key.Texts {
		next := found
		next.At = append(append([]string{}, found.At...), text)
		var step any = text
		if key.Breaks != nil {
			step = json.Number(strconv.Itoa(i))
		}
		next.Path = append(append([]any{}, found.Path...), step)
		if !walk(next, yield) {
			return false
		}
	}
	return true
}

// Index finds cells of one set by place.
type Index map[string][]Found

// NewIndex indexes the cells of a set.
func NewIndex(set *ruleset.Set) Index {
	index := Index{}
	for found := range Cells(set) {
		index[found.id] = append(index[found.id], found)
	}
	return index
}

// Find gives the cells at a place: one for each figure that names the table,
// none where no table of the set has it. A place whose keys do not fit the
// table is an error.
func (x Index) Find(set *ruleset.Set, p Place) ([]Found, error) {
	for i := range set.Checks {
		for _, f := range set.Checks[i].Figures {
			if f.Table == nil || f.Table.Name != p.Table {
				continue
			}
			id, err := identity(f.Table, p.At)
			if err != nil {
				return nil, fmt.Errorf("%v: %w", p, err)
			}
			return x[id], nil
		}
	}
	return nil, nil
}

// identity is the same for all spellings of a place.
func identity(t *ruleset.Table, at []string) (string, error) {
	if len(at) != len(t.Keys) {
		return "", fmt.Errorf("the table has %d keys, the place has %d", len(t.Keys), len(at))
	}
	id := t.Name
	for i, key := range t.Keys {
		if key.Kind == catalog.Words {
			id += "\x00" + at[i]
			continue
		}
		v, err := Whole(key.Kind, at[i])
		if err != nil {
			return "", fmt.Errorf("key %s: %w", key.Name, err)
		}
		id += "\x00" + strconv.FormatInt(v, 10)
	}
	return id, nil
}

var onceHeader = []string{"set", "table", "at", "value", "status"}

// ReadOnce reads the list of cells that only one reader has. The keys of a
// place are separated by bars.
func ReadOnce(path string) ([]Expected, error) {
	var cells []Expected
	err := lines(path, onceHeader, func(line int, f []string) error {
		at := strings.Split(f[2], "|")
		for i := range at {
			at[i] = strings.TrimSpace(at[i])
		}
		cells = append(cells, Expected{
			Place: Place{Set: f[0], Table: f[1], At: at},
			Text:  f[3], Published: f[4] == string(ruleset.Published), Line: line,
		})
		return nil
	})
	return cells, err
}
