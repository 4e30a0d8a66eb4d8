package remedy

import (
	"fmt"
	"math"
	"strconv"
	"strings"

	"plumbrule/checker/edit"
	"plumbrule/checker/measure"
	"plumbrule/checker/source"
)

// step is what a length is rounded to and moved by, in each system: what a crew
// would mark without a second look.
type step struct{ imperial, metric measure.Length }

func (s step) in(system measure.System) measure.Length {
	if system == measure.Metric {
		return s.metric
	}
	return s.imperial
}

func whole() step { return step{measure.Inch, 10 * measure.Millimetre} }
func half() step  { return step{measure.Inch / 2, 10 * measure.Millimetre} }
func fine() step  { return step{measure.Inch / 4, 5 * measure.Millimetre} }
func finer() step { return step{measure.Inch / 8, measure.Millimetre} }
func least() step { return step{measure.Inch / 16, measure.Millimetre} }

// way is +1 where a value has to grow to come inside, -1 where it has to shrink,
// 0 where the limit does not say.
func (g *ground) way() measure.Length {
	if g.finding.Limit == nil {
		return 0
	}
	return measure.Length(upward(g.finding.Limit.Relation))
}

// short is by how much the value at the place of the finding is outside, at
// least; 0 where that is no length.
func (g *ground) short() measure.Length {
	m := g.farthest.Margin
	if m == nil {
		return 0
	}
	switch m.Unit {
	case "in":
		return measure.Length(math.Round(math.Abs(m.Number) * float64(measure.Inch)))
	case "mm":
		return measure.Length(math.Round(math.Abs(m.Number) * float64(measure.Millimetre)))
	}
	return 0
}

// toward moves a length by as much as the finding is outside, rounded on, and
// then step by step. The field "" is the value that the finding points at.
func toward(field, label string, by step) move {
	return func(g *ground) [][]rung {
		node := g.place()
		if field != "" {
			node = g.find(field)
		}
		return [][]rung{g.climb(node, label, g.way(), by, nil)}
	}
}

// climb gives the values of a length, step by step: from as far as the finding is
// outside where the length is what it found, else from where it is. What follows
// from the move of a value is added by follow.
func (g *ground) climb(node *source.Node, label string, way measure.Length, by step, follow func(moved measure.Length) []change) []rung {
	return g.climbFrom(node, label, way, g.shortOf(node), by, follow)
}

// shortOf is by how much a length is outside where it is what was found.
func (g *ground) shortOf(node *source.Node) measure.Length {
	if node == nil || g.finding.Have == nil {
		return 0
	}
	l, _, err := measure.ParseLength(node.Text)
	if err != nil {
		return 0
	}
	for _, system := range []measure.System{measure.Imperial, measure.Metric} {
		if n, unit := l.In(system); n == g.finding.Have.Number && unit == g.finding.Have.Unit {
			return g.short()
		}
	}
	return 0
}

// climbFrom gives the values of a length from a distance onward.
func (g *ground) climbFrom(
	node *source.Node, label string, way, short measure.Length, by step, follow func(moved measure.Length) []change,
) []rung {
	if node == nil || node.Kind != source.String || way == 0 {
		return nil
	}
	old, system, err := measure.ParseLength(node.Text)
	if err != nil {
		return nil
	}
	size := by.in(system)
	var list []rung
	for at := round(old+way*short, size, way); len(list) < rungs; at += way * size {
		if at <= 0 {
			break
		}
		if at == old {
			continue
		}
		one := rung{changes: []change{replace(node, label, edit.Text(typed(at, system, node.Text)))}}
		if follow != nil {
			one.changes = append(one.changes, follow(at-old)...)
		}
		list = append(list, one)
	}
	return list
}

// round goes to the next whole step in the direction of way.
func round(l, size, way measure.Length) measure.Length {
	down := l / size * size
	if way > 0 && down < l {
		return down + size
	}
	return down
}

// typed spells a length as the one in whose place it comes: in feet and inches
// where that has feet.
func typed(l measure.Length, system measure.System, like string) string {
	if system == measure.Metric {
		return strconv.FormatFloat(float64(l)/float64(measure.Millimetre), 'f', -1, 64) + " mm"
	}
	feet := ""
	if strings.ContainsAny(like, "'’′") || strings.Contains(strings.ToLower(like), "f") {
		if n := l / measure.Foot; n > 0 {
			feet = fmt.Sprintf("%d ft", n)
			l %= measure.Foot
		}
		if l == 0 && feet != "" {
			return feet
		}
	}
	return strings.TrimSpace(feet + " " + inches(l) + " in")
}

// inches spells inches with a fraction, and with decimals where no tape has it.
func inches(l measure.Length) string {
	n, rest := l/measure.Inch, l%measure.Inch
	const parts = 64
	if rest%(measure.Inch/parts) != 0 {
		return strconv.FormatFloat(float64(l)/float64(measure.Inch), 'f', 6, 64)
	}
	count, of := rest/(measure.Inch/parts), measure.Length(parts)
	for count > 0 && count%2 == 0 {
		count, of = count/2, of/2
	}
	switch {
	case count == 0:
		return fmt.Sprint(int64(n))
	case n == 0:
		return fmt.Sprintf("%d/%d", count, of)
	}
	return fmt.Sprintf("%d-%d/%d", n, count, of)
}

// straight marks changes that take the value found one way only.
func straight(ladder []rung) []rung {
	for i := range ladder {
		ladder[i].straight = true
	}
	return ladder
}

// shrink makes a length smaller step by step, whatever the limit says: for what
// comes out uneven, a hair may do.
func shrink(field, label string, by step) move {
	return func(g *ground) [][]rung { return [][]rung{g.climb(g.find(field), label, -1, by, nil)} }
}

// load puts a load at the place of the finding that is as large as its limit.
func load(g *ground) [][]rung {
	node, l := g.place(), g.finding.Limit
	if node == nil || node.Kind != source.String || l == nil || upward(l.Relation) <= 0 {
		return nil
	}
	_, _, pressed := measure.ParsePressure(l.Text)
	if _, _, pulled := measure.ParseForce(l.Text); pressed != nil && pulled != nil {
		return nil
	}
	return single(replace(node, "", edit.Text(l.Text)))
}
