package draw

import (
	"math"

	"plumbrule/checker/draw/paper"
)

// symbol is something that the legend explains.
type symbol uint8

const (
	symbolFull symbol = iota
	symbolHollow
	symbolTwice
	symbolOutline
	symbolWall
	symbolGuard
	symbolJoist
	symbolDropped
	symbolFlush
	symbolPost
	symbolFooting
	symbolGrade
	symbolKnownGrade
	symbolOpen
	symbolBreak
	symbolHole
	symbolTie
	symbolJoint
	symbolCut
	symbolHidden
	symbolBoards
	symbolCenter
	symbolSection
)

// words explains a symbol.
func (s symbol) words() string {
	return [...]string{
		symbolOutline:    "edge of the walking surface, as measured",
		symbolWall:       "face of the house",
		symbolGuard:      "guard; its posts' places are not shown",
		symbolJoist:      "joist, rim joist, ledger",
		symbolDropped:    "beam below the joists",
		symbolFlush:      "beam in line with the joists",
		symbolPost:       "post",
		symbolFooting:    "footing, hidden",
		symbolGrade:      "ground as the design shows it",
		symbolKnownGrade: "ground below the surface, at a point",
		symbolOpen:       "is there, its place or size is not shown",
		symbolBreak:      "goes on; the end is not shown",
		symbolHole:       "opening in the frame",
		symbolTie:        "tie to the house",
		symbolJoint:      "joint in the plies of a beam",
		symbolCut:        "cut through",
		symbolHidden:     "hidden behind or below",
		symbolBoards:     "way of the boards, spaced to scale",
		symbolCenter:     "center line; of a stair, the line of its nosings",
		symbolSection:    "where the section on the elevation sheet is cut, and which way it looks",
		symbolFull:       "finding: outside a limit",
		symbolHollow:     "item: not shown, or the check could not run",
		symbolTwice:      "excused by a waiver",
	}[s]
}

// legendWidth and legendHeight are the room of a symbol in the legend.
const (
	legendWidth  = 34.0
	legendHeight = 12.0
)

// sample draws a symbol into a box of the legend with its upper left corner at
// the origin.
func (s symbol) sample(fonts *paper.Fonts) []paper.Item {
	y := legendHeight / 2
	a, b := paper.Point{X: 1, Y: y}, paper.Point{X: legendWidth - 4, Y: y}
	c := middle(a, b)
	bar := func(stroke paper.Stroke) []paper.Item {
		return []paper.Item{paper.Rectangle(a.Plus(0, -2.5), b.Plus(0, 2.5), stroke, paper.NoFill)}
	}
	tag := func(form paper.Form) []paper.Item {
		return []paper.Item{fonts.Marker(paper.Marker{At: c.Plus(-6, -paper.TagHeight/2), Tags: []paper.Tag{{N: 1, Form: form}}, Bare: true})}
	}
	switch s {
	case symbolOutline:
		return []paper.Item{paper.Line(a, b, paper.Cut)}
	case symbolWall:
		return wallBand(a.Plus(0, 4), b.Plus(0, 4), vector{0, -1})
	case symbolGuard:
		return comb(a.Plus(0, -2), b.Plus(0, -2), vector{0, 1})
	case symbolJoist:
		return bar(paper.Thin)
	case symbolDropped:
		return append(bar(paper.Hidden), paper.Line(a, b, paper.Center))
	case symbolFlush:
		return append(bar(paper.Edge), paper.Line(a, b, paper.Center))
	case symbolPost:
		return []paper.Item{paper.Rectangle(c.Plus(-3.5, -3.5), c.Plus(3.5, 3.5), paper.Bold, paper.Shade)}
	case symbolFooting:
		return []paper.Item{paper.Circle(c, 5.5, paper.Hidden, paper.NoFill)}
	case symbolGrade:
		return ground([]paper.Point{a.Plus(0, -2), b.Plus(0, -2)})
	case symbolKnownGrade:
		return spot(c)
	case symbolOpen:
		return []paper.Item{paper.Line(a, b, paper.Open)}
	case symbolBreak:
		return []paper.Item{paper.Line(a, c, paper.Edge), breakMark(c, vector{1, 0}, 5)}
	case symbolHole:
		box := []paper.Point{c.Plus(-8, -5), c.Plus(8, -5), c.Plus(8, 5), c.Plus(-8, 5)}
		return crossed(box)
	case symbolTie:
		return tie(a.Plus(6, 0), vector{1, 0})
	case symbolJoint:
		return append(bar(paper.Hidden), joint(c, vector{1, 0}, 2)...)
	case symbolCut:
		return []paper.Item{paper.Rectangle(c.Plus(-6, -4), c.Plus(6, 4), paper.Cut, paper.Shade)}
	case symbolHidden:
		return []paper.Item{paper.Line(a, b, paper.Hidden)}
	case symbolBoards:
		var list []paper.Item
		for i := range 3 {
			list = append(list, paper.Line(a.Plus(0, float64(i-1)*3), b.Plus(0, float64(i-1)*3), paper.Faint))
		}
		return list
	case symbolCenter:
		return []paper.Item{paper.Line(a, b, paper.Center)}
	case symbolSection:
		return cutMark(c.Plus(-5, 5), c.Plus(-5, -5))
	case symbolFull:
		return tag(paper.Full)
	case symbolHollow:
		return tag(paper.Hollow)
	case symbolTwice:
		return tag(paper.Twice)
	}
	return nil
}

// comb is a guard on the plan: a line with short teeth to one side.
func comb(a, b paper.Point, in vector) []paper.Item {
	list := []paper.Item{paper.Line(a, b, paper.Edge)}
	length := distance(a, b)
	const every = 9.0
	n := int(math.Floor(length / every))
	v := towards(a, b)
	for i := range n + 1 {
		p := moved(a, v, (length-float64(n)*every)/2+float64(i)*every)
		list = append(list, paper.Line(p, moved(p, in, 3.2), paper.Thin))
	}
	return list
}

// wallDeep is how far the hatch of a wall reaches, in points.
const wallDeep = 8.0

// wallBand is the face of the house with a hatch behind it, without a back
// line: how thick the wall is, is not shown.
func wallBand(a, b paper.Point, back vector) []paper.Item {
	const deep = wallDeep
	area := []paper.Point{a, b, moved(b, back, deep), moved(a, back, deep)}
	return []paper.Item{
		paper.Hatch{Area: area, Turn: 45, Gap: 3.6, Stroke: paper.Faint},
		paper.Line(a, b, paper.Bold),
	}
}

// breakMark ends a member that goes on: a zigzag across it.
func breakMark(at paper.Point, v vector, half float64) paper.Path {
	w := v.left()
	p := func(across, along float64) paper.Point { return moved(moved(at, w, across), v, along) }
	return paper.Path{Stroke: paper.Thin, Points: []paper.Point{
		p(half+2, 0), p(1.6, 0), p(0.8, 2.4), p(-0.8, -2.4), p(-1.6, 0), p(-half-2, 0),
	}}
}

// ground is the line of the ground with strokes of earth below it.
func ground(points []paper.Point) []paper.Item {
	list := []paper.Item{paper.Path{Points: points, Stroke: paper.Grade}}
	for i := 1; i < len(points); i++ {
		a, b := points[i-1], points[i]
		length, v := distance(a, b), towards(a, b)
		for d := 4.0; d < length-4; d += 30 {
			for k := range 3 {
				p := moved(a, v, min(d+float64(k)*3.2, length))
				list = append(list, paper.Line(p, p.Plus(-3.6, 4.2), paper.Faint))
			}
		}
	}
	return list
}

// spot is a point whose height is known.
func spot(c paper.Point) []paper.Item {
	return []paper.Item{
		paper.Circle(c, 3, paper.Thin, paper.White),
		paper.Line(c.Plus(-5.5, 0), c.Plus(5.5, 0), paper.Thin), paper.Line(c.Plus(0, -5.5), c.Plus(0, 5.5), paper.Thin),
	}
}

// crossed is an opening: its outline and its diagonals.
func crossed(area []paper.Point) []paper.Item {
	list := []paper.Item{paper.Path{Points: area, Closed: true, Stroke: paper.Edge, Fill: paper.White}}
	if len(area) == 4 {
		list = append(list, paper.Line(area[0], area[2], paper.Thin), paper.Line(area[1], area[3], paper.Thin))
	}
	return list
}

// tie is a tension tie: a bar out from the house with a head at the ledger.
func tie(at paper.Point, out vector) []paper.Item {
	w := out.left()
	end := moved(at, out, 11)
	return []paper.Item{
		paper.Line(moved(at, out, -3), end, paper.Bold),
		paper.Line(moved(at, w, 3.5), moved(at, w, -3.5), paper.Bold),
		paper.Path{Points: []paper.Point{moved(end, w, 2.2), moved(end, out, 3.5), moved(end, w, -2.2)}, Closed: true, Stroke: paper.Thin, Fill: paper.Solid},
	}
}

// joint is where plies of a beam are cut: two strokes across it.
func joint(at paper.Point, along vector, half float64) []paper.Item {
	w := along.left()
	var list []paper.Item
	for _, d := range []float64{-1, 1} {
		p := moved(at, along, d)
		list = append(list, paper.Line(moved(p, w, half+2.5), moved(p, w, -half-2.5), paper.Edge))
	}
	return list
}

// cutMark is one end of the line of a section: a heavy stroke from the drawing
// outwards, with an arrow to the right, which is where the section looks.
func cutMark(near, far paper.Point) []paper.Item {
	return append([]paper.Item{paper.Line(near, far, paper.Cut)}, arrow(far, far.Plus(13, 0))...)
}

// arrow is a line with a filled head at its end.
func arrow(a, b paper.Point) []paper.Item {
	v := towards(a, b)
	w := v.left()
	neck := moved(b, v, -6)
	return []paper.Item{
		paper.Line(a, neck, paper.Thin),
		paper.Path{Points: []paper.Point{b, moved(neck, w, 2.2), moved(neck, w, -2.2)}, Closed: true, Stroke: paper.Thin, Fill: paper.Solid},
	}
}
