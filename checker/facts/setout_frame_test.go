package facts_test

import (
	"strings"
	"testing"

	"plumbrule/checker/measure"
)

// A header that rests on a beam carries nothing of its own there, and the tail
// joists end at it all the same: 144 less the rim, the opening's end at 96 and
// two plies of header make 43-1/2 in. Every ply of a rim comes off.
func TestSticksBetweenHeadersAndRims(t *testing.T) {
	opening := ", openings: [{corners: [[4 ft, 4 ft], [6 ft, 4 ft], [6 ft, 8 ft], [4 ft, 8 ft]], headers: {size: 2x10, plies: 2}}]"
	design := frame(twelveOut, onCenter16+opening, dropped("B1", "from_house: 8 ft")+dropped("B2", "from_house: 11 ft"))
	for rim, off := range map[string]string{"{size: 2x10}": "1-1/2 in", "{size: 2x10, plies: 2}": "3 in"} {
		p := derived(t, strings.Replace(design, "rim_joist: {size: 2x10}", "rim_joist: "+rim, 1)).SettingOut.Platforms[0]
		whole, tail, head := 0, 0, 0
		for _, stick := range p.Joists.Sticks {
			want, ok := "", true
			switch stick.From + " to " + stick.To {
			case "ledger to rim":
				whole, want = whole+1, "142-1/2 in" // 144 less the ledger
			case "header to rim":
				tail, want = tail+1, "45 in" // 144 - 96 - 3
			case "ledger to header":
				head, want, ok = head+1, "43-1/2 in", false // 48 - 1-1/2 - 3
			default:
				t.Fatalf("a stick runs from %s to %s", stick.From, stick.To)
			}
			cut := length(t, want)
			if ok {
				cut -= length(t, off)
			}
			if length := stick.Line.Length(); !stick.IsCut || length != cut {
				t.Errorf("%s to %s with a rim of %s: %s, want %s", stick.From, stick.To, rim,
					length.Text(measure.Imperial), cut.Text(measure.Imperial))
			}
		}
		if whole != 11 || tail != 2 || head != 2 {
			t.Errorf("%d whole, %d tail and %d head joists", whole, tail, head)
		}
	}
}

// The edges of a frame keep the names of the outline that they lie behind, also
// where the end of the house wall makes a step.
func TestFrameEdges(t *testing.T) {
	p := derived(t, `
platforms:
  - measured_to: fascia
    fascia: {thickness: 1 in}
    outline: {corners: [[0 ft, 0 ft], [10 ft, 0 ft], [16 ft, 0 ft], [16 ft, 8 ft], [0 ft, 8 ft]], edges: [house, beyond, right, front, left]}
`).SettingOut.Platforms[0]
	var names []string
	for _, e := range p.FrameEdges {
		names = append(names, e.Name)
	}
	if got := strings.Join(names, ","); got != "house,,beyond,right,front,left" {
		t.Errorf("edges %s", got)
	}
	if !p.FrameEdges[0].House || p.FrameEdges[2].House {
		t.Error("the house lies elsewhere")
	}
}

// Joists along the house are laid out from it, and a plan keeps its axes.
func TestPlanOfJoistsAlongTheHouse(t *testing.T) {
	p := derived(t, `
platforms:
  - support: freestanding
    measured_to: frame
    outline: {along_house: 16 ft, out_from_house: 12 ft}
    rim_joist: {size: 2x8}
    joists: {size: 2x8, direction: along_house, layout: equal, max_spacing: 16 in}
    beams:
      - {mark: B1, size: 2x8, plies: 2, kind: dropped, line: [[2 ft, 0 ft], [2 ft, 12 ft]]}
      - {mark: B2, size: 2x8, plies: 2, kind: dropped, line: [[14 ft, 0 ft], [14 ft, 12 ft]]}
`).SettingOut.Platforms[0]
	// 142-1/2 over 9 bays; the first center line lies 3/4 in out from the house.
	if j := p.Joists; !j.AlongHouse || j.Bays.Parts != 9 || len(j.Sticks) != 10 {
		t.Fatalf("along the house %v, %d bays, %d sticks", j.AlongHouse, j.Bays.Parts, len(j.Sticks))
	}
	first := p.Joists.Sticks[0]
	if c := first.Reach; c.A.X != 0 || c.B.X != 16*measure.Foot || c.A.Y != 3*measure.Inch/4 || c.B.Y != c.A.Y {
		t.Errorf("the first stick lies on %v", c)
	}
	if first.Line.Length() != 16*measure.Foot-3*measure.Inch || len(first.Supports) != 2 || first.Supports[0].Ends {
		t.Errorf("it is %s long over %+v", first.Line.Length().Text(measure.Imperial), first.Supports)
	}
	if b := p.Beams[0]; b.Lines[0].A.X != 2*measure.Foot || b.Lines[0].B.X != 2*measure.Foot {
		t.Errorf("a beam drawn across the joists lies on %v", b.Lines[0])
	}
}
