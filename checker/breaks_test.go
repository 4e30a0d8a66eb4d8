package checker_test

import (
	"fmt"
	"maps"
	"slices"
	"strings"

	"plumbrule/checker/catalog"
	"plumbrule/checker/measure"
	"plumbrule/checker/result"
	"plumbrule/checker/ruleset"
)

// tableSheets are the sheets that probe the keys of a table.
var tableSheets = map[string]func(*sheet, *mutation, string){
	"values of keys": beside,
	"species":        species,
	"grades":         grades,
	"live loads":     liveLoads,
	"rims":           rims,
	"factors":        factorSheet,
}

// byKeys gives the readings of a table by the texts of their keys.
func byKeys(m *mutation, figure string) map[string]expectedCell {
	cells := map[string]expectedCell{}
	for _, cell := range readings(m.t, m.set)[figure] {
		cells[strings.Join(cell.At, "|")] = cell
	}
	return cells
}

// beside puts members on a sheet that lie at the values of a table's keys and
// just past them, where the next worse cell holds already. They stand where
// that one is really worse, or where there is none.
func beside(s *sheet, m *mutation, figure string) {
	check, name, _ := strings.Cut(figure, " ")
	cells, relation := byKeys(m, figure), m.checks.Find(check).Figure(name).Relation
	table := m.set.Check(check).Figure(name).Table
	for k, key := range table.Keys {
		if key.Name == "load" && m.withoutSnow() {
			continue
		}
		for i := range key.Breaks {
			besideOne(s, m, table, k, i, cells, relation, subjects[figure])
		}
	}
}

func besideOne(s *sheet, m *mutation, table *ruleset.Table, k, i int, cells map[string]expectedCell, relation result.Relation, build subject) {
	key := table.Keys[k]
	step, next := max(units(m.set.System)[key.Kind]/2, 1), i+1
	if downwards[key.Name] {
		step, next = -step, i-1
	}
	last := next < 0 || next == len(key.Breaks)
	added := 0
	for _, name := range slices.Sorted(maps.Keys(cells)) {
		cell := cells[name]
		if cell.At[k] != key.Texts[i] || !cell.permitted || added == 2 {
			continue
		}
		if !last {
			at := slices.Clone(cell.At)
			at[k] = key.Texts[next]
			worse, ok := cells[strings.Join(at, "|")]
			tighter := worse.value < cell.value
			if relation == result.AtLeast {
				tighter = worse.value > cell.value
			}
			if !ok || worse.unheld || worse.permitted && !tighter {
				continue
			}
		}
		added++
		past := keysOf(cell.Found)
		past[key.Name] = exactly(key.Kind, key.Breaks[i]+step)
		build(s, keysOf(cell.Found), cell.value)
		s.expect(false, "%v", cell.At)
		if last && excerpted(m, key.Name) {
			build(s, past, cell.value+halfMillimetre)
			s.expect(false, "%v with %s past %s, of which the set holds nothing", cell.At, key.Name, key.Texts[i])
			continue
		}
		build(s, past, cell.value)
		// A table that leaves what lies beyond it to another check says nothing there.
		s.expect(!last || !strings.HasPrefix(table.Name, "footing-thick"), "%v with %s past %s", cell.At, key.Name, key.Texts[i])
	}
}

// excerpted reports whether a set leaves alone what lies past the last break of
// a key, as it does where it holds a part of a table only. A greater load stays
// outside, and so do thinner boards: those left alone are thicker ones.
func excerpted(m *mutation, key string) bool {
	f := m.check.Figure("excerpt")
	return f != nil && f.Value == true && key != "load" && !downwards[key]
}

// downwards are the keys of which a table is read at the next lower value.
var downwards = map[string]bool{"soil": true, "rim_thickness": true, "thickness": true}

// exactly writes a whole number so that it is read back as it is.
func exactly(kind catalog.Kind, value int64) string {
	switch kind {
	case catalog.Length:
		return fmt.Sprintf("%d.%06d mm", value/1e6, value%1e6)
	case catalog.Pressure:
		return fmt.Sprintf("%d.%06d Pa", value/1e6, value%1e6)
	}
	return fmt.Sprint(value)
}

// speciesIn are the species that the documents name in each group.
var speciesIn = map[string]string{
	"southern pine":                "southern pine, southern yellow pine, syp",
	"douglas fir-larch group":      "douglas fir-larch, douglas fir, df-l, hem-fir, spruce-pine-fir, spf",
	"redwood group":                "redwood, western cedars, western cedar, western red cedar, ponderosa pine, red pine",
	"douglas fir-larch":            "douglas fir-larch, douglas fir, df-l",
	"hem-fir and western cedars":   "hem-fir, western cedars, western cedar, western red cedar",
	"redwood":                      "redwood",
	"spruce-pine-fir and red pine": "spruce-pine-fir, spf, ponderosa pine, red pine",
	"other species": "douglas fir-larch, douglas fir, df-l, hem-fir, spruce-pine-fir, spf, redwood, western cedars, " +
		"western cedar, western red cedar, ponderosa pine, red pine",
}

// first gives the first permitted cell that fits, in the order of the keys.
func first(cells map[string]expectedCell, fits func(keys) bool) (expectedCell, bool) {
	for _, name := range slices.Sorted(maps.Keys(cells)) {
		if cell := cells[name]; cell.permitted && fits(keysOf(cell.Found)) {
			return cell, true
		}
	}
	return expectedCell{}, false
}

// varied puts a member on the sheet that differs from a cell's in one thing.
func (c expectedCell) varied(s *sheet, figure, key, text string, outside bool) {
	k := keysOf(c.Found)
	k[key] = text
	subjects[figure](s, k, c.value)
	s.expect(outside, "%v with %s %s", c.At, key, text)
}

// Every species of a group is read in the rows of that group.
func species(s *sheet, m *mutation, figure string) {
	cells := byKeys(m, figure)
	for _, group := range slices.Sorted(maps.Keys(speciesIn)) {
		cell, ok := first(cells, func(k keys) bool { return k["group"] == group })
		if !ok {
			continue
		}
		for name := range strings.SplitSeq(speciesIn[group], ", ") {
			if m.set.ID == wisconsin && name == "redwood" {
				continue // its rule text does not name it
			}
			cell.varied(s, figure, "species", name, false)
		}
		cell.varied(s, figure, "species", "teak", true)
	}
}

// withoutSnow reports whether a table is not read by snow, as those of other
// countries. The fixtures' designs probe by which loads and grades it is.
func (m *mutation) withoutSnow() bool {
	f := m.check.Figure("without_snow")
	return f != nil && f.Value == true
}

// Better grades than No. 2 are read with it, however they are written.
func grades(s *sheet, m *mutation, figure string) {
	cell, ok := first(byKeys(m, figure), func(k keys) bool { return k["group"] != "" })
	if !ok || m.withoutSnow() {
		return
	}
	for _, grade := range []string{"No. 2", "No.2", "#2", "No. 1", "No.1", "#1", "No. 1 & Btr", "Select Structural"} {
		cell.varied(s, figure, "grade", grade, false)
	}
	cell.varied(s, figure, "grade", "No. 3", true)
}

// liveSteps tell up to which live load a member is read in which column.
// Footings carry what lies on them for long or short, so that a live load has
// the column of its own size; other members have the one of 70 psf of snow for
// 60 psf, and editions without columns for snow none above 40.
func liveSteps(set, figure string) map[string]string {
	switch {
	case set != irc2018 && set != irc2021 && set != irc2024:
		return map[string]string{"40": "40"}
	case strings.HasPrefix(figure, "footings/"):
		return map[string]string{"40": "40", "50": "50", "60": "60", "70": "70"}
	case set != irc2018 && (figure == "joists/span spans" || figure == "ledger/fastener-spacing spacings"):
		return map[string]string{"40": "40", "60": "70"}
	}
	return map[string]string{"40": "40"}
}

func liveLoads(s *sheet, m *mutation, figure string) {
	cells, steps := byKeys(m, figure), liveSteps(m.set.ID, figure)
	if m.withoutSnow() || strings.HasPrefix(figure, "ledger/fastener-placement") || strings.HasPrefix(figure, "decking/") {
		return
	}
	relation := m.checks.Find(m.check.ID).Figure(strings.Fields(figure)[1]).Relation
	for _, upto := range slices.Sorted(maps.Keys(steps)) {
		worst, ok := first(cells, func(k keys) bool {
			return k["load"] == steps[upto]+" psf" && tightens(cells, k, steps, upto, relation)
		})
		if !ok {
			m.t.Errorf("%s %s has no cell to read a live load of %s psf in", m.set.ID, figure, upto)
			continue
		}
		worst.varied(s, figure, "live", upto+" psf", false)
		beyond := !strings.HasPrefix(figure, "footings/thickness") || nextStep(steps, upto) != ""
		worst.varied(s, figure, "live", upto+".5 psf", beyond)
	}
}

// nextStep is the next greater live load for which there is a column.
func nextStep(steps map[string]string, upto string) string {
	for _, other := range slices.Sorted(maps.Keys(steps)) {
		if other > upto {
			return other
		}
	}
	return ""
}

// tightens reports whether the column of the next step is worse, or missing.
func tightens(cells map[string]expectedCell, k keys, steps map[string]string, upto string, relation result.Relation) bool {
	next := nextStep(steps, upto)
	if next == "" {
		return true
	}
	for _, name := range slices.Sorted(maps.Keys(cells)) {
		other := keysOf(cells[name].Found)
		same := other["load"] == steps[next]+" psf"
		var mine measure.Length
		for key, text := range k {
			same = same && (key == "load" || other[key] == text)
		}
		if !same || !cells[name].permitted {
			continue
		}
		for _, cell := range cells {
			if maps.Equal(keysOf(cell.Found), k) {
				mine = cell.value
			}
		}
		if relation == result.AtLeast {
			return cells[name].value > mine
		}
		return cells[name].value < mine
	}
	return false
}

// materialsIn are the materials that the documents name for each kind of rim.
var materialsIn = map[string]string{
	"band joist":           "solid sawn, laminated veneer lumber",
	"sawn lumber":          "solid sawn",
	"engineered rim board": "engineered rim board, laminated veneer lumber",
	"concrete or masonry":  "concrete, masonry",
}

func rims(s *sheet, m *mutation, figure string) {
	if figure != "ledger/fastener-spacing spacings" {
		return
	}
	for _, rim := range slices.Sorted(maps.Keys(materialsIn)) {
		cell, ok := first(byKeys(m, figure), func(k keys) bool { return k["rim"] == rim })
		if !ok {
			continue
		}
		for material := range strings.SplitSeq(materialsIn[rim], ", ") {
			cell.varied(s, figure, "material", material, false)
		}
		cell.varied(s, figure, "material", "steel", true)
	}
}
