package remedy

import (
	"fmt"
	"math"
	"strconv"
	"strings"

	"plumbrule/checker/edit"
	"plumbrule/checker/measure"
	"plumbrule/checker/result"
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

// sense says how the measured value moves when a field grows.
type sense int64

const (
	with    sense = 1
	against sense = -1
)

// way is +1 where a field has to grow so that the value found comes inside, -1
// where it has to shrink, 0 where the limit does not say.
func (g *ground) way(s sense) measure.Length {
	if g.finding.Limit == nil {
		return 0
	}
	switch g.finding.Limit.Relation {
	case result.AtMost, result.LessThan:
		return measure.Length(-s)
	case result.AtLeast, result.MoreThan:
		return measure.Length(s)
	case result.Exactly, result.OneOf:
	}
	return 0
}

// short is by how much the finding is outside; 0 where that is no length.
func (g *ground) short() measure.Length {
	m := g.finding.Margin
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
func toward(field, label string, s sense, by step) move {
	return func(g *ground) [][]rung {
		node := g.place()
		if field != "" {
			node = g.find(field)
		}
		return [][]rung{g.climb(node, label, g.way(s), by, nil)}
	}
}

// climb gives the values of a length from as far as the finding is outside
// onward. What follows from the move of a value is added by follow.
func (g *ground) climb(node *source.Node, label string, way measure.Length, by step, follow func(moved measure.Length) []change) []rung {
	if node == nil || node.Kind != source.String || way == 0 {
		return nil
	}
	old, system, err := measure.ParseLength(node.Text)
	if err != nil {
		return nil
	}
	size := by.in(system)
	var list []rung
	for at := round(old+way*g.short(), size, way); len(list) < rungs; at += way * size {
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
