package fieldsheet_test

import (
	"math"
	"testing"
)

// Ketch Point: a walked outline with a clipped corner that misses its start.
//
// The walk: 240 along, 132 out, 51 at 45 degrees, 204 back, 168 in. The clip
// leads 51/√2 = 36.0624 to the left and out, so the front ends 0.0624 left of
// the start, at 168.0624 out; the last leg takes up the rest.
func TestEveryNumberOfKetchPoint(t *testing.T) {
	e := expected{}
	clip := 51 / math.Sqrt2
	e.ketchSetOut(clip)
	e.ketchFrame(clip)
	e.ketchStair()
	e.ketchCounts()
	sheet := fixture(t, "ketch-point")
	e.compare(t, sheet)
	missing(t, sheet,
		"depth of footings -> platforms[].footings.depth",
		"cut length of posts: what they stand on -> platforms[].posts.base.kind",
		"ledger fastener positions -> platforms[].ledger.fasteners.end_distance",
		"upper row below the top of the ledger -> platforms[].ledger.fasteners.edge_distance_top",
		"lower row above the bottom of the ledger -> platforms[].ledger.fasteners.edge_distance_bottom",
		"ties to the house -> platforms[].lateral_devices",
		"hangers at the ledger -> platforms[].joists.hangers.at_ledger",
		"ties of joists to beams -> platforms[].joists.beam_ties",
		"post bases -> platforms[].posts.base.kind",
		"post caps -> platforms[].posts.cap.kind",
		"stair ST1: first drop and bottom cut -> stairs[].tread.thickness",
		"baluster marks, guard G1 -> guards[].infill.baluster_width",
	)
}

func (e expected) ketchSetOut(clip float64) {
	left, out := 240-clip-204, 132+clip // -0.0624 and 168.0624
	for name, side := range map[string]float64{"house": 240, "right": 132, "clip": 51, "front": 204, "left": math.Hypot(left, out)} {
		e.set(side, "Square", "Sides", name)
	}
	for name, value := range map[string]float64{
		"string box, along the house": 240 - left, "string box, out from the house": out,
		"string box, both diagonals":   math.Hypot(240-left, out),
		"right / clip to front / left": math.Hypot(240-left, out-132),
	} {
		e.set(value, "Square", "Diagonals", name)
	}
	// Only the right corner is square: 132 / 36 is 3.67, so 9, 12 and 15 ft.
	const triangle = "Largest 3-4-5 that fits, in whole feet"
	e.set(144, "Square", triangle, "right corner, along the house")
	e.set(108, "Square", triangle, "right corner, out")
	e.set(180, "Square", triangle, "right corner, across")
	places := map[string][2]float64{"right / clip": {240, 132}, "clip / front": {240 - clip, out}, "front / left": {left, out}}
	for i, at := range []float64{12, 84, 156, 228} {
		post := "B1 post " + d(i+1)
		// Posts are told from the left end of the outline, which is where the front ends.
		places[post] = [2]float64{left + at, 126}
		e.pair("Strings", "", post, strung, left+at, 126)
	}
	for name, at := range places {
		e.pair("Tapes from both ends of the ledger", "", name, ends, math.Hypot(at[0], at[1]), math.Hypot(240-at[0], at[1]))
	}
	e.pair("Strings", "", "B1 start", strung, left*126/out, 126) // on the last leg, which leans
	e.pair("Strings", "", "B1 end", strung, 240, 126)
	const footing = `round 14", 8" thick`
	e.set(4, "Concrete for footings", footing, "No.")
	e.set(math.Pi*7*7*8, "Concrete for footings", footing, "Each")
	e.set(4*math.Pi*7*7*8, "Concrete for footings", footing, "All of them")
	// The greatest drop of 93 in, less 1 of boards and twice 9-1/4.
	e.pair("Post heights", "", "B1 posts 1-4, 4x4", heights, 93-1-9.25-9.25, unknown)
	for name, angles := range map[string][2]float64{
		"house / right | outside": {90, 45}, "right / clip | outside": {135, 22.5}, "clip / front | outside": {135, 22.5},
	} {
		e.corner(name, angles[0], angles[1])
	}
	// The last leg leans by the angle whose tangent is 0.0624 / 168.0624.
	lean := math.Atan(-left/out) * 180 / math.Pi
	e.corner("left / house | outside", 90+lean, (90-lean)/2)
	e.corner("front / left | outside", 90-lean, (90+lean)/2)
}

func (e expected) corner(name string, inside, saw float64) {
	e.set(inside, "Corner cuts", name, "Inside angle")
	e.set(saw, "Corner cuts", name, "Saw, first board")
	e.set(saw, "Corner cuts", name, "Saw, second board")
}

func (e expected) ketchFrame(clip float64) {
	const s, cuts = "Joist marks", "Cut lengths"
	left, out := 240-clip-204, 132+clip
	wide := 240 - left // 240.0624
	last := wide - 1.5 - 9*24
	for name, value := range map[string]float64{
		"joist lines": 11, "spacing": 24, "clear between joists (blocking)": 22.5,
		"first bay, edge to edge": 24, "last bay, edge to edge": last,
	} {
		e.set(value, s, "Layout", name)
	}
	for i := range 11 {
		mark := left + 24*float64(i)
		if i == 10 {
			mark = 240 - 1.5
		}
		e.pair(s, "Ledger", d(i+1), ends, mark, 240-mark)
		center := mark + 0.75
		switch corner := 240 - clip; {
		case center < corner:
			e.pair(s, "Front", d(i+1), ends, mark-left, 204-(mark-left))
		default: // on the clip, √2 as long as it is wide
			e.pair(s, "Clip", d(i+1), ends, (mark-corner)*math.Sqrt2, 51-(mark-corner)*math.Sqrt2)
		}
	}
	const joists = "Joists, 2x10"
	e.set(9, cuts, joists, "1-9 | ledger to rim", "No.")
	e.set(out-3, cuts, joists, "1-9 | ledger to rim", "Length")
	for name, center := range map[string]float64{"10 | ledger to rim": left + 216.75, "11 | ledger to rim": 240 - 0.75} {
		e.set(1, cuts, joists, name, "No.")
		e.set(372-center-3, cuts, joists, name, "Length") // the clip is the line along + out = 372
	}
	const others = "Ledger, rims, beams"
	for name, value := range map[string][2]float64{
		"ledger, 2x10": {1, 240}, "rim, clip, 2x10": {1, 51}, "rim, front, 2x10": {1, 204},
		"beam B1, each ply, 2x10": {2, 240 - left*126/out},
	} {
		e.set(value[0], cuts, others, name, "No.")
		e.set(value[1], cuts, others, name, "Length")
	}
	e.set(5.5, "Boards", "board width")
	e.set(0.1875, "Boards", "gap between boards")
	e.set(45, "Boards", "away from square across the joists")
	e.set(24*math.Sqrt2, "Boards", "joist to joist along the board")
}

func (e expected) ketchStair() {
	const s = "Stair ST1"
	for name, value := range map[string]float64{
		// Eleven risers of 7-3/4 and one of 8-1/4, against 93 drawn over twelve.
		"rise, finish to finish": 93.5, "rise as drawn": 93, "risers": 12, "treads": 9, "unit rise": 7.75,
		"first step (lowest), finished": 7.75, "last step (topmost), finished": 8.25,
		"run of one tread": 9.75, "total run": 9 * 9.75, "pitch": math.Atan(7.75/9.75) * 180 / math.Pi,
	} {
		e.set(value, s, "Rise and run", name)
	}
	slope := math.Hypot(7.75, 9.75)
	for name, value := range map[string]float64{
		"stringer line, over the treads": 9 * slope, "throat, square to the edge": 11.25 - 7.75*9.75/slope,
		"stringers drawn": 2, "stringers, center to center": 36 - 1.5,
	} {
		e.set(value, s, "Stringer, 2x12", name)
	}
	const bay = "Rectangle house bay"
	e.set(0, "Measured on site", bay, "sides along the house differ by")
	e.set(0.75, "Measured on site", bay, "sides out from the house differ by")
	first, next := 273.0+15.0/16, 274.75
	e.set(math.Abs(next-second(240, 132, 240, 132.75, first)), "Measured on site", bay, "the six measures miss each other by")
	e.set(next-first, "Measured on site", bay, "diagonals differ by")
	e.set((next-first)*(next+first)/(4*240), "Measured on site", bay, "to square it, slide the front to the right by")
}

func (e expected) ketchCounts() {
	for name, n := range map[string]float64{
		// 165.06 and 152.31 in come out of 14 ft, 129.75 in out of 12 ft.
		"joists | 2x10, 12 ft": 1, "joists | 2x10, 14 ft": 10, "hangers": unknown, "joist to beam ties": unknown,
		"posts | 4x4": 4, "post bases": unknown, "post caps": unknown, "ties to the house": unknown, "boards": unknown,
		"balusters": unknown, "stringers | 2x12": 2, "treads": 9, "ledger fasteners": unknown,
	} {
		e.set(n, "Counts", name, "Number")
	}
	e.set(4*math.Pi*7*7*8, "Counts", "concrete for footings", "Together")
}
