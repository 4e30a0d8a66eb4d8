package measure

import (
	"math"
	"math/rand/v2"
	"testing"
)

func mustLength(t *testing.T, text string) Length {
	t.Helper()
	l, _, err := ParseLength(text)
	if err != nil {
		t.Fatal(err)
	}
	return l
}

func TestLengthText(t *testing.T) {
	for _, c := range []struct{ text, imperial, metric string }{
		{`7-3/4 in`, `7-3/4"`, `196.85 mm`},
		{`80 in`, `6'-8"`, `2032 mm`},
		{`20 ft 8-13/16 in`, `20'-8 13/16"`, `6319.838 mm`},
		{`1143 mm`, `45"`, `1143 mm`},
		{`48 in`, `48"`, `1219.2 mm`},
		{`48-1/64 in`, `4'-0 1/64"`, `1219.597 mm`},
		{`5 ft`, `5'-0"`, `1524 mm`},
		{`0 in`, `0"`, `0 mm`},
		{`1/64 in`, `1/64"`, `0.397 mm`},
		{`-7-3/4 in`, `-7-3/4"`, `-196.85 mm`},
		{`-6 ft 8 in`, `-6'-8"`, `-2032 mm`},
		{`52/7 in`, `7.4286"`, `188.686 mm`}, // 52 in in seven risers
		{`1143/7 mm`, `6.4286"`, `163.286 mm`},
		{`3820 mm`, `12'-6.3937"`, `3820 mm`},
		{`1523.9999 mm`, `5'-0"`, `1524 mm`}, // rounding reaches the next foot
		{`0.000001 mm`, `0"`, `0 mm`},
		{`-0.000001 mm`, `0"`, `0 mm`},
	} {
		l := mustLength(t, c.text)
		if got := l.Text(Imperial); got != c.imperial {
			t.Errorf("%s prints imperial as %s, want %s", c.text, got, c.imperial)
		}
		if got := l.Text(Metric); got != c.metric {
			t.Errorf("%s prints metric as %s, want %s", c.text, got, c.metric)
		}
	}
}

func TestLengthIn(t *testing.T) {
	l := 8 * Inch
	if value, unit := l.In(Imperial); value != 8 || unit != "in" {
		t.Errorf("8 in is %v %s", value, unit)
	}
	if value, unit := l.In(Metric); value != 203.2 || unit != "mm" {
		t.Errorf("8 in is %v %s, want 203.2 mm", value, unit)
	}
	if value, _ := (52 * Inch / 7).In(Imperial); value != 7.428571 {
		t.Errorf("52/7 in is %v in, want 7.428571", value)
	}
}

// The texts cover the extremes of the type, which no parser yields and a subtraction might.
func TestLengthTextExtremes(t *testing.T) {
	for _, c := range []struct {
		length Length
		want   string
	}{
		{math.MaxInt64, `30260406945'-0.7392"`},
		{math.MinInt64, `-30260406945'-0.7392"`},
	} {
		if got := c.length.Text(Imperial); got != c.want {
			t.Errorf("Length(%d) prints as %s, want %s", int64(c.length), got, c.want)
		}
	}
}

func TestLengthTextReadsBack(t *testing.T) {
	const hundredth = Millimetre / 100
	check := func(want Length, sys System) {
		text := want.Text(sys)
		got, back, err := ParseLength(text)
		if err != nil || got != want || back != sys {
			t.Fatalf("%d nm prints as %q and reads back as %d, %v, %v", want, text, got, back, err)
		}
	}
	for l := Length(0); l <= 100*Foot; l += sixtyFourth {
		check(l, Imperial)
	}
	for l := Length(0); l <= 30*Metre; l += 37 * hundredth {
		check(l, Metric)
	}
	random := rand.New(rand.NewPCG(1, 2))
	for range 20_000 {
		check(Length(random.Int64N(int64(30*Metre/hundredth)))*hundredth, Metric)
		check(-Length(random.Int64N(int64(100*Foot/sixtyFourth)))*sixtyFourth, Imperial)
	}
}

// Marks of equally spaced joists, worked by hand: (length out to out - thickness) x index / bays.
func TestSixteenths(t *testing.T) {
	const thickness = 3 * Inch / 2
	for _, c := range []struct {
		length      string
		bays, index Length
		want        string
	}{
		{`11' 7-1/4"`, 9, 0, `0"`}, {`11' 7-1/4"`, 9, 1, `1'-3 5/16"`}, {`11' 7-1/4"`, 9, 2, `2'-6 5/8"`},
		{`11' 7-1/4"`, 9, 3, `3'-9 15/16"`}, {`11' 7-1/4"`, 9, 4, `5'-1 1/4"`}, {`11' 7-1/4"`, 9, 5, `6'-4 1/2"`},
		{`11' 7-1/4"`, 9, 6, `7'-7 13/16"`}, {`11' 7-1/4"`, 9, 7, `8'-11 1/8"`}, {`11' 7-1/4"`, 9, 8, `10'-2 7/16"`},
		{`11' 7-1/4"`, 9, 9, `11'-5 3/4"`},
		{`18 ft`, 14, 4, `5'-1 5/16"`}, {`18 ft`, 14, 14, `17'-10 1/2"`},
		{`20 ft`, 15, 1, `1'-3 7/8"`}, {`20 ft`, 15, 15, `19'-10 1/2"`}, // 15.9 in a bay; fifteen rounded bays would end 3/8 in short
	} {
		mark := (mustLength(t, c.length) - thickness) * c.index / c.bays
		if got := mark.Sixteenths(); got != c.want {
			t.Errorf("mark %d of %s in %d bays is %s, want %s", c.index, c.length, c.bays, got, c.want)
		}
	}
	for text, want := range map[string]string{
		`15.9 in`: `1'-3 7/8"`, `9-1/4 in`: `9-1/4"`, `11-31/32 in`: `1'-0"`, `1/32 in`: `1/16"`, `-1/32 in`: `-1/16"`, `0.031 in`: `0"`, `-0.031 in`: `0"`,
		`12 in`: `1'-0"`, `12-1/2 in`: `1'-0 1/2"`, `20 ft 15/16 in`: `20'-0 15/16"`, `8.4999 in`: `8-1/2"`,
	} {
		if got := mustLength(t, text).Sixteenths(); got != want {
			t.Errorf("%s to sixteenths is %s, want %s", text, got, want)
		}
	}
}

func TestDistinct(t *testing.T) {
	for _, c := range []struct {
		have, limit Length
		sys         System
		h, l        string
	}{
		{8 * Inch, 31 * Inch / 4, Imperial, `8"`, `7-3/4"`},
		{8 * Inch, 8 * Inch, Imperial, `8"`, `8"`},
		{52 * Inch / 7, 52 * Inch / 7, Imperial, `7.4286"`, `7.4286"`},
		{31*Inch/4 + 1, 31 * Inch / 4, Imperial, `7.75000004"`, `7.75"`},
		{31*Inch/4 - 500, 31 * Inch / 4, Imperial, `7.74998"`, `7.75"`},
		{60*Inch + 1, 60 * Inch, Imperial, `60.00000004"`, `60"`},
		{60*Inch + 2540, 60 * Inch, Imperial, `5'-0.0001"`, `5'-0"`},
		{-1, 0, Imperial, `-0.00000004"`, `0"`},
		{-1, 1, Imperial, `-0.00000004"`, `0.00000004"`},
		{190*Millimetre + 1, 190 * Millimetre, Metric, `190.000001 mm`, `190 mm`},
		{190*Millimetre + 400, 190 * Millimetre, Metric, `190.0004 mm`, `190 mm`},
		{191 * Millimetre, 190 * Millimetre, Metric, `191 mm`, `190 mm`},
	} {
		h, l := Distinct(c.have, c.limit, c.sys)
		if h != c.h || l != c.l {
			t.Errorf("Distinct(%d, %d, %v) = %s, %s; want %s, %s", c.have, c.limit, c.sys, h, l, c.h, c.l)
		}
	}
}

// Whatever two values are compared, the texts read back in the order of the values and never as one value.
func TestDistinctKeepsOrder(t *testing.T) {
	random := rand.New(rand.NewPCG(3, 4))
	for range 5_000 {
		have := Length(random.Int64N(int64(20 * Foot)))
		limit := have + Length(1+random.Int64N(1<<random.IntN(24)))
		if random.IntN(2) == 0 {
			limit = limit / sixtyFourth * sixtyFourth
		}
		for _, sys := range []System{Imperial, Metric} {
			h, l := Distinct(have, limit, sys)
			less, more := mustLength(t, h), mustLength(t, l)
			if (have < limit) != (less < more) || (have == limit) != (h == l) {
				t.Fatalf("%d and %d print as %s and %s", have, limit, h, l)
			}
		}
	}
}
