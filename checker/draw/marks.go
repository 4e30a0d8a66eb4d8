package draw

import (
	"cmp"
	"math"
	"slices"
	"strings"

	"plumbrule/checker/draw/paper"
	"plumbrule/checker/report/items"
	"plumbrule/checker/result"
)

// finding is a numbered item of the review.
type finding struct {
	number  int
	results []*result.Result
}

// findings lists the items of a run, by the numbers that the letter gives them.
func findings(report *result.Report, previous items.Previous) []finding {
	if report == nil {
		return nil
	}
	list := items.Number(report, 0, previous)
	byNumber := map[int]*finding{}
	var all []*finding
	numbers := list.Numbers()
	d := &report.Designs[0]
	for i := range d.Findings {
		r := &d.Findings[i]
		n, ok := numbers[r]
		if !ok {
			continue
		}
		f := byNumber[n]
		if f == nil {
			f = &finding{number: n}
			byNumber[n] = f
			all = append(all, f)
		}
		f.results = append(f.results, r)
	}
	slices.SortFunc(all, func(a, b *finding) int { return cmp.Compare(a.number, b.number) })
	out := make([]finding, len(all))
	for i, f := range all {
		out[i] = *f
	}
	return out
}

// form is the shape of the finding's marker.
func (f *finding) form() paper.Form {
	switch f.results[0].Outcome {
	case result.Outside:
		return paper.Full
	case result.Excused:
		return paper.Twice
	}
	return paper.Hollow
}

// places lists where a finding belongs, the most telling first. What is not
// shown belongs where it would stand.
func (f *finding) places() []string {
	var list []string
	for _, r := range f.results {
		if len(r.At) == 0 {
			continue
		}
		list = append(list, filledIn(r.At[0], r.Needs))
		list = append(list, r.At...)
	}
	return list
}

// filledIn is the pointer that a missing field would have: the place that lacks
// it as far as the field's path agrees with it, an item of a list at least, and
// what follows of the path.
func filledIn(at, needs string) string {
	path := strings.Split(strings.ReplaceAll(needs, "[]", ".[]"), ".")
	tokens := strings.Split(strings.TrimPrefix(at, "/"), "/")
	n := 0
	for n < len(tokens) && n < len(path) && (path[n] == tokens[n] || path[n] == "[]") {
		n++
	}
	const item = 2 // "/platforms/0"
	if n < item && n < len(tokens) || n == len(path) {
		return at
	}
	return "/" + strings.Join(tokens[:n], "/") + "/" + strings.Join(path[n:], "/")
}

// view tells on which view a topic's findings belong where several have a spot.
func (f *finding) view() View {
	switch f.results[0].Check {
	case "posts/height", "footings/depth", "guards/height":
		return Elevation
	}
	topic, _, _ := strings.Cut(f.results[0].Check, "/")
	switch topic {
	case "stairs", "handrail":
		return Stairs
	case "joists", "beams", "posts", "footings", "ledger", "scope":
		return Framing
	}
	return Plan
}

// spotFor is the spot of a figure for the first of some places that has one,
// and how close it comes: the tokens of the pointer that it answers to.
func (f *figure) spotFor(places []string) (spot paper.Point, closeness int) {
	for rank, place := range places {
		for _, a := range f.anchors {
			if place != a.pointer && !strings.HasPrefix(place, a.pointer+"/") {
				continue
			}
			// A later place of the finding counts a little less than an earlier one.
			if n := 8*strings.Count(a.pointer, "/") - min(rank, 7); n > closeness {
				spot, closeness = a.spot, n
			}
		}
	}
	return spot, closeness
}

// cluster is the findings on one spot, which share a marker.
type cluster struct {
	spot paper.Point
	tags []paper.Tag
}

// clusters gathers the findings of a figure by their spots, and keeps words off
// these.
func (f *figure) clusters() []cluster {
	var list []cluster
	for i := range f.findings {
		spot, _ := f.spotFor(f.findings[i].places())
		tag := paper.Tag{N: f.findings[i].number, Form: f.findings[i].form()}
		k := slices.IndexFunc(list, func(c cluster) bool { return distance(c.spot, spot) < 1 })
		if k < 0 {
			list = append(list, cluster{spot: spot})
			k = len(list) - 1
			f.spots = append(f.spots, paper.Upright(spot.Plus(-3, -3), spot.Plus(3, 3)))
		}
		list[k].tags = append(list[k].tags, tag)
		f.use(formSymbol(tag.Form))
	}
	return list
}

func formSymbol(form paper.Form) symbol {
	switch form {
	case paper.Hollow:
		return symbolHollow
	case paper.Twice:
		return symbolTwice
	case paper.Full:
	}
	return symbolFull
}

// markAt finds room for a block of numbers near a spot.
func (f *figure) markAt(spot paper.Point, tags []paper.Tag) {
	width, height := f.fonts.MarkerSize(tags)
	var best paper.Point
	bestCost := math.Inf(1)
	const crowded, enough = 1000, 1e4 // as for words
	for reach := 70.0; math.IsInf(bestCost, 1); reach *= 2 {
		for _, p := range around(spot, 13, reach, 32, 4) {
			if distance(spot, p) >= bestCost {
				break
			}
			v := towards(spot, p)
			at := p.Plus(v.x*width/2-width/2, v.y*height/2-height/2)
			box := paper.Upright(at, at.Plus(width, height)).Grown(1.5)
			to := paper.Point{X: min(max(spot.X, at.X), at.X+width), Y: min(max(spot.Y, at.Y), at.Y+height)}
			if reach < enough && !f.open(box) || reach < crowded && (f.overWords(spot, to) || !f.holds(box)) {
				continue
			}
			if cost := distance(spot, p) + 20*f.crossings(box) + 2*f.crossed(spot, to); cost < bestCost {
				best, bestCost = at, cost
			}
		}
	}
	room := paper.Upright(best, best.Plus(width, height)).Grown(1.5)
	f.taken = append(f.taken, room)
	f.reached = f.reached.With(room.Corners[:]...)
	to := paper.Point{X: min(max(spot.X, best.X), best.X+width), Y: min(max(spot.Y, best.Y), best.Y+height)}
	f.strokes = append(f.strokes, stroke{spot, to, 6})
	f.words = append(f.words, f.fonts.Marker(paper.Marker{Spot: spot, At: best, Tags: tags}))
}
