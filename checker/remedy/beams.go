package remedy

import (
	"cmp"
	"slices"
	"strconv"
	"strings"

	"plumbrule/checker/edit"
	"plumbrule/checker/measure"
	"plumbrule/checker/source"
)

// fromHouse moves a beam away from the house, or toward it where way is -1. A
// flush beam stays: joists end at it, and past it there is nothing. Far moves
// are tried in leaps and then between them, before every step is: the room
// between a span and a cantilever that both fit may be narrow.
func fromHouse(way measure.Length) move {
	return func(g *ground) [][]rung {
		node := g.beamPlace()
		if node == nil {
			return nil
		}
		if kind := node.Parent.Member("kind"); kind != nil && kind.Value.Text == "flush" {
			return nil
		}
		fine := straight(g.climbFrom(node, "beam from house", way, g.short(), whole(), nil))
		const leap = 4
		far := step{leap * whole().imperial, leap * whole().metric}
		leaps := straight(g.climbFrom(node, "beam from house", way, g.short(), far, nil))
		for i := range leaps {
			leaps[i].finer = between(g, node, leaps, i, way)
		}
		return [][]rung{leaps, fine}
	}
}

// between gives the steps below a leap, as far as they are past the one before.
func between(g *ground, node *source.Node, leaps []rung, i int, way measure.Length) []rung {
	at := func(r *rung) measure.Length {
		l, _, _ := measure.ParseLength(r.changes[0].to.Text) // it was written by climb
		return l
	}
	old, system, err := measure.ParseLength(node.Text)
	if err != nil {
		return nil
	}
	from, size := round(old+way*g.short(), whole().in(system), way), whole().in(system)
	if i > 0 {
		from = at(&leaps[i-1]) + way*size
	}
	var list []rung
	for l := from; way*(at(&leaps[i])-l) > 0; l += way * size {
		if l != old {
			list = append(list, rung{changes: []change{replace(node, "beam from house", edit.Text(typed(l, system, node.Text)))}})
		}
	}
	return list
}

// beamPlace is the distance from the house of the beam that a finding names, or
// of the only one around its place.
func (g *ground) beamPlace() *source.Node {
	if node := g.find("from_house"); node != nil {
		return node
	}
	beams := g.find("beams")
	if beams == nil || len(beams.Items) != 1 || beams.Items[0].Member("from_house") == nil {
		return nil
	}
	return beams.Items[0].Member("from_house").Value
}

// row is the posts along a beam.
type row struct {
	node   *source.Node
	at     []measure.Length
	system measure.System
}

// posts is the list of the posts that a finding names one of, or else of those
// along the beam at its place.
func (g *ground) posts() *source.Node {
	for _, at := range g.finding.At {
		if node := g.doc.Find(at); node != nil && node.Parent != nil && strings.HasSuffix(node.Parent.Pointer, "/posts_at") {
			return node.Parent
		}
	}
	return g.find("posts_at")
}

func (g *ground) row() *row {
	node := g.posts()
	if node == nil || node.Kind != source.Array {
		return nil
	}
	r := row{node: node}
	for _, item := range node.Items {
		l, system, err := measure.ParseLength(item.Text)
		if err != nil {
			return nil
		}
		r.at, r.system = append(r.at, l), system
	}
	if len(r.at) < 2 || !slices.IsSorted(r.at) {
		return nil
	}
	return &r
}

// with gives the change to other places of the posts.
func (r *row) with(at []measure.Length, label string) rung {
	texts := make([]string, len(at))
	for i, l := range at {
		texts[i] = typed(l, r.system, r.node.Items[0].Text)
		if j := slices.Index(r.at, l); j >= 0 {
			texts[i] = r.node.Items[j].Text // as it was typed
		}
	}
	return rung{changes: []change{replace(r.node, label, edit.List(texts))}, resized: len(at) != len(r.at)}
}

// post adds a post in the middle of the bay that a finding is about, then tries
// all posts evenly spaced, with the number that there is and with one more.
func post(g *ground) [][]rung {
	r := g.row()
	if r == nil {
		return nil
	}
	var ladders [][]rung
	size := whole().in(r.system)
	if i := r.bay(g.finding.At); i > 0 {
		middle := round((r.at[i-1]+r.at[i])/2, size, -1)
		ladders = append(ladders, []rung{r.with(slices.Insert(slices.Clone(r.at), i, middle), "with one more post, posts at")})
	}
	for n := len(r.at); n <= len(r.at)+1; n++ {
		at := []measure.Length{r.at[0]}
		length := r.at[len(r.at)-1] - r.at[0]
		for i := 1; i < n-1; i++ {
			at = append(at, round(r.at[0]+length*measure.Length(i)/measure.Length(n-1), size, -1))
		}
		at = append(at, r.at[len(r.at)-1])
		if !slices.Equal(at, r.at) {
			ladders = append(ladders, []rung{r.with(at, "posts spaced evenly, at")})
		}
	}
	return ladders
}

// pair puts a post near each end of a beam that stands on one alone.
func pair(g *ground) [][]rung {
	node := g.posts()
	if node == nil || node.Kind != source.Array || len(node.Items) != 1 {
		return nil
	}
	_, system, err := measure.ParseLength(node.Items[0].Text)
	if err != nil {
		return nil
	}
	var start, end measure.Length
	if l, _, ok := lengthOf(node.Parent, "start"); ok {
		start = l
	}
	if l, _, ok := lengthOf(node.Parent, "end"); ok {
		end = l
	} else if along := g.find("outline/along_house"); along != nil {
		end, _, _ = measure.ParseLength(along.Text) // 0 where it is no length
	}
	in := measure.Foot
	if system == measure.Metric {
		in = 300 * measure.Millimetre
	}
	if end-start < 4*in {
		return nil
	}
	r := row{node: node, system: system}
	return [][]rung{{r.with([]measure.Length{start + in, end - in}, "posts near both ends, at")}}
}

// bay gives the index of the post at the far end of the bay whose two posts a
// finding names; 0 where it names no bay.
func (r *row) bay(pointers []string) int {
	var found []int
	for _, p := range pointers {
		if tail, ok := strings.CutPrefix(p, r.node.Pointer+"/"); ok {
			if i, err := strconv.Atoi(tail); err == nil {
				found = append(found, i)
			}
		}
	}
	slices.Sort(found)
	if len(found) < 2 || found[1] != found[0]+1 || found[1] >= len(r.at) {
		return 0
	}
	return found[1]
}

// endPost moves the post at the end of a beam outward, inch by inch.
func endPost(g *ground) [][]rung {
	r, place := g.row(), g.place()
	if r == nil || place.Parent != r.node {
		return nil
	}
	i, way := 0, measure.Length(-1)
	if place == r.node.Items[len(r.node.Items)-1] {
		i, way = len(r.at)-1, 1
	}
	return [][]rung{g.far(place, "end post at", way, func() measure.Length { return r.at[i] })}
}

// far gives the places of something that is moved inch by inch.
func (g *ground) far(node *source.Node, label string, way measure.Length, from func() measure.Length) []rung {
	_, system, err := measure.ParseLength(node.Text)
	if err != nil {
		return nil
	}
	size := whole().in(system)
	var ladder []rung
	for at := round(from()+way, size, way); len(ladder) < rungs && at >= 0; at += way * size {
		ladder = append(ladder, rung{changes: []change{replace(node, label, edit.Text(typed(at, system, node.Text)))}})
	}
	return ladder
}

// overPost moves a joint of plies over the nearest post, then over the others.
// A post at the end of the row is none of them: past it there is a stub, which
// only that post carries. Neither is one with a joint over it already.
func overPost(g *ground) [][]rung {
	place := g.place()
	if place == nil || place.Parent == nil || place.Parent.Parent == nil {
		return nil
	}
	joint, _, err := measure.ParseLength(place.Text)
	posts := place.Parent.Parent.Member("posts_at")
	if err != nil || posts == nil {
		return nil
	}
	type spot struct {
		text string
		away measure.Length
	}
	var spots []spot
	for _, item := range inner(posts.Value) {
		if l, _, err := measure.ParseLength(item.Text); err == nil && !jointed(place.Parent, l) {
			spots = append(spots, spot{item.Text, max(l-joint, joint-l)})
		}
	}
	slices.SortStableFunc(spots, func(a, b spot) int { return cmp.Compare(a.away, b.away) })
	var ladder []rung
	for _, s := range spots {
		ladder = append(ladder, rung{changes: []change{replace(place, "joint of plies at", edit.Text(s.text))}})
	}
	return [][]rung{ladder}
}

// inner gives the places of posts that have another on each side of them, in
// whatever order they are listed.
func inner(posts *source.Node) []*source.Node {
	at := func(n *source.Node) measure.Length {
		l, _, _ := measure.ParseLength(n.Text) // one that is none was refused before
		return l
	}
	list := slices.Clone(posts.Items)
	slices.SortStableFunc(list, func(a, b *source.Node) int { return cmp.Compare(at(a), at(b)) })
	if len(list) < 3 {
		return nil
	}
	return list[1 : len(list)-1]
}

// jointed reports whether a joint of plies lies at a place.
func jointed(joints *source.Node, at measure.Length) bool {
	return slices.ContainsFunc(joints.Items, func(n *source.Node) bool {
		l, _, err := measure.ParseLength(n.Text)
		return err == nil && l == at
	})
}
