package wood

import (
	"errors"
	"fmt"

	"plumbrule/checker/measure"
)

// Beam carries joists; its plies are in its lumber.
type Beam struct {
	Lumber Lumber
	// Tributary is the width of deck that it carries, as Tributary gives it.
	Tributary measure.Length
	Load      Load
	Limits    Limits
}

func (b Beam) flexure(title string, p Profile) (*flexure, error) {
	return b.Lumber.flexure(title, b.Load, inches(b.Tributary), "t", "tributary width", false, b.Limits, p)
}

// MaxSpan is the longest simple span between centers of posts. The error says that the tables do not have the lumber,
// or that the load makes no sense.
func (b Beam) MaxSpan(p Profile) (Span, error) {
	f, err := b.flexure("longest beam span", p)
	if err != nil {
		return Span{}, err
	}
	return f.maxSpan()
}

// MaxCantilever is the longest end of the beam beyond its last post. The errors are those of MaxSpan.
func (b Beam) MaxCantilever(backSpan measure.Length, p Profile) (Span, error) {
	f, err := b.flexure("longest beam cantilever", p)
	if err != nil {
		return Span{}, err
	}
	return f.maxCantilever(backSpan, true)
}

// MaxEqualSpan is the longest of a number of equal spans over which the beam runs unbroken, under every load pattern, to
// 1/1000 in. The errors are those of MaxSpan.
func (b Beam) MaxEqualSpan(spans int, p Profile) (Span, error) {
	if spans < 1 {
		return Span{}, errors.New("no span")
	}
	if spans == 1 {
		return b.MaxSpan(p)
	}
	excess := func(span measure.Length) (float64, Checks, error) {
		checks, err := b.Check(Equal(spans, span), p)
		if err != nil {
			return 0, Checks{}, err
		}
		return checks.Worst().Ratio() - 1, checks, nil
	}
	low, high := measure.Length(0), 100*measure.Foot
	if b.Limits.Longest > 0 {
		high = b.Limits.Longest
	}
	over, checks, err := excess(high)
	if err != nil {
		return Span{}, err
	}
	span := Span{Length: high, Governs: ByLongest, Report: checks.Report}
	if over <= 0 {
		return span, nil
	}
	for high-low > measure.Inch/1000 {
		mid := low + (high-low)/2
		over, checks, err = excess(mid)
		if err != nil {
			return Span{}, err
		}
		if over > 0 {
			high = mid
			continue
		}
		low = mid
		span = Span{Length: mid, Governs: checks.Worst().Criterion, Report: checks.Report}
	}
	return span, nil
}

// Check holds the unbroken beam in a layout against its limits, load patterns included.
func (b Beam) Check(l Layout, p Profile) (Checks, error) {
	f, err := b.flexure("beam", p)
	if err != nil {
		return Checks{}, err
	}
	return f.check(l)
}

// CheckPlies holds a built-up beam against its limits whose plies are in pieces. joints gives for each ply where its
// pieces meet, which has to be over a support; a ply without joints is unbroken. Every ply takes the same share of the
// load and is computed alone over the spans of each of its pieces, so that nails between plies are not counted on. The
// error says where a joint is off the supports.
func (b Beam) CheckPlies(l Layout, joints [][]measure.Length, p Profile) (Checks, error) {
	plies := max(b.Lumber.Plies, 1)
	if len(joints) != plies {
		return Checks{}, fmt.Errorf("joints of %d plies for a beam of %d", len(joints), plies)
	}
	whole, err := b.flexure("built-up beam", p)
	if err != nil {
		return Checks{}, err
	}
	var all Checks
	for i, at := range joints {
		pieces, err := l.pieces(at)
		if err != nil {
			return Checks{}, fmt.Errorf("ply %d: %w", i+1, err)
		}
		for k, piece := range pieces {
			checks, err := whole.ply(plies).check(piece)
			if err != nil {
				return Checks{}, fmt.Errorf("ply %d, piece %d: %w", i+1, k+1, err)
			}
			all = all.join(checks)
		}
	}
	return all, nil
}

// ply is one ply with its share of the load. Its adjusted bending value stays that of the whole beam.
func (f *flexure) ply(plies int) *flexure {
	one := *f
	one.working = f.fork()
	n := float64(plies)
	one.section.Plies = 1
	one.dead, one.imposed, one.bent = f.dead/n, f.imposed/n, f.bent/n
	one.stiffness = f.stiffness / n
	one.limits.TipLoad = forceOf(pounds(f.limits.TipLoad) / n)
	one.given("plies", n, "", "each takes the same share")
	one.find("w_D", "w_D / plies", one.dead, "plf")
	one.find("w_Q", "w_Q / plies", one.imposed, "plf")
	one.find("w", "w_D + w_Q", one.total(), "plf")
	one.find("w_Δ", "w_Δ / plies", one.bent, "plf")
	one.find("b", "b / plies", one.section.Width(), "in")
	one.find("A", "A / plies", one.section.Area(), "in²")
	one.find("S", "S / plies", one.section.Modulus(), "in³")
	one.find("EI", "EI / plies", one.stiffness, "lb·in²")
	return &one
}
