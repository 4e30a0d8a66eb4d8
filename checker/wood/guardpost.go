package wood

import (
	"errors"

	"plumbrule/checker/measure"
)

// GuardPost is a post fixed to the rim by an upper and a lower connector, with a force out or in at the top of the guard.
type GuardPost struct {
	Force  measure.Force  // 200 lb in the model residential code
	Height measure.Length // of the force above the deck surface
	// Upper and Lower are the depths of the two connectors below the deck surface.
	Upper, Lower measure.Length
	// Fixity is the depth below the surface at which the post is first held, for its own bending; 0 for the surface.
	Fixity measure.Length
}

// GuardBase is what the force does to the post's fixing.
type GuardBase struct {
	Moment  float64       // lb·ft, where the post is first held
	Tension measure.Force // in the upper connector, which the hold-down takes
	Press   measure.Force // against the lower connector
	Lever   measure.Length
	Report  Report
}

// Base finds the moment and the pair of forces by statics. The error says that the lower connector is not below the upper
// one.
func (g GuardPost) Base() (GuardBase, error) {
	if g.Force <= 0 || g.Height <= 0 {
		return GuardBase{}, errors.New("a guard post needs a force and a height")
	}
	if g.Upper < 0 || g.Lower <= g.Upper || g.Fixity < 0 || g.Fixity > g.Lower {
		return GuardBase{}, errors.New("the lower connector is not below the upper one")
	}
	w := &working{Report{Title: "guard post"}}
	w.assume("one post takes the whole force; the fixing is two forces, without friction or prying")
	p := w.given("P", pounds(g.Force), "lb", "force at the top")
	h := w.given("h", inches(g.Height), "in", "above the deck surface")
	up := w.given("u", inches(g.Upper), "in", "upper connector below the surface")
	low := w.given("l", inches(g.Lower), "in", "lower connector below the surface")
	fix := w.given("f", inches(g.Fixity), "in", "first held below the surface")
	lever := w.find("z", "l - u", low-up, "in")
	moment := w.find("M", "P · (h + f) / 12", p*(h+fix)/12, "lb·ft")
	tension := w.find("T", "P · (h + l) / z", p*(h+low)/lever, "lb")
	press := w.find("C", "P · (h + u) / z", p*(h+up)/lever, "lb")
	return GuardBase{moment, forceOf(tension), forceOf(press), lengthOf(lever), w.report()}, nil
}

// Bending holds the post itself against the moment at its point of fixity. The duration of a guard force is the caller's
// to choose; ten minutes is common practice. The errors are those of Base and of Lumber.Adjust.
func (g GuardPost) Bending(l Lumber, d Duration, p Profile) (Checks, error) {
	base, err := g.Base()
	if err != nil {
		return Checks{}, err
	}
	w := (&working{base.Report}).fork()
	a, err := l.adjusting(d, false, p, w)
	if err != nil {
		return Checks{}, err
	}
	a.section.put(w)
	allowed, err := a.bending()
	if err != nil {
		return Checks{}, err
	}
	moment, _ := w.Find("M")
	fb := w.find("fb", "12 · M / S", 12*moment.Value/a.section.Modulus(), "psi")
	demand := Demand{ByBending, g.Fixity, fb, allowed, "psi"}
	return Checks{Demands: []Demand{demand}, Report: w.report()}, nil
}
