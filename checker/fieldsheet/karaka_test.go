package fieldsheet_test

import (
	"math"
	"testing"
)

// mm turns millimetres into the inches that numbers are compared in.
const mm = 1 / 25.4

// Karaka Bay: two freestanding rectangles in millimetres. Neither shows where
// its frame lies, so nothing that hangs on the frame is there.
func TestEveryNumberOfKarakaBay(t *testing.T) {
	e := expected{}
	e.plainRectangle(", platform upper", 4800, 3600, [3]float64{4800, 3600, 6000})
	// 2400 / 300 is 8 and 3000 / 400 is 7.5: seven parts.
	e.plainRectangle(", platform lower", 3000, 2400, [3]float64{2800, 2100, 3500})
	e.karakaUpper()
	e.karakaStair()
	sheet := fixture(t, "karaka-bay")
	e.compare(t, sheet)
	missing(t, sheet,
		"frame inside the outline, platform upper -> platforms[].decking.overhang",
		"height of posts, platform upper -> platforms[].beams[].kind",
		"height of posts, platform upper -> platforms[].decking.overhang",
		"joist marks, platform upper -> platforms[].decking.overhang",
		"length of beam BR1, platform upper -> platforms[].decking.overhang",
		"length of beam BR2, platform upper -> platforms[].decking.overhang",
		"post bases, platform upper -> platforms[].posts.base.kind",
		"post caps, platform upper -> platforms[].posts.cap.kind",
		"frame inside the outline, platform lower -> platforms[].measured_to",
		"beam strings, posts and footings, platform lower -> platforms[].beams",
		"joist marks, platform lower -> platforms[].measured_to",
		"boards, platform lower -> platforms[].decking",
		"stair F1: first drop and bottom cut -> stairs[].tread.thickness",
		"stair F1: stringers -> stairs[].stringers",
		"baluster marks, guard B1 -> guards[].infill.baluster_width",
	)
}

// plainRectangle sets what a rectangle has whatever stands below it.
func (e expected) plainRectangle(of string, along, out float64, triangle [3]float64) {
	for name, side := range map[string]float64{"house": along, "right": out, "front": along, "left": out} {
		e.set(side*mm, "Square"+of, "Sides", name)
	}
	diagonal := math.Hypot(along, out)
	e.set(diagonal*mm, "Square"+of, "Diagonals", "both diagonals")
	const title = "Largest 3-4-5 that fits, in whole 100 mm"
	e.set(triangle[0]*mm, "Square"+of, title, "either corner, along the house")
	e.set(triangle[1]*mm, "Square"+of, title, "either corner, out")
	e.set(triangle[2]*mm, "Square"+of, title, "either corner, across")
	for name, differ := range map[string]float64{"2 mm": 2, "5 mm": 5, "10 mm": 10, "20 mm": 20} {
		e.set(differ*diagonal/(2*along)*mm, "Square"+of, "Sliding move, opposite sides equal", name, "Slide front by")
	}
	tapes := "Tapes from both ends of the house edge" + of
	e.pair(tapes, "", "right / front", ends, diagonal*mm, out*mm)
	e.pair(tapes, "", "front / left", ends, out*mm, diagonal*mm)
	const corner = "every corner | outside"
	e.set(90, "Corner cuts"+of, corner, "Inside angle")
	e.set(45, "Corner cuts"+of, corner, "Saw, first board")
	e.set(45, "Corner cuts"+of, corner, "Saw, second board")
}

func (e expected) karakaUpper() {
	const of = ", platform upper"
	for beam, out := range map[string]float64{"BR1": 300, "BR2": 2900} {
		for i, along := range []float64{200, 2400, 4600} {
			post := beam + " post " + d(i+1)
			e.pair("Tapes from both ends of the house edge"+of, "", post, ends, math.Hypot(along, out)*mm, math.Hypot(4800-along, out)*mm)
			e.pair("Strings"+of, "", post, strung, along*mm, out*mm)
		}
		e.set(out*mm, "Strings"+of, beam+" string | whole line", strung[1])
		e.pair("Post heights"+of, "", beam+" posts 1-3, 125 mm x 125 mm", heights, unknown, unknown)
		piece := "beam " + beam + ", each ply, 90 mm x 190 mm"
		e.set(1, "Cut lengths"+of, "Ledger, rims, beams", piece, "No.")
		e.set(unknown, "Cut lengths"+of, "Ledger, rims, beams", piece, "Length")
	}
	const footing = "square 400 mm, 300 mm thick"
	one := 400.0 * 400 * 300 * mm * mm * mm
	e.set(6, "Concrete for footings"+of, footing, "No.")
	e.set(one, "Concrete for footings"+of, footing, "Each")
	e.set(6*one, "Concrete for footings"+of, footing, "All of them")
	for name, value := range map[string]float64{
		"board width": 140, "gap between boards": 5, "joist to joist along the board": 450,
		// 24 x 145 = 3480 leaves 120 of a 25th row.
		"depth to cover": 3600, "last row": 120, "length of a row": 4800,
	} {
		e.set(value*mm, "Boards"+of, name)
	}
	e.set(25, "Boards"+of, "rows")
	e.set(0, "Boards"+of, "away from square across the joists")
	e.set(6*one, "Counts", "concrete for footings", "Together")
	for name, n := range map[string]float64{
		"joists": unknown, "hangers": unknown, "joist to beam ties": unknown, "posts | 125 mm x 125 mm": 6,
		"posts | and others": unknown, "post bases": unknown, "post caps": unknown,
		"boards | 32 mm x 140 mm, 4800 mm": 25, "boards | and others": unknown,
		"balusters": unknown, "stringers": unknown, "treads": 6,
	} {
		e.set(n, "Counts", name, "Number")
	}
}

func (e expected) karakaStair() {
	const s = "Stair F1"
	rise := 1143.0 / 7
	for name, value := range map[string]float64{
		"rise, finish to finish": 1143, "unit rise": rise, "first step (lowest), finished": rise,
		"last step (topmost), finished": rise, "run of one tread": 280, "total run": 6 * 280,
	} {
		e.set(value*mm, s, "Rise and run", name)
	}
	e.set(7, s, "Rise and run", "risers")
	e.set(6, s, "Rise and run", "treads")
	e.set(math.Atan(rise/280)*180/math.Pi, s, "Rise and run", "pitch")
	e.set(6*math.Hypot(rise, 280)*mm, s, "Stringer", "stringer line, over the treads")
	for i := range 7 {
		e.pair(s, "Steps, finished", d(i+1), [2]string{"Up from the landing", "In from the lowest riser"},
			float64(i+1)*1143/7*mm, float64(i)*280*mm)
	}
}
