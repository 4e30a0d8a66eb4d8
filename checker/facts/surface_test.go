package facts_test

import (
	"fmt"
	"math"
	"testing"

	"plumbrule/checker/measure"
)

func TestOutlineSpellings(t *testing.T) {
	spellings := []string{
		"{along_house: 16 ft, out_from_house: 12 ft}",
		"{corners: [[0 ft, 0 ft], [16 ft, 0 ft], [16 ft, 12 ft], [0 ft, 12 ft]], edges: [house, right, front, left]}",
		"{walk: [{edge: house, go: 16 ft, turn: 90}, {edge: right, go: 12 ft, turn: 90}, {edge: front, go: 16 ft, turn: 90}, {edge: left, go: 12 ft, turn: 90}]}",
	}
	for i, outline := range spellings {
		f := derive(t, "platforms:\n  - {outline: "+outline+"}\n")
		p := f.Platforms[0]
		if p.Area.Value != 17837384 { // 192 sq ft are 17.8373836 m2
			t.Errorf("%d: area %d mm2", i, p.Area.Value)
		}
		want(t, "perimeter", p.Perimeter, "56 ft")
		for k, name := range []string{"house", "right", "front", "left"} {
			if f.Edges[k].Name != name || f.Edges[k].House != (name == "house") {
				t.Errorf("%d: edge %d is %q", i, k, f.Edges[k].Name)
			}
			if f.Corners[k].Interior.Value != 90e6 || f.Corners[k].Miter.Value != 45e6 {
				t.Errorf("%d: corner %s is %d, its miter %d", i, f.Corners[k].Between, f.Corners[k].Interior.Value, f.Corners[k].Miter.Value)
			}
		}
		if closed := i == 2; closed {
			want(t, "closure", p.Closure, "0 in")
		} else {
			want(t, "closure", p.Closure, "")
		}
	}
}

// A clip of 2'-10" at 45 degrees is really 24 in times the root of two.
func TestClosureOfAWalk(t *testing.T) {
	f := derive(t, `
platforms:
  - outline: {walk: [{edge: house, go: 16 ft, turn: 90}, {go: 10 ft, turn: 45}, {edge: clip, go: 2' 10", turn: 45}, {go: 14 ft, turn: 90}, {go: 12 ft, turn: 90}]}
`)
	near(t, "closure", f.Platforms[0].Closure, fmt.Sprintf("%.5f in", 34-24*math.Sqrt2))
	if f.Edges[1].Name != "edge 2" {
		t.Errorf("an unnamed edge is called %q", f.Edges[1].Name)
	}
	// 135 degrees at either end of the clip, 22-1/2 on the saw; the house's
	// right corner is square.
	if m := f.Corners[2].Miter.Value; m != 22_500_000 {
		t.Errorf("miter %d, want 22.5 degrees", m)
	}
}

func TestOctagonBay(t *testing.T) {
	// A bay of three sides of an octagon before a 10 ft wide deck: clips of 3 ft by 3 ft.
	f := derive(t, frame("{corners: [[0 ft, 0 ft], [10 ft, 0 ft], [10 ft, 8 ft], [7 ft, 11 ft], [3 ft, 11 ft], [0 ft, 8 ft]], edges: [house, right, clip right, front, clip left, left]}",
		"layout: equal, max_spacing: 16 in", dropped("B1", "from_house: 7 ft 6 in")))
	for _, s := range f.JoistSpans {
		if s.From == "ledger" && s.To == "B1" {
			want(t, "every joist spans alike", s.ClearSpan, "87 in")
		}
	}
	want(t, "the middle of the bay reaches furthest", f.JoistCantilevers[0].Cantilever, "42 in")
	lengths := map[measure.Length]int64{}
	for _, r := range f.JoistRuns {
		lengths[r.Length.Value] += r.Count
	}
	// Nine joists at 14.8125 in, mirrored about the middle one: three before the
	// straight front, then pairs, the outside pair 96-3/4 in deep at its center.
	if lengths[length(t, "10 ft 9 in")] != 3 || lengths[length(t, "93-3/4 in")] != 2 || len(lengths) != 4 {
		t.Errorf("cut lengths %v", lengths)
	}
}

func TestFrameBehindTheOutline(t *testing.T) {
	const deck = `
platforms:
  - support: ledger
    measured_to: %s
    %s
    outline: {along_house: 16 ft, out_from_house: 12 ft}
    ledger: {size: 2x10}
    joists: {size: 2x10, direction: out_from_house, layout: on_center, spacing: 16 in}
    beams: [{mark: B1, size: 2x10, plies: 2, from_house: 10 ft}]
    decking: {%s}
`
	cases := []struct{ to, fascia, decking, cantilever, missing string }{
		{"frame", "", "thickness: 1 in", "24 in", ""},
		{"fascia", "fascia: {thickness: 3/4 in}", "thickness: 1 in", "23-1/4 in", ""},
		{"fascia", "", "thickness: 1 in", "", "platforms[].fascia.thickness"},
		{"decking", "", "overhang: 1 in", "23 in", ""},
		{"decking", "fascia: {thickness: 3/4 in}", "overhang: 1 in", "22-1/4 in", ""},
		{"decking", "", "thickness: 1 in", "", "platforms[].decking.overhang"},
	}
	for _, c := range cases {
		t.Run(c.to+" "+c.fascia+" "+c.decking, func(t *testing.T) {
			f := derive(t, fmt.Sprintf(deck, c.to, c.fascia, c.decking))
			got := f.JoistCantilevers[0]
			want(t, "cantilever", got.Cantilever, c.cantilever)
			if missing := fmt.Sprint(got.Missing); c.missing != "" && missing != "["+c.missing+"]" {
				t.Errorf("waits for %s, want %s", missing, c.missing)
			}
			want(t, "span between supports stands either way", f.JoistSpans[0].ClearSpan, "9 ft 9 in")
		})
	}
}

// Joists along the house on beams that run out from it: the same plan turned.
func TestJoistsAlongTheHouse(t *testing.T) {
	f := derive(t, `
platforms:
  - mark: A
    support: freestanding
    measured_to: frame
    outline: {along_house: 12 ft, out_from_house: 16 ft}
    joists: {size: 2x10, direction: along_house, layout: on_center, spacing: 16 in}
    beams:
      - {mark: B1, size: 2x10, plies: 2, line: [[2 ft, 0 ft], [2 ft, 16 ft]]}
      - {mark: B2, size: 2x10, plies: 2, line: [[11 ft, 0 ft], [11 ft, 16 ft]]}
`)
	got := spans(f)
	wanted := "13 B1 to B2: clear 8'-9\", center 9'-0\" \n" +
		"13 past B1: 24\" behind it 9'-0\" \n" +
		"13 past B2: 12\" behind it 9'-0\" \n" +
		"13 cut ?\n" // no rim is described
	if got != wanted {
		t.Errorf("got\n%s\nwant\n%s", got, wanted)
	}
	if f.Joists[0].Count.Value != 13 {
		t.Errorf("%d joists", f.Joists[0].Count.Value)
	}
}

// 16 in on center under boards at 45 degrees: 22.63 in along the board. Rows:
// 150 in in boards of 5-1/2 with 3/16 between take 27, the last 2-1/8.
func TestDecking(t *testing.T) {
	const deck = `
platforms:
  - measured_to: decking
    outline: {along_house: 16 ft, out_from_house: 150 in}
    joists: {size: 2x10, direction: out_from_house, layout: on_center, spacing: 16 in}
    decking: {board_width: 5-1/2 in, gap: 3/16 in, board_angle: %d}
`
	diagonal, square := derive(t, fmt.Sprintf(deck, 45)).Decking[0], derive(t, fmt.Sprintf(deck, 0)).Decking[0]
	near(t, "span along the board", diagonal.SpanAlongBoard, "22.62742 in")
	want(t, "rows on the diagonal", diagonal.LastRip, "")
	want(t, "last row", square.LastRip, "2-1/8 in")
	if square.Rows.Value != 27 {
		t.Errorf("%d rows, want 27", square.Rows.Value)
	}
}

// Balusters 1-1/4 in wide in a clear bay of 68-1/2 in, at most 3-7/8 apart: 13
// at 3.7321 in. Set out at 3-7/8 from one post, 13 of them leave 1-7/8 in.
func TestBalusters(t *testing.T) {
	g := derive(t, `
guards:
  - {mark: G, infill: {kind: balusters, opening: 3-7/8 in, baluster_width: 1-1/4 in}, posts: {size: 4x4, max_spacing: 72 in}}
`).Guards[0]
	want(t, "bay", g.BayClear, "68-1/2 in")
	near(t, "even gap", g.EvenGap, "3.73214 in")
	want(t, "last gap", g.LastGap, "1-7/8 in")
	if g.EvenCount.Value != 13 {
		t.Errorf("%d balusters, want 13", g.EvenCount.Value)
	}
}

func TestGuardStandsOnItsEdges(t *testing.T) {
	f := derive(t, `
platforms:
  - outline: {along_house: 16 ft, out_from_house: 12 ft}
    edges:
      front: {drop: 28 in, drop_within_36_in: 34 in, guard: G}
      left: {drop: 30 in, guard: G, bench: {seat_height: 17 in}}
      right: {drop: 60 in, guard: none}
guards: [{mark: G, height: 42 in}]
`)
	want(t, "greatest drop", f.Guards[0].Drops[0].Drop, "30 in")
	want(t, "greatest drop within 36 in", f.Guards[0].Drops[1].Drop, "34 in")
	want(t, "above the seat", f.Guards[0].HeightAboveSeat, "25 in")
	if f.Edges[1].Guarded || !f.Edges[3].Guarded {
		t.Error("the word none is no guard")
	}
	if d := f.Guards[0].Drops; d[0].Partial || !d[1].Partial || !d[2].Partial || d[2].Drop != nil {
		t.Error("both edges show the drop, the left one none within 36 in, and neither any within 1200 mm")
	}
}

func TestDoorsAndWindows(t *testing.T) {
	f := derive(t, `
house:
  openings:
    - {kind: door, along: 2 ft, clear_width: 36 in, threshold_above_decking: 1 in}
    - {kind: door, along: 20 ft, clear_width: 36 in}
    - {kind: window, along: 12 ft, egress: true, clear_path_height: 38 in}
platforms:
  - {mark: A, outline: {corners: [[0 ft, 0 ft], [14 ft, 0 ft], [14 ft, 8 ft], [7 ft, 8 ft], [7 ft, 3 ft], [0 ft, 3 ft]], edges: [house, right, front, inner, notch, left]}}
`)
	want(t, "landing before the door", f.Doors[0].LandingDepth, "36 in")
	want(t, "its width", f.Doors[0].LandingWidth, "36 in")
	want(t, "step down", f.Doors[0].StepDown, "1 in")
	want(t, "no platform before the other", f.Doors[1].LandingDepth, "")
	if f.Windows[0].Platform != "A" || f.Doors[1].Platform != "" {
		t.Errorf("platforms %q and %q", f.Windows[0].Platform, f.Doors[1].Platform)
	}
}

// A triangle of 6 ft, 8 ft and 10'-0 1/2" has a corner of 90.4984 degrees. A
// rectangle of 20 by 14 ft whose diagonals differ by 3/4 in is squared by
// sliding the 20 ft side 0.458 in. Equal diagonals do not prove a rectangle.
func TestSquaring(t *testing.T) {
	f := derive(t, `
measured:
  - {what: triangle, legs: [6 ft, 8 ft], diagonal: 10' 0-1/2"}
  - {what: triangle, legs: [3 ft, 4 ft], diagonal: 8 ft}
  - {what: rectangle, sides: [20 ft, 14 ft, 20 ft, 14 ft], diagonals: [293-1/4 in, 292-1/2 in]}
  - {what: rectangle, sides: [20 ft, 14 ft, 19 ft 10 in, 14 ft], diagonals: [24 ft 4 in, 24 ft 4 in]}
  - {what: level, points: [{at: [0 ft, 0 ft], height: 0 in}, {at: [20 ft, 0 ft], height: -3/4 in}, {at: [4 ft, 0 ft], height: 1/4 in}]}
`)
	if got := f.Triangles[0].Corner.Value; got < 90_498_300 || got > 90_498_500 {
		t.Errorf("corner %d, want 90.4984 degrees", got)
	}
	want(t, "deviation", f.Triangles[0].Deviation, "1/2 in")
	if f.Triangles[1].Possible {
		t.Error("3, 4 and 8 ft make no triangle")
	}
	if slide := float64(f.Rectangles[0].Slide.Value) / float64(measure.Inch); math.Abs(slide-0.458) > 0.001 {
		t.Errorf("slide %.4f in, want 0.458", slide)
	}
	trapezoid := f.Rectangles[1]
	want(t, "diagonals of a trapezoid", trapezoid.DiagonalDifference, "0 in")
	want(t, "its sides", trapezoid.SideDifference, "2 in")
	if trapezoid.SidesAt != "along the house" {
		t.Errorf("sides differ %q", trapezoid.SidesAt)
	}
	// 1/4 in over 4 ft is worse than 1 in over 16 ft or 3/4 in over 20: equal to 1/16 per ft all three; the first pair stands.
	want(t, "level difference", f.Levels[0].Difference, "1/4 in")
	want(t, "over", f.Levels[0].Distance, "4 ft")
}

func TestJoistMarks(t *testing.T) {
	const deck = `
platforms:
  - measured_to: frame
    outline: {along_house: 20 ft, out_from_house: 12 ft}
    joists: {size: 2x10, direction: out_from_house, layout: equal, max_spacing: 16 in}
measured:
  - {what: joists, along: ledger, positions: [%s]}
`
	// 15 bays of 15.9 in. A builder who adds 15-7/8 ends 3/8 in short of 238-1/2.
	marks := ""
	for i := range 16 {
		if i > 0 {
			marks += ", "
		}
		marks += fmt.Sprintf("%g in", 15.875*float64(i))
	}
	m := derive(t, fmt.Sprintf(deck, marks)).JoistMarks[0]
	want(t, "worst mark", m.Worst, "3/8 in")
	if m.WorstN != 16 || m.Missing != 0 {
		t.Errorf("mark %d, %d missing", m.WorstN, m.Missing)
	}
	got := *derive(t, fmt.Sprintf(deck, "0 in, 15.9 in")).JoistMarks[0].Worst
	want(t, "exact marks", &got, "0 in")
}

// Where the house wall ends halfway along the back of the deck, the fascia
// sets back only the part beyond it, and the frame gets a step between the two.
func TestFrameWhereTheHouseEnds(t *testing.T) {
	f := derive(t, `
platforms:
  - support: ledger
    measured_to: fascia
    fascia: {thickness: 1 in}
    outline: {corners: [[0 ft, 0 ft], [8 ft, 0 ft], [16 ft, 0 ft], [16 ft, 12 ft], [0 ft, 12 ft]], edges: [house, back, right, front, left]}
    ledger: {size: 2x10}
    rim_joist: {size: 2x10}
    joists: {size: 2x10, direction: out_from_house, layout: on_center, spacing: 16 in}
    beams: [{mark: B1, size: 2x10, plies: 2, from_house: 2 ft}, {mark: B2, size: 2x10, plies: 2, from_house: 10 ft}]
`)
	for _, s := range f.JoistSpans {
		if s.From == "ledger" && s.Count != 6 {
			t.Errorf("%d joists hang on the ledger, want those at 0 to 80 in", s.Count)
		}
	}
	for _, c := range f.JoistCantilevers {
		if c.Past == "B1" {
			want(t, "joists beyond the wall pass the first beam", c.Cantilever, "23 in")
		}
	}
}

// One height stated for the whole surface is the drop at an edge of which
// nothing is shown, unless ground shown elsewhere tells otherwise.
func TestDropFromTheHeightOfTheSurface(t *testing.T) {
	const design = `
%s
platforms:
  - {mark: A, outline: {along_house: 16 ft, out_from_house: 12 ft}, %s}
`
	cases := []struct {
		name, site, fields, drop string
		level                    bool
	}{
		{"nothing stated", "", "support: freestanding", "", false},
		{"stated", "", "surface_above_grade: 300 mm", "300 mm", true},
		{"its own drop", "", "surface_above_grade: 12 in, edges: {right: {drop: 10 in}}", "10 in", false},
		{"its own drop close by", "", "surface_above_grade: 12 in, edges: {right: {drop_within_36_in: 10 in}}", "", false},
		{"as high elsewhere", "", "surface_above_grade: 12 in, edges: {front: {drop: 12 in}}", "12 in", true},
		{"higher elsewhere", "", "surface_above_grade: 12 in, edges: {front: {drop: 12-1/64 in}}", "", false},
		{"higher elsewhere in millimeters", "", "surface_above_grade: 300 mm, edges: {front: {drop: 300.01 mm}}", "", false},
		{"higher further out", "", "surface_above_grade: 300 mm, edges: {front: {drop_within_1200_mm: 310 mm}}", "", false},
		{"ground at points", "", "surface_above_grade: 12 in, grade_at: [{at: [0 ft, 0 ft], below_surface: 12 in}]", "", false},
		{"falling ground", "site: {grade_fall: {direction: out, slope: 1 in 12}}", "surface_above_grade: 12 in", "", false},
		{"level ground", "site: {grade_fall: {direction: out, slope: 0 in 12}}", "surface_above_grade: 12 in", "12 in", true},
	}
	for _, c := range cases {
		t.Run(c.name, func(t *testing.T) {
			for _, e := range derive(t, fmt.Sprintf(design, c.site, c.fields)).Edges {
				if e.Name == "house" {
					want(t, "house", e.Drops[0].Drop, "")
				}
				if e.Name != "right" {
					continue
				}
				want(t, "right", e.Drops[0].Drop, c.drop)
				if e.Drops[0].Level != c.level {
					t.Errorf("taken from the whole surface: %t", e.Drops[0].Level)
				}
			}
		})
	}
}
