package fieldsheet_test

import (
	"fmt"
	"math"
	"math/rand/v2"
	"strings"
	"testing"

	"plumbrule/checker/measure"
)

// Mistakes that simple sums make, each one tried over many sizes where size
// matters. Randomness is seeded: the sizes are the same every time.

func sizes() *rand.Rand { return rand.New(rand.NewPCG(3, 4)) }

// sixteenths writes a length of so many sixteenths of an inch as typed.
func sixteenths(n int) string { return fmt.Sprintf("%g in", float64(n)/16) }

// Diagonals are equal on a symmetric trapezoid too, so opposite sides come
// first and the sheet says that they differ.
func TestEqualDiagonalsOfATrapezoid(t *testing.T) {
	r := sizes()
	for range 50 {
		house, front, out := 2*(80+r.IntN(60)), 2*(60+r.IntN(20)), 90+r.IntN(60)
		lean := float64(house-front) / 2
		side := math.Hypot(lean, float64(out))
		diagonal := math.Hypot(float64(house)-lean, float64(out))
		sheet := inline(t, fmt.Sprintf("measured: [{what: rectangle, mark: M, sides: [%d in, %.9f in, %d in, %.9f in], diagonals: [%.9f in, %.9f in]}]\n",
			house, side, front, side, diagonal, diagonal))
		m := table(t, sheet, "Measured on site", "Rectangle M")
		if got := number(m.Rows[0][1]); got != float64(house-front) {
			t.Fatalf("sides differ by %v, want %d", got, house-front)
		}
		for _, row := range m.Rows {
			if strings.Contains(row[0].Text, "slide") {
				t.Fatalf("a trapezoid cannot be slid square: %v", row)
			}
		}
		if len(m.Notes) == 0 || !strings.Contains(m.Notes[0], "Opposite sides differ") {
			t.Fatalf("notes %q", m.Notes)
		}
	}
}

// Fifteen bays of 15.9 in are not fifteen times 15-7/8: the last mark of a 20 ft
// ledger belongs at 238-1/2 in, and stepping off a rounded bay misses it by 3/8.
func TestMarksAreNotRoundedSpacingsAddedUp(t *testing.T) {
	sheet := inline(t, deckOf("20 ft", "12 ft", joists("layout: equal, max_spacing: 16 in")))
	marks := column(t, table(t, sheet, "Joist marks", "Ledger and front"), 1)
	if last := marks[len(marks)-1]; last != 238.5 {
		t.Errorf("the last mark is at %v, want 238.5", last)
	}
	r := sizes()
	for range 60 {
		length, limit := 16*60+r.IntN(16*300), 16*10+r.IntN(16*10)
		sheet := inline(t, deckOf(sixteenths(length), "12 ft", joists("layout: equal, max_spacing: "+sixteenths(limit))))
		marks := table(t, sheet, "Joist marks", "Ledger and front")
		whole := float64(length)/16 - 1.5
		bays := math.Ceil(whole / (float64(limit) / 16))
		for i, mark := range column(t, marks, 1) {
			if want := float64(i) * whole / bays; math.Abs(mark-want) > 1e-7 {
				t.Fatalf("%d/16 at %d/16: mark %d is %v, want %v", length, limit, i, mark, want)
			}
		}
		// Each printed mark lies within half a sixteenth of its exact place.
		for i, row := range marks.Grid(measure.Imperial).Rows {
			shown, _, err := measure.ParseLength(row[1].Text)
			if err != nil {
				t.Fatal(err)
			}
			if off := float64(shown)/float64(measure.Inch) - float64(i)*whole/bays; math.Abs(off) > 1.0/32+1e-7 {
				t.Fatalf("mark %d is printed as %s, %v off", i, row[1].Text, off)
			}
		}
	}
}

// A first spacing pulled to the center of the second joist makes the first bay
// half a thickness short, 15-1/4 in; pulled to its edge all are 16 in.
func TestFirstMarkAsEdgeOrAsCenter(t *testing.T) {
	for mark, want := range map[string]float64{"edge": 16, "center": 15.25} {
		sheet := inline(t, deckOf("16 ft", "12 ft", joists("layout: on_center, spacing: 16 in, first_mark: "+mark)))
		near(t, sheet, "Joist marks > Layout > first bay, edge to edge", want, 6)
		near(t, sheet, "Joist marks > Ledger and front > 2 > From left end", want, 6)
		near(t, sheet, "Joist marks > Ledger and front > 3 > From left end", want+16, 6)
	}
}

// Ledger and rim are marked from the same end, also where the layout starts at
// the other one: every joist is square to the house.
func TestLedgerAndRimAreMarkedFromTheSameEnd(t *testing.T) {
	for _, start := range []string{"left", "right"} {
		sheet := inline(t, deckOf("15 ft 3 in", "12 ft", joists("layout: on_center, spacing: 16 in, start: "+start)))
		marks := table(t, sheet, "Joist marks", "Ledger and front")
		left, right := column(t, marks, 1), column(t, marks, 2)
		for i := range left {
			if math.Abs(left[i]+right[i]-183) > 1e-7 {
				t.Errorf("joist %d: %v and %v do not find the same line of 183 in", i+1, left[i], right[i])
			}
		}
		short := left[1] - left[0]
		if start == "left" {
			short = left[len(left)-1] - left[len(left)-2]
		}
		if math.Abs(short-(181.5-11*16)) > 1e-7 {
			t.Errorf("from the %s: the short bay is %v, want %v", start, short, 181.5-11*16)
		}
	}
	// On an outline with corners of its own the rims have other lengths, and each
	// joist still lies at one place.
	sheet := inline(t, `
platforms:
  - support: ledger
    measured_to: frame
    outline: {corners: [[0 ft, 0 ft], [16 ft, 0 ft], [16 ft, 8 ft], [6 ft, 8 ft], [6 ft, 12 ft], [0 ft, 12 ft]], edges: [house, right, return, inner, front, left]}
    ledger: {size: 2x10}
    rim_joist: {size: 2x10}
`+joists("layout: equal, max_spacing: 16 in"))
	place := map[string]float64{}
	for _, row := range table(t, sheet, "Joist marks", "Ledger").Rows {
		place[row[0].Text] = number(row[1])
	}
	for title, from := range map[string]float64{"Return": 72, "Front": 0} {
		for _, row := range table(t, sheet, "Joist marks", title).Rows {
			if math.Abs(number(row[1])+from-place[row[0].Text]) > 1e-7 {
				t.Errorf("joist %s stands elsewhere on the %s", row[0].Text, title)
			}
		}
	}
}

// From the depth of the deck come off the ledger, every ply of the rim, and the
// fascia where the drawing is measured to it.
func TestRimLedgerAndFasciaComeOffTheJoist(t *testing.T) {
	for _, c := range []struct {
		to, rim string
		want    float64
	}{
		{"frame", "{size: 2x10}", 144 - 3},
		{"frame", "{size: 2x10, plies: 2}", 144 - 4.5},
		{"fascia", "{size: 2x10}", 144 - 3 - 0.75},
		{"fascia", "{size: 2x10, plies: 2}", 144 - 4.5 - 0.75},
		{"decking", "{size: 2x10}", 144 - 3 - 0.75 - 1.5},
	} {
		sheet := inline(t, fmt.Sprintf(`
platforms:
  - support: ledger
    measured_to: %s
    fascia: {thickness: 3/4 in}
    outline: {along_house: 16 ft, out_from_house: 12 ft}
    ledger: {size: 2x10}
    rim_joist: %s
    decking: {overhang: 1-1/2 in}
    beams: [{mark: B1, size: 2x10, plies: 2, kind: dropped, from_house: 10 ft}]
`, c.to, c.rim)+joists("layout: equal, max_spacing: 16 in"))
		near(t, sheet, "Cut lengths > Joists, 2x10 > 1-13 | ledger to rim > Length", c.want, 6)
	}
}

// The frame lies inside an outline drawn to the fascia or the decking, and the
// sheet sets out the frame. Where it cannot be told the sheet says so and gives
// no marks.
func TestOutlineToDeckingOrToFrame(t *testing.T) {
	design := func(to string) string {
		return fmt.Sprintf(`
platforms:
  - support: ledger
    measured_to: %s
    fascia: {thickness: 1 in}
    outline: {along_house: 16 ft, out_from_house: 12 ft}
    ledger: {size: 2x10}
`, to) + joists("layout: equal, max_spacing: 16 in")
	}
	for to, in := range map[string]float64{"frame": 0, "fascia": 1, "decking": 1.5} {
		overhang := "    decking: {overhang: 1/2 in}\n"
		sheet := inline(t, design(to)+overhang)
		along, out := 192-2*in, 144-in // nothing comes off at the house
		near(t, sheet, "Square > Diagonals > both diagonals", math.Hypot(along, out), 6)
		near(t, sheet, "Joist marks > Ledger and front > 13 > From left end", along-1.5, 6)
	}
	sheet := inline(t, design("decking"))
	for name := range numbers(t, sheet) {
		if strings.HasPrefix(name, "Joist marks") {
			t.Errorf("%s is there although the frame is not", name)
		}
	}
	if len(sheet.NotShown) == 0 || sheet.NotShown[0].Needs != "platforms[].decking.overhang" {
		t.Errorf("not shown: %v", sheet.NotShown)
	}
}

// Balusters stepped off at the drawn opening leave whatever is left at the far
// post; divided evenly no gap is wider than drawn, and gaps and balusters fill
// the bay.
func TestLastBalusterGap(t *testing.T) {
	r := sizes()
	for range 60 {
		bay, width, opening := 16*24+r.IntN(16*72), 8+r.IntN(24), 40+r.IntN(26)
		sheet := inline(t, fmt.Sprintf("guards: [{mark: G, bays: [%s], infill: {kind: balusters, baluster_width: %s, opening: %s}}]\n",
			sixteenths(bay), sixteenths(width), sixteenths(opening)))
		var gap, n, last float64
		for name, value := range numbers(t, sheet) {
			switch {
			case strings.HasSuffix(name, "gap, every one"):
				gap = value
			case strings.HasSuffix(name, "> balusters"):
				n = value
			case strings.Contains(name, "stepped off"):
				last = value
			}
		}
		if gap > float64(opening)/16+1e-9 {
			t.Fatalf("gap %v over %d/16", gap, opening)
		}
		// One baluster fewer would leave wider gaps.
		if fewer := (float64(bay)/16 - (n-1)*float64(width)/16) / n; fewer <= float64(opening)/16 {
			t.Fatalf("%v balusters where one less gives gaps of %v", n, fewer)
		}
		if off := (n+1)*gap + n*float64(width)/16 - float64(bay)/16; math.Abs(off) > 1e-6 {
			t.Fatalf("gaps and balusters miss the bay by %v", off)
		}
		if want := math.Mod(float64(bay), float64(width+opening)) / 16; math.Abs(last-want) > 1e-9 {
			t.Fatalf("%v left last, want %v", last, want)
		}
	}
}

// A corner of unequal boards is not cut at half its angle: 5-1/2 against 3-1/2
// in at a square corner take 32.47 and 57.53 degrees. On any outline both boards
// meet along the line from inner to outer corner, so their ends are equally long.
func TestMiterOfUnequalWidths(t *testing.T) {
	border := `
    decking: {board_width: 3-1/2 in, gap: 1/8 in, board_angle: 0, picture_frame: {boards: 1, miters: true, front_board_width: 5-1/2 in}}
`
	sheet := inline(t, `
platforms:
  - measured_to: frame
    outline: {along_house: 16 ft, out_from_house: 12 ft}
`+border)
	near(t, sheet, "Corner cuts > right / front | outside > Saw, first board", 57.53, 2)
	near(t, sheet, "Corner cuts > right / front | outside > Saw, second board", 32.47, 2)
	near(t, sheet, "Corner cuts > front / left | outside > Saw, first board", 32.47, 2)
	near(t, sheet, "Corner cuts > house / right | outside > Saw, first board", 45, 4)

	sheet = inline(t, `
platforms:
  - measured_to: frame
    outline: {corners: [[0 ft, 0 ft], [16 ft, 0 ft], [14 ft, 9 ft], [8 ft, 7 ft], [0 ft, 12 ft]], edges: [house, right, front, notch, left]}
`+border)
	for _, row := range table(t, sheet, "Corner cuts", "").Rows {
		inside, a, b := number(row[2]), number(row[3]), number(row[4])
		widths := map[string][2]float64{"right / front": {3.5, 5.5}, "front / notch": {5.5, 3.5}}
		w, ok := widths[row[0].Text]
		if !ok {
			w = [2]float64{3.5, 3.5}
		}
		joint := func(width, saw float64) float64 { return width / math.Cos(saw*math.Pi/180) }
		if math.Abs(joint(w[0], a)-joint(w[1], b)) > 1e-5 {
			t.Errorf("%s: joints of %v and %v", row[0].Text, joint(w[0], a), joint(w[1], b))
		}
		if turn := math.Abs(180 - inside); math.Abs(a+b-turn) > 1e-5 {
			t.Errorf("%s: saws %v and %v for a turn of %v", row[0].Text, a, b, turn)
		}
		if kind := row[1].Text; (kind == "inside") != (inside > 180) {
			t.Errorf("%s is called an %s corner at %v", row[0].Text, kind, inside)
		}
	}
}

// 150 in of 5-1/2 in boards at 3/16 end in a row of 2-1/8, under half a board;
// each way out that the sheet offers does fill the depth.
func TestLastRowUnderHalfABoard(t *testing.T) {
	sheet := inline(t, decked("150 in", "5-1/2 in", "3/16 in"))
	near(t, sheet, "Boards > rows", 27, 0)
	near(t, sheet, "Boards > last row", 2.125, 6)
	ways := table(t, sheet, "Boards", "Last row under half a board: three ways out")
	got := map[string]float64{}
	for _, row := range ways.Rows {
		got[row[0].Text] = number(row[1])
	}
	const board, gap, depth = 5.5, 0.1875, 150.0
	for name, filled := range map[string]float64{
		"gap: 26 full rows at":                    26*board + 25*got["gap: 26 full rows at"],
		"gap: or 27 full rows at":                 27*board + 26*got["gap: or 27 full rows at"],
		"trim: first and last row both to":        2*got["trim: first and last row both to"] + 25*board + 26*gap,
		"frame: 26 full rows, decking shorter by": 26*board + 25*gap + got["frame: 26 full rows, decking shorter by"],
		"frame: 27 full rows, decking deeper by":  27*board + 26*gap - got["frame: 27 full rows, decking deeper by"],
	} {
		if _, ok := got[name]; !ok || math.Abs(filled-depth) > 1e-6 {
			t.Errorf("%s: the rows fill %v of %v", name, filled, depth)
		}
	}
	if len(ways.Rows) != 5 {
		t.Errorf("%d rows of ways out", len(ways.Rows))
	}
	r := sizes()
	for range 60 {
		n := 16*60 + r.IntN(16*120)
		sheet := inline(t, decked(sixteenths(n), "5-1/2 in", "1/8 in"))
		last := numbers(t, sheet)["Boards > last row"]
		offered := false
		for _, tab := range sheet.Sections {
			for _, of := range tab.Tables {
				offered = offered || strings.HasPrefix(of.Title, "Last row under half")
			}
		}
		if offered != (last < 2.75) {
			t.Fatalf("a last row of %v: ways out offered is %v", last, offered)
		}
	}
}

// decked is a platform drawn to its decking, so that the depth is the one typed.
func decked(depth, board, gap string) string {
	return fmt.Sprintf(`
platforms:
  - support: ledger
    measured_to: decking
    outline: {along_house: 12 ft, out_from_house: %s}
    ledger: {size: 2x10}
    decking: {board_width: %s, gap: %s, board_angle: 0, overhang: 0 in}
`, depth, board, gap) + joists("layout: equal, max_spacing: 16 in")
}

// Boards end on joist centers: every length that the sheet offers is one, and
// joints that are drawn are held against the nearest.
func TestBoardsEndOnJoistCenters(t *testing.T) {
	sheet := inline(t, deckOf("30 ft", "12 ft", joists("layout: equal, max_spacing: 16 in")+
		"    decking: {board_width: 5-1/2 in, gap: 1/8 in, board_angle: 0, overhang: 1 in}\n"))
	bay := 358.5 / 23 // 360 - 1.5 over ceil(22.4) bays
	offered := table(t, sheet, "Boards", "Board ends on joist centers")
	if len(offered.Rows) != 9 { // even feet from 8 to 24
		t.Errorf("%d lengths offered", len(offered.Rows))
	}
	for _, row := range offered.Rows {
		k := (number(row[1]) - 1 - 0.75) / bay
		if math.Abs(k-math.Round(k)) > 1e-7 {
			t.Errorf("%s ends %v bays from the first center", row[0].Text, k)
		}
		if math.Abs(number(row[1])+number(row[2])-362) > 1e-7 {
			t.Errorf("%s: cut and rest do not make 362 in", row[0].Text)
		}
	}
	sheet = inline(t, deckOf("30 ft", "12 ft", joists("layout: on_center, spacing: 16 in")+
		"    decking: {board_width: 5-1/2 in, gap: 1/8 in, board_angle: 0, overhang: 1 in, butt_joints: {positions: [16 ft 3/4 in, 10 ft]}}\n"))
	near(t, sheet, "Boards > Board ends as drawn > 1, joist 13 > Off the joist center", 0, 6)
	// The nearest center to 120 in is that of joist 8, at 112.75.
	near(t, sheet, "Boards > Board ends as drawn > 2, joist 8 > Off the joist center", 7.25, 6)
}
