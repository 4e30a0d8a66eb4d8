package facts_test

import (
	"os"
	"path/filepath"
	"testing"

	"plumbrule/checker/facts"
	"plumbrule/checker/geometry"
	"plumbrule/checker/measure"
	"plumbrule/checker/model"
	"plumbrule/checker/source"
)

func setOut(t *testing.T, name string) (facts.SettingOut, *facts.Facts) {
	t.Helper()
	file := filepath.Join("..", "..", "fixtures", "designs", name+".deck.yaml")
	data, err := os.ReadFile(file)
	if err != nil {
		t.Fatal(err)
	}
	doc, err := source.Read(file, data)
	if err != nil {
		t.Fatal(err)
	}
	deck, problems := model.Read(doc)
	if len(problems) > 0 {
		t.Fatal(problems[0].Message)
	}
	d, faults := facts.Derive(deck)
	if len(faults) > 0 {
		t.Fatal(faults[0].Message)
	}
	return d.SettingOut, d.Facts
}

// What is drawn is what the facts say: as many sticks of each cut length, the
// same longest spans, posts in the same places.
func TestSetOutAgreesWithFacts(t *testing.T) {
	for _, name := range []string{"alder-lane", "karaka-bay", "ketch-point", "quarry-hill"} {
		out, f := setOut(t, name)
		lengths, runs := map[measure.Length]int64{}, map[measure.Length]int64{}
		spans, posts, laidOut := map[measure.Length]bool{}, map[geometry.Point]bool{}, map[string]bool{}
		for i := range out.Platforms {
			p := &out.Platforms[i]
			if p.Joists != nil {
				laidOut[p.Label] = p.Joists.Missing == ""
				for _, s := range p.Joists.Sticks {
					lengths[s.Line.Length()]++
					for k := 1; k < len(s.Supports); k++ {
						spans[s.Supports[k].Center.To(s.Supports[k-1].Center)] = true
					}
				}
			}
			for _, b := range p.Beams {
				for _, post := range b.Posts {
					posts[post.Place] = true
				}
			}
		}
		for _, run := range f.JoistRuns {
			if run.Length != nil {
				runs[run.Length.Value] = run.Count
			}
		}
		for length, n := range runs {
			if lengths[length] != n {
				t.Errorf("%s: %d sticks of %s, the facts count %d", name, lengths[length], length.Text(measure.Imperial), n)
			}
		}
		for _, span := range f.JoistSpans {
			if span.SpanToCenter != nil && laidOut[span.Platform] && !spans[span.SpanToCenter.Value] {
				t.Errorf("%s: no stick spans %s from %s to %s", name, span.SpanToCenter.Value.Text(measure.Imperial), span.From, span.To)
			}
		}
		for _, post := range f.Posts {
			if !posts[geometry.Point{X: post.X.Value, Y: post.Y.Value}] {
				t.Errorf("%s: no post at %v", name, post.At)
			}
		}
		if len(posts) != len(f.Posts) {
			t.Errorf("%s: %d posts are set out, the facts have %d", name, len(posts), len(f.Posts))
		}
	}
}

func TestSetOutByHand(t *testing.T) {
	out, _ := setOut(t, "alder-lane")
	p := &out.Platforms[0]
	// 16 ft at most 16 in: 12 bays, 13 joists; 12 ft less ledger and rim of 1-1/2 each.
	if n := len(p.Joists.Sticks); n != 13 {
		t.Errorf("%d joists, want 13", n)
	}
	if got, want := p.Joists.Sticks[0].Line.Length(), 141*measure.Inch; got != want {
		t.Errorf("joists of %s, want 11'-9\"", got.Text(measure.Imperial))
	}
	door := p.Openings[0]
	if door.Kind != "door" || door.Line.A != (geometry.Point{X: 8 * measure.Foot}) || door.Line.B != (geometry.Point{X: 11 * measure.Foot}) {
		t.Errorf("the door lies at %v", door.Line)
	}
	if window := p.Openings[1]; window.Line.A != window.Line.B {
		t.Errorf("a window without a width lies at %v", window.Line)
	}
	// The front edge runs from the right end, so 6 ft along it is at 10 ft.
	st := out.Stairs[0]
	want := geometry.Segment{A: geometry.Point{X: 10 * measure.Foot, Y: 12 * measure.Foot}, B: geometry.Point{X: 6 * measure.Foot, Y: 12 * measure.Foot}}
	if st.Top == nil || *st.Top != want {
		t.Errorf("the stair leaves at %v, want %v", st.Top, want)
	}
	if p.GroundOnSlope(geometry.Point{}) != nil {
		t.Error("drops at edges are carried to other places")
	}
}

func TestSetOutKnowsWhatIsNotShown(t *testing.T) {
	out, _ := setOut(t, "karaka-bay")
	p := &out.Platforms[0]
	if p.Frame != nil || p.FrameMissing != "platforms[].decking.overhang" {
		t.Errorf("frame %v, missing %q", p.Frame, p.FrameMissing)
	}
	if len(p.Joists.Sticks) != 0 || p.Joists.Missing != p.FrameMissing {
		t.Errorf("%d joists without a frame, missing %q", len(p.Joists.Sticks), p.Joists.Missing)
	}
	if b := p.Beams[0]; !b.OpenStart || !b.OpenEnd || b.Width != 90*measure.Millimetre {
		t.Errorf("the beam is %+v", b)
	}
	out, _ = setOut(t, "quarry-hill")
	p = &out.Platforms[0]
	// 1 in 12 out from 4-6 at the house: 20 in more after 20 ft.
	if g := p.GroundOnSlope(geometry.Point{X: 5 * measure.Foot, Y: 20 * measure.Foot}); g == nil || g.Value != 74*measure.Inch {
		t.Errorf("ground at 20 ft out is %v", g)
	}
	if h := p.Holes[0]; h.Headers != 3*measure.Inch || h.Trimmers != 3*measure.Inch || len(h.Ring) != 4 {
		t.Errorf("the opening is %+v", h)
	}
}
