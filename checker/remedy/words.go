package remedy

import (
	"strconv"

	"plumbrule/checker/edit"
	"plumbrule/checker/source"
)

// flip turns what is shown as yes or no round, where the finding points at it.
func flip(g *ground) [][]rung {
	node := g.place()
	if node == nil || node.Kind != source.Bool {
		return nil
	}
	return single(replace(node, "", edit.Flag(node.Text != "true")))
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

// count adds pieces, one at a time. The field "" is the value that the finding
// points at.
func count(field, label string) move {
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
			ladder = append(ladder, rung{changes: []change{replace(node, label, edit.Number(n+i+1))}})
		}
		return [][]rung{ladder}
	}
}

// limit sets a number of pieces to what the finding gives for its limit.
func limit(field string) move {
	return func(g *ground) [][]rung {
		node := g.find(field)
		if node == nil || node.Kind != source.Number || g.finding.Limit == nil || g.finding.Limit.Unit != "count" {
			return nil
		}
		n := int(g.finding.Limit.Number)
		return single(replace(node, field, edit.Number(n)))
	}
}
