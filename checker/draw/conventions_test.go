package draw_test

import (
	"math"
	"slices"
	"strings"
	"testing"

	"plumbrule/checker/draw"
	"plumbrule/checker/draw/paper"
)

// The framing plan shows where the section is cut, by the letter that the
// section is called by: half the platform's width along where joists do not lie
// there, beside the joist that spans furthest where they do.
func TestSectionIsMarkedWhereItIsCut(t *testing.T) {
	framing := sheets(t, fixture("alder-lane"), draw.Options{Views: []draw.View{draw.Framing}})[0]
	var whole paper.Dimension
	for _, d := range dimensions(framing.Items) {
		if d.Label.Words == "16'-0\"" {
			whole = d
		}
	}
	half := (whole.Start.X + whole.End.X) / 2 // cut 8 ft along 16
	n := 0
	for _, item := range figures(framing)[0].Items {
		if p, ok := item.(paper.Path); ok && p.Stroke == paper.Cut && !p.Closed && len(p.Points) == 2 {
			if math.Abs(p.Points[0].X-half) > 0.01 || p.Points[0].X != p.Points[1].X {
				t.Errorf("the section is marked at %v, want it at %.2f", p.Points, half)
			}
			n++
		}
	}
	letters := 0
	for _, text := range paper.Texts(figures(framing)[0].Items) {
		if text.Words == "A" {
			letters++
		}
	}
	if n != 2 || letters != 2 {
		t.Errorf("%d marks with %d letters, want 2 and 2", n, letters)
	}
	for i, want := range []string{"Section A-A of platform upper", "Section B-B of platform lower"} {
		s := sheets(t, fixture("karaka-bay"), draw.Options{Views: []draw.View{draw.Elevation}})[i]
		if words := lines(s); !strings.Contains(words, want) || !strings.Contains(words, "Section: cut") {
			t.Errorf("no %q on %s", want, s.Name)
		}
	}
}

// Plans say which side the house is on, where the design shows a house.
func TestHouseIsNamed(t *testing.T) {
	for _, c := range []struct {
		design string
		view   draw.View
		want   bool
	}{
		{"alder-lane", draw.Plan, true},
		{"alder-lane", draw.Framing, true},
		{"karaka-bay", draw.Plan, false}, // stands free, no house described
	} {
		s := sheets(t, fixture(c.design), draw.Options{Views: []draw.View{c.view}})[0]
		got := slices.ContainsFunc(paper.Texts(s.Items), func(t paper.Text) bool { return t.Words == "house" })
		if got != c.want {
			t.Errorf("%s of %s names the house: %v, want %v", c.view, c.design, got, c.want)
		}
	}
}

// The title block says which file and revision the sheet was drawn from, which
// rule sets ran, and the scale with the paper that it holds on.
func TestTitleBlock(t *testing.T) {
	cells := func(s *paper.Sheet) []string {
		var list []string
		for _, text := range paper.Texts(s.Items) {
			if text.At.Y > s.Height-28-46 {
				list = append(list, text.Words)
			}
		}
		return list
	}
	for _, c := range []struct {
		name    string
		options draw.Options
		want    []string
	}{
		{"no rules", draw.Options{Views: []draw.View{draw.Framing}}, []string{"Ketch Point cabin deck", "2", "Framing of platform L1", "ketch-point.deck.yaml", "none run", "scale, on tabloid paper", "1/2\" = 1'-0\"", "D1 of 1"}},
		{"rules", draw.Options{Views: []draw.View{draw.Framing}, Report: run(), Paper: "a4"}, []string{"town", "scale, on A4 paper"}},
	} {
		got := cells(sheets(t, fixture("ketch-point"), c.options)[0])
		for _, want := range c.want {
			if !slices.Contains(got, want) {
				t.Errorf("%s: no cell %q among %q", c.name, want, got)
			}
		}
	}
}
