package checker_test

import (
	"slices"
	"strings"

	"plumbrule/checker/catalog"
	"plumbrule/checker/measure"
)

// equivalent gives the reason why a change can change no outcome, or nothing.
func equivalent(m *mutation, change mutant) string {
	figure := m.check.ID + " " + change.figure.Name
	switch {
	case change.figure.Kind == catalog.Steps && strings.HasSuffix(change.what, "read down"):
		return "a load just under a column is read in that column"
	case figure == "joists/cantilever limits" && strings.HasSuffix(change.what, "up") && quarters(m, figure, change.path):
		return "a quarter of the back-span is less than the cell, and governs"
	case figure == "joists/cantilever limits" && strings.HasPrefix(change.path, "limits, back_span of 4 ft"):
		return "a quarter of the back-span governs in this row and in the next"
	case strings.Contains(change.path, ", load of ") && strings.HasSuffix(change.what, "up") && m.withoutSnow():
		return "a live load is read in the column of its step, and snow in none"
	case figure == "guards/climbable above" && m.check.Figure("any_drop") != nil:
		return "footholds count at any drop in this set"
	case strings.HasPrefix(figure, "footings/thickness ") && alike(m, figure, change.path):
		return "the cells of this column and of the next worse one are alike"
	}
	return ""
}

// quarters reports whether a cell is a quarter of its back-span.
func quarters(m *mutation, figure, path string) bool {
	for _, cell := range readings(m.t, m.set)[figure] {
		if strings.HasSuffix(path, "["+strings.Join(cell.At, " | ")+"]") {
			return cell.value*4 == keysOf(cell.Found).length("back_span")
		}
	}
	return false
}

// alike reports whether all cells for one value of a key are those of the next
// worse value.
func alike(m *mutation, figure, path string) bool {
	_, rest, ok := strings.Cut(path, ", area of ")
	if !ok {
		return false
	}
	next := ""
	for _, f := range m.check.Figures {
		if f.Table == nil {
			continue
		}
		texts := f.Table.Keys[len(f.Table.Keys)-1].Texts
		if i := slices.Index(texts, rest); i >= 0 && i+1 < len(texts) {
			next = texts[i+1]
		}
	}
	cells := map[string]measure.Length{}
	for _, cell := range readings(m.t, m.set)[figure] {
		cells[strings.Join(cell.At, "|")] = cell.value
	}
	for at, value := range cells {
		if before, area, _ := cutLast(at, "|"); area == rest && cells[before+"|"+next] != value {
			return false
		}
	}
	return next != ""
}

func cutLast(text, separator string) (before, after string, found bool) {
	i := strings.LastIndex(text, separator)
	if i < 0 {
		return text, "", false
	}
	return text[:i], text[i+len(separator):], true
}
