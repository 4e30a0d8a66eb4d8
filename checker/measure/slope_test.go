package measure

import (
	"math"
	"math/rand/v2"
	"testing"
)

func TestParseSlope(t *testing.T) {
	for _, group := range []struct {
		want    Slope
		text    string
		percent float64
		typed   []string
	}{
		{Slope{1, 60}, "1 in 60 (1.67%)", 1.666667, []string{"1 in 60", "1:60", "1 : 60", "2 in 120", "0.5 in 30", "½ in 30", "0.2 in per ft", "1 IN 60"}},
		{Slope{1, 48}, "1 in 48 (2.08%)", 2.083333, []string{"1/4 in per ft", `1/4" per ft`, `1/4"/ft`, "0.25 in/ft", "¼ in. per foot", "1:48", "1/4 in 12"}},
		{Slope{1, 50}, "1 in 50 (2%)", 2, []string{"2%", "2.0 %", "1 in 50", "20 mm per m", "2 cm/m", "20 millimetres per metre"}},
		{Slope{3, 200}, "1 in 66.67 (1.5%)", 1.5, []string{"1.5%", "1-1/2%", "3 in 200"}},
		{Slope{2, 25}, "1 in 12.5 (8%)", 8, []string{"1 in 12.5", "8%"}},
		{Slope{1, 12}, "1 in 12 (8.33%)", 8.333333, []string{"1 in 12", "1 in per ft"}},
		{Slope{2, 1}, "1 in 0.5 (200%)", 200, []string{"2:1", "200%"}},
		{Slope{20833, 1_000_000}, "1 in 48 (2.0833%)", 2.0833, []string{"2.0833%"}},
		{Slope{0, 1}, "level (0%)", 0, []string{"level", "0%", "0 in 60", "0 in per ft", "-0%"}},
		{Slope{-1, 50}, "-1 in 50 (-2%)", -2, []string{"-2%", "-1 in 50", "−20 mm per m"}},
	} {
		for _, text := range group.typed {
			got, err := ParseSlope(text)
			if err != nil || got != group.want {
				t.Errorf("ParseSlope(%q) = %v, %v; want %v", text, got, err, group.want)
			}
		}
		if got := group.want.Text(Imperial); got != group.text {
			t.Errorf("%v prints as %s, want %s", group.want, got, group.text)
		}
		if percent, unit := group.want.In(Metric); percent != group.percent || unit != "%" {
			t.Errorf("%v counts as %v %s, want %v %%", group.want, percent, unit, group.percent)
		}
	}
}

func TestParseSlopeRefusals(t *testing.T) {
	for _, c := range []struct{ text, want string }{
		{"2", `slope "2": no unit; write 2% or 1 in 2`},
		{"0", `slope "0": no unit; write 0%`},
		{"1/48", `slope "1/48": no unit; write 1 in 48 or 1/48 in per ft`},
		{"1 in 0", `slope "1 in 0": a run of zero`},
		{"1:0.0", `slope "1:0.0": a run of zero`},
		{"1 in 12 in", `slope "1 in 12 in": unexpected " in" behind the run; write 1 in 12`},
		{"1/4 in", `slope "1/4 in": a rise in in needs "per ft" behind it; write 1/4 in per ft`},
		{"10 mm per ft", `slope "10 mm per ft": a rise in mm needs "per m" behind it; write 10 mm per m`},
		{"1 to 48", `slope "1 to 48": unexpected "to 48", expected a slope such as 1 in 60, 2% or 1/4 in per ft; write 1 in 48`},
		{"2 % down", `slope "2 % down": unexpected " down" behind the percent sign`},
		{"9-5/4%", `slope "9-5/4%": a whole number with a fraction of one or more; write 10.25%`},
		{"1 in 9-5/4", `slope "1 in 9-5/4": a whole number with a fraction of one or more; write 1 in 10.25`},
		{"0.00000000001%", `slope "0.00000000001%": its ratio has terms above 1e9`},
		{"1 in", `slope "1 in": a rise in in needs "per ft" behind it; write 1 in per ft`},
		{"steep", `slope "steep": does not start with a number`},
	} {
		if got, err := ParseSlope(c.text); err == nil || err.Error() != c.want {
			t.Errorf("ParseSlope(%q) = %v, %v; want %s", c.text, got, err, c.want)
		}
	}
}

func TestNewSlope(t *testing.T) {
	for _, c := range []struct {
		rise, run int64
		want      Slope
		ok        bool
	}{
		{int64(Inch) / 4, int64(Foot), Slope{1, 48}, true},
		{-3, 6, Slope{-1, 2}, true},
		{3, -6, Slope{-1, 2}, true},
		{0, 5, Slope{0, 1}, true},
		{1, 0, Slope{}, false},
		{maxSlopeTerm + 1, 2, Slope{}, false},
		{math.MinInt64, 1, Slope{}, false},
		{1, maxSlopeTerm + 1, Slope{}, false},
	} {
		got, err := NewSlope(c.rise, c.run)
		if got != c.want || (err == nil) != c.ok {
			t.Errorf("NewSlope(%d, %d) = %v, %v; want %v, ok %t", c.rise, c.run, got, err, c.want, c.ok)
		}
	}
}

func TestSlopeCmp(t *testing.T) {
	for _, c := range []struct {
		a, b Slope
		want int
	}{
		{Slope{1, 60}, Slope{1, 48}, -1},
		{Slope{1, 48}, Slope{1, 60}, 1},
		{Slope{1, 50}, Slope{1, 50}, 0},
		{Slope{2, 100}, Slope{1, 50}, 0},
		{Slope{-1, 50}, Slope{0, 1}, -1},
		{Slope{}, Slope{0, 1}, 0},
		{Slope{math.MaxInt64, math.MaxInt64 - 1}, Slope{1, 1}, 1}, // cross-multiplied in int64 this would overflow
	} {
		if got := c.a.Cmp(c.b); got != c.want {
			t.Errorf("%v against %v is %d, want %d", c.a, c.b, got, c.want)
		}
	}
	random := rand.New(rand.NewPCG(5, 6))
	for range 10_000 {
		a := Slope{random.Int64N(1000) - 500, 1 + random.Int64N(1000)}
		b := Slope{random.Int64N(1000) - 500, 1 + random.Int64N(1000)}
		d := a.Rise*b.Run - b.Rise*a.Run
		if got := a.Cmp(b); (got < 0) != (d < 0) || (got > 0) != (d > 0) || got != -b.Cmp(a) {
			t.Fatalf("%v against %v is %d, cross product %d", a, b, got, d)
		}
	}
}
