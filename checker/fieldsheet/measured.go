package fieldsheet

import (
	"fmt"

	"plumbrule/checker/geometry"
	"plumbrule/checker/measure"
	"plumbrule/checker/model"
)

// measured adds what tapes read on the work come to.
func (b *builder) measured() {
	s := Section{Title: "Measured on site"}
	for i := range b.deck.Measured {
		m := &b.deck.Measured[i]
		name := word(m.What)
		if m.Mark != nil {
			name += " " + word(m.Mark)
		}
		switch word(m.What) {
		case "rectangle":
			s.add(b.rectangle(m, name))
		case "triangle":
			s.add(b.triangle(m, name))
		}
	}
	b.section(s)
}

// rectangle compares opposite sides before diagonals, since diagonals are equal
// on a trapezoid too, and the closure before both.
func (b *builder) rectangle(m *model.Measured, name string) Table {
	t := list(capital(name))
	if len(m.Sides) != 4 || len(m.Diagonals) != 2 {
		return t
	}
	sides := [4]measure.Length{m.Sides[0].V, m.Sides[1].V, m.Sides[2].V, m.Sides[3].V}
	diagonals := [2]measure.Length{m.Diagonals[0].V, m.Diagonals[1].V}
	r, err := geometry.CheckRectangle(sides, diagonals)
	if err != nil {
		t.row(text("these six make no figure"), text(err.Error()))
		return t
	}
	t.row(text("sides along the house differ by"), length(apart(sides[0], sides[2])))
	t.row(text("sides out from the house differ by"), length(apart(sides[1], sides[3])))
	t.row(text("the six measures miss each other by"), length(apart(r.Closure, 0)))
	t.row(text("diagonals differ by"), length(apart(diagonals[0], diagonals[1])))
	mean := (sides[0] + sides[2]) / 2
	if slide, err := geometry.Slide(mean, diagonals[0], diagonals[1]); err == nil && slide != 0 {
		way := "left"
		if slide < 0 {
			way = "right"
		}
		t.row(text("to square it, slide the front to the "+way+" by"), length(apart(slide, 0)))
	}
	if r.Sides != [2]measure.Length{} {
		t.Notes = append(t.Notes, "Opposite sides differ: settle them first. Equal diagonals would not make this a rectangle.")
	}
	if r.Closure != 0 {
		t.Notes = append(t.Notes, "Six measures are one more than fix a figure: where they miss by more than a tape is read to, measure again.")
	}
	return t
}

// triangle works the corner out from two legs and the diagonal.
func (b *builder) triangle(m *model.Measured, name string) Table {
	t := list(capital(name))
	if len(m.Legs) != 2 || m.Diagonal == nil {
		return t
	}
	x, y := m.Legs[0].V, m.Legs[1].V
	corner, err := geometry.CornerAngle(x, y, m.Diagonal.V)
	if err != nil {
		t.row(text("these three make no triangle"), text(err.Error()))
		return t
	}
	t.row(text("diagonal as measured"), length(m.Diagonal.V))
	t.row(text("diagonal if square"), length(geometry.Diagonal(x, y)))
	t.row(text("corner"), angle(degrees(corner)))
	return t
}

func capital(s string) string {
	if s == "" || s[0] < 'a' || s[0] > 'z' {
		return s
	}
	return fmt.Sprintf("%c%s", s[0]-'a'+'A', s[1:])
}
