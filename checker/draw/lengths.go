package draw

import (
	"math"
	"strconv"
	"strings"

	"plumbrule/checker/facts"
	"plumbrule/checker/measure"
)

// length prints a dimension: as a tape shows it, in sixteenths where it is
// finer, or in whole millimetres without the unit.
func (f *figure) length(l measure.Length) string {
	if f.system == measure.Metric {
		return strconv.FormatInt(int64(math.Round(float64(l)/float64(measure.Millimetre))), 10)
	}
	const sixteenth, sixtyFourth = measure.Inch / 16, measure.Inch / 64
	if l%sixteenth != 0 && l%sixtyFourth == 0 {
		return l.Text(measure.Imperial)
	}
	return l.Sixteenths()
}

// exact prints a length with its unit and all its figures, as for risers.
func (f *figure) exact(l measure.Length) string { return l.Text(f.system) }

// value prints a length for a note, with its unit: heights and sizes under four
// feet in inches, as people speak of them.
func (f *figure) value(l measure.Length) string {
	const sixteenth, sixtyFourth = measure.Inch / 16, measure.Inch / 64
	switch {
	case f.system == measure.Metric:
		return f.length(l) + " mm"
	case l%sixtyFourth == 0:
		return l.Text(measure.Imperial)
	}
	return ((l + sixteenth/2) / sixteenth * sixteenth).Text(measure.Imperial)
}

// text gives the words of a fact, "" where it is not shown.
func text(w *facts.Words) string {
	if w == nil {
		return ""
	}
	return w.Value
}

// spaced joins what is not empty.
func spaced(parts ...string) string {
	var list []string
	for _, p := range parts {
		if p != "" {
			list = append(list, p)
		}
	}
	return strings.Join(list, " ")
}

// counted is "1 post", "3 posts".
func counted(n int64, one string) string {
	if n == 1 {
		return "1 " + one
	}
	return strconv.FormatInt(n, 10) + " " + one + "s"
}
