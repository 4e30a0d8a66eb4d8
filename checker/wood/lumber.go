package wood

import (
	"errors"
	"fmt"

	"plumbrule/checker/measure"
)

// Lumber is a sawn member and the service it is in.
type Lumber struct {
	Species     Species
	Grade       Grade
	Size        measure.Size // of one ply
	Plies       int          // 0 counts as 1
	Wet         bool         // above 19 % moisture for long, NDS 4.1.4; outdoors in most places
	Incised     bool         // slit for preservative treatment
	Temperature Temperature
	Flat        bool  // loaded on its wide face
	Brace       Brace // what holds the compression edge
}

// Adjusted holds the adjusted design values of a member in psi, for NDS 4.3, without CP and Cb, which depend on a
// height or a bearing.
type Adjusted struct {
	Fb, Fv, FcPerp, Fc, E, Emin float64
	Report                      Report
}

// Adjust gives the adjusted design values. repetitive says that it is one of three or more at most 24 in apart that a
// floor joins. The error says that the tables do not have the lumber.
func (l Lumber) Adjust(d Duration, repetitive bool, p Profile) (Adjusted, error) {
	a, err := l.adjusting(d, repetitive, p, &working{Report{Title: "adjusted design values"}})
	if err != nil {
		return Adjusted{}, err
	}
	v := Adjusted{Fv: a.value(shear), FcPerp: a.value(bearing), Fc: a.value(compression), E: a.value(elasticity), Emin: a.value(stability)}
	if v.Fb, err = a.bending(); err != nil {
		return Adjusted{}, err
	}
	v.Report = a.report()
	return v, nil
}

// adjusting multiplies reference design values by their factors and writes it down.
type adjusting struct {
	*working
	lumber     Lumber
	section    Section // as it is loaded
	reference  Reference
	duration   Duration
	repetitive bool
	profile    Profile
}

func (l Lumber) adjusting(d Duration, repetitive bool, p Profile, w *working) (*adjusting, error) {
	section, err := SectionOf(l.Size, max(l.Plies, 1))
	if err != nil {
		return nil, err
	}
	ref, err := Lookup(l.Species, l.Grade, section)
	if err != nil {
		return nil, err
	}
	if l.Flat {
		if section.timber() {
			return nil, fmt.Errorf("%s: no flat use factor for timbers is here", section.Name)
		}
		section = section.Flat()
	}
	if p.Name != "" {
		w.assume(p.Name)
	}
	return &adjusting{w, l, section, ref, d, repetitive, p}, nil
}

// factor is an adjustment factor, ready to be written down.
type factor struct {
	name   string
	value  float64
	note   string
	status Status
}

// value gives an adjusted value other than Fb.
func (a *adjusting) value(p property) float64 {
	base := [...]float64{a.reference.Fb, a.reference.Fv, a.reference.FcPerp, a.reference.Fc, a.reference.E, a.reference.Emin}[p]
	_, compressionSize, note := a.sizeFactors()
	size := 1.0
	var factors []factor
	if p == shear || p == compression {
		factors = append(factors, a.durationFactor())
	}
	if p == compression {
		size = compressionSize
		factors = append(factors, factor{"CF_Fc", size, note, Recalled})
	}
	symbol := p.symbol()
	return a.multiply(symbol, symbol+"′", base, append(factors, a.serviceFactors(p, size)...))
}

func (a *adjusting) durationFactor() factor {
	return factor{"CD", a.duration.Factor(), "NDS 2.3.2, " + a.duration.String(), Recalled}
}

// serviceFactors are CM, Ct and Ci.
func (a *adjusting) serviceFactors(p property, size float64) []factor {
	cm, note := 1.0, "dry"
	if a.lumber.Wet {
		cm, note = wet(p, a.reference, size)
	}
	ci, cut := 1.0, "not incised"
	if a.lumber.Incised {
		ci, cut = incising(p), "NDS 4.3.8, incised"
	}
	symbol := p.symbol()
	return []factor{
		{"CM_" + symbol, cm, note, Recalled},
		{"Ct_" + symbol, heat(p, a.lumber.Temperature, a.lumber.Wet), "NDS 2.3.3, temperature", Recalled},
		{"Ci_" + symbol, ci, cut, Recalled},
	}
}

// multiply writes down a reference value, its factors and their product.
func (a *adjusting) multiply(symbol, result string, base float64, factors []factor) float64 {
	product := a.put(symbol, base, "psi", a.reference.Status, a.reference.source())
	formula := symbol
	for _, f := range factors {
		product *= a.put(f.name, f.value, "", f.status, f.note)
		formula += " · " + f.name
	}
	return a.find(result, formula, product, "psi")
}

// bending gives Fb′, with the beam stability factor CL if the compression edge is free.
func (a *adjusting) bending() (float64, error) {
	size, _, note := a.sizeFactors()
	use := 1.0
	if a.lumber.Flat {
		// Tabulated bending values and their size factor hold on edge; on the flat Cfu comes on top, NDS 4.3.7.
		use = flatUse(a.section.Breadth, a.section.Depth)
	}
	factors := append([]factor{a.durationFactor(), {"CF", size, note, Recalled}}, a.serviceFactors(bending, size)...)
	factors = append(factors, a.repetitiveFactor())
	if a.lumber.Brace.free() && !a.lumber.Flat && a.section.Depth > a.section.Breadth {
		starred := a.multiply("Fb", "Fb*", a.reference.Fb, factors)
		emin := a.value(stability)
		cl, err := a.lumber.Brace.factor(a.working, a.section, starred, emin)
		if err != nil {
			return 0, err
		}
		return a.find("Fb′", "Fb* · CL", starred*cl, "psi"), nil
	}
	note = "NDS 3.3.3, compression edge held along its length"
	if a.section.Depth <= a.section.Breadth {
		note = "NDS 3.3.3, not deeper than wide"
	}
	factors = append(factors, factor{"CL", 1, note, Given}, factor{"Cfu", use, "NDS 4.3.7", Recalled})
	return a.multiply("Fb", "Fb′", a.reference.Fb, factors), nil
}

// repetitiveFactor is Cr of NDS 4.3.9, for dimension lumber.
func (a *adjusting) repetitiveFactor() factor {
	const granted = 1.15
	switch {
	case a.section.timber():
		return factor{"Cr", 1, "NDS 4.3.9 grants timbers none", Recalled}
	case a.repetitive || a.section.Plies >= 3:
		return factor{"Cr", granted, "NDS 4.3.9, three or more members", Recalled}
	case a.section.Plies == 2 && a.profile.TwoPlyFactor != 0:
		return factor{"Cr", a.profile.TwoPlyFactor, "two plies; the NDS grants none", Fitted}
	}
	return factor{"Cr", 1, "NDS 4.3.9, fewer than three members", Recalled}
}

func (a *adjusting) sizeFactors() (fb, fc float64, note string) {
	onEdge := a.section
	if a.lumber.Flat {
		onEdge = a.section.Flat()
	}
	return sizeFactors(a.reference, onEdge, a.profile.NarrowSizeFactor)
}

var errTooSlender = errors.New("slenderness above 50, which the NDS does not allow")
