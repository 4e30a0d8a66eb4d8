package wood

import "plumbrule/checker/measure"

// Joist is one of a row of equal joists that decking joins.
type Joist struct {
	Lumber  Lumber
	Spacing measure.Length // center to center
	Load    Load
	Limits  Limits
}

func (j Joist) flexure(title string, p Profile) (*flexure, error) {
	const widest = 24 * measure.Inch // for Cr, NDS 4.3.9
	return j.Lumber.flexure(title, j.Load, inches(j.Spacing), "s", "spacing", j.Spacing <= widest, j.Limits, p)
}

// MaxSpan is the longest simple span between centers of bearing. The error says that the tables do not have the lumber,
// or that the load makes no sense.
func (j Joist) MaxSpan(p Profile) (Span, error) {
	f, err := j.flexure("longest joist span", p)
	if err != nil {
		return Span{}, err
	}
	return f.maxSpan()
}

// MaxCantilever is the longest cantilever beyond a back span between centers of bearing. It looks at the strength of the
// member and at its tip under every load pattern; the back span itself is not checked. The errors are those of MaxSpan.
func (j Joist) MaxCantilever(backSpan measure.Length, p Profile) (Span, error) {
	f, err := j.flexure("longest joist cantilever", p)
	if err != nil {
		return Span{}, err
	}
	return f.maxCantilever(backSpan, true)
}

// Check holds the joist in a layout against its limits, load patterns included.
func (j Joist) Check(l Layout, p Profile) (Checks, error) {
	f, err := j.flexure("joist", p)
	if err != nil {
		return Checks{}, err
	}
	return f.check(l)
}
