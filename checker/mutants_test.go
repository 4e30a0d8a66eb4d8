package checker_test

import (
	"fmt"
	"maps"
	"slices"
	"strings"

	"plumbrule/checker/catalog"
	"plumbrule/checker/measure"
	"plumbrule/checker/ruleset"
)

// mutant is a set in which one single figure was changed by one unit.
type mutant struct {
	figure *ruleset.Figure
	what   string // "max: 7-3/4 in up"
	path   string // the figure, without the change
	value  any    // of the figure, changed
}

// units are what figures are changed by.
func units(system measure.System) map[catalog.Kind]int64 {
	length := int64(sixteenth)
	if system == measure.Metric {
		length = int64(measure.Millimetre)
	}
	psf, _, _ := measure.ParsePressure("1 psf")
	pound, _, _ := measure.ParseForce("1 lb")
	return map[catalog.Kind]int64{
		catalog.Length: length, catalog.Pressure: int64(psf), catalog.Force: int64(pound),
		catalog.Angle: 1_000_000, catalog.Count: 1,
	}
}

// mutants gives every change of one unit to one figure. A figure of several
// values has them for each value.
func mutants(set *ruleset.Set, f *ruleset.Figure) []mutant {
	m := mutator{units: units(set.System), figure: f, name: f.Name}
	switch f.Kind {
	case catalog.Flag:
		m.add(f.Name, "flipped", f.Value != true)
	case catalog.Words:
		m.add(f.Name, "another word", "another word")
	case catalog.List:
		m.list(f.Name, f.Value.([]any), func(v []any) any { return v })
	case catalog.Groups:
		m.groups(f.Value.(map[string]any))
	case catalog.Steps:
		m.steps(f.Value.([]any))
	case catalog.Slope, catalog.Ratio:
		m.ratio(f.Value.(map[string]any))
	case catalog.Table:
		m.table(f)
	default:
		m.whole(f.Name, f.Kind, f.Value.(int64), func(v int64) any { return v })
	}
	return m.changes
}

type mutator struct {
	figure  *ruleset.Figure
	units   map[catalog.Kind]int64
	name    string
	changes []mutant
}

func (m *mutator) add(path, change string, value any) {
	m.changes = append(m.changes, mutant{figure: m.figure, what: path + " " + change, path: path, value: value})
}

// whole changes a number up and down, put tells what becomes of the figure.
func (m *mutator) whole(path string, kind catalog.Kind, value int64, put func(int64) any) {
	unit := m.units[kind]
	m.add(path, "up", put(value+unit))
	if value >= unit {
		m.add(path, "down", put(value-unit))
	}
}

func (m *mutator) list(path string, words []any, put func([]any) any) {
	for i, word := range words {
		changed := slices.Clone(words)
		changed[i] = "another word"
		m.add(fmt.Sprintf("%s, %v", path, word), "replaced", put(changed))
	}
}

func (m *mutator) groups(groups map[string]any) {
	for _, name := range slices.Sorted(maps.Keys(groups)) {
		m.list(m.name+" of "+name, groups[name].([]any), func(words []any) any {
			changed := maps.Clone(groups)
			changed[name] = words
			return changed
		})
	}
}

func (m *mutator) steps(steps []any) {
	for i := range steps {
		step := steps[i].(map[string]any)
		for _, key := range []string{"upto", "read"} {
			path := fmt.Sprintf("%s, step %d %s", m.name, i+1, key)
			m.whole(path, catalog.Pressure, step[key].(int64), func(v int64) any {
				changed, one := slices.Clone(steps), maps.Clone(step)
				one[key] = v
				changed[i] = one
				return changed
			})
		}
	}
}

// ratio changes a fraction by a thousandth of it.
func (m *mutator) ratio(value map[string]any) {
	rise, run := value["rise"].(int64), value["run"].(int64)
	m.add(m.name, "up", map[string]any{"rise": rise*1000 + 1, "run": run * 1000})
	if rise > 0 {
		m.add(m.name, "down", map[string]any{"rise": rise*1000 - 1, "run": run * 1000})
	}
}

// table changes each value of a key that is a measure. Cells are changed in
// groups, see changedCells.
func (m *mutator) table(f *ruleset.Figure) {
	data := f.Value.(map[string]any)
	breaks := data["breaks"].(map[string]any)
	for _, key := range f.Table.Keys {
		if key.Breaks == nil {
			continue
		}
		values := breaks[key.Name].([]any)
		for i := range values {
			m.whole(fmt.Sprintf("%s, %s of %s", m.name, key.Name, key.Texts[i]), key.Kind, values[i].(int64), func(v int64) any {
				changed, all, table := slices.Clone(values), maps.Clone(breaks), maps.Clone(data)
				changed[i] = v
				all[key.Name] = changed
				table["breaks"] = all
				return table
			})
		}
	}
}

// changedCells gives a table with every cell as change gives it.
func changedCells(f *ruleset.Figure, change func(path string, cell any) any) any {
	table := maps.Clone(f.Value.(map[string]any))
	table["cells"] = changedBelow(f.Table, table["cells"], nil, change)
	return table
}

func changedBelow(t *ruleset.Table, at any, path []string, change func(string, any) any) any {
	if len(path) == len(t.Keys) {
		return change(strings.Join(path, " | "), at)
	}
	texts := t.Keys[len(path)].Texts
	if list, ok := at.([]any); ok {
		changed := make([]any, len(list))
		for i := range list {
			changed[i] = changedBelow(t, list[i], append(slices.Clone(path), texts[i]), change)
		}
		return changed
	}
	changed := map[string]any{}
	for word, below := range at.(map[string]any) {
		changed[word] = changedBelow(t, below, append(slices.Clone(path), word), change)
	}
	return changed
}
