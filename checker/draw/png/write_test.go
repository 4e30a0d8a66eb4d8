package png_test

import (
	"bytes"
	"image"
	_ "image/png"
	"math"
	"testing"

	"plumbrule/checker/draw/paper"
	"plumbrule/checker/draw/png"
)

func paint(t *testing.T, dots int, items ...paper.Item) image.Image {
	t.Helper()
	var out, again bytes.Buffer
	s := &paper.Sheet{Number: "D1", Width: 144, Height: 72, Items: items}
	for _, w := range []*bytes.Buffer{&out, &again} {
		if err := png.Write(w, s, dots); err != nil {
			t.Fatal(err)
		}
	}
	if !bytes.Equal(out.Bytes(), again.Bytes()) {
		t.Error("two runs gave different bytes")
	}
	img, _, err := image.Decode(&out)
	if err != nil {
		t.Fatal(err)
	}
	return img
}

// gray is how dark a dot is, 0 black to 255 white.
func gray(img image.Image, x, y int) uint32 {
	r, _, _, _ := img.At(x, y).RGBA()
	return r >> 8
}

// dark sums up how much ink there is, in dots.
func dark(img image.Image) float64 {
	sum := 0.0
	for y := range img.Bounds().Dy() {
		for x := range img.Bounds().Dx() {
			sum += float64(255-gray(img, x, y)) / 255
		}
	}
	return sum
}

func TestPaths(t *testing.T) {
	img := paint(t, 144, paper.Rectangle(paper.Point{X: 10, Y: 10}, paper.Point{X: 30, Y: 20}, paper.NoStroke, paper.Solid))
	if b := img.Bounds(); b.Dx() != 288 || b.Dy() != 144 {
		t.Fatalf("%v", b)
	}
	if gray(img, 21, 21) != 0 || gray(img, 59, 39) != 0 || gray(img, 61, 30) != 255 || gray(img, 40, 42) != 255 {
		t.Error("the area is not where it should be")
	}
	if got := dark(img); math.Abs(got-40*20) > 2 {
		t.Errorf("%.0f dots are dark, want 800", got)
	}
	// A line of 100 points, 1.7 wide: 200 by 3.4 dots.
	full := dark(paint(t, 144, paper.Line(paper.Point{X: 10, Y: 30}, paper.Point{X: 110, Y: 30}, paper.Cut)))
	if math.Abs(full-680) > 10 {
		t.Errorf("a line takes %.0f dots, want 680", full)
	}
	// Dashed 5 drawn, 2.5 left out: two thirds of 200 by 1.2.
	dashed := dark(paint(t, 144, paper.Line(paper.Point{X: 10, Y: 30}, paper.Point{X: 110, Y: 30}, paper.Hidden)))
	if math.Abs(dashed-160) > 8 {
		t.Errorf("a dashed line takes %.0f dots, want 160", dashed)
	}
	// What reaches past the sheet is cut off.
	paint(t, 72, paper.Line(paper.Point{X: -1e4, Y: -1e4}, paper.Point{X: 1e4, Y: 1e4}, paper.Center), paper.Path{}, paper.Line(paper.Point{}, paper.Point{}, paper.Cut))
}

func TestWords(t *testing.T) {
	fonts, err := paper.OpenFonts()
	if err != nil {
		t.Fatal(err)
	}
	text := fonts.BoldText("HANG 東", 20)
	text.At = paper.Point{X: 20, Y: 40}
	upright := paint(t, 144, text)
	if got := dark(upright); got < 800 || got > 4000 {
		t.Errorf("the words take %.0f dots", got)
	}
	for x := range 39 {
		for y := range 144 {
			if gray(upright, x, y) != 255 {
				t.Fatalf("there is ink at %d, %d, before the words start", x, y)
			}
		}
	}
	// Turned, the same words take as much ink, up the sheet.
	turned := fonts.BoldText("HA", 20)
	turned.Turn, turned.At = 90, paper.Point{X: 72, Y: 60}
	level := turned
	level.Turn = 0
	if a, b := dark(paint(t, 144, turned)), dark(paint(t, 144, level)); math.Abs(a-b) > 0.05*b {
		t.Errorf("turned words take %.0f dots, level ones %.0f", a, b)
	}
}
