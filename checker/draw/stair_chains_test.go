package draw_test

import (
	"math"
	"strings"
	"testing"

	"plumbrule/checker/draw"
	"plumbrule/checker/draw/paper"
)

// Measured risers are dimensioned one by one outside of the section, with lines
// that stop short of it, in one chain without gaps, the whole outside of them.
func TestRisersStandBesideTheSection(t *testing.T) {
	s := sheets(t, fixture("ketch-point"), draw.Options{Views: []draw.View{draw.Stairs}})[0]
	section := paper.NoExtent() // handrail, steps, ground
	for _, item := range figures(s)[0].Items {
		if p, ok := item.(paper.Path); ok {
			section = section.With(p.Points...)
		}
	}
	var risers, whole []paper.Dimension
	for _, d := range dimensions(s.Items) {
		switch {
		case strings.Contains(d.Label.Words, "\" riser "):
			risers = append(risers, d)
		case strings.HasSuffix(d.Label.Words, "risers"):
			whole = append(whole, d)
		}
	}
	if len(risers) != 12 || len(whole) != 1 {
		t.Fatalf("%d risers and %d wholes are dimensioned, want 12 and 1", len(risers), len(whole))
	}
	for i, d := range append(risers, whole...) {
		const least = 10 // of paper between the section and the lines of the chain
		for _, line := range [][2]paper.Point{{d.From, d.Start}, {d.To, d.End}} {
			free := d.FromFree
			if line[0] == d.To {
				free = d.ToFree
			}
			if a, b, ok := paper.ExtensionLine(line[0], line[1], free); ok && min(a.X, b.X) < section.Max.X+least {
				t.Errorf("a line of %q starts at %.1f, the section reaches to %.1f", d.Label.Words, min(a.X, b.X), section.Max.X)
			}
		}
		if i > 0 && i < len(risers) && math.Abs(d.Start.Y-risers[i-1].End.Y) > 0.01 {
			t.Errorf("%q starts at %.2f, the one above ends at %.2f", d.Label.Words, d.Start.Y, risers[i-1].End.Y)
		}
		if i < len(risers) && (d.Label.Turn != 0 || d.Label.At.Y > d.End.Y || d.Label.At.Y < d.Start.Y) {
			t.Errorf("%q does not stand level between its ends", d.Label.Words)
		}
	}
	if whole[0].Start.X <= risers[0].Label.Box().Corners[1].X {
		t.Error("the whole does not stand outside of the risers")
	}
}

// Where risers are too low on paper for a line of words each, and treads too
// narrow, they are listed beside the drawing.
func TestLowRisersAreListed(t *testing.T) {
	for _, shape := range hardShapes() {
		if shape.title != "twenty four uneven risers" {
			continue
		}
		d := derive(t, shape.title, shape.yaml())
		list, err := draw.Sheets(d, draw.Options{Views: []draw.View{draw.Stairs}, Paper: "letter"})
		if err != nil {
			t.Fatal(err)
		}
		words := lines(list[0])
		for _, want := range []string{"Risers of stair ST1 from the top. Riser", " 1: 7-", "Treads of stair ST1 from the top. Tread", " 1: 10-", "= 24 risers"} {
			if !strings.Contains(words, want) {
				t.Errorf("the sheet does not say %q: %s", want, words)
			}
		}
		for _, dim := range dimensions(list[0].Items) {
			if strings.Contains(dim.Label.Words, "\" riser ") || strings.HasPrefix(dim.Label.Words, "10-") {
				t.Errorf("%q is dimensioned", dim.Label.Words)
			}
		}
		return
	}
	t.Fatal("the stair is gone")
}

// A stair whose risers are alike has one dimension for all of them.
func TestAlikeRisersAreDimensionedAtOnce(t *testing.T) {
	s := sheets(t, fixture("alder-lane"), draw.Options{Views: []draw.View{draw.Stairs}})[0]
	for _, d := range dimensions(s.Items) {
		if strings.Contains(d.Label.Words, "\" riser ") {
			t.Errorf("%q is dimensioned by itself", d.Label.Words)
		}
	}
}
