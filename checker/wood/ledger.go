package wood

import (
	"math"

	"plumbrule/checker/measure"
)

// LedgerFastener is a fastener of the ledger table of the model residential code, 1/2 in each, through sheathing into a
// 2-in nominal band joist unless said otherwise.
type LedgerFastener uint8

// The rows of the table.
const (
	LedgerLag           LedgerFastener = iota
	LedgerBolt                         // through bolt
	LedgerBoltWashers                  // through bolt, 1/2 in of stacked washers or 1 in of sheathing
	LedgerLagEWP                       // lag into 1 in of engineered wood
	LedgerLagEWPThicker                // lag into 1-1/8 in of engineered wood
)

// Tested is what one fastener carries at CD 1. The figures are fitted to the printed spacings, which rest on laboratory
// tests (Structure magazine, May 2008) and not on the NDS: the detail is outside its scope, and its yield equations give
// much less.
func (f LedgerFastener) Tested() measure.Force {
	switch f {
	case LedgerBolt:
		return forceOf(713.5)
	case LedgerBoltWashers:
		return forceOf(604)
	case LedgerLagEWP:
		return forceOf(292)
	case LedgerLagEWPThicker:
		return forceOf(345)
	}
	return forceOf(375)
}

// LedgerSpacing is how far apart, center to center along the ledger, fasteners of a capacity may be that carry half of a
// joist span. Nothing is rounded and nothing capped. The error says that the load or the span makes no sense.
func LedgerSpacing(each measure.Force, joistSpan measure.Length, load Load) (Span, error) {
	if err := load.check(); err != nil {
		return Span{}, err
	}
	if err := positive("the joist span", joistSpan); err != nil {
		return Span{}, err
	}
	w := &working{Report{Title: "ledger fasteners"}}
	w.assume("the ledger carries half of the joist span; joists do not go on beyond it")
	z := w.given("Z", pounds(each), "lb", "one fastener at CD 1")
	cd := w.put("CD", load.Duration.Factor(), "", Recalled, "NDS 2.3.2, "+load.Duration.String())
	half := w.find("t", "L / 2", w.given("L", inches(joistSpan), "in", "joist span")/2, "in")
	dead, imposed := load.put(w, half, "t", "")
	spacing := w.find("s", "12 · Z · CD / w", 12*z*cd/(dead+imposed), "in")
	return Span{lengthOf(spacing), ByFastener, []Bound{{ByFastener, lengthOf(spacing)}}, w.report()}, nil
}

// ByFastener is the strength of a fastener.
const ByFastener Criterion = "fastener"

// TableLedgerSpacing repeats Table R507.9.1.3: spacings to the nearest inch and at most 36 in.
func TableLedgerSpacing(f LedgerFastener, joistSpan measure.Length, load Load) (Span, error) {
	s, err := LedgerSpacing(f.Tested(), joistSpan, load)
	if err != nil {
		return Span{}, err
	}
	for i := range s.Report.Steps {
		if s.Report.Steps[i].Name == "Z" {
			s.Report.Steps[i].Status = Fitted
			s.Report.Steps[i].Note = "from tests, by the printed spacings; not NDS"
		}
	}
	const widest = 36
	exact := inches(s.Length)
	rounded := math.Floor(exact + 0.5)
	w := &working{s.Report}
	w.find("s_t", "min(36, round(s))", min(widest, rounded), "in")
	if rounded > widest {
		s.Governs = ByLongest
	}
	s.Length, s.Report = lengthOf(min(widest, rounded)), w.report()
	return s, nil
}
