package fieldsheet

import (
	"strconv"

	"plumbrule/checker/measure"
)

// stockLengths are the lengths that lumber and boards are sold in, ascending:
// even feet from 8 to 24, or steps of 300 mm from 2.4 m to 6 m (common practice).
func (b *builder) stockLengths() []measure.Length {
	first, step, last := 8*measure.Foot, 2*measure.Foot, 24*measure.Foot
	if b.sys == measure.Metric {
		first, step, last = 2400*measure.Millimetre, 300*measure.Millimetre, 6*measure.Metre
	}
	var list []measure.Length
	for l := first; l <= last; l += step {
		list = append(list, l)
	}
	return list
}

// stock is the shortest stock length that a piece comes out of; 0 for one that
// is longer than any.
func (b *builder) stock(piece measure.Length) measure.Length {
	for _, l := range b.stockLengths() {
		if piece <= l {
			return l
		}
	}
	return 0
}

// stockText names a stock length as it is asked for at the yard.
func (b *builder) stockText(l measure.Length) string {
	if b.sys == measure.Metric {
		return l.Text(measure.Metric)
	}
	return strconv.FormatInt(int64(l/measure.Foot), 10) + " ft"
}
