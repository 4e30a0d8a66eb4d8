package paper_test

import (
	"math"
	"strings"
	"testing"

	"plumbrule/checker/draw/paper"
)

func fonts(t *testing.T) *paper.Fonts {
	t.Helper()
	f, err := paper.OpenFonts()
	if err != nil {
		t.Fatal(err)
	}
	return f
}

func TestWidth(t *testing.T) {
	f := fonts(t)
	if a, b := f.Width("12", 10, false), f.Width("1", 10, false)+f.Width("2", 10, false); math.Abs(a-b) > 1e-9 || a <= 5 {
		t.Errorf("\"12\" is %g wide, its figures %g", a, b)
	}
	if a, b := f.Width("guard", 20, false), f.Width("guard", 10, false); math.Abs(a-2*b) > 1e-9 {
		t.Errorf("at twice the size %g, not twice %g", a, b)
	}
	if f.Width("guard", 10, true) == f.Width("guard", 10, false) {
		t.Error("bold letters are as wide as others")
	}
	if got := f.Width("東", 10, false); got != 10 {
		t.Errorf("a letter that the fonts lack takes %g, want a square of 10", got)
	}
	if f.Has('東') || !f.Has('½') || !f.Has('é') {
		t.Error("the fonts are not those that were measured")
	}
}

func TestWrap(t *testing.T) {
	f := fonts(t)
	const words = "riser height is 8 inches, the limit is a little less than that and a verylongwordwithoutanyspaceinit follows"
	lines := f.Wrap(words, 7, 80, false)
	for _, line := range lines {
		if f.Width(line, 7, false) > 80 {
			t.Errorf("%q is wider than 80", line)
		}
	}
	if got := strings.ReplaceAll(strings.Join(lines, ""), " ", ""); got != strings.ReplaceAll(words, " ", "") {
		t.Errorf("words were lost: %q", got)
	}
	if got := f.Wrap("", 7, 80, false); got != nil {
		t.Errorf("nothing wraps to %q", got)
	}
	if got := f.Wrap("ab", 7, 0.1, false); len(got) != 2 {
		t.Errorf("a room without width gives %q", got)
	}
}

func TestPrintable(t *testing.T) {
	if got := paper.Printable("a\tb\nc\u0085d\u2028e"); got != "a b c d e" {
		t.Errorf("%q", got)
	}
}

func TestBoxesMeet(t *testing.T) {
	a := paper.Upright(paper.Point{}, paper.Point{X: 10, Y: 10})
	cases := []struct {
		name string
		b    paper.Box
		want bool
	}{
		{"across", paper.Upright(paper.Point{X: 5, Y: 5}, paper.Point{X: 15, Y: 15}), true},
		{"inside", paper.Upright(paper.Point{X: 4, Y: 4}, paper.Point{X: 6, Y: 6}), true},
		{"touching", paper.Upright(paper.Point{X: 10, Y: 0}, paper.Point{X: 20, Y: 10}), false},
		{"apart", paper.Upright(paper.Point{X: 11, Y: 0}, paper.Point{X: 20, Y: 10}), false},
		// A square on its corner comes within 1 of the corner at 10, 10 but not to it.
		{"turned, apart", paper.Box{Corners: [4]paper.Point{{X: 16, Y: 6}, {X: 26, Y: 16}, {X: 16, Y: 26}, {X: 6, Y: 16}}}, false},
		{"turned, across", paper.Box{Corners: [4]paper.Point{{X: 14, Y: 4}, {X: 24, Y: 14}, {X: 14, Y: 24}, {X: 4, Y: 14}}}, true},
	}
	for _, c := range cases {
		if a.Meets(c.b) != c.want || c.b.Meets(a) != c.want {
			t.Errorf("%s: %v, want %v", c.name, a.Meets(c.b), c.want)
		}
	}
	if !a.Crosses(paper.Point{X: -5, Y: 5}, paper.Point{X: 15, Y: 6}) || a.Crosses(paper.Point{X: -5, Y: 8}, paper.Point{X: 5, Y: 18}) {
		t.Error("lines through and past the box are not told apart")
	}
	if g := a.Grown(2); g.Corners[0] != (paper.Point{X: -2, Y: -2}) || g.Corners[2] != (paper.Point{X: 12, Y: 12}) {
		t.Errorf("grown to %v", g)
	}
}

// The box of turned words runs up the sheet.
func TestTextBox(t *testing.T) {
	text := paper.Text{At: paper.Point{X: 100, Y: 100}, Words: "x", Size: 10, Width: 40, Turn: 90, Align: paper.Middle}
	box := text.Box()
	e := paper.NoExtent().With(box.Corners[:]...)
	if e.Height() < 40 || e.Height() > 42 || e.Width() > 11 || e.Max.X < 100 || e.Min.X > 93 {
		t.Errorf("the box of words reading upwards is %v", e)
	}
}

// Lines of a hatch: one every 2 across a square of 10, a triangle less and less.
func TestHatch(t *testing.T) {
	square := []paper.Point{{}, {X: 10}, {X: 10, Y: 10}, {Y: 10}}
	h := paper.Hatch{Area: square, Gap: 2, Through: paper.Point{Y: 1}}
	lines := h.Lines()
	if len(lines) != 5 {
		t.Fatalf("%d lines, want those at 1, 3, 5, 7 and 9", len(lines))
	}
	for i, line := range lines {
		if y := float64(2*i + 1); math.Abs(line.Points[0].Y-y) > 1e-9 || math.Abs(line.Points[1].X-line.Points[0].X-10) > 1e-9 {
			t.Errorf("line %d runs from %v to %v", i, line.Points[0], line.Points[1])
		}
	}
	h.Turn = 45 // the longest is the diagonal of the square, rising to the right
	longest := 0.0
	for _, line := range h.Lines() {
		a, b := line.Points[0], line.Points[1]
		longest = max(longest, math.Hypot(b.X-a.X, b.Y-a.Y))
		if math.Abs((b.X-a.X)+(b.Y-a.Y)) > 1e-9 {
			t.Errorf("a line at 45 degrees runs from %v to %v", a, b)
		}
	}
	if longest > 10*math.Sqrt2 || longest < 12 {
		t.Errorf("the longest line is %g", longest)
	}
	for _, bad := range []paper.Hatch{{Area: square}, {Area: square[:2], Gap: 1}, {Area: square, Gap: 1e-6}} {
		if got := bad.Lines(); got != nil {
			t.Errorf("%+v gives %d lines", bad, len(got))
		}
	}
}

func TestArc(t *testing.T) {
	for _, radius := range []float64{0.5, 3, 40} {
		e := paper.Bounds([]paper.Item{paper.Circle(paper.Point{X: 7, Y: 9}, radius, paper.Thin, paper.NoFill)})
		if math.Abs(e.Width()-2*radius) > 0.1 || math.Abs(e.Min.X-(7-radius)) > 0.1 {
			t.Errorf("a circle of radius %g reaches from %v to %v", radius, e.Min, e.Max)
		}
	}
	// A quarter from the right against the clock ends above the center.
	quarter := paper.Arc{Radius: 10, To: 90, Stroke: paper.Thin}
	if e := paper.Bounds([]paper.Item{quarter}); math.Abs(e.Min.Y+10) > 1e-9 || math.Abs(e.Max.X-10) > 1e-9 || e.Max.Y > 1e-9 {
		t.Errorf("a quarter reaches from %v to %v", e.Min, e.Max)
	}
}

// Moving an item moves all of it.
func TestMoved(t *testing.T) {
	f := fonts(t)
	label := f.Text("12'-0\"", 8)
	label.At, label.Clear = paper.Point{X: 50, Y: 18}, true
	items := []paper.Item{
		paper.Rectangle(paper.Point{X: 1, Y: 2}, paper.Point{X: 3, Y: 4}, paper.Cut, paper.Shade),
		paper.Arc{Center: paper.Point{X: 5, Y: 5}, Radius: 2, To: 90, Stroke: paper.Fine},
		paper.Hatch{Area: []paper.Point{{}, {X: 10}, {Y: 10}}, Gap: 3, Turn: 30, Stroke: paper.Faint},
		paper.Dimension{From: paper.Point{Y: 40}, To: paper.Point{X: 100, Y: 40}, Start: paper.Point{Y: 20}, End: paper.Point{X: 100, Y: 20}, Label: label,
			Leader: []paper.Point{{X: 1}, {X: 2}}},
		f.Marker(paper.Marker{Spot: paper.Point{X: 9, Y: 9}, At: paper.Point{X: 20, Y: 30}, Tags: []paper.Tag{{N: 3}, {N: 14, Form: paper.Hollow}}}),
	}
	for i, item := range items {
		before := paper.Bounds([]paper.Item{item})
		after := paper.Bounds([]paper.Item{item.Moved(1000, -500)})
		if math.Abs(after.Min.X-before.Min.X-1000) > 1e-6 || math.Abs(after.Max.Y-before.Max.Y+500) > 1e-6 || math.Abs(after.Width()-before.Width()) > 1e-6 {
			t.Errorf("item %d: from %v to %v", i, before, after)
		}
	}
}

// Kinds of lines differ in weight or dashes where they are not of one kind.
func TestPensDiffer(t *testing.T) {
	for s := paper.Cut; s <= paper.Grade; s++ {
		if pen := s.Pen(); pen.Width <= 0 {
			t.Errorf("stroke %d has no pen", s)
		}
	}
	for _, pair := range [][2]paper.Stroke{{paper.Hidden, paper.Center}, {paper.Hidden, paper.Open}, {paper.Center, paper.Open}} {
		a, b := pair[0].Pen().Dash, pair[1].Pen().Dash
		if len(a) == 0 || len(b) == 0 || len(a) == len(b) && a[0] == b[0] {
			t.Errorf("strokes %v have the dashes %v and %v", pair, a, b)
		}
	}
	if paper.NoStroke.Pen().Width != 0 {
		t.Error("no stroke has a pen")
	}
}
