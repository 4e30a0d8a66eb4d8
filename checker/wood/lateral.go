package wood

import (
	"errors"
	"math"

	"plumbrule/checker/measure"
)

// Row is a row of fasteners in the direction of the force, for the group action factor Cg of NDS 11.3.6.
type Row struct {
	Count   int
	Spacing measure.Length
	// MainStiffness and SideStiffness are E·A of the members in lb.
	MainStiffness, SideStiffness float64
	Steel                        bool // one of the members is steel
}

// Group gives Cg for a dowel of the diameter, from memory of NDS equation 11.3-1. A single fastener, and one thinner
// than 1/4 in, has 1. The error says that the row has no fasteners or a member no stiffness.
func (r Row) Group(diameter measure.Length) (float64, error) {
	if r.Count < 1 {
		return 0, errors.New("no fastener in the row")
	}
	d := inches(diameter)
	if r.Count == 1 || d < 0.25 {
		return 1, nil
	}
	if r.MainStiffness <= 0 || r.SideStiffness <= 0 || r.Spacing <= 0 {
		return 0, errors.New("a row needs a spacing, and its members a stiffness")
	}
	slip := 180_000.0
	if r.Steel {
		slip = 270_000
	}
	gamma := slip * math.Pow(d, 1.5)
	u := 1 + gamma*inches(r.Spacing)/2*(1/r.MainStiffness+1/r.SideStiffness)
	m := u - math.Sqrt(u*u-1)
	ratio := min(r.MainStiffness/r.SideStiffness, r.SideStiffness/r.MainStiffness)
	n := float64(r.Count)
	mn := math.Pow(m, n)
	return m * (1 - mn*mn) / (n * ((1+ratio*mn)*(1+m) - 1 + mn*mn)) * (1 + ratio) / (1 - m), nil
}

// ConnectionService is what a connection goes through, NDS 11.3.3.
type ConnectionService uint8

// The cases. The zero value is dry when made and in service.
const (
	DryThroughout ConnectionService = iota
	WetInService                    // whatever it was when made
	WetThenDry                      // made of wet wood that dries, in several rows or with steel side plates
)

// Factor is CM of a dowel connection, from memory of NDS Table 11.3.3.
func (s ConnectionService) Factor() float64 {
	switch s {
	case WetInService:
		return 0.7
	case WetThenDry:
		return 0.4
	}
	return 1
}

// Adjusted gives Z′ = Z·CD·CM·Cg of one fastener. group is Cg, 1 for a single fastener.
func (y Yield) Adjusted(d Duration, s ConnectionService, group float64) (measure.Force, Report) {
	w := (&working{y.Report}).fork()
	z, _ := w.Find("Z")
	cd := w.put("CD", d.Factor(), "", Recalled, "NDS 2.3.2, "+d.String())
	cm := w.put("CM", s.Factor(), "", Recalled, "NDS 11.3.3")
	w.given("Cg", group, "", "NDS 11.3.6")
	value := w.find("Z′", "Z · CD · CM · Cg", z.Value*cd*cm*group, "lb")
	return forceOf(value), w.report()
}
