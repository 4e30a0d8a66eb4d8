package content

import "plumbrule/checker/result"

// Layout is a design's findings in the sections a report shows them in.
type Layout struct {
	Outside     []Class
	NotShown    []Sheet
	CouldNotRun []Group
	Excused     []Group
}

// Class holds what is outside the limits in one class of consequence.
type Class struct {
	Consequence result.Consequence
	Groups      []Group
}

// Group is results that belong next to each other, because they concern the
// same thing in the same place: one check by the figures of several sets, or
// several checks for which the same element lacks something. It is never empty.
type Group []*result.Result

// Count gives the number of results in the groups.
func Count(groups []Group) int {
	n := 0
	for _, group := range groups {
		n += len(group)
	}
	return n
}

// Arrange sorts findings into sections. Within a section the order of the
// findings is kept, but that members of a group follow its first. The groups
// point into findings.
func Arrange(findings []result.Result) Layout {
	by := map[result.Outcome][]*result.Result{}
	for i := range findings {
		r := &findings[i]
		by[r.Outcome] = append(by[r.Outcome], r)
	}
	return Layout{
		Outside:     classes(group(by[result.Outside], sameSubject)),
		NotShown:    BySheet(group(by[result.NotShown], sameGap)),
		CouldNotRun: group(by[result.CouldNotRun], sameSubject),
		Excused:     group(by[result.Excused], sameSubject),
	}
}

// key tells which results belong together.
type key struct{ place, about string }

// sameSubject joins the readings of one check by several sets.
func sameSubject(r *result.Result) key { return key{primary(r), r.Check} }

// sameGap joins all that one element does not show: whoever draws it on will
// do so in one go.
func sameGap(r *result.Result) key {
	if r.Needs == "" {
		return sameSubject(r)
	}
	return key{place: primary(r)}
}

func primary(r *result.Result) string {
	if len(r.At) == 0 {
		return ""
	}
	return r.At[0]
}

// group joins results of equal keys.
func group(results []*result.Result, keyOf func(*result.Result) key) []Group {
	var groups []Group
	for _, g := range GroupBy(results, keyOf) {
		groups = append(groups, Group(g))
	}
	return groups
}

// GroupBy joins what has equal keys. The groups stand in the order in which their
// keys first occur, and none is empty.
func GroupBy[T any, K comparable](list []T, keyOf func(T) K) [][]T {
	var groups [][]T
	index := map[K]int{}
	for _, one := range list {
		k := keyOf(one)
		i, known := index[k]
		if !known {
			i = len(groups)
			index[k] = i
			groups = append(groups, nil)
		}
		groups[i] = append(groups[i], one)
	}
	return groups
}

// classes splits groups by consequence, gravest first. The first of a group
// stands for all of it: where sets take the check for more or less grave, it is
// of the gravest of them.
func classes(groups []Group) []Class {
	byRank := make([]Class, len(result.Consequences())+1)
	for _, g := range groups {
		rank := g[0].Consequence.Rank()
		byRank[rank].Consequence = g[0].Consequence
		byRank[rank].Groups = append(byRank[rank].Groups, g)
	}
	var used []Class
	for _, class := range byRank {
		if len(class.Groups) > 0 {
			used = append(used, class)
		}
	}
	return used
}
