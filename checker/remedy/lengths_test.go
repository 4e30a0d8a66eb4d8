package remedy

import (
	"testing"

	"plumbrule/checker/measure"
)

// What is typed anew reads back as what was meant, in the spelling of the old.
func TestTyped(t *testing.T) {
	const inch, mm = measure.Inch, measure.Millimetre
	for _, c := range []struct {
		length measure.Length
		system measure.System
		like   string
		want   string
	}{
		{36 * inch, measure.Imperial, "34 in", "36 in"},
		{36*inch + inch/2, measure.Imperial, "34-1/4 in", "36-1/2 in"},
		{3 * inch / 16, measure.Imperial, "1/8 in", "3/16 in"},
		{121 * inch, measure.Imperial, "9 ft 2 in", "10 ft 1 in"},
		{121 * inch, measure.Imperial, `9'-2"`, "10 ft 1 in"},
		{121 * inch, measure.Imperial, "110 in", "121 in"},
		{120 * inch, measure.Imperial, "9 ft", "10 ft"},
		{6 * inch, measure.Imperial, "1 ft", "6 in"},
		{inch + inch/3, measure.Imperial, "1 in", "1.333333 in"},
		{2400 * mm, measure.Metric, "2.4 m", "2400 mm"},
		{mm * 3 / 2, measure.Metric, "2 mm", "1.5 mm"},
	} {
		got := typed(c.length, c.system, c.like)
		if got != c.want {
			t.Errorf("%d like %s: %q, want %q", c.length, c.like, got, c.want)
		}
		read, _, err := measure.ParseLength(got)
		if off := read - c.length; err != nil || off > 25 || off < -25 {
			t.Errorf("%q reads as %d, meant %d: %v", got, read, c.length, err)
		}
	}
}

func TestRound(t *testing.T) {
	for _, c := range []struct{ l, size, way, want measure.Length }{
		{35, 10, 1, 40}, {35, 10, -1, 30}, {40, 10, 1, 40}, {40, 10, -1, 40},
	} {
		if got := round(c.l, c.size, c.way); got != c.want {
			t.Errorf("round(%d, %d, %d) = %d, want %d", c.l, c.size, c.way, got, c.want)
		}
	}
}
