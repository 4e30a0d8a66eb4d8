package wood

import "fmt"

// Reference holds the reference design values of one species, grade and size, in psi, before adjustment.
type Reference struct {
	Species Species
	Grade   Grade
	Fb      float64 // bending
	Ft      float64 // tension parallel to grain
	Fv      float64 // shear parallel to grain
	FcPerp  float64 // compression perpendicular to grain, Fc⊥
	Fc      float64 // compression parallel to grain
	E       float64 // modulus of elasticity
	Emin    float64 // modulus of elasticity for stability
	G       float64 // specific gravity, for connections
	Table   string  // of the NDS Supplement: 4A, 4B or 4D
	Status  Status
	Note    string // how far the values can be trusted
}

// values are Fb, Ft, Fv, Fc⊥, Fc, E and Emin in psi.
type values struct{ fb, ft, fv, fcPerp, fc, e, emin float64 }

// row is a line of a table of the Supplement.
type row struct {
	species  Species
	grade    Grade
	upTo     float64 // greatest actual width in inches; 0 where the size factor is apart
	g        float64
	values   values
	standing standing
}

// standing says how a recalled row stands against printed span tables.
type standing uint8

const (
	unconfirmed   standing = iota
	governs                // some of its values govern cells of printed span tables, which come out
	lowConfidence          // remembered poorly
)

func (s standing) String() string {
	switch s {
	case governs:
		return "its row governs cells of printed span tables, which come out"
	case lowConfidence:
		return "remembered poorly"
	}
	return "not confirmed by a printed span table"
}

// Lookup gives the reference design values of a grade in a section. The error says that the section is outside the
// tables, or that the grade is not in the one that holds for it.
func Lookup(species Species, grade Grade, section Section) (Reference, error) {
	table, rows, err := tableFor(species, section)
	if err != nil {
		return Reference{}, err
	}
	for _, r := range rows {
		if r.species != species || !r.serves(grade) || r.upTo != 0 && min(section.Depth, 11.25) > r.upTo {
			continue
		}
		v := r.values
		return Reference{
			Species: species, Grade: r.grade,
			Fb: v.fb, Ft: v.ft, Fv: v.fv, FcPerp: v.fcPerp, Fc: v.fc, E: v.e, Emin: v.emin, G: r.g,
			Table: table, Status: Recalled, Note: r.standing.String(),
		}, nil
	}
	return Reference{}, fmt.Errorf("table %s has no %s %s here", table, species, grade)
}

// serves tells whether the row gives values for the grade. Groups that grade No. 1 and No. 2 as one serve both names.
func (r row) serves(grade Grade) bool {
	return r.grade == grade || r.grade == No1No2 && (grade == No1 || grade == No2)
}

func tableFor(species Species, section Section) (string, []row, error) {
	switch {
	case section.timber() && section.Depth > section.Breadth+2:
		return "", nil, fmt.Errorf("%s: wider than a post by more than 2 in, and no values for beams and stringers are here", section.Name)
	case section.timber():
		return "4D", table4D(), nil
	case section.Breadth < thinnest:
		return "", nil, fmt.Errorf("%s: thinner than dimension lumber", section.Name)
	case species == SouthernPine:
		return "4B", table4B(), nil
	}
	return "4A", table4A(), nil
}

// source names the document a reference value is from.
func (r Reference) source() string {
	return fmt.Sprintf("NDS Supplement Table %s, %s %s, %s", r.Table, r.Species, r.Grade, r.Note)
}
