package facts

import (
	"math/big"
	"slices"

	"plumbrule/checker/geometry"
	"plumbrule/checker/measure"
	"plumbrule/checker/model"
)

// addMeasured works out what was read off the work.
func (f *Facts) addMeasured(deck *model.Deck) {
	for i := range deck.Measured {
		m := &deck.Measured[i]
		switch words(m.What) {
		case "rectangle":
			f.Rectangles = append(f.Rectangles, rectangle(m))
		case "triangle":
			f.Triangles = append(f.Triangles, triangle(m))
		case "level":
			f.Levels = append(f.Levels, level(m))
		case "joists":
			f.JoistMarks = append(f.JoistMarks, f.joistMarks(m))
		}
	}
}

// rectangle compares opposite sides first and then the diagonals.
func rectangle(m *model.Measured) Rectangle {
	fact := Rectangle{At: []string{m.At}}
	if len(m.Sides) != 4 {
		return fact
	}
	var sides [4]measure.Length
	for i, s := range m.Sides {
		sides[i] = s.V
	}
	along, out := apart(sides[0], sides[2]), apart(sides[1], sides[3])
	fact.SidesAt, fact.SideDifference = "along the house", of(along, m.Sides[2].At, m.Sides[0].At)
	if out > along {
		fact.SidesAt, fact.SideDifference = "out from the house", of(out, m.Sides[3].At, m.Sides[1].At)
	}
	longest := m.Sides[0]
	for _, s := range m.Sides {
		if s.V > longest.V {
			longest = s
		}
	}
	fact.LongestSide = shown(longest)
	square := geometry.Diagonal((sides[0]+sides[2])/2, (sides[1]+sides[3])/2)
	fact.Diagonal = of(square, m.At+"/sides")
	if len(m.Diagonals) != 2 {
		return fact
	}
	first, second := m.Diagonals[0], m.Diagonals[1]
	fact.DiagonalDifference = of(apart(first.V, second.V), second.At, first.At)
	if slide, err := geometry.Slide((sides[0]+sides[2])/2, first.V, second.V); err == nil {
		fact.Slide = of(apart(slide, 0), first.At, second.At)
	}
	check, err := geometry.CheckRectangle(sides, [2]measure.Length{first.V, second.V})
	fact.Possible = err == nil
	if err == nil {
		fact.Miss = of(apart(check.Closure, 0), second.At, m.At+"/sides", first.At)
	}
	return fact
}

// triangle works out the corner from two legs and the diagonal.
func triangle(m *model.Measured) Triangle {
	fact := Triangle{At: []string{m.At}, Diagonal: shown(m.Diagonal), Possible: true}
	if len(m.Legs) != 2 {
		return fact
	}
	a, b := m.Legs[0], m.Legs[1]
	fact.Square = of(geometry.Diagonal(a.V, b.V), a.At, b.At)
	if m.Diagonal == nil {
		return fact
	}
	corner, err := geometry.CornerAngle(a.V, b.V, m.Diagonal.V)
	if err != nil {
		fact.Possible = false
		return fact
	}
	places := []string{m.Diagonal.At, a.At, b.At}
	fact.Deviation = of(apart(m.Diagonal.V, fact.Square.Value), places...)
	fact.Corner = of(degrees(corner), places...)
	return fact
}

// level finds the pair of points that differ most for their distance.
func level(m *model.Measured) Level {
	fact := Level{At: []string{m.At}, Missing: levelWaits(m)}
	for i := range m.Points {
		for k := range i {
			a, b := &m.Points[k], &m.Points[i]
			if a.Place == nil || b.Place == nil || a.Height == nil || b.Height == nil {
				continue
			}
			difference, distance := apart(a.Height.V, b.Height.V), at(a.Place).To(at(b.Place))
			if distance == 0 {
				continue
			}
			if fact.Difference == nil || steeper(difference, distance, fact.Difference.Value, fact.Distance.Value) {
				fact.Difference = of(difference, b.Height.At, a.Height.At)
				fact.Distance = of(distance, b.Place.At, a.Place.At)
			}
		}
	}
	return fact
}

// levelWaits lists what keeps level readings from being compared: points are
// few, or do not show where they are or how high.
func levelWaits(m *model.Measured) []string {
	if len(m.Points) < 2 {
		return []string{"measured[].points"}
	}
	var missing []string
	for i := range m.Points {
		p := &m.Points[i]
		if p.Place == nil && !slices.Contains(missing, "measured[].points[].at") {
			missing = append(missing, "measured[].points[].at")
		}
		if p.Height == nil && !slices.Contains(missing, "measured[].points[].height") {
			missing = append(missing, "measured[].points[].height")
		}
	}
	return missing
}

// steeper reports whether rise over run is more than another slope, found by
// multiplying.
func steeper(rise, run, otherRise, otherRun measure.Length) bool {
	left := new(big.Int).Mul(big.NewInt(int64(rise)), big.NewInt(int64(otherRun)))
	right := new(big.Int).Mul(big.NewInt(int64(otherRise)), big.NewInt(int64(run)))
	return left.Cmp(right) > 0
}

// joistMarks compares marks read on a ledger or rim with the layout.
func (f *Facts) joistMarks(m *model.Measured) JoistMarks {
	fact := JoistMarks{At: []string{m.At}, On: words(m.Along)}
	layout := f.layoutOf(m)
	if layout == nil || len(layout.Marks) == 0 || len(m.Positions) == 0 {
		return fact
	}
	fact.Missing = int64(len(layout.Marks) - len(m.Positions))
	last := layout.Marks[len(layout.Marks)-1]
	fact.Length = of(last, layout.At...)
	for i, p := range m.Positions {
		if i >= len(layout.Marks) {
			break
		}
		if off := apart(p.V, layout.Marks[i]); fact.Worst == nil || off > fact.Worst.Value {
			fact.Worst, fact.WorstN = of(off, p.At), int64(i+1)
		}
	}
	return fact
}

// layoutOf finds the joists that marks were read of: those of the platform
// named, or the only ones.
func (f *Facts) layoutOf(m *model.Measured) *Joists {
	for i := range f.Joists {
		if m.Platform != nil && f.Joists[i].Platform == m.Platform.V || m.Platform == nil && len(f.Platforms) == 1 {
			return &f.Joists[i]
		}
	}
	return nil
}
