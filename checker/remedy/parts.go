package remedy

import (
	"slices"
	"strings"

	"plumbrule/checker/edit"
	"plumbrule/checker/measure"
	"plumbrule/checker/model"
	"plumbrule/checker/source"
)

// What is put in here where it is missing is what is commonly built: common
// practice, chosen so that nothing about it is left open. The checks judge it
// like everything else.

// in gives the imperial or the metric one of two texts.
func (g *ground) in(imperial, metric string) *source.Node {
	if g.system == measure.Metric {
		return edit.Text(metric)
	}
	return edit.Text(imperial)
}

// part is an object of members in their order.
func part(members ...source.Member) *source.Node {
	return &source.Node{Kind: source.Object, Members: members}
}

func member(key string, value *source.Node) source.Member {
	return source.Member{Key: key, Value: value}
}

// round is a round rail that a hand closes round.
func (g *ground) round() *source.Node {
	return part(member("type", edit.Text("round")), member("diameter", g.in("1-1/2 in", "40 mm")))
}

// roundRail puts a round handrail in the place of a profile that a hand cannot
// close round.
func roundRail(g *ground) [][]rung {
	at := g.place()
	if at == nil || at.Parent == nil || at.Kind != source.String {
		return nil
	}
	one := change{pointer: at.Parent.Pointer, from: at.Text, to: g.round()}
	one.said, one.values = "a round handrail of {} instead of a {}", []string{one.to.Member("diameter").Value.Text, at.Text}
	return single(one)
}

// handrailed puts a handrail along a stair that has none; behind that, where the
// stair shows no width, with the width that is to be left beside it.
func handrailed(g *ground) [][]rung {
	one := g.handrail()
	if one == nil {
		return nil
	}
	stair := g.stair()
	for _, key := range []string{"width", "clear_width", "clear_width_at_handrail"} {
		if stair.Member(key) != nil {
			return single(*one)
		}
	}
	free := change{pointer: stair.Pointer + "/clear_width_at_handrail", to: g.in("32 in", "900 mm")}
	free.said, free.values = "{} of clear width at it", []string{free.to.Text}
	return [][]rung{{{changes: []change{*one}}, {changes: []change{*one, free}}}}
}

// handrail is a handrail for the stair of a finding, nil where that has one.
func (g *ground) handrail() *change {
	stair := g.stair()
	if stair == nil || !lacks(stair, "handrail") {
		return nil
	}
	height, profile := g.in("36 in", "900 mm"), g.round()
	rail := part(
		member("sides", edit.Number(1)), member("height", height), member("profile", profile),
		member("clearance", g.in("1-1/2 in", "40 mm")), member("projection", g.in("3-1/2 in", "90 mm")),
		member("continuous", edit.Flag(true)), member("returns", edit.Flag(true)),
	)
	return &change{
		pointer: stair.Pointer + "/handrail", from: textOf(stair, "handrail"), to: rail,
		said: "a handrail {} high, round, {}", values: []string{height.Text, profile.Member("diameter").Value.Text},
	}
}

// lacks reports whether an element has nothing of the name, left out or said to
// be none.
func lacks(n *source.Node, key string) bool {
	text := textOf(n, key)
	return n.Member(key) == nil || text == model.NoGuard
}

// textOf is what stands for a name, "" where nothing or no text does.
func textOf(n *source.Node, key string) string {
	if m := n.Member(key); m != nil {
		return m.Value.Text
	}
	return ""
}

// mends reports whether an element is itself to be mended: nobody should put up
// a second one like it.
func (g *ground) mends(n *source.Node) bool {
	return slices.ContainsFunc(g.faulty, func(at string) bool { return at == n.Pointer || strings.HasPrefix(at, n.Pointer+"/") })
}

// guarded puts a guard that the design describes along an edge that has none.
func guarded(g *ground) [][]rung {
	edge := g.edge()
	guards := g.doc.Root.Member("guards")
	if edge == nil || !lacks(edge, "guard") {
		return nil
	}
	if guards == nil {
		return [][]rung{g.newGuard(edge)}
	}
	var ladder []rung
	for _, item := range guards.Value.Items {
		if mark := item.Member("mark"); mark != nil && !g.mends(item) {
			ladder = append(ladder, rung{changes: []change{{
				pointer: edge.Pointer + "/guard", from: textOf(edge, "guard"), to: edit.Text(mark.Value.Text),
				said: "{} edge with guard {}", values: []string{keyOf(edge), mark.Value.Text},
			}}})
		}
	}
	return [][]rung{ladder}
}

// edge is what is described of the edge of a finding, nil where nothing is.
func (g *ground) edge() *source.Node {
	for _, at := range g.finding.At {
		for n := g.doc.Find(at); n != nil && n.Parent != nil; n = n.Parent {
			if n.Kind == source.Object && strings.HasSuffix(n.Parent.Pointer, "/edges") {
				return n
			}
		}
	}
	return nil
}

// newGuardSaid tells a guard that is new to the design.
const newGuardSaid = "{} edge with a guard {} high, balusters {} apart, posts {} every {} held down to the joists, rated for {}"

// newGuard describes a guard in a design that has none, and puts it along an
// edge: of the usual heights, the lowest first.
func (g *ground) newGuard(edge *source.Node) []rung {
	heights := []string{"36 in", "42 in"}
	if g.system == measure.Metric {
		heights = []string{"900 mm", "1000 mm", "1100 mm"}
	}
	infill := part(
		member("kind", edit.Text("balusters")), member("opening", g.in("3-3/4 in", "95 mm")), member("bottom_gap", g.in("3 in", "75 mm")),
	)
	posts := part(
		member("size", edit.Text("4x4")), member("max_spacing", g.in("6 ft", "1800 mm")),
		member("fixing", edit.Text("hold-down to joist")), member("notched", edit.Flag(false)),
	)
	if g.system == measure.Metric {
		posts.Members[0] = member("actual", edit.Text("90 mm x 90 mm"))
	}
	var ladder []rung
	for _, height := range heights {
		guard := part(
			member("mark", edit.Text("G1")), member("height", edit.Text(height)), member("infill", infill), member("posts", posts),
			member("listed_load", g.in("200 lb", "0.9 kN")), member("infill_load", g.in("50 lb", "0.5 kN")),
		)
		values := []string{
			keyOf(edge), height, infill.Members[1].Value.Text,
			posts.Members[0].Value.Text, posts.Members[1].Value.Text, guard.Members[4].Value.Text,
		}
		ladder = append(ladder, rung{changes: []change{
			{pointer: edge.Pointer + "/guard", to: edit.Text("G1"), said: newGuardSaid, values: values},
			{pointer: "/guards", to: &source.Node{Kind: source.Array, Items: []*source.Node{guard}}, silent: true},
		}})
	}
	return ladder
}

// stairGuarded puts a guard along a stair that has none.
func stairGuarded(g *ground) [][]rung {
	stair := g.stair()
	if stair == nil || !lacks(stair, "guard") {
		return nil
	}
	var ladder []rung
	for _, triangle := range []*source.Node{g.in("5-1/2 in", "140 mm"), g.in("3-3/4 in", "95 mm")} {
		guard := part(
			member("height", g.in("36 in", "1000 mm")), member("opening", g.in("3-3/4 in", "95 mm")),
			member("triangle_opening", triangle),
		)
		ladder = append(ladder, rung{changes: []change{{
			pointer: stair.Pointer + "/guard", from: textOf(stair, "guard"), to: guard,
			said: "a guard on the stair {} high, with openings of {}", values: []string{guard.Members[0].Value.Text, guard.Members[1].Value.Text},
		}}})
	}
	return [][]rung{ladder}
}

// stair is the one stair that a finding names a place in.
func (g *ground) stair() *source.Node {
	for _, at := range g.finding.At {
		for node := g.doc.Find(at); node != nil && node.Parent != nil; node = node.Parent {
			if node.Parent.Pointer == "/stairs" {
				return node
			}
		}
	}
	return nil
}

// standoff puts a post on a base that holds it off its footing and down.
func standoff(g *ground) [][]rung {
	kind := g.place()
	if kind == nil || kind.Kind != source.String || keyOf(kind) != "kind" {
		return nil
	}
	base := part(member("kind", edit.Text("standoff")), member("uplift_and_lateral", edit.Flag(true)))
	return single(change{
		pointer: kind.Parent.Pointer, from: kind.Text, to: base,
		said: "post bases that stand off and hold down instead of {}", values: []string{kind.Text},
	})
}

// screwed holds a ledger with lag screws or bolts of the usual diameter in the
// place of what does not hold it; behind that, where no spacing is shown, at
// those by which they are usually set.
func screwed(g *ground) [][]rung {
	kind := g.place()
	if kind == nil || kind.Kind != source.String || keyOf(kind) != "type" {
		return nil
	}
	var ladder, spaced []rung
	for _, word := range g.accepted {
		one := rung{changes: []change{replace(kind, "", edit.Text(word))}}
		diameter := change{pointer: kind.Parent.Pointer + "/diameter", to: g.in("1/2 in", "12 mm")}
		if old := kind.Parent.Member("diameter"); old != nil {
			diameter.from = old.Value.Text
		}
		if diameter.from != diameter.to.Text {
			one.changes = append(one.changes, diameter)
		}
		ladder = append(ladder, one)
		if kind.Parent.Member("spacing") != nil {
			continue
		}
		for _, far := range [][2]string{{"24 in", "600 mm"}, {"16 in", "400 mm"}, {"12 in", "300 mm"}} {
			at := change{pointer: kind.Parent.Pointer + "/spacing", label: "at a spacing of", to: g.in(far[0], far[1])}
			spaced = append(spaced, rung{changes: append(slices.Clone(one.changes), at)})
		}
	}
	return [][]rung{ladder, spaced}
}

func single(c change) [][]rung { return [][]rung{{{changes: []change{c}}}} }

// keyOf is the key under which a value stands.
func keyOf(n *source.Node) string {
	if n.Parent != nil {
		for i := range n.Parent.Members {
			if n.Parent.Members[i].Value == n {
				return n.Parent.Members[i].Key
			}
		}
	}
	return ""
}

// closedRisers closes the risers of an open stair.
func closedRisers(g *ground) [][]rung {
	opening := g.find("riser_opening")
	if opening == nil || opening.Kind != source.String || opening.Text == "closed" {
		return nil
	}
	c := replace(opening, "", edit.Text("closed"))
	c.said, c.values = "closed risers instead of openings of {}", []string{opening.Text}
	return single(c)
}
