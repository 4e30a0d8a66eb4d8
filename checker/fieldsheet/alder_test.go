package fieldsheet_test

import (
	"math"
	"testing"
)

// Alder Lane: a rectangle of 192 x 144 in on a ledger and one dropped beam.
func TestEveryNumberOfAlderLane(t *testing.T) {
	e := expected{}
	e.alderSetOut()
	e.alderLedger()
	e.alderFrame()
	e.alderStair()
	e.alderGuard()
	e.alderMeasured()
	e.alderCounts()
	sheet := fixture(t, "alder-lane")
	e.compare(t, sheet)
	missing(t, sheet,
		"cut length of posts: top of footing above grade -> platforms[].footings.top_above_grade",
		"baluster count, guard G1 -> guards[].bays",
	)
}

func (e expected) alderSetOut() {
	for name, side := range map[string]float64{"house": 192, "right": 144, "front": 192, "left": 144} {
		e.set(side, "Square", "Sides", name)
	}
	e.set(math.Sqrt(192*192+144*144), "Square", "Diagonals", "both diagonals") // 240
	const triangle = "Largest 3-4-5 that fits, in whole feet"
	// 144 / 36 and 192 / 48 are both 4: the triangle of 12, 16 and 20 ft fills the deck.
	e.set(16*12, "Square", triangle, "either corner, along the house")
	e.set(12*12, "Square", triangle, "either corner, out")
	e.set(20*12, "Square", triangle, "either corner, across")
	for name, differ := range map[string]float64{`1/8"`: 0.125, `1/4"`: 0.25, `1/2"`: 0.5, `3/4"`: 0.75, `1"`: 1} {
		e.set(differ*240/(2*192), "Square", "Sliding move, opposite sides equal", name, "Slide front by")
	}
	const tapes = "Tapes from both ends of the ledger"
	for name, at := range map[string][2]float64{
		"right / front": {192, 144}, "front / left": {0, 144},
		"B1 post 1": {18, 120}, "B1 post 2": {96, 120}, "B1 post 3": {174, 120},
	} {
		e.pair(tapes, "", name, ends, math.Hypot(at[0], at[1]), math.Hypot(192-at[0], at[1]))
	}
	for name, along := range map[string]float64{"B1 start": 0, "B1 end": 192, "B1 post 1": 18, "B1 post 2": 96, "B1 post 3": 174} {
		e.pair("Strings", "", name, strung, along, 120)
	}
	const concrete, footing = "Concrete for footings", `round 20", 10" thick`
	e.set(3, concrete, footing, "No.")
	e.set(math.Pi*10*10*10, concrete, footing, "Each")
	e.set(3*math.Pi*10*10*10, concrete, footing, "All of them")
	// 50 in of drop less 1 of boards, 9-1/4 of joist and 9-1/4 of beam.
	e.pair("Post heights", "", "B1 posts 1-3, 6x6", heights, 50-1-9.25-9.25, unknown)
}

func (e expected) alderLedger() {
	const s = "Ledger fasteners"
	e.set(14, s, `fasteners, 1/2" lag screw`)
	e.set(15, s, "spacing drawn")
	e.set(15, s, "widest spacing after moving")
	e.set(2, s, "upper row below top edge")
	e.set(2.25, s, "lower row above bottom edge")
	// Joist i covers 15.875 i to 15.875 i + 1.5, and 2 in beside it are kept free.
	// 3 in from the end lies behind joist 1, free from 1.5 + 2. From there 15 in lead to 18.5, behind joist 2,
	// free up to 15.875 - 2. Every 15 in from there on is free up to 178.875. 3 in from the right end lies
	// behind joist 13, free up to 190.5 - 2; that is 9.625 in on.
	places := []float64{3.5, 13.875}
	for at := 28.875; at < 180; at += 15 {
		places = append(places, at)
	}
	places = append(places, 188.5)
	moved := map[int]string{0: " *", 1: " *", 13: " *"}
	for i, at := range places {
		row := [2]string{"upper", "lower"}[i%2]
		e.pair(s, "", d(i+1)+moved[i]+" | "+row, ends, at, 192-at)
	}
	e.set(2, s, "Ties to the house", "how many")
	e.set(18, s, "Ties to the house", "outer ties, from either end")
}

func (e expected) alderFrame() {
	const s = "Joist marks"
	// (192 - 1.5) / 16 is 11.9: twelve bays.
	bay := 190.5 / 12
	e.set(13, s, "Layout", "joist lines")
	e.set(12, s, "Layout", "equal bays")
	e.set(bay, s, "Layout", "bay, edge to edge")
	e.set(bay-1.5, s, "Layout", "clear between joists (blocking)")
	for i := range 13 {
		mark := float64(i) * 190.5 / 12
		e.pair(s, "Ledger and front", d(i+1), ends, mark, 192-mark)
	}
	const cuts = "Cut lengths"
	e.set(13, cuts, "Joists, 2x10", "1-13 | ledger to rim", "No.")
	e.set(144-1.5-1.5, cuts, "Joists, 2x10", "1-13 | ledger to rim", "Length")
	for name, n := range map[string]float64{"ledger, 2x10": 1, "rim, front, 2x10": 1, "beam B1, each ply, 2x10": 3} {
		e.set(n, cuts, "Ledger, rims, beams", name, "No.")
		e.set(192, cuts, "Ledger, rims, beams", name, "Length")
	}
	const corner = "every corner | outside"
	e.set(90, "Corner cuts", corner, "Inside angle")
	e.set(45, "Corner cuts", corner, "Saw, first board")
	e.set(45, "Corner cuts", corner, "Saw, second board")
	const boards = "Boards"
	e.set(5.5, boards, "board width")
	e.set(0.125, boards, "gap between boards")
	e.set(0, boards, "away from square across the joists")
	e.set(bay, boards, "joist to joist along the board")
	e.set(145, boards, "depth to cover") // 144 and 1 in past the front; at the house boards stop
	e.set(26, boards, "rows")            // 25 x 5.625 = 140.625 leaves 4.375
	e.set(4.375, boards, "last row")
	e.set(194, boards, "length of a row")
	// Joist k has its center 15.875 (k - 1) + 0.75 from the frame's left end and 1 in more from the board's.
	for name, k := range map[string]float64{"8 ft, joist 6": 6, "10 ft, joist 8": 8, "12 ft, joist 9": 9, "14 ft, joist 11": 11, "16 ft, joist 12": 12} {
		end := 15.875*(k-1) + 0.75 + 1
		e.pair(boards, "Board ends on joist centers", name, [2]string{"Cut to", "Rest of the row"}, end, 194-end)
	}
}

func (e expected) alderStair() {
	const s = "Stair ST1"
	rise, run := 50.0/7, 10.25
	slope := math.Hypot(rise, run)
	for name, value := range map[string]float64{
		"rise, finish to finish": 50, "risers": 7, "treads": 6, "unit rise": rise,
		"first step (lowest), finished": rise, "last step (topmost), finished": rise,
		"run of one tread": run, "total run": 61.5, "pitch": math.Atan(rise/run) * 180 / math.Pi,
	} {
		e.set(value, s, "Rise and run", name)
	}
	for name, value := range map[string]float64{
		"stringer line, over the treads":               6 * slope,
		"throat, square to the edge":                   11.25 - rise*run/slope,
		"first drop: surface above to first level cut": rise + 1.5,
		"bottom cut: lowest riser on the stringer":     rise - 1.5,
		"stringers drawn":                              4, "stringers, center to center": (48 - 1.5) / 3,
	} {
		e.set(value, s, "Stringer, 2x12", name)
	}
	for i := range 7 {
		e.pair(s, "Steps, finished", d(i+1), [2]string{"Up from the landing", "In from the lowest riser"}, float64(i+1)*50/7, float64(i)*run)
	}
}

func (e expected) alderGuard() {
	const s, bay, marks = "Balusters, guard G1", `Bay of 5'-2 1/2"`, `Marks in a bay of 5'-2 1/2"`
	// 66 in of posts less 3-1/2 of post: 62-1/2. With a baluster more, 63.75 / 5 is 12.75: 13 gaps.
	gap := (62.5 - 12*1.25) / 13
	e.set(62.5, s, bay, "clear between posts")
	e.set(12, s, bay, "balusters")
	e.set(gap, s, bay, "gap, every one")
	e.set(62.5-12*5, s, bay, `gap left last if stepped off at 3-3/4"`)
	for i := range 12 {
		at := float64(i+1)*gap + float64(i)*1.25
		e.pair(s, marks, d(i+1), [2]string{"Near edge from first post", "Near edge from last post"}, at, 62.5-at)
	}
}

func (e expected) alderMeasured() {
	const s, frame = "Measured on site", "Rectangle frame A"
	e.set(0.0625, s, frame, "sides along the house differ by")
	e.set(0, s, frame, "sides out from the house differ by")
	e.set(math.Abs(240.125-second(192, 144, 192.0625, 144, 240)), s, frame, "the six measures miss each other by")
	e.set(0.125, s, frame, "diagonals differ by")
	e.set(0.125*(240+240.125)/(4*192.03125), s, frame, "to square it, slide the front to the right by")
	const corner = "Triangle left corner at house"
	e.set(180, s, corner, "diagonal as measured")
	e.set(180, s, corner, "diagonal if square")
	e.set(90, s, corner, "corner")
}

// second is the second diagonal of a quadrilateral with the sides a to d in
// walking order and the first diagonal, by placing its corners on the plane.
func second(a, b, c, d, first float64) float64 {
	// From (0,0): the next corner at (a,0); the far one at distance first from here and b from there.
	x := (first*first + a*a - b*b) / (2 * a)
	y := math.Sqrt(first*first - x*x)
	// The last one at distance d from here and c from the far one, on the other side of the diagonal.
	along := (first*first + d*d - c*c) / (2 * first)
	off := math.Sqrt(d*d - along*along)
	px, py := (along*x-off*y)/first, (along*y+off*x)/first
	return math.Hypot(px-a, py)
}

func (e expected) alderCounts() {
	for name, n := range map[string]float64{
		"joists | 2x10, 12 ft": 13, "hangers | 2x10 at ledger": 13, "joist to beam ties | 2x10": 13,
		"posts | 6x6": 3, "post bases | standoff, 6x6": 3, "post caps | post cap, 6x6": 3,
		`ledger fasteners | 1/2" lag screw`: 14, "ties to the house": 2, "boards | 5/4x6, 18 ft": 26,
		"balusters": unknown, "stringers | 2x12": 4, "treads": 6,
	} {
		e.set(n, "Counts", name, "Number")
	}
	e.set(3*math.Pi*10*10*10, "Counts", "concrete for footings", "Together")
}
