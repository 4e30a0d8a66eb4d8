package wood

import "plumbrule/checker/measure"

// Limits are what a bending member is held against besides its strength. What is zero is not looked at.
type Limits struct {
	Imposed int // span over its deflection under the imposed load, 360 for L/360
	Total   int // span over its deflection under the whole load
	Tip     int // cantilever over the deflection of its tip, 180 for a/180
	// TipRise holds the rise of the tip under imposed load on the spans alone against Tip as well. Few do: a joist that uses
	// up L/360 lifts any tip by more than a/180.
	TipRise bool
	TipLoad measure.Force // at the end of a cantilever, without the imposed load beside it
	Bearing measure.Length
	// ShearAtDepth leaves out the even load within a depth of a support, NDS 3.4.3.1.
	ShearAtDepth bool
	// Longest caps a span whatever its strength.
	Longest measure.Length
	// Quarter holds a cantilever to a quarter of its back span.
	Quarter bool
}

// CodeLimits are those that the joist and beam tables of the model residential code were evidently made with: L/360
// under imposed load, and 220 lb at the tip of a cantilever that is to move by no more than a/180 and to be no longer
// than a quarter of its back span. They are inferred from the tables, not read.
func CodeLimits() Limits {
	return Limits{Imposed: 360, Tip: 180, TipLoad: forceOf(220), Quarter: true}
}

// Criterion names what a member is held against.
type Criterion string

// The criteria.
const (
	ByBending           Criterion = "bending"
	ByBendingAtSupport  Criterion = "bending over the support"
	ByShear             Criterion = "shear"
	ByBearing           Criterion = "bearing"
	ByImposedDeflection Criterion = "deflection under imposed load"
	ByTotalDeflection   Criterion = "deflection under the whole load"
	ByTipDeflection     Criterion = "deflection of the tip under a force"
	ByTipUnderLoad      Criterion = "deflection of the tip under imposed load"
	ByTipRise           Criterion = "rise of the tip under imposed load on the span"
	ByLongest           Criterion = "longest span allowed"
	ByQuarter           Criterion = "a quarter of the back span"
)

// Bound is the length that one criterion allows.
type Bound struct {
	Criterion Criterion
	Length    measure.Length
}

// Span is the longest span or cantilever, and why it is no longer.
type Span struct {
	Length  measure.Length
	Governs Criterion
	Bounds  []Bound // of every criterion that was looked at
	Report  Report
}

// allowed collects what each criterion allows, in inches.
type allowed struct {
	bounds  []Bound
	symbols string
	least   float64
	governs Criterion
}

func (a *allowed) take(c Criterion, symbol string, length float64) {
	if len(a.bounds) == 0 || length < a.least {
		a.least, a.governs = length, c
	}
	if a.symbols != "" {
		a.symbols += ", "
	}
	a.symbols += symbol
	a.bounds = append(a.bounds, Bound{c, lengthOf(length)})
}

// span writes down the least of all.
func (a *allowed) span(w *working, symbol string) Span {
	w.find(symbol, "min("+a.symbols+")", a.least, "in")
	return Span{lengthOf(a.least), a.governs, a.bounds, w.report()}
}
