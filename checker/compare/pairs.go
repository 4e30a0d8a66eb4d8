package compare

import (
	"cmp"
	"slices"
	"strconv"

	"plumbrule/checker/source"
	"plumbrule/schema"
)

// pairs says which value of one revision is which of the other.
type pairs struct {
	next  map[*source.Node]*source.Node // of the old revision, in the new one
	prev  map[*source.Node]*source.Node // the other way round
	moved map[*source.Node]bool         // of the new revision: stands at another place among its neighbors
}

// pair walks two designs side by side.
func pair(was, is *source.Document) *pairs {
	p := &pairs{
		next:  map[*source.Node]*source.Node{},
		prev:  map[*source.Node]*source.Node{},
		moved: map[*source.Node]bool{},
	}
	p.join(was.Root, is.Root)
	return p
}

func (p *pairs) join(was, is *source.Node) {
	p.next[was], p.prev[is] = is, was
	switch {
	case was.Kind == source.Object && is.Kind == source.Object:
		for _, m := range was.Members {
			if a, b := shown(was, m.Key), shown(is, m.Key); a != nil && b != nil {
				p.join(a, b)
			}
		}
	case was.Kind == source.Array && is.Kind == source.Array && !isPoint(was):
		p.lists(was, is)
	}
}

// isPoint tells a place on the plan, which is one value, from a list.
func isPoint(n *source.Node) bool {
	return n.Kind == source.Array && schema.QuantityAt(designs, n.Pointer) == schema.Point
}

// lists joins the entries of two lists: by name those that have one, the rest by
// what they say and where they stand among each other.
func (p *pairs) lists(was, is *source.Node) {
	match := map[string]*source.Node{}
	for i, name := range names(is.Items) {
		if name != "" {
			match[name] = is.Items[i]
		}
	}
	var before, after []*source.Node
	for i, name := range names(was.Items) {
		if found := match[name]; found != nil {
			p.join(was.Items[i], found)
		} else {
			before = append(before, was.Items[i])
		}
	}
	for _, item := range is.Items {
		if p.prev[item] == nil {
			after = append(after, item)
		}
	}
	for _, m := range align(before, after) {
		p.join(before[m[0]], after[m[1]])
	}
	p.moves(was, is)
}

// names gives each entry its name, "" where it has none. Where several share
// one, they are told apart by their order.
func names(items []*source.Node) []string {
	list := make([]string, len(items))
	count := map[string]int{}
	for i, item := range items {
		if name := ownName(item); name != "" {
			count[name]++
			list[i] = name + "\x00" + strconv.Itoa(count[name])
		}
	}
	return list
}

// ownName is what an entry is called: its mark, or for the leg of a walk the
// edge that it makes.
func ownName(n *source.Node) string {
	for _, key := range []string{"mark", "edge"} {
		if m := n.Member(key); m != nil && scalar(m.Value) {
			return key + "\x00" + m.Value.Text
		}
	}
	return ""
}

// moves marks the entries of a list that stand in another order than before.
// What only gave way to an entry put in before it has not moved.
func (p *pairs) moves(was, is *source.Node) {
	index := map[*source.Node]int{}
	for i, item := range is.Items {
		index[item] = i
	}
	var order []int
	for _, item := range was.Items {
		if match := p.next[item]; match != nil {
			order = append(order, index[match])
		}
	}
	stays := rising(order)
	for _, i := range order {
		if !stays[i] {
			p.moved[is.Items[i]] = true
		}
	}
}

// rising picks as many of some different numbers as stand in rising order.
func rising(numbers []int) map[int]bool {
	var ends []int // index of the least number that ends a run of each length
	from := make([]int, len(numbers))
	for i, n := range numbers {
		at, _ := slices.BinarySearchFunc(ends, n, func(end, n int) int { return cmp.Compare(numbers[end], n) })
		from[i] = -1
		if at > 0 {
			from[i] = ends[at-1]
		}
		if at == len(ends) {
			ends = append(ends, i)
		} else {
			ends[at] = i
		}
	}
	picked := map[int]bool{}
	if len(ends) == 0 {
		return picked
	}
	for i := ends[len(ends)-1]; i >= 0; i = from[i] {
		picked[numbers[i]] = true
	}
	return picked
}

// key names a value of the old revision by where it stands in the new one. What
// is in the old one only has a name, below that of what holds it, which nothing
// in the new one has.
func (p *pairs) key(was *source.Node) string {
	if is := p.next[was]; is != nil {
		return is.Pointer
	}
	return p.key(was.Parent) + "/\x00" + keyOf(was)
}
