package draw_test

import (
	"math"
	"slices"
	"strconv"
	"strings"
	"testing"

	"plumbrule/checker/draw"
	"plumbrule/checker/draw/paper"
	"plumbrule/checker/result"
)

// run is a report on the design with a finding of each kind.
func run() *result.Report {
	outside := func(check, at, mark, message string) result.Result {
		return result.Result{Check: check, Set: "town", Clause: "1.2", Outcome: result.Outside, Consequence: result.LifeSafety,
			At: []string{at}, Mark: mark, See: "sheet 4", Message: message, Fingerprint: check + at}
	}
	d := result.Design{File: "ketch-point.deck.yaml", Disposition: result.ReviseAndResubmit}
	d.Findings = []result.Result{
		outside("stairs/riser-height", "/stairs/0/measured_risers/11", "ST1", "riser 12 is 8-1/4\" high"),
		outside("beams/ply-joint", "/platforms/0/beams/0/ply_joints_at/0", "B1", "a ply joint lies off its post"),
		outside("scope/load", "/site/ground_snow_load", "", "a load is outside the table"),
		{Check: "footings/depth", Set: "town", Clause: "3", Outcome: result.NotShown, Consequence: result.Structure, At: []string{"/platforms/0"},
			Mark: "L1", Needs: "platforms[].footings.depth", Message: "footing depth is not shown", Fingerprint: "f"},
		{Check: "guards/height", Set: "town", Clause: "4", Outcome: result.Excused, Consequence: result.LifeSafety, At: []string{"/guards/0/height"},
			Mark: "G1", Message: "guard is 36\" high", Fingerprint: "g", Waiver: &result.Waiver{By: "A. Reviewer", Reason: "existing"}},
	}
	return &result.Report{Sets: []result.Set{{ID: "town", Title: "Rules of a town", Edition: "7"}}, Designs: []result.Design{d}}
}

// markers lists the numbers in the figures of a sheet with the spots that their
// lines start from.
func markers(s *paper.Sheet) map[int]paper.Point {
	found := map[int]paper.Point{}
	var walk func(items []paper.Item)
	walk = func(items []paper.Item) {
		for _, item := range items {
			g, ok := item.(paper.Group)
			if !ok {
				continue
			}
			if g.Kind != "marker" {
				walk(g.Items)
				continue
			}
			line, bare := g.Items[0].(paper.Path)
			for _, text := range paper.Texts(g.Items) {
				if n, err := strconv.Atoi(text.Words); err == nil && bare && len(line.Points) == 2 {
					found[n] = line.Points[0]
				}
			}
		}
	}
	for _, f := range figures(s) {
		walk(f.Items)
	}
	return found
}

func TestFindingsAreMarkedOnTheirSpot(t *testing.T) {
	list := sheets(t, fixture("ketch-point"), draw.Options{Report: run()})
	where := map[int]string{}
	for _, s := range list {
		for n := range markers(s) {
			if where[n] != "" {
				t.Errorf("%d is marked on %s and on %s", n, where[n], s.Name)
			}
			where[n] = s.Name
		}
		apart(t, s.Name, s)
	}
	want := map[int]string{
		1: "Section of stair ST1", 2: "Framing of platform L1",
		4: "Elevation of platform L1", 5: "Elevation of platform L1",
	}
	for n, name := range want {
		if where[n] != name {
			t.Errorf("%d is marked on %q, want %q", n, where[n], name)
		}
	}
	if where[3] != "" {
		t.Errorf("what the site shows is marked on %q", where[3])
	}
	words := lines(list[0])
	if !strings.Contains(words, "Findings without a spot on the drawings") || !strings.Contains(words, "a load is outside the table [town 1.2], see sheet 4") {
		t.Errorf("the first sheet does not list what has no spot: %s", words)
	}
	for _, want := range []string{"town: Rules of a town, 7.", "revise and resubmit"} {
		if !strings.Contains(words, want) {
			t.Errorf("the sheet does not say %q", want)
		}
	}
}

// The marker of the topmost riser points at that riser: 8-1/4 in below the
// decking, half of that down.
func TestMarkerPointsAtTheRiser(t *testing.T) {
	s := sheets(t, fixture("ketch-point"), draw.Options{Views: []draw.View{draw.Stairs}, Report: run()})[0]
	spot, ok := markers(s)[1]
	if !ok {
		t.Fatal("the riser is not marked")
	}
	for _, d := range dimensions(s.Items) {
		if d.Label.Words == "8-1/4\" riser 12" {
			if middle := (d.From.Y + d.To.Y) / 2; math.Abs(spot.Y-middle) > 0.5 || math.Abs(spot.X-d.From.X) > 0.5 {
				t.Errorf("the marker points at %.1f, the riser is dimensioned from %.1f to %.1f", spot, d.From, d.To)
			}
			return
		}
	}
	t.Error("the riser is not dimensioned")
}

// Kinds of findings are told apart without color: by the box round the number.
func TestMarkersDifferInShape(t *testing.T) {
	fonts, err := paper.OpenFonts()
	if err != nil {
		t.Fatal(err)
	}
	var shapes [][]paper.Item
	for _, form := range []paper.Form{paper.Full, paper.Hollow, paper.Twice} {
		shapes = append(shapes, fonts.Marker(paper.Marker{Tags: []paper.Tag{{N: 7, Form: form}}, Bare: true}).Items)
	}
	strokes := func(items []paper.Item) string {
		var b strings.Builder
		for _, item := range items {
			if p, ok := item.(paper.Path); ok {
				b.WriteString(strconv.Itoa(int(p.Stroke)) + "/" + strconv.Itoa(int(p.Fill)) + " ")
			}
		}
		return b.String()
	}
	seen := []string{strokes(shapes[0]), strokes(shapes[1]), strokes(shapes[2])}
	if slices.Sort(seen); len(slices.Compact(seen)) != 3 {
		t.Errorf("markers are drawn alike: %q", seen)
	}
}

func lines(s *paper.Sheet) string {
	var all []string
	for _, text := range paper.Texts(s.Items) {
		all = append(all, text.Words)
	}
	return strings.Join(all, " ")
}

// What is not shown is said so and not drawn as if it were known.
func TestNotShownIsNotDrawn(t *testing.T) {
	cases := []struct {
		design string
		view   draw.View
		says   []string
	}{
		{"ketch-point", draw.Framing, []string{"footing depth", "depth not shown", "ties to the house"}},
		{"ketch-point", draw.Elevation, []string{"Not shown, and not drawn", "footing depth"}},
		{"ketch-point", draw.Stairs, []string{"landing at the foot of stair ST1", "12 risers ask for 11 treads, the design states 9", "stair nosing"}},
		{"karaka-bay", draw.Framing, []string{"decking overhang", "kind of beam BR1 (dropped or flush)", "Where the frame ends behind it is not shown"}},
		{"quarry-hill", draw.Plan, []string{"clear width of window W4", "to which hand they slant is not shown"}},
		{"quarry-hill", draw.Framing, []string{"places of the ties between the outer two (4 in all)"}},
	}
	for _, c := range cases {
		words := lines(sheets(t, fixture(c.design), draw.Options{Views: []draw.View{c.view}})[0])
		for _, want := range c.says {
			if !strings.Contains(words, want) {
				t.Errorf("%s, %s does not say %q", c.design, c.view, want)
			}
		}
	}
	// Without its edge the frame has no joist in a known place: only the arrow is
	// there, and no filled bar.
	framing := sheets(t, fixture("karaka-bay"), draw.Options{Views: []draw.View{draw.Framing}})[0]
	for _, item := range figures(framing)[0].Items {
		if p, ok := item.(paper.Path); ok && p.Closed && p.Stroke == paper.Thin && p.Fill == paper.White {
			t.Errorf("a joist is drawn at %v", p.Points)
		}
	}
}

// What an edge lacks is marked on that edge, also where nothing of the edge is
// described.
func TestMissingDropsAreMarkedOnTheirEdges(t *testing.T) {
	report := run()
	var list []result.Result
	for _, edge := range []string{"front", "left", "right"} {
		list = append(list, result.Result{Check: "guards/required", Set: "town", Outcome: result.NotShown, Consequence: result.LifeSafety,
			At: []string{"/platforms/1/outline"}, Needs: "platforms[].edges." + edge + ".drop", Message: "edge " + edge + " drop is not shown", Fingerprint: edge})
	}
	report.Designs[0].Findings = list
	lower := sheets(t, fixture("karaka-bay"), draw.Options{Views: []draw.View{draw.Plan}, Report: report})[1]
	var across, out paper.Dimension
	for _, d := range dimensions(lower.Items) {
		switch d.Label.Words {
		case "3000":
			across = d
		case "2400":
			out = d
		}
	}
	spots := markers(lower)
	const near = 0.01
	low, high := min(across.Start.X, across.End.X), max(across.Start.X, across.End.X)
	if s := spots[1]; math.Abs(s.Y-across.From.Y) > near || s.X <= low || s.X >= high {
		t.Errorf("what the front lacks is marked at %.1f", s)
	}
	if s := spots[2]; math.Abs(s.X-low) > near || s.Y <= min(out.Start.Y, out.End.Y) {
		t.Errorf("what the left edge lacks is marked at %.1f", s)
	}
	if s := spots[3]; math.Abs(s.X-high) > near || s.Y >= max(out.Start.Y, out.End.Y) {
		t.Errorf("what the right edge lacks is marked at %.1f", s)
	}
}
