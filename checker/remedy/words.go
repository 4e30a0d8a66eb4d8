package remedy

import (
	"strconv"

	"plumbrule/checker/edit"
	"plumbrule/checker/measure"
	"plumbrule/checker/source"
)

// flip turns what is shown as yes or no round, where the finding points at it.
func flip(label string) move {
	return func(g *ground) [][]rung {
		node := g.place()
		if node == nil || node.Kind != source.Bool {
			return nil
		}
		return [][]rung{{{changes: []change{replace(node, label, edit.Flag(node.Text != "true"))}}}}
	}
}

// accept puts a word that the sets accept in the place of one that they do not,
// and behind those the words given: what the trade does where a set only says
// what it refuses.
func accept(label string, others ...string) move {
	return func(g *ground) [][]rung {
		return [][]rung{g.exchange(g.place(), label, append(g.accepted, others...))}
	}
}

// choose puts words in the place of a field, in their order.
func choose(field, label string, words ...string) move {
	return func(g *ground) [][]rung { return [][]rung{g.exchange(g.find(field), label, words)} }
}

func (g *ground) exchange(node *source.Node, label string, words []string) []rung {
	if node == nil || node.Kind != source.String && node.Kind != source.Number {
		return nil
	}
	var ladder []rung
	for _, word := range words {
		to := edit.Text(word)
		if node.Kind == source.Number {
			to.Kind = source.Number
		}
		if word != node.Text {
			ladder = append(ladder, rung{changes: []change{replace(node, label, to)}})
		}
	}
	return ladder
}

// count moves a number of pieces up, or down where s says so, one at a time.
func count(field, label string, s sense) move {
	return func(g *ground) [][]rung {
		node := g.place()
		if field != "" {
			node = g.find(field)
		}
		if node == nil || node.Kind != source.Number {
			return nil
		}
		n, err := strconv.Atoi(node.Text)
		if err != nil {
			return nil
		}
		const most = 4
		var ladder []rung
		for i := range most {
			to := n + (i+1)*int(s)
			if to > 0 {
				ladder = append(ladder, rung{changes: []change{replace(node, label, edit.Number(to))}})
			}
		}
		return [][]rung{ladder}
	}
}

// roundRail puts a round handrail of a usual diameter in the place of a profile
// that a hand cannot close round.
func roundRail(g *ground) [][]rung {
	at := g.place()
	if at == nil || at.Parent == nil || at.Kind != source.String {
		return nil
	}
	diameter := "1-1/2 in"
	if g.system == measure.Metric {
		diameter = "40 mm"
	}
	profile := at.Parent
	to := edit.Object("type", "round", "diameter", diameter)
	one := change{pointer: profile.Pointer, label: "handrail profile", from: at.Text, to: to}
	return [][]rung{{{changes: []change{one}}}}
}

// guarded puts a guard that the design describes along an edge that has none.
func guarded(g *ground) [][]rung {
	edge := g.place()
	if edge != nil && edge.Kind != source.Object {
		edge = edge.Parent
	}
	guards := g.doc.Root.Member("guards")
	if edge == nil || guards == nil || edge.Member("guard") != nil {
		return nil
	}
	var ladder []rung
	for _, item := range guards.Value.Items {
		if mark := item.Member("mark"); mark != nil {
			ladder = append(ladder, rung{changes: []change{{
				pointer: edge.Pointer + "/guard", label: edgeName(edge) + " edge with guard", to: edit.Text(mark.Value.Text),
			}}})
		}
	}
	return [][]rung{ladder}
}

// edgeName is the key under which an edge stands.
func edgeName(edge *source.Node) string {
	if edge.Parent != nil {
		for i := range edge.Parent.Members {
			if edge.Parent.Members[i].Value == edge {
				return edge.Parent.Members[i].Key
			}
		}
	}
	return "this"
}
