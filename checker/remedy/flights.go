package remedy

import (
	"strconv"

	"plumbrule/checker/edit"
	"plumbrule/checker/measure"
	"plumbrule/checker/source"
)

// risers divides a flight anew into more or fewer risers. Treads and run that
// are stated follow, as a stair is drawn with both.
func risers(s sense) move {
	return func(g *ground) [][]rung {
		node := g.find("risers")
		way := int(g.way(s))
		if node == nil || node.Kind != source.Number || way == 0 || node.Parent.Member("measured_risers") != nil {
			return nil
		}
		n, err := strconv.Atoi(node.Text)
		if err != nil {
			return nil
		}
		const most = 4
		var ladder []rung
		for i := 1; i <= most; i++ {
			to := n + i*way
			if to < 1 {
				break
			}
			one := rung{changes: []change{replace(node, "risers", edit.Number(to))}}
			if treads := node.Parent.Member("treads"); treads != nil && treads.Value.Text == strconv.Itoa(n-1) {
				one.changes = append(one.changes, replace(treads.Value, "treads", edit.Number(to-1)))
			}
			if depth, _, ok := lengthOf(node.Parent, "tread_depth"); ok {
				one.changes = append(one.changes, run(node.Parent, measure.Length(i*way)*depth)...)
			}
			ladder = append(ladder, one)
		}
		return [][]rung{ladder}
	}
}

// treads makes the treads of a flight deeper or shallower; a stated run follows.
func treads(s sense) move {
	return func(g *ground) [][]rung {
		node := g.find("tread_depth")
		if node == nil || node.Parent.Member("measured_treads") != nil {
			return nil
		}
		follow := func(moved measure.Length) []change {
			n := 0
			if m := node.Parent.Member("risers"); m != nil {
				n, _ = strconv.Atoi(m.Value.Text) // a number that is none leaves the run alone
				n--
			}
			if m := node.Parent.Member("treads"); m != nil {
				n, _ = strconv.Atoi(m.Value.Text)
			}
			if n <= 0 {
				return nil
			}
			return run(node.Parent, measure.Length(n)*moved)
		}
		return [][]rung{g.climb(node, "tread depth", g.way(s), fine(), follow)}
	}
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
