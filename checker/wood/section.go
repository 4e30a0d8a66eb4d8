package wood

import (
	"fmt"

	"plumbrule/checker/measure"
)

// Section is the actual cross section of a member, in inches, standing on its narrow face. Breadth is that of one ply.
type Section struct {
	Name           string
	Breadth, Depth float64 // b and d of NDS 3.1
	Plies          int
}

// thinnest and thickest bound dimension lumber, 2 to 4 in nominal; from 5 in nominal on it is timber.
const (
	thinnest = 1.5
	thickest = 4
)

// SectionOf gives the section of one or more plies of a size. The error says that there are no plies or no size.
func SectionOf(size measure.Size, plies int) (Section, error) {
	if plies < 1 {
		return Section{}, fmt.Errorf("%d plies", plies)
	}
	if size.Thickness <= 0 || size.Depth <= 0 {
		return Section{}, fmt.Errorf("no size")
	}
	s := Section{Name: size.Text(measure.Imperial), Breadth: inches(size.Thickness), Depth: inches(size.Depth), Plies: plies}
	if plies > 1 {
		s.Name = fmt.Sprintf("%d-%s", plies, s.Name)
	}
	return s, nil
}

// Width is the breadth of all plies together, in inches.
func (s Section) Width() float64 { return float64(s.Plies) * s.Breadth }

// Area is A in square inches.
func (s Section) Area() float64 { return s.Width() * s.Depth }

// Modulus is S about the strong axis, in cubic inches.
func (s Section) Modulus() float64 { return s.Area() * s.Depth / 6 }

// Inertia is I about the strong axis, in in⁴.
func (s Section) Inertia() float64 { return s.Modulus() * s.Depth / 2 }

// Flat is the section lying on its wide face. Plies that lie flat are not glued to each other, so each bends alone.
func (s Section) Flat() Section {
	s.Breadth, s.Depth = s.Depth, s.Breadth
	return s
}

func (s Section) timber() bool { return min(s.Breadth, s.Depth) > thickest }

// put records the section properties.
func (s Section) put(w *working) {
	w.given("b", s.Width(), "in", s.Name)
	w.given("d", s.Depth, "in", s.Name)
	w.find("A", "b · d", s.Area(), "in²")
	w.find("S", "b · d² / 6", s.Modulus(), "in³")
	w.find("I", "b · d³ / 12", s.Inertia(), "in⁴")
}
