package remedy

import (
	"slices"
	"strconv"
	"strings"

	"plumbrule/checker/edit"
	"plumbrule/checker/measure"
	"plumbrule/checker/source"
)

// What is kept in stock, the smallest first. These are sizes that lumber yards
// and form makers sell: common practice, not figures of any code.

func joistSizes() []string { return []string{"2x6", "2x8", "2x10", "2x12"} }

func postSizes() []string { return []string{"4x4", "4x6", "6x6", "6x8", "8x8"} }

// metricDepths are depths of framing timber in millimetres.
func metricDepths() []int { return []int{90, 120, 140, 170, 190, 220, 240, 290} }

// metricPosts are sides of square posts in millimetres.
func metricPosts() []int { return []int{90, 100, 115, 125, 140, 150, 200} }

// spacings are those by which joists are set out on layout marks.
func spacings(system measure.System) []string {
	if system == measure.Metric {
		return []string{"600 mm", "450 mm", "400 mm", "300 mm"}
	}
	return []string{"24 in", "16 in", "12 in"}
}

// forms are widths of footings for which there are forms or whole boards.
func forms(system measure.System) []string {
	var list []string
	if system == measure.Metric {
		for side := 200; side <= 1200; side += 50 {
			list = append(list, strconv.Itoa(side)+" mm")
		}
		return list
	}
	for side := 8; side <= 48; side += 2 {
		list = append(list, strconv.Itoa(side)+" in")
	}
	return list
}

// larger gives sizes above the one that a member has, by depth or by the whole
// section. Members that lie at its level and had its size go with it: a rim
// joist is as deep as the joists that it closes.
func larger(member, label string, mates ...string) move {
	return func(g *ground) [][]rung {
		old, list := g.section(member)
		var ladder []rung
		for _, to := range list {
			one := rung{changes: []change{replace(old, label, edit.Text(to))}}
			for _, mate := range mates {
				if n := g.mate(old, mate); n != nil {
					one.changes = append(one.changes, replace(n, strings.ReplaceAll(mate, "_", " "), edit.Text(to)))
				}
			}
			ladder = append(ladder, one)
		}
		return [][]rung{ladder}
	}
}

// section gives the size of a member, and the next larger ones in stock.
func (g *ground) section(member string) (*source.Node, []string) {
	size, actual := g.find(member+"/size"), g.find(member+"/actual")
	if member == "beam" {
		size, actual = g.ofBeam("size"), g.ofBeam("actual")
	}
	switch {
	case size != nil:
		return size, above(stockFor(member), size.Text)
	case actual != nil:
		return actual, deeper(member, actual.Text)
	}
	return nil, nil
}

// ofBeam gives a field of the beam that a finding points into.
func (g *ground) ofBeam(field string) *source.Node {
	for node := g.place(); node != nil && node.Parent != nil; node = node.Parent {
		if strings.HasSuffix(node.Parent.Pointer, "/beams") {
			return g.doc.Find(node.Pointer + "/" + field)
		}
	}
	return nil
}

// mate gives the size of a member beside another if it is the same.
func (g *ground) mate(old *source.Node, member string) *source.Node {
	if old.Parent == nil || old.Parent.Parent == nil {
		return nil
	}
	key := old.Pointer[strings.LastIndexByte(old.Pointer, '/'):]
	n := g.doc.Find(old.Parent.Parent.Pointer + "/" + member + key)
	if n == nil || n.Text != old.Text {
		return nil
	}
	return n
}

func stockFor(member string) []string {
	if member == "posts" {
		return postSizes()
	}
	return joistSizes()
}

// above gives the sizes of a list that are larger than a nominal size and in no
// direction smaller.
func above(list []string, nominal string) []string {
	old, err := measure.ParseNominal(nominal)
	if err != nil {
		return nil
	}
	return slices.DeleteFunc(list, func(text string) bool {
		size, err := measure.ParseNominal(text)
		return err != nil || size.Thickness < old.Thickness || size.Depth < old.Depth ||
			size.Thickness == old.Thickness && size.Depth == old.Depth
	})
}

// deeper gives the next sections of metric timber: deeper ones of the same
// thickness, and thicker posts.
func deeper(member, actual string) []string {
	size, system, err := measure.ParseActual(actual)
	if err != nil || system != measure.Metric {
		return nil
	}
	thickness := strconv.FormatFloat(float64(size.Thickness)/float64(measure.Millimetre), 'f', -1, 64)
	var list []string
	if member == "posts" {
		for _, side := range metricPosts() {
			if measure.Length(side)*measure.Millimetre > min(size.Thickness, size.Depth) {
				list = append(list, strconv.Itoa(side)+" mm x "+strconv.Itoa(side)+" mm")
			}
		}
		return list
	}
	for _, depth := range metricDepths() {
		if measure.Length(depth)*measure.Millimetre > size.Depth {
			list = append(list, thickness+" mm x "+strconv.Itoa(depth)+" mm")
		}
	}
	return list
}

// closer gives the standard spacings below the one that joists have.
func closer(fields ...string) move {
	return func(g *ground) [][]rung {
		for _, field := range fields {
			node := g.find(field)
			if node == nil {
				continue
			}
			return [][]rung{g.stocked(node, "joist spacing", spacings, -1)}
		}
		return nil
	}
}

// form gives the next sizes of footings.
func form(field string) move {
	return func(g *ground) [][]rung {
		return [][]rung{g.stocked(g.find(field), "footing "+field, forms, 1)}
	}
}

// gaps are those that a spacer, a nail or a pencil leaves between boards.
func gaps(g *ground) [][]rung {
	list := []string{"1/8 in", "3/16 in", "1/4 in"}
	if g.system == measure.Metric {
		list = []string{"3 mm", "4 mm", "5 mm", "6 mm"}
	}
	return [][]rung{g.exchange(g.find("gap"), "gap between boards", list)}
}

// stocked gives the lengths of a list above a value, or below it, nearest first.
func (g *ground) stocked(node *source.Node, label string, list func(measure.System) []string, way int) []rung {
	if node == nil || node.Kind != source.String {
		return nil
	}
	old, system, err := measure.ParseLength(node.Text)
	if err != nil {
		return nil
	}
	var ladder []rung
	for _, text := range list(system) {
		if l, _, err := measure.ParseLength(text); err == nil && (way < 0 && l < old || way > 0 && l > old) {
			ladder = append(ladder, rung{changes: []change{replace(node, label, edit.Text(text))}})
		}
	}
	return ladder
}
