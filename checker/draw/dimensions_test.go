package draw_test

import (
	"math"
	"path/filepath"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"

	"plumbrule/checker/draw"
	"plumbrule/checker/draw/paper"
	"plumbrule/checker/measure"
)

// dimensions lists the dimensions of a figure or a sheet.
func dimensions(items []paper.Item) []paper.Dimension {
	var list []paper.Dimension
	for _, item := range items {
		switch v := item.(type) {
		case paper.Dimension:
			list = append(list, v)
		case paper.Group:
			list = append(list, dimensions(v.Items)...)
		}
	}
	return list
}

// figures lists the figures of a sheet.
func figures(s *paper.Sheet) []paper.Group {
	var list []paper.Group
	for _, item := range s.Items {
		if g, ok := item.(paper.Group); ok && g.Kind == "figure" {
			list = append(list, g)
		}
	}
	return list
}

// printed reads the length at the start of a label back: feet and inches, or
// whole millimetres without a unit.
func printed(t *testing.T, words string, metric bool) measure.Length {
	t.Helper()
	text := regexp.MustCompile(`^[-0-9'/" ]+"|^\d+`).FindString(words)
	if metric {
		text = regexp.MustCompile(`^\d+`).FindString(words) + " mm"
	}
	l, _, err := measure.ParseLength(text)
	if err != nil {
		t.Fatalf("%q: %v", words, err)
	}
	return l
}

// What a dimension prints is its value, and what it spans on paper is that value
// in the scale that the sheet states.
func TestDimensionsAreTrueToScale(t *testing.T) {
	stated := regexp.MustCompile(`^scale (?:1:(\d+)|(\S+)" = 1'-0")$`)
	for _, file := range designFiles() {
		deck := read(t, file).Deck
		metric := deck.System == measure.Metric
		rounding := measure.Inch / 32
		if metric {
			rounding = measure.Millimetre / 2
		}
		for _, s := range sheets(t, file, draw.Options{}) {
			if len(figures(s)) == 0 && s.Name != "Nothing can be drawn" {
				t.Fatalf("%s, %s has no figure", filepath.Base(file), s.Name)
			}
			times := 0.0
			for _, text := range paper.Texts(s.Items) {
				m := stated.FindStringSubmatch(text.Words)
				switch {
				case m == nil:
				case m[1] != "":
					n, err := strconv.Atoi(m[1])
					if err != nil {
						t.Fatal(err)
					}
					times = float64(n)
				default:
					inches, _, err := measure.ParseLength(m[2] + " in")
					if err != nil {
						t.Fatal(err)
					}
					times = float64(measure.Foot) / float64(inches)
				}
			}
			for _, d := range dimensions(s.Items) {
				if got := printed(t, d.Label.Words, metric); got-d.Value > rounding || d.Value-got > rounding {
					t.Errorf("%s, %s: %q stands for %s", filepath.Base(file), s.Name, d.Label.Words, d.Value.Text(deck.System))
				}
				length := math.Hypot(d.End.X-d.Start.X, d.End.Y-d.Start.Y)
				if drawn := float64(d.Value) / float64(measure.Inch) * 72 / times; math.Abs(length-drawn) > 0.3 {
					t.Errorf("%s, %s: %q is %.2f points long, in the scale it would be %.2f", filepath.Base(file), s.Name, d.Label.Words, length, drawn)
				}
			}
		}
	}
}

// The numbers of the drawings, worked out by hand.
func TestDimensionsByHand(t *testing.T) {
	cases := []struct {
		design string
		view   draw.View
		sheet  int
		want   []string
	}{
		{"alder-lane", draw.Plan, 0, []string{
			"16'-0\"", "12'-0\"", // outline
			"3'-0\"", "5'-0\"", "3'-0\"", // window at 3 ft; door at 8 ft, 36 in wide
			"4'-0\"", "6'-0\"", // stair, 6 ft from the right end of the front edge
			"5'-1 1/2\"", // 6 treads at 10-1/4 = 61-1/2
			"3'-6\"",     // landing
		}},
		{"alder-lane", draw.Framing, 0, []string{
			"9'-8 1/4\" clear",                     // 10 ft, less the ledger 1-1/2, less half of three plies 2-1/4
			"1'-6\"", "6'-6\"", "6'-6\"", "1'-6\"", // posts at 1-6, 8-0, 14-6 of 16-0
			"10'-0\"", "2'-0\"", "16'-0\"", "12'-0\"", // beam, what passes it, the whole
		}},
		{"alder-lane", draw.Stairs, 0, []string{
			"4'-2\" = 7 risers at 7.1429\"", // 50 / 7
			"5'-1 1/2\" = 6 treads at 10-1/4\"",
			"3'-6\" landing",
			"3'-0\" handrail",
			"5-3/8\" throat",            // 11-1/4 less 7.1429 x 10-1/4 / 12.493 = 5.390
			"6'-2 15/16\" on the slope", // nosing to nosing: root of 61.5 squared and 6 x 50/7 squared = 74.96
		}},
		{"karaka-bay", draw.Plan, 0, []string{"4800", "3600", "1000", "1500", "1680"}}, // 6 x 280
		{"karaka-bay", draw.Framing, 0, []string{"200", "2200", "2200", "300", "2600", "4800", "3600"}},
		{"karaka-bay", draw.Framing, 1, []string{"3000", "2400"}},
		{"karaka-bay", draw.Elevation, 1, []string{"3000", "300 as stated"}}, // the ground is stated for one place
		{"karaka-bay", draw.Stairs, 0, []string{"1143 = 7 risers at 163.286 mm", "1680 = 6 treads at 280 mm", "950 handrail"}},
		{"ketch-point", draw.Plan, 0, []string{
			"20'-0\"", "11'-0\"", "4'-3\"", "17'-0\"",
			"3'-0 1/16\"", // 51 x root 1/2 = 36.062
			"7'-3 3/4\"",  // nine treads at 9-3/4 as stated
		}},
		{"ketch-point", draw.Framing, 0, []string{
			"10'-3\" clear", // 10-6 less 1-1/2 less half of two plies 1-1/2
			"1'-0\"", "6'-0\"", "10'-6\"", "3'-6 1/16\"",
		}},
		{"ketch-point", draw.Stairs, 0, []string{
			"8-1/4\" riser 12", "7-3/4\" riser 11", "7-3/4\" riser 1", "9-3/4\" tread", "3'-3\" handrail",
			"7'-9 1/2\" = 12 risers", // 11 x 7-3/4 + 8-1/4 = 93-1/2
		}},
		{"quarry-hill", draw.Plan, 0, []string{
			"24'-0\"", "22'-0\"", "10'-0\"", "4'-0\"", "8'-0\"",
			"5'-7 7/8\"", // 48 x root 2 = 67.88
			"20'-0\"", "3'-6\"", "3'-0\"", "4'-7\"",
		}},
		{"quarry-hill", draw.Framing, 0, []string{
			"9'-0\"", "11'-0\"", "1'-11 1/4\"", // 22 ft less 20 ft less the fascia 3/4
			"23'-10 1/2\"", "21'-11 1/4\"", // the fascia on both sides, and on one
			"8'-8 1/4\" clear",  // 9 ft less 1-1/2 less 2-1/4
			"10'-7 1/2\" clear", // 11 ft less twice 2-1/4
			"6\"", "4'-7\"",     // posts of the angled beam at 6 and at 61
			"6-7/8\"", // 67.88 less 61
		}},
		{"quarry-hill", draw.Stairs, 0, []string{
			"7'-3 3/16\" = 12 risers at 7.2639\"", // 76 at the edge, on 152 of run 1 in 12 more, less 1-1/2 to come = 87.167
			"4'-7\" = 5 treads at 11\"", "3'-6\" landing", "4'-0\" landing",
		}},
	}
	for _, c := range cases {
		s := sheets(t, fixture(c.design), draw.Options{Views: []draw.View{c.view}})[c.sheet]
		var got []string
		for _, d := range dimensions(s.Items) {
			got = append(got, d.Label.Words)
		}
		for _, want := range c.want {
			i := slices.Index(got, want)
			if i < 0 {
				t.Errorf("%s, %s: no dimension %s among %s", c.design, s.Name, want, strings.Join(got, " | "))
				continue
			}
			got = slices.Delete(got, i, i+1)
		}
	}
}

// A side with an edge as long as the whole does not show the whole once more.
func TestWholeIsDimensionedOnce(t *testing.T) {
	for _, shape := range hardShapes() {
		if shape.title != "notched" {
			continue
		}
		list, err := draw.Sheets(derive(t, shape.title, shape.yaml()), draw.Options{Views: []draw.View{draw.Plan}})
		if err != nil {
			t.Fatal(err)
		}
		n := 0
		for _, d := range dimensions(list[0].Items) {
			if d.Label.Words == "20'-0\"" {
				n++
			}
		}
		if n != 2 {
			t.Errorf("20 ft out is dimensioned %d times, want once on either side", n)
		}
		return
	}
	t.Fatal("the notched deck is gone")
}
