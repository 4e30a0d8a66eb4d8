package remedy

import (
	"slices"
	"strconv"
	"strings"

	"plumbrule/checker/edit"
	"plumbrule/checker/measure"
	"plumbrule/checker/source"
)

// fromHouse moves a beam, as the span inside of it asks or the cantilever past
// it. A flush beam stays: joists end at it, and past it there is nothing.
func fromHouse(s sense) move {
	slide := toward("from_house", "beam from house", s, whole())
	return func(g *ground) [][]rung {
		node := g.find("from_house")
		if node == nil {
			return nil
		}
		if kind := node.Parent.Member("kind"); kind != nil && kind.Value.Text == "flush" {
			return nil
		}
		return slide(g)
	}
}

// row is the posts along a beam.
type row struct {
	node   *source.Node
	at     []measure.Length
	system measure.System
}

func (g *ground) row() *row {
	node := g.find("posts_at")
	if at := g.place(); at != nil && at.Parent != nil && strings.HasSuffix(at.Parent.Pointer, "/posts_at") {
		node = at.Parent
	}
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
	for _, item := range posts.Value.Items {
		if l, _, err := measure.ParseLength(item.Text); err == nil && l != joint {
			spots = append(spots, spot{item.Text, max(l-joint, joint-l)})
		}
	}
	slices.SortStableFunc(spots, func(a, b spot) int { return int(max(min(a.away-b.away, 1), -1)) })
	var ladder []rung
	for _, s := range spots {
		ladder = append(ladder, rung{changes: []change{replace(place, "joint of plies at", edit.Text(s.text))}})
	}
	return [][]rung{ladder}
}
