package fieldsheet_test

import (
	"math"
	"testing"
)

// Quarry Hill: an L round a corner with a clip, drawn to a fascia of 3/4 in.
//
// The frame lies 3/4 in inside every edge but the house: from 0.75 to 287.25
// along, the north return at 119.25 out, the clip on along + out = 288 - 0.75√2,
// the inner side at 119.25 along, the front at 263.25 out.
func TestEveryNumberOfQuarryHill(t *testing.T) {
	e := expected{}
	e.quarrySetOut()
	e.quarryStructure()
	e.quarryLedger()
	e.quarryJoists()
	e.quarryCuts()
	e.quarryStair()
	e.quarryCounts()
	sheet := fixture(t, "quarry-hill")
	e.compare(t, sheet)
	missing(t, sheet,
		"cut length of posts: top of footing above grade -> platforms[].footings.top_above_grade",
		"ties of joists to beams -> platforms[].joists.beam_ties",
	)
}

// The frame of Quarry Hill, in inches from the left end of its ledger.
const (
	quarryEast  = 286.5  // right end of the ledger
	quarryNorth = 119.25 // of the north return
	quarryInner = 118.5  // of the inner side
	quarryFront = 263.25
	fascia      = 0.75
)

// quarryBend is where clip and north return meet: along + out is 288 less √2
// times the fascia, and the ledger starts 0.75 in.
func quarryBend() float64 { return 288 - fascia*math.Sqrt2 - quarryNorth - fascia }

// quarryFold is where clip and inner side meet, out from the house.
func quarryFold() float64 { return 288 - fascia*math.Sqrt2 - (quarryInner + fascia) }

func quarryCorners() map[string][2]float64 {
	return map[string][2]float64{
		"east / north return": {quarryEast, quarryNorth}, "north return / clip": {quarryBend(), quarryNorth},
		"clip / inner": {quarryInner, quarryFold()}, "inner / front": {quarryInner, quarryFront}, "front / west": {0, quarryFront},
	}
}

func (e expected) quarrySetOut() {
	bend, fold := quarryBend(), quarryFold()
	for name, side := range map[string][2]float64{
		"house": {288, quarryEast}, "east": {120, quarryNorth}, "north return": {120, quarryEast - bend},
		"clip": {48 * math.Sqrt2, math.Hypot(bend-quarryInner, fold-quarryNorth)}, "inner": {96, quarryFront - fold},
		"front": {120, quarryInner}, "west": {264, quarryFront},
	} {
		e.pair("Square", "Sides", name, [2]string{"As drawn", "Frame"}, side[0], side[1])
	}
	e.set(quarryEast, "Square", "Diagonals", "string box, along the house")
	e.set(quarryFront, "Square", "Diagonals", "string box, out from the house")
	e.set(math.Hypot(quarryEast, quarryFront), "Square", "Diagonals", "string box, both diagonals")
	corners := quarryCorners()
	for _, pair := range [][2]string{
		{"east / north return", "clip / inner"}, {"east / north return", "inner / front"}, {"east / north return", "front / west"},
		{"north return / clip", "inner / front"}, {"north return / clip", "front / west"}, {"clip / inner", "front / west"},
	} {
		a, b := corners[pair[0]], corners[pair[1]]
		e.set(math.Hypot(a[0]-b[0], a[1]-b[1]), "Square", "Diagonals", pair[0]+" to "+pair[1])
	}
	// Left 286.5 / 48 and 263.25 / 36 give 5, right 119.25 / 36 gives 3.
	const triangle = "Largest 3-4-5 that fits, in whole feet"
	for name, feet := range map[string]float64{
		"left corner, along the house": 20, "left corner, out": 15, "left corner, across": 25,
		"right corner, along the house": 12, "right corner, out": 9, "right corner, across": 15,
	} {
		e.set(feet*12, "Square", triangle, name)
	}
	for name, at := range corners {
		e.pair("Tapes from both ends of the ledger", "", name, ends, math.Hypot(at[0], at[1]), math.Hypot(quarryEast-at[0], at[1]))
	}
	for name, angles := range map[string][2]float64{
		"west / house | outside": {90, 45}, "house / east | outside": {90, 45}, "east / north return | outside": {90, 45},
		"north return / clip | inside": {225, 22.5}, "clip / inner | inside": {225, 22.5},
		"inner / front | outside": {90, 45}, "front / west | outside": {90, 45},
	} {
		e.corner(name, angles[0], angles[1])
	}
}

// quarryStructure sets beams, posts and footings. B2 runs from (168, 120) to
// (120, 168), its posts 6 and 61 in along it.
func (e expected) quarryStructure() {
	diagonal := func(along float64) [2]float64 { return [2]float64{168 - along/math.Sqrt2, 120 + along/math.Sqrt2} }
	posts := map[string][2]float64{"B2 post 1": diagonal(6), "B2 post 2": diagonal(61)}
	for i, along := range []float64{12, 84, 156, 216, 276} {
		posts["B1 post "+d(i+1)] = [2]float64{along, 108}
	}
	for i, along := range []float64{12, 60, 108} {
		posts["B3 post "+d(i+1)] = [2]float64{along, 240}
	}
	for name, at := range posts {
		x, y := at[0]-fascia, at[1]
		e.pair("Tapes from both ends of the ledger", "", name, ends, math.Hypot(x, y), math.Hypot(quarryEast-x, y))
		e.pair("Strings", "", name, strung, x, y)
	}
	for name, at := range map[string][2]float64{
		"B1 start": {0, 108}, "B1 end": {288, 108}, "B2 start": {168, 120}, "B2 end": {120, 168}, "B3 start": {0, 240}, "B3 end": {120, 240},
	} {
		e.pair("Strings", "", name, strung, at[0]-fascia, at[1])
	}
	const footing = `square 24", 12" thick`
	e.set(10, "Concrete for footings", footing, "No.")
	e.set(24*24*12, "Concrete for footings", footing, "Each")
	e.set(10*24*24*12, "Concrete for footings", footing, "All of them")
	// The ground lies 54 in below the boards at the house and falls 1 in 12. Above a dropped beam are
	// 15/16 of boards, 11-1/4 of joist and 11-1/4 of beam; a flush one is as deep as the joists.
	ground := func(out float64) float64 { return 54 + out/12 }
	for name, height := range map[string]float64{
		"B1 posts 1-5, 6x6": ground(108) - 0.9375 - 22.5, "B3 posts 1-3, 6x6": ground(240) - 0.9375 - 22.5,
		"B2 post 1, 6x6": ground(diagonal(6)[1]) - 0.9375 - 11.25, "B2 post 2, 6x6": ground(diagonal(61)[1]) - 0.9375 - 11.25,
	} {
		e.pair("Post heights", "", name, heights, height, unknown)
	}
}

// quarryLedger steps 16 in off between joists 11.875 in apart, with the joist
// that closes the inner side at 117 in. One place after the other: 4 and 20 are
// free; from 20 on 16 in always lead behind a joist or past it, so that the next
// place is 2 in before the following joist.
func (e expected) quarryLedger() {
	const s = "Ledger fasteners"
	places := []float64{4, 20}
	for joist := 3; joist < 24; joist++ { // 35.625 in is the third after the one at the end
		if joist == 10 { // 118.75, but the closing joist comes first
			places = append(places, 117-2)
			continue
		}
		places = append(places, 11.875*float64(joist)-2)
	}
	places = append(places, quarryEast-4)
	for i, at := range places {
		name := d(i + 1)
		if i > 1 && i < len(places)-1 {
			name += " *"
		}
		e.pair(s, "", name+" | "+[2]string{"upper", "lower"}[i%2], ends, at, quarryEast-at)
	}
	widest := 0.0
	for i := 1; i < len(places); i++ {
		widest = max(widest, places[i]-places[i-1])
	}
	e.set(float64(len(places)), s, `fasteners, 1/2" bolt`)
	e.set(16, s, "spacing drawn")
	e.set(widest, s, "widest spacing after moving")
	e.set(2.5, s, "upper row below top edge")
	e.set(2.5, s, "lower row above bottom edge")
	e.set(4, s, "Ties to the house", "how many")
	e.set(20, s, "Ties to the house", "outer ties, from either end")
}

// quarryMarks are the near edges of all 26 joists from the ledger's left end:
// 285 in over 24 bays, and the one inside the inner side, 1.5 in left of it.
func quarryMarks() []float64 {
	var marks []float64
	for i := range 25 {
		if i == 10 {
			marks = append(marks, quarryInner-1.5)
		}
		marks = append(marks, 285.0/24*float64(i))
	}
	return marks
}

func (e expected) quarryJoists() {
	const s = "Joist marks"
	e.set(26, s, "Layout", "joist lines")
	e.set(24, s, "Layout", "equal bays")
	e.set(11.875, s, "Layout", "bay, edge to edge")
	e.set(10.375, s, "Layout", "clear between joists (blocking)")
	bend := quarryBend()
	clip := (bend - quarryInner) * math.Sqrt2
	for i, mark := range quarryMarks() {
		name := d(i + 1)
		e.pair(s, "Ledger", name, ends, mark, quarryEast-mark)
		switch center := mark + 0.75; {
		case center < quarryInner:
			e.pair(s, "Front", name, ends, mark, quarryInner-mark)
		case center < bend:
			along := (mark - quarryInner) * math.Sqrt2
			e.pair(s, "Clip", name, ends, along, clip-along)
		default:
			e.pair(s, "North return", name, ends, mark-bend, quarryEast-mark)
		}
	}
}

func (e expected) quarryCuts() {
	const cuts, joists, others = "Cut lengths", "Joists, 2x12", "Ledger, rims, beams"
	set := func(table, name string, n, length float64) {
		e.set(n, cuts, table, name, "No.")
		e.set(length, cuts, table, name, "Length")
	}
	set(joists, "1-3, 7-11 | ledger to rim", 8, quarryFront-3)
	// The tree: an opening from 72 to 108 in out, with two plies of header at either end.
	set(joists, "4-6 | ledger to header", 3, 72-1.5-3)
	set(joists, "4-6 | header to rim", 3, quarryFront-1.5-108-3)
	for i, mark := range quarryMarks() {
		center := mark + 0.75 + fascia // as on the plan
		if i >= 11 && i <= 15 {        // on B2, the line along + out = 288, 3 in wide and met at 45 degrees
			set(joists, d(i+1)+" | ledger to B2", 1, 288-center-1.5*math.Sqrt2-1.5)
		}
	}
	set(joists, "17-26 | ledger to rim", 10, quarryNorth-3)
	set(others, "ledger, 2x12", 1, quarryEast)
	set(others, "rim, north return, 2x12", 1, quarryEast-quarryBend())
	set(others, "rim, front, 2x12", 1, quarryInner)
	set(others, "header at tree, each ply, 2x12", 4, 36)
	set(others, "beam B1, each ply, 2x12", 3, 288)
	set(others, "beam B2, each ply, 2x12", 2, 48*math.Sqrt2)
	set(others, "beam B3, each ply, 2x12", 3, 120)
	e.set(5.5, "Boards", "board width")
	e.set(0.1875, "Boards", "gap between boards")
	e.set(30, "Boards", "away from square across the joists")
	e.set(11.875/math.Cos(math.Pi/6), "Boards", "joist to joist along the board")
	e.pair("Boards", "Breaker boards, center line", "breaker 1 starts", strung, -fascia, 132)
	e.pair("Boards", "Breaker boards, center line", "breaker 1 ends", strung, 120-fascia, 132)
}

// quarryStair: two flights of six risers. They run 2 x 5 x 11 and a landing of
// 42, 152 in out; 144 in out the ground lies 88 in below the boards and falls 1
// in 12 from there, and 1-1/2 in of finish is to come.
func (e expected) quarryStair() {
	const first, next = "Stair ST1, flight 1 of 2 from the top", "Stair ST1, flight 2 of 2 from the top"
	total := 88 + 8.0/12 - 1.5
	rise := total / 12
	for name, value := range map[string]float64{
		"total rise of the stair": total, "rise, finish to finish": 6 * rise, "risers": 6, "treads": 5, "unit rise": rise,
		"first step (lowest), finished": rise, "last step (topmost), finished": rise,
		"run of one tread": 11, "total run": 55, "pitch": math.Atan(rise/11) * 180 / math.Pi,
	} {
		e.set(value, first, "Rise and run", name)
	}
	for i := range 6 {
		e.pair(first, "Steps, finished", d(i+1), [2]string{"Up from the landing", "In from the lowest riser"}, float64(i+1)*rise, float64(i)*11)
	}
	for section, bottom := range map[string]float64{first: rise - 0.9375, next: rise - 0.9375 + 1.5} {
		for name, value := range map[string]float64{
			"stringer line, over the treads":               5 * math.Hypot(rise, 11),
			"first drop: surface above to first level cut": rise + 0.9375,
			"bottom cut: lowest riser on the stringer":     bottom,
			"stringers drawn":                              5, "stringers, center to center": (42 - 1.5) / 4,
			// 40-1/2 in over 10 takes five bays.
			`stringers by the listing of the treads, 10"`: 6,
		} {
			e.set(value, section, "Stringer, 2x12", name)
		}
	}
}

func (e expected) quarryCounts() {
	for name, n := range map[string]float64{
		// 67.5 in: 8 ft. 116.25 and 116.63: 10 ft, eleven. 128.5 and 140.38: 12 ft. 150.75, 152.25, 164.13: 14 ft. 260.25: 22 ft.
		"joists | 2x12, 8 ft": 3, "joists | 2x12, 10 ft": 11, "joists | 2x12, 12 ft": 2, "joists | 2x12, 14 ft": 5, "joists | 2x12, 22 ft": 8,
		"hangers | 2x12 at ledger": 26, "hangers | 2x12 skewed at B2": 5, "joist ends at headers | 2x12": 6, "joist to beam ties": unknown,
		"posts | 6x6": 10, "post bases | standoff, 6x6": 10, "post caps | post cap, 6x6": 10,
		`ledger fasteners | 1/2" bolt`: 24, "ties to the house": 4, "boards": unknown, "stringers | 2x12": 10, "treads": 10,
	} {
		e.set(n, "Counts", name, "Number")
	}
	e.set(10*24*24*12, "Counts", "concrete for footings", "Together")
}
