package remedy

import (
	"slices"
	"strings"

	"plumbrule/checker/edit"
	"plumbrule/checker/measure"
	"plumbrule/checker/source"
)

// equalBays spaces joists evenly, none farther apart than they were. Their
// description is written anew, as equal bays have no spacing of their own.
func equalBays(g *ground) [][]rung {
	joists := g.find("joists")
	if joists == nil || joists.Kind != source.Object {
		return nil
	}
	layout, spacing := joists.Member("layout"), joists.Member("spacing")
	if layout == nil || spacing == nil || layout.Value.Text != "on_center" {
		return nil
	}
	even := part()
	for _, m := range joists.Members {
		switch m.Key {
		case "layout":
			m.Value = edit.Text("equal")
		case "spacing":
			m.Key = "max_spacing"
		case "start", "first_mark":
			continue // equal bays start nowhere
		}
		even.Members = append(even.Members, m)
	}
	return single(change{
		pointer: joists.Pointer, from: spelled(joists), to: even,
		said: "joists in equal bays of at most {} instead of {} from one side", values: []string{spacing.Value.Text, spacing.Value.Text},
	})
}

// blocked puts a row of blocking in the middle between ledger and beam, beside
// the rows that there are.
func blocked(g *ground) [][]rung {
	joists, beam := g.find("joists"), g.beamPlace()
	if joists == nil || joists.Kind != source.Object || beam == nil {
		return nil
	}
	far, system, err := measure.ParseLength(beam.Text)
	if err != nil {
		return nil
	}
	middle := edit.Text(typed(round(far/2, whole().in(system), -1), system, beam.Text))
	row := change{said: "a row of blocking at {}", values: []string{middle.Text}}
	rows := []*source.Node{middle}
	if blocking := joists.Member("blocking"); blocking != nil {
		if old := blocking.Value.Member("rows_at"); old != nil && old.Value.Kind == source.Array {
			rows = append(rows, old.Value.Items...)
			row.pointer, row.from, row.to = old.Value.Pointer, spelled(old.Value), list(rows)
			return single(row)
		}
		row.pointer, row.to = blocking.Value.Pointer+"/rows_at", list(rows)
		return single(row)
	}
	row.pointer, row.to = joists.Pointer+"/blocking", part(member("rows_at", list(rows)))
	return single(row)
}

// skewed lists skewed hangers at one edge more.
func skewed(g *ground) [][]rung {
	at, edges := g.find("joists/hangers/skewed_at"), g.find("outline/edges")
	if at == nil || edges == nil || at.Kind != source.Array || edges.Kind != source.Array {
		return nil
	}
	var ladder []rung
	for _, edge := range edges.Items {
		if slices.ContainsFunc(at.Items, func(n *source.Node) bool { return n.Text == edge.Text }) {
			continue
		}
		to := list(append([]*source.Node{edit.Text(edge.Text)}, at.Items...))
		ladder = append(ladder, rung{changes: []change{{
			pointer: at.Pointer, from: spelled(at), to: to, said: "skewed hangers at the edge {}", values: []string{edge.Text},
		}}})
	}
	return [][]rung{ladder}
}

// grades are those of framing lumber in North America, the best last.
func grades() []string { return []string{"No. 3", "No. 2", "No. 1", "select structural"} }

// graded gives better grades of the lumber that a finding names, or else of the
// one that the member at its place is cut from.
func graded(g *ground) [][]rung {
	grade := g.grade()
	if grade == nil {
		return nil
	}
	i := slices.IndexFunc(grades(), func(text string) bool { return strings.EqualFold(text, grade.Text) })
	if i < 0 {
		return nil
	}
	var ladder []rung
	for _, better := range grades()[i+1:] {
		ladder = append(ladder, rung{changes: []change{replace(grade, "", edit.Text(better))}})
	}
	return [][]rung{ladder}
}

func (g *ground) grade() *source.Node {
	for _, at := range g.finding.At {
		if tokens := strings.Split(at, "/"); len(tokens) > 2 && tokens[1] == "lumber" {
			return g.doc.Find("/lumber/" + tokens[2] + "/grade")
		}
	}
	lumber := g.ofBeam("lumber")
	if topic, _, _ := strings.Cut(g.finding.Check, "/"); topic != "beams" || lumber == nil {
		lumber = g.find("joists/lumber")
	}
	if lumber == nil {
		return nil
	}
	return g.doc.Find("/lumber/" + source.Escape(lumber.Text) + "/grade")
}

// supported puts a support under the middle of stringers.
func supported(g *ground) [][]rung {
	stair := g.stair()
	if stair == nil || stair.Member("stringers") == nil || stair.Member("stringers").Value.Member("supports_at") != nil {
		return nil
	}
	depth, system, ok := lengthOf(stair, "tread_depth")
	n := treadsOf(stair)
	if !ok || n <= 0 {
		return nil
	}
	middle := edit.Text(typed(round(depth*measure.Length(n)/2, whole().in(system), -1), system, ""))
	return single(change{
		pointer: stair.Member("stringers").Value.Pointer + "/supports_at", to: list([]*source.Node{middle}),
		said: "a support under the stringers {} from their top", values: []string{middle.Text},
	})
}

// list is a list of values.
func list(items []*source.Node) *source.Node {
	texts := make([]string, len(items))
	for i, n := range items {
		texts[i] = n.Text
	}
	return edit.List(texts)
}
