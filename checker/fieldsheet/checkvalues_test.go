package fieldsheet_test

import (
	"fmt"
	"math"
	"strings"
	"testing"
)

// deckOf is a platform on a ledger with joists of 2x10 at 16 in, for cases that
// are about something else.
func deckOf(along, out, more string) string {
	return fmt.Sprintf(`
platforms:
  - mark: A
    support: ledger
    measured_to: frame
    outline: {along_house: %s, out_from_house: %s}
    ledger: {size: 2x10}
    rim_joist: {size: 2x10}
%s`, along, out, more)
}

func joists(layout string) string {
	return "    joists: {size: 2x10, direction: out_from_house, " + layout + "}\n"
}

// The values below are worked examples of the trade, computed anew by hand.

func TestDiagonalsOfRectangles(t *testing.T) {
	for _, c := range []struct {
		along, out string
		want       float64
		text       string
	}{
		{"16 ft", "12 ft", 240, `20'-0"`},
		{"22 ft", "14 ft", 312.9217, `26'-0 15/16"`},
		{"17 ft 3 in", "11 ft 6 in", 248.7830, `20'-8 13/16"`},
		{"28 ft", "20 ft", 412.9116, `34'-4 15/16"`},
	} {
		sheet := inline(t, deckOf(c.along, c.out, ""))
		near(t, sheet, "Square > Diagonals > both diagonals", c.want, 4)
		grid := table(t, sheet, "Square", "Diagonals").Grid(sheet.System)
		if got := grid.Rows[0][1].Text; got != c.text {
			t.Errorf("%s x %s: diagonal %s, want %s", c.along, c.out, got, c.text)
		}
	}
}

// 20 x 14 ft: diagonals that differ by 3/4 in ask for 0.458 in, 7/16 on the tape.
func TestSlidingMove(t *testing.T) {
	sheet := inline(t, deckOf("20 ft", "14 ft", ""))
	near(t, sheet, `Square > Sliding move, opposite sides equal > 3/4" > Slide front by`, 0.458, 3)
	slides := table(t, sheet, "Square", "Sliding move, opposite sides equal")
	grid := slides.Grid(sheet.System)
	if got := grid.Rows[3][1].Text; got != `7/16"` {
		t.Errorf("the move for 3/4 in is %s, want 7/16 in", got)
	}
}

func TestCornerAngles(t *testing.T) {
	sheet := inline(t, `
measured:
  - {what: triangle, mark: one, legs: [6 ft, 8 ft], diagonal: 10 ft 1/2 in}
  - {what: triangle, mark: two, legs: [9 ft, 12 ft], diagonal: 14 ft 11-3/4 in}
  - {what: triangle, mark: none, legs: [3 ft, 4 ft], diagonal: 8 ft}
`)
	near(t, sheet, "Measured on site > Triangle one > corner", 90.4984, 4)
	near(t, sheet, "Measured on site > Triangle two > corner", 89.8343, 4)
	if row := table(t, sheet, "Measured on site", "Triangle none").Rows[0]; row[0].Text != "these three make no triangle" {
		t.Errorf("three lengths that close nothing give %v", row)
	}
}

func TestWalkedOutlineSaysByHowMuchItMisses(t *testing.T) {
	sheet := inline(t, `
platforms:
  - measured_to: frame
    outline:
      walk:
        - {edge: house, go: 16 ft, turn: 90}
        - {edge: right, go: 10 ft, turn: 45}
        - {edge: clip, go: 2 ft 10 in, turn: 45}
        - {edge: front, go: 14 ft, turn: 90}
        - {edge: left, go: 12 ft, turn: 90}
`)
	notes := table(t, sheet, "Square", "Sides").Notes
	// 34 in at 45 degrees lead 24.0416 each way: 0.0416 off along and out, 0.0589 together.
	if len(notes) != 1 || notes[0] != `The outline as walked misses its start by 0.0589": the last side here takes that up.` {
		t.Errorf("notes %q", notes)
	}
}

func TestEqualBays(t *testing.T) {
	for _, c := range []struct {
		along, spacing string
		bays           int
		bay            float64
		marks          map[int]string // joist and its mark on the tape
	}{
		{"11 ft 7-1/4 in", "16 in", 9, 15.3056, map[int]string{1: `0"`, 2: `1'-3 5/16"`, 3: `2'-6 5/8"`, 4: `3'-9 15/16"`, 5: `5'-1 1/4"`,
			6: `6'-4 1/2"`, 7: `7'-7 13/16"`, 8: `8'-11 1/8"`, 9: `10'-2 7/16"`, 10: `11'-5 3/4"`}},
		{"18 ft", "16 in", 14, 15.3214, map[int]string{5: `5'-1 5/16"`, 15: `17'-10 1/2"`}},
		{"20 ft", "16 in", 15, 15.9, map[int]string{16: `19'-10 1/2"`}},
		{"13 ft 10-1/2 in", "12 in", 14, 11.7857, nil},
	} {
		beam := "    beams: [{mark: B1, size: 2x10, plies: 2, kind: dropped, from_house: 10 ft}]\n"
		sheet := inline(t, deckOf(c.along, "12 ft", joists("layout: equal, max_spacing: "+c.spacing)+beam))
		near(t, sheet, "Joist marks > Layout > equal bays", float64(c.bays), 0)
		near(t, sheet, "Joist marks > Layout > bay, edge to edge", c.bay, 4)
		grid := table(t, sheet, "Joist marks", "Ledger and front").Grid(sheet.System)
		for joist, want := range c.marks {
			if got := grid.Rows[joist-1][1].Text; got != want {
				t.Errorf("%s: joist %d is marked at %s, want %s", c.along, joist, got, want)
			}
		}
	}
}

// A footing of 15 x 42 in takes 4.295 cu ft.
func TestConcreteOfAFooting(t *testing.T) {
	sheet := inline(t, deckOf("12 ft", "12 ft", joists("layout: equal, max_spacing: 16 in")+`
    beams: [{mark: B1, size: 2x10, plies: 2, kind: dropped, from_house: 10 ft, posts_at: [1 ft, 11 ft]}]
    footings: {shape: round, diameter: 15 in, thickness: 42 in}
`))
	near(t, sheet, `Concrete for footings > round 15", 42" thick > Each`, 4.295*1728, -1)
	grid := table(t, sheet, "Concrete for footings", "").Grid(sheet.System)
	if got := grid.Rows[0][2].Text + " and " + grid.Rows[0][5].Text; got != "4.295 and 8.590" {
		t.Errorf("one and both are %s cu ft", got)
	}
}

func TestStairs(t *testing.T) {
	const tread = ", tread: {material: wood, thickness: 1 in}, stringers: {kind: cut, size: 2x12, count: 3}}\n"
	sheet := inline(t, "stairs:\n"+
		"  - {mark: a, total_rise: 52 in, risers: 7, tread_depth: 10-1/4 in"+tread+
		"  - {mark: b, total_rise: 33-1/2 in, risers: 5, tread_depth: 10 in"+tread+
		"  - {mark: c, total_rise: 71-1/4 in, risers: 10, tread_depth: 11 in"+tread+
		"  - {mark: d, total_rise: 1143 mm, risers: 7, tread_depth: 250 mm"+tread)
	for name, want := range map[string]struct {
		value  float64
		places int
	}{
		"Stair a > Rise and run > unit rise":                        {7.4286, 4},
		"Stair a > Rise and run > total run":                        {61.5, 4},
		"Stair a > Rise and run > pitch":                            {35.932, 3},
		"Stair a > Stringer, 2x12 > stringer line, over the treads": {75.953, 3},
		"Stair a > Stringer, 2x12 > throat, square to the edge":     {5.235, 3},
		"Stair b > Rise and run > unit rise":                        {6.7, 4},
		"Stair c > Rise and run > unit rise":                        {7.125, 4},
		"Stair c > Rise and run > pitch":                            {32.93, 2},
		"Stair d > Rise and run > unit rise":                        {163.286 / 25.4, 4},
	} {
		near(t, sheet, name, want.value, want.places)
	}
}

// On ground that falls the rise is where the stair lands, not at the edge.
func TestStairsOnFallingGround(t *testing.T) {
	for _, c := range []struct {
		drop, slope, run string
		risers           int
		total, rise      float64
	}{
		{"40 in", "1 in 16", "10-1/2 in", 6, 43.28, 7.2135}, // 3/4 in per foot
		{"36 in", "1 in 12", "10 in", 6, 40.17, 6.694},      // not 7.2 with five
	} {
		sheet := inline(t, fmt.Sprintf(`
site: {grade_fall: {direction: out, slope: %s}}
platforms:
  - {mark: A, measured_to: frame, outline: {along_house: 12 ft, out_from_house: 10 ft}, edges: {front: {drop: %s}}}
stairs:
  - {mark: S, from: {platform: A, edge: front, at: 2 ft}, to: grade, risers: %d, tread_depth: %s}
`, c.slope, c.drop, c.risers, c.run))
		near(t, sheet, "Stair S > Rise and run > rise, finish to finish", c.total, 2)
		near(t, sheet, "Stair S > Rise and run > unit rise", c.rise, 3)
	}
}

func TestBalusters(t *testing.T) {
	for _, c := range []struct {
		bay, width, opening string
		count               int
		gap                 float64
	}{
		{"68-1/2 in", "1-1/4 in", "3-7/8 in", 13, 3.7321},
		{"90-1/4 in", "3/4 in", "3-3/4 in", 20, 3.5833},
		{"55 in", "1-1/2 in", "4 in", 10, 3.6364},
	} {
		sheet := inline(t, fmt.Sprintf("guards: [{mark: G, bays: [%s, %s], infill: {kind: balusters, baluster_width: %s, opening: %s}}]\n",
			c.bay, c.bay, c.width, c.opening))
		for name, n := range numbers(t, sheet) {
			if strings.HasSuffix(name, "gap, every one") && math.Abs(n-c.gap) > 0.00005 {
				t.Errorf("a bay of %s has gaps of %.4f, want %.4f", c.bay, n, c.gap)
			}
			if strings.HasSuffix(name, "> balusters") && n != float64(c.count) {
				t.Errorf("a bay of %s has %.0f balusters, want %d", c.bay, n, c.count)
			}
		}
		near(t, sheet, "Counts > balusters > Number", float64(2*c.count), 0)
	}
}

// Boards at 45 degrees on joists at 16 in span 22.63 in.
func TestBoardsOnTheDiagonal(t *testing.T) {
	sheet := inline(t, deckOf("12 ft", "12 ft", joists("layout: on_center, spacing: 16 in")+"    decking: {board_width: 5-1/2 in, gap: 3/16 in, board_angle: 45}\n"))
	near(t, sheet, "Boards > joist to joist along the board", 22.63, 2)
}

func TestMitersOfEqualWidths(t *testing.T) {
	sheet := inline(t, `
platforms:
  - measured_to: frame
    outline: {corners: [[0 ft, 0 ft], [16 ft, 0 ft], [16 ft, 10 ft], [14 ft, 12 ft], [0 ft, 12 ft]], edges: [house, right, clip, front, left]}
`)
	near(t, sheet, "Corner cuts > right / clip | outside > Saw, first board", 22.5, 4)
	near(t, sheet, "Corner cuts > front / left | outside > Saw, first board", 45, 4)
}
