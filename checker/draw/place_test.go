package draw

import (
	"testing"

	"plumbrule/checker/draw/paper"
)

// A leader that runs over a line cannot be told from it; one that crosses it, or
// only shares its direction, can.
func TestAlongside(t *testing.T) {
	p := func(x, y float64) paper.Point { return paper.Point{X: x, Y: y} }
	for _, c := range []struct {
		name       string
		a, b, c, d paper.Point
		want       bool
	}{
		{"upon it", p(0, 0), p(20, 0), p(10, 0), p(40, 0), true},
		{"nearly upon it", p(0, 0), p(20, 0), p(10, 1), p(18, -1), true},
		{"the other way round", p(0, 0), p(20, 0), p(40, 0), p(10, 0), true},
		{"across", p(0, 0), p(20, 0), p(10, -10), p(10, 10), false},
		{"beside", p(0, 0), p(20, 0), p(0, 4), p(20, 4), false},
		{"further on", p(0, 0), p(20, 0), p(25, 0), p(40, 0), false},
		{"touching the end", p(0, 0), p(20, 0), p(18, 0), p(40, 0), false},
	} {
		if got := alongside(c.a, c.b, c.c, c.d); got != c.want {
			t.Errorf("%s: %v, want %v", c.name, got, c.want)
		}
	}
}

// No extension line is drawn where another one runs already.
func TestExtensionLinesRunOnce(t *testing.T) {
	f := &figure{extensions: []stroke{{a: paper.Point{X: 10, Y: 2.5}, b: paper.Point{X: 10, Y: 29}}}}
	for _, c := range []struct {
		name     string
		from, to paper.Point
		free     float64
		want     float64
	}{
		{"past the first chain", paper.Point{X: 10}, paper.Point{X: 10, Y: 45}, 0, 29},
		{"to the first chain", paper.Point{X: 10}, paper.Point{X: 10, Y: 26}, 0, 26},
		{"beside it", paper.Point{X: 11}, paper.Point{X: 11, Y: 45}, 0, 0},
		{"the other way", paper.Point{X: 10}, paper.Point{X: 10, Y: -45}, 0, 0},
		{"a short one beyond", paper.Point{X: 10}, paper.Point{X: 10, Y: 60}, 49, 49},
	} {
		if got := f.beyond(c.from, c.to, c.free); got != c.want {
			t.Errorf("%s: %g of the way is left free, want %g", c.name, got, c.want)
		}
	}
}

// A gap in a heavy line loses more than one in a light line: words go where only
// light ones run.
func TestHeavyLinesAreKeptWhole(t *testing.T) {
	fonts, err := paper.OpenFonts()
	if err != nil {
		t.Fatal(err)
	}
	f := &figure{fonts: fonts, weight: 1}
	for y := -300.0; y <= 300; y += 6 { // above light lines, below heavy ones
		stroke := paper.Thin
		if y > 0 {
			stroke = paper.Cut
		}
		f.line(paper.Point{X: -300, Y: y}, paper.Point{X: 300, Y: y}, stroke)
	}
	for _, text := range f.place(paper.Point{}, 17, 220, normal, leader{}, []string{"joists 2x10"}) {
		if text.At.Y > 0 {
			t.Errorf("%q stands at %.1f, over heavy lines", text.Words, text.At)
		}
	}
}

// Long lines of a note are broken, and all words of them are there.
func TestLongNotesAreBroken(t *testing.T) {
	fonts, err := paper.OpenFonts()
	if err != nil {
		t.Fatal(err)
	}
	f := &figure{fonts: fonts, weight: 1}
	got := f.wrapped([]string{"stair ST1", "footings 24\" square, 12\" thick, 30\" deep below the long beam"}, normal)
	if len(got) < 3 || got[0] != "stair ST1" {
		t.Fatalf("broken into %q", got)
	}
	all := ""
	for _, line := range got {
		if fonts.Width(line, normal, false) > 150 {
			t.Errorf("%q is wider than 150", line)
		}
		all += " " + line
	}
	if all != " stair ST1 footings 24\" square, 12\" thick, 30\" deep below the long beam" {
		t.Errorf("words were lost: %q", all)
	}
}

// A confined figure takes no words that would make it larger than it may be, and
// says beside the drawing what has no room.
func TestConfinedNotes(t *testing.T) {
	fonts, err := paper.OpenFonts()
	if err != nil {
		t.Fatal(err)
	}
	build := func(width, height float64) *figure {
		f := &figure{fonts: fonts, weight: 1, most: &paper.Extent{Max: paper.Point{X: width, Y: height}}}
		f.draw(paper.Rectangle(paper.Point{X: -50, Y: -20}, paper.Point{X: 50, Y: 20}, paper.Cut, paper.NoFill))
		for y := -15.0; y < 20; y += 5 { // words inside would wipe lines
			f.line(paper.Point{X: -50, Y: y}, paper.Point{X: 50, Y: y}, paper.Cut)
		}
		f.note(paper.Point{}, "notch left", "guard G1, 42\" high")
		f.settle()
		return f
	}
	for _, c := range []struct{ width, height float64 }{{300, 200}, {104, 300}, {300, 42}, {30, 12}} {
		f := build(c.width, c.height)
		e := paper.Bounds(f.items())
		if e.Width() > max(c.width, 103) || e.Height() > max(c.height, 43) {
			t.Errorf("confined to %g by %g it is %.0f by %.0f", c.width, c.height, e.Width(), e.Height())
		}
	}
	// Where all room is taken, the words are not lost.
	f := &figure{fonts: fonts, weight: 1, most: &paper.Extent{Max: paper.Point{X: 100, Y: 40}}}
	f.draw(paper.Rectangle(paper.Point{X: -50, Y: -20}, paper.Point{X: 50, Y: 20}, paper.Cut, paper.NoFill))
	f.kept = append(f.kept, paper.Upright(paper.Point{X: -50, Y: -20}, paper.Point{X: 50, Y: 20}))
	f.note(paper.Point{}, "notch left", "guard G1, 42\" high")
	f.settle()
	if len(f.words) != 0 || len(f.remarks) != 1 || f.remarks[0] != "Without room at its place: notch left; guard G1, 42\" high." {
		t.Errorf("words %v, remarks %q", f.words, f.remarks)
	}
}
