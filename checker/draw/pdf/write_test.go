package pdf_test

import (
	"bytes"
	"testing"

	"plumbrule/checker/draw/paper"
	"plumbrule/checker/draw/pdf"
)

func sheets() []*paper.Sheet {
	words := paper.Text{At: paper.Point{X: 30, Y: 40}, Words: "Ümlaut 東京 12'-0\"", Size: 8, Width: 60, Turn: 45, Align: paper.Right, Bold: true}
	first := &paper.Sheet{Number: "D1", Name: "Plan", Job: "Über das Dach", Width: 1224, Height: 792, Items: []paper.Item{
		words, paper.Circle(paper.Point{X: 50, Y: 50}, 20, paper.Hidden, paper.White), paper.Path{}, paper.Text{},
	}}
	second := &paper.Sheet{Number: "D2", Name: "Framing", Width: 612, Height: 792, Items: []paper.Item{words}}
	return []*paper.Sheet{first, second}
}

func TestWrite(t *testing.T) {
	var first, second bytes.Buffer
	for _, out := range []*bytes.Buffer{&first, &second} {
		if err := pdf.Write(out, sheets()); err != nil {
			t.Fatal(err)
		}
	}
	if !bytes.Equal(first.Bytes(), second.Bytes()) {
		t.Error("two runs gave different bytes")
	}
	for _, want := range []string{"%PDF-", "/Count 2", "/MediaBox [0 0 1224.00 792.00]", "/MediaBox [0 0 612.00 792.00]", "/FontFile2", "D:20000101000000"} {
		if !bytes.Contains(first.Bytes(), []byte(want)) {
			t.Errorf("no %q in the file", want)
		}
	}
	// The whole fonts are some 300 kB; embedded is what is used.
	if first.Len() > 60_000 {
		t.Errorf("%d bytes: the letters are not cut down to those that are used", first.Len())
	}
}

func TestNoSheets(t *testing.T) {
	if err := pdf.Write(&bytes.Buffer{}, nil); err != nil {
		t.Error(err)
	}
}
