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
	what  string // "max: 7-3/4 in up"
	path  string // the figure, without the change
	value any    // of the figure, changed
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
	m := mutator{units: units(set.System), name: f.Name}
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
	return m.list_
}

type mutator struct {
	units map[catalog.Kind]int64
	name  string
	list_ []mutant
}

func (m *mutator) add(path, change string, value any) {
	m.list_ = append(m.list_, mutant{what: path + " " + change, path: path, value: value})
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

// table changes each cell and each value of a key that is a measure.
func (m *mutator) table(f *ruleset.Figure) {
	data := f.Value.(map[string]any)
	with := func(key string, value any) any {
		changed := maps.Clone(data)
		changed[key] = value
		return changed
	}
	m.cells(f.Table, f.Table.Kind, data["cells"], nil, func(cells any) any { return with("cells", cells) })
	breaks := data["breaks"].(map[string]any)
	for _, key := range f.Table.Keys {
		if key.Breaks == nil {
			continue
		}
		values := breaks[key.Name].([]any)
		for i := range values {
			m.whole(fmt.Sprintf("%s, %s of %s", m.name, key.Name, key.Texts[i]), key.Kind, values[i].(int64), func(v int64) any {
				changed, all := slices.Clone(values), maps.Clone(breaks)
				changed[i] = v
				all[key.Name] = changed
				return with("breaks", all)
			})
		}
	}
}

func (m *mutator) cells(t *ruleset.Table, kind catalog.Kind, at any, path []string, put func(any) any) {
	switch at := at.(type) {
	case map[string]any:
		for _, word := range t.Keys[len(path)].Texts {
			m.cells(t, kind, at[word], append(slices.Clone(path), word), func(v any) any {
				changed := maps.Clone(at)
				changed[word] = v
				return put(changed)
			})
		}
	case []any:
		for i, text := range t.Keys[len(path)].Texts {
			m.cells(t, kind, at[i], append(slices.Clone(path), text), func(v any) any {
				changed := slices.Clone(at)
				changed[i] = v
				return put(changed)
			})
		}
	case int64:
		m.whole(m.cell(path), kind, at, func(v int64) any { return put(v) })
	case nil:
		m.add(m.cell(path), "permitted", put(int64(1000*measure.Foot)))
	}
}

func (m *mutator) cell(path []string) string { return m.name + " [" + strings.Join(path, " | ") + "]" }
