package draw_test

import (
	"testing"

	"plumbrule/checker/draw/paper"
)

// The reader of sheets finds what it looks for, each fault where it is and none
// where it is not.
func TestFaultsAreFound(t *testing.T) {
	fonts, err := paper.OpenFonts()
	if err != nil {
		t.Fatal(err)
	}
	words := func(x, y float64, wipes bool) paper.Text {
		text := fonts.Text("8-1/4 in", 8)
		text.At, text.Clear = paper.Point{X: x, Y: y}, wipes
		return text
	}
	line := func(y float64) paper.Path {
		return paper.Line(paper.Point{X: 90, Y: y}, paper.Point{X: 160, Y: y}, paper.Fine)
	}
	small := words(100, 100, false)
	small.Size = smallestLetter - 0.1
	dimension := paper.Dimension{From: paper.Point{X: 100, Y: 150}, To: paper.Point{X: 200, Y: 150}, Start: paper.Point{X: 100, Y: 100}, End: paper.Point{X: 200, Y: 100}, Label: words(130, 97, false)}
	marker := func(x, y float64) paper.Group {
		return fonts.Marker(paper.Marker{Spot: paper.Point{X: x + 30, Y: y + 30}, At: paper.Point{X: x, Y: y}, Tags: []paper.Tag{{N: 3}}})
	}
	figure := func(items ...paper.Item) paper.Item { return paper.Group{Kind: "figure", Items: items} }
	far := fonts.Marker(paper.Marker{Spot: paper.Point{X: 400, Y: 400}, At: paper.Point{X: 100, Y: 100}, Tags: []paper.Tag{{N: 3}}})
	for _, c := range []struct {
		name  string
		items []paper.Item
		want  string // kind of the one fault, "" for none
	}{
		{"alone", []paper.Item{words(100, 100, false)}, ""},
		{"apart", []paper.Item{words(100, 100, false), words(100, 110, false)}, ""},
		{"on words", []paper.Item{words(100, 100, false), words(120, 103, false)}, "overlap"},
		{"line below", []paper.Item{line(103), words(100, 100, false)}, ""},
		{"line through", []paper.Item{line(97), words(100, 100, false)}, "crossed"},
		{"line painted later", []paper.Item{words(100, 100, true), line(97)}, "crossed"},
		{"wiped line", []paper.Item{line(97), words(100, 100, true)}, "patch"},
		{"line behind an area", []paper.Item{line(97), paper.Rectangle(paper.Point{X: 95, Y: 80}, paper.Point{X: 155, Y: 110}, paper.Edge, paper.White), words(100, 100, false)}, ""},
		{"area over words", []paper.Item{words(100, 100, false), paper.Rectangle(paper.Point{X: 95, Y: 80}, paper.Point{X: 155, Y: 110}, paper.NoStroke, paper.White)}, "covered"},
		{"past the border", []paper.Item{words(20, 100, false)}, "outside"},
		{"figure in the title block", []paper.Item{figure(words(100, 560, false))}, "outside"},
		{"title block", []paper.Item{words(100, 560, false)}, ""},
		{"small", []paper.Item{small}, "small"},
		{"marker aside", []paper.Item{figure(dimension, marker(120, 110))}, ""},
		{"marker on a dimension", []paper.Item{figure(dimension, marker(180, 95))}, "marker"},
		{"marker far off", []paper.Item{figure(far)}, "far"},
	} {
		got := legibility(&paper.Sheet{Width: 792, Height: 612, Items: c.items})
		switch {
		case c.want == "" && len(got) > 0:
			t.Errorf("%s: %v", c.name, got)
		case c.want != "" && (len(got) != 1 || got[0].kind != c.want):
			t.Errorf("%s: %v, want one of kind %q", c.name, got, c.want)
		}
	}
}
