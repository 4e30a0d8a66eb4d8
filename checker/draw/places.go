package draw

import (
	"cmp"
	"math"
	"slices"
	"strings"
	"unicode"
	"unicode/utf8"

	"plumbrule/checker/draw/paper"
	"plumbrule/checker/facts"
	"plumbrule/checker/geometry"
	"plumbrule/checker/measure"
	"plumbrule/checker/model"
)

// center is the middle of a ring's bounds.
func center(r geometry.Ring) geometry.Point {
	b := r.Bounds()
	return geometry.Point{X: (b.Min.X + b.Max.X) / 2, Y: (b.Min.Y + b.Max.Y) / 2}
}

func middleOf(s geometry.Segment) geometry.Point {
	return geometry.Point{X: (s.A.X + s.B.X) / 2, Y: (s.A.Y + s.B.Y) / 2}
}

// deepest is the place inside a ring that lies furthest from its edges and from
// the points to avoid, as a grid finds it, and how far that is.
func deepest(r geometry.Ring, avoid []geometry.Point) (best geometry.Point, room measure.Length) {
	const parts = 24
	b := r.Bounds()
	for i := 1; i < parts; i++ {
		for k := 1; k < parts; k++ {
			p := geometry.Point{
				X: b.Min.X + (b.Max.X-b.Min.X)*measure.Length(i)/parts,
				Y: b.Min.Y + (b.Max.Y-b.Min.Y)*measure.Length(k)/parts,
			}
			if r.Contains(p) != geometry.Inside {
				continue
			}
			around := measure.Length(math.MaxInt64)
			for e := range r {
				around = min(around, r.Edge(e).Distance(p))
			}
			for _, q := range avoid {
				around = min(around, p.To(q)/2)
			}
			if around > room {
				best, room = p, around
			}
		}
	}
	return best, room
}

func sorted(list []geometry.Interval) []geometry.Interval {
	slices.SortFunc(list, func(a, b geometry.Interval) int { return cmp.Compare(a.From, b.From) })
	return list
}

func sortedOpenings(list []facts.OpeningPlan) []facts.OpeningPlan {
	list = slices.Clone(list)
	slices.SortStableFunc(list, func(a, b facts.OpeningPlan) int { return cmp.Compare(a.Line.A.X, b.Line.A.X) })
	return list
}

// words gives the text of a field of the description, "" where it is not shown.
func words(w *model.Words) string {
	if w == nil {
		return ""
	}
	return w.V
}

func joined(parts []string) string { return strings.Join(parts, "; ") }

// capital is a text with its first letter in upper case.
func capital(s string) string {
	r, n := utf8.DecodeRuneInString(s)
	if n == 0 {
		return s
	}
	return string(unicode.ToUpper(r)) + s[n:]
}

// extentBox is the upright box round points.
func extentBox(points []paper.Point) paper.Box {
	e := paper.NoExtent().With(points...)
	return paper.Upright(e.Min, e.Max)
}

// near reports whether two lengths print alike.
func near(a, b measure.Length) bool {
	const hair = measure.Inch / 32
	return a-b < hair && b-a < hair
}
