package remedy

import (
	"slices"
	"strconv"

	"plumbrule/checker/edit"
	"plumbrule/checker/measure"
	"plumbrule/checker/source"
)

// risers divides a flight anew into more risers, or into fewer where way is -1. Treads and run that
// are stated follow, as a stair is drawn with both. Behind that it tries one
// riser with treads of another depth, and with the handrail that a stair of
// more risers may need.
func risers(way int) move {
	return func(g *ground) [][]rung {
		node := g.find("risers")
		if node == nil || node.Kind != source.Number || node.Parent.Member("measured_risers") != nil {
			return nil
		}
		n, err := strconv.Atoi(node.Text)
		if err != nil || n+way < 2 {
			return nil
		}
		const most = 3
		var plain []rung
		depth, _, _ := lengthOf(node.Parent, "tread_depth")
		for to := n + way; to > 1 && to != n+(most+1)*way; to += way {
			plain = append(plain, divided(node, n, to, depth))
		}
		var suited []rung
		for _, depth := range depths(node.Parent, n, n+way) {
			suited = append(suited, divided(node, n, n+way, depth))
		}
		for i := range plain {
			plain[i].straight = true
		}
		return [][]rung{plain, suited, g.railed(append([]rung{plain[0]}, suited...))}
	}
}

// railed is a ladder with a handrail on each rung.
func (g *ground) railed(ladder []rung) []rung {
	rail := g.handrail()
	if rail == nil {
		return nil
	}
	list := make([]rung, len(ladder))
	for i := range ladder {
		list[i].changes = append(slices.Clone(ladder[i].changes), *rail)
	}
	return list
}

// divided is a flight of so many risers with treads of a depth.
func divided(node *source.Node, from, to int, depth measure.Length) rung {
	one := rung{changes: []change{replace(node, "risers", edit.Number(to))}}
	if m := node.Parent.Member("treads"); m != nil && m.Value.Text == strconv.Itoa(from-1) {
		one.changes = append(one.changes, replace(m.Value, "treads", edit.Number(to-1)))
	}
	old, system, ok := lengthOf(node.Parent, "tread_depth")
	if !ok {
		return one
	}
	if depth != old {
		tread := node.Parent.Member("tread_depth").Value
		one.changes = append(one.changes, replace(tread, "tread depth", edit.Text(typed(depth, system, tread.Text))))
	}
	moved := measure.Length(to-1)*depth - measure.Length(from-1)*old
	one.changes = append(one.changes, run(node.Parent, moved)...)
	return one
}

// depths are depths of tread for a flight that is divided anew, from the one
// that it has to the one with which two risers and a tread come to what they
// did. There are none where the flight does not show enough.
func depths(flight *source.Node, from, to int) []measure.Length {
	old, system, ok := lengthOf(flight, "tread_depth")
	rise, _, shown := lengthOf(flight, "total_rise")
	if !ok || !shown {
		return nil
	}
	size := half().in(system)
	moved := 2*rise/measure.Length(from) - 2*rise/measure.Length(to)
	way := measure.Length(1)
	if moved < 0 {
		way = -1
	}
	var list []measure.Length
	for at := round(old+way, size, way); way*(at-old) <= way*moved+size/2 && at > 0; at += way * size {
		list = append(list, at)
	}
	return list
}

// treads makes the treads of a flight deeper, or shallower where way is -1; a
// stated run follows.
func treads(way measure.Length) move {
	return func(g *ground) [][]rung {
		node := g.find("tread_depth")
		if node == nil || node.Parent.Member("measured_treads") != nil {
			return nil
		}
		follow := func(moved measure.Length) []change {
			n := treadsOf(node.Parent)
			if n <= 0 {
				return nil
			}
			return run(node.Parent, measure.Length(n)*moved)
		}
		return [][]rung{straight(g.climb(node, "tread depth", way, fine(), follow))}
	}
}

// treadsOf is the number of treads of a flight; not above 0 where it is not
// shown.
func treadsOf(flight *source.Node) int {
	n := 0
	if m := flight.Member("risers"); m != nil {
		n, _ = strconv.Atoi(m.Value.Text) // a number that is none leaves it open
		n--
	}
	if m := flight.Member("treads"); m != nil {
		n, _ = strconv.Atoi(m.Value.Text)
	}
	return n
}

// run moves the stated run of a flight.
func run(flight *source.Node, moved measure.Length) []change {
	old, system, ok := lengthOf(flight, "total_run")
	if !ok {
		return nil
	}
	node := flight.Member("total_run").Value
	return []change{replace(node, "total run", edit.Text(typed(old+moved, system, node.Text)))}
}

func lengthOf(n *source.Node, key string) (measure.Length, measure.System, bool) {
	m := n.Member(key)
	if m == nil || m.Value.Kind != source.String {
		return 0, 0, false
	}
	l, system, err := measure.ParseLength(m.Value.Text)
	return l, system, err == nil
}
