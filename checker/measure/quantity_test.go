package measure

import (
	"fmt"
	"testing"
)

// printed is a typed text with its base-unit value and its text in both systems.
type printed struct {
	text             string
	value            int64
	system           System
	imperial, metric string
}

func TestParsePressure(t *testing.T) {
	for _, c := range []printed{
		{"40 psf", 1_915_210_359, Imperial, "40 psf", "1.9152 kPa"}, // 1 psf = 47.880 259 Pa, NIST SP 811 appendix B
		{"40 PSF", 1_915_210_359, Imperial, "40 psf", "1.9152 kPa"},
		{"40 lb/ft2", 1_915_210_359, Imperial, "40 psf", "1.9152 kPa"},
		{"40lb/ft²", 1_915_210_359, Imperial, "40 psf", "1.9152 kPa"},
		{"0.04 ksf", 1_915_210_359, Imperial, "40 psf", "1.9152 kPa"},
		{"1.9 kPa", 1_900_000_000, Metric, "39.6823 psf", "1.9 kPa"},
		{"1.9 kN/m²", 1_900_000_000, Metric, "39.6823 psf", "1.9 kPa"},
		{"1900 Pa", 1_900_000_000, Metric, "39.6823 psf", "1.9 kPa"},
		{"2.0 kPa", 2_000_000_000, Metric, "41.7709 psf", "2 kPa"},
		{"1500 psf", 71_820_388_471, Imperial, "1500 psf", "71.8204 kPa"},
		{"100 kPa", 100_000_000_000, Metric, "2088.5434 psf", "100 kPa"},
		{"1 psi", 6_894_757_293, Imperial, "144 psf", "6.8948 kPa"}, // 1 psi = 6894.757 Pa, NIST SP 811 appendix B
		{"2500 psi", 17_236_893_232_921, Imperial, "2500 psi", "17.2369 MPa"},
		{"100 psi", 689_475_729_317, Imperial, "100 psi", "689.4757 kPa"},
		{"20 MPa", 20_000_000_000_000, Metric, "2900.7548 psi", "20 MPa"},
		{"20 N/mm^2", 20_000_000_000_000, Metric, "2900.7548 psi", "20 MPa"},
		{"0 psf", 0, Imperial, "0 psf", "0 kPa"},
	} {
		got, system, err := ParsePressure(c.text)
		check(t, c, printed{c.text, int64(got), system, got.Text(Imperial), got.Text(Metric)}, err)
	}
	if value, unit := Pressure(1_915_210_359).In(Imperial); value != 40 || unit != "psf" {
		t.Errorf("40 psf counts as %v %s", value, unit)
	}
	if value, unit := Pressure(1_915_210_359).In(Metric); value != 1.91521 || unit != "kPa" {
		t.Errorf("40 psf counts as %v %s, want 1.91521 kPa", value, unit)
	}
}

func TestParseForce(t *testing.T) {
	for _, c := range []printed{
		{"1500 lb", 6_672_332_423, Imperial, "1500 lb", "6.6723 kN"}, // 1 lbf = 4.448 221 615 260 5 N exactly, NIST SP 811 appendix B
		{"1500 lbs", 6_672_332_423, Imperial, "1500 lb", "6.6723 kN"},
		{"1500 lbs.", 6_672_332_423, Imperial, "1500 lb", "6.6723 kN"},
		{"1500 LBF", 6_672_332_423, Imperial, "1500 lb", "6.6723 kN"},
		{"1.5 kip", 6_672_332_423, Imperial, "1500 lb", "6.6723 kN"},
		{"1-1/2 kips", 6_672_332_423, Imperial, "1500 lb", "6.6723 kN"},
		{"6.7 kN", 6_700_000_000, Metric, "1506.2199 lb", "6.7 kN"},
		{"6700 N", 6_700_000_000, Metric, "1506.2199 lb", "6.7 kN"},
		{"1900 kg", 18_632_635_000, Metric, "4188.783 lb", "18.6326 kN"},
		{"0 N", 0, Metric, "0 lb", "0 kN"},
	} {
		got, system, err := ParseForce(c.text)
		check(t, c, printed{c.text, int64(got), system, got.Text(Imperial), got.Text(Metric)}, err)
	}
	if value, unit := Force(6_672_332_423).In(Imperial); value != 1500 || unit != "lb" {
		t.Errorf("1500 lb counts as %v %s", value, unit)
	}
	if value, unit := Force(6_672_332_423).In(Metric); value != 6.672332 || unit != "kN" {
		t.Errorf("1500 lb counts as %v %s, want 6.672332 kN", value, unit)
	}
}

func TestParseAngle(t *testing.T) {
	for _, c := range []printed{
		{"45", 45_000_000, Imperial, "45°", "45°"},
		{"45 deg", 45_000_000, Imperial, "45°", "45°"},
		{"45°", 45_000_000, Imperial, "45°", "45°"},
		{"45 degrees", 45_000_000, Imperial, "45°", "45°"},
		{"-90", -90_000_000, Imperial, "-90°", "-90°"},
		{"\u221290 °", -90_000_000, Imperial, "-90°", "-90°"},
		{"89.5", 89_500_000, Imperial, "89.5°", "89.5°"},
		{"22-1/2 deg", 22_500_000, Imperial, "22.5°", "22.5°"},
		{"90.49841", 90_498_410, Imperial, "90.4984°", "90.4984°"},
		{"1/3", 333_333, Imperial, "0.3333°", "0.3333°"},
		{"360", 360_000_000, Imperial, "360°", "360°"},
		{"-0.00001", -10, Imperial, "0°", "0°"},
	} {
		got, err := ParseAngle(c.text)
		check(t, c, printed{c.text, int64(got), Imperial, got.Text(Imperial), got.Text(Metric)}, err)
	}
	if value, unit := Angle(90_498_410).In(Metric); value != 90.49841 || unit != "deg" {
		t.Errorf("90.49841° counts as %v %s", value, unit)
	}
}

func check(t *testing.T, want, got printed, err error) {
	t.Helper()
	if err != nil || got != want {
		t.Errorf("%q\n got %+v, %v\nwant %+v", want.text, got, err, want)
	}
}

func TestRefusals(t *testing.T) {
	pressure := func(text string) (fmt.Stringer, error) { _, s, err := ParsePressure(text); return s, err }
	force := func(text string) (fmt.Stringer, error) { _, s, err := ParseForce(text); return s, err }
	angle := func(text string) (fmt.Stringer, error) { _, err := ParseAngle(text); return Imperial, err }
	for _, c := range []struct {
		parse func(string) (fmt.Stringer, error)
		text  string
		want  string
	}{
		{pressure, "40", `pressure "40": no unit; write 40 psf or 40 kPa`},
		{pressure, "1.9 kpa", `pressure "1.9 kpa": unknown unit "kpa"; write 1.9 kPa`},
		{pressure, "40 pfs", `pressure "40 pfs": unknown unit "pfs"; write 40 psf`},
		{pressure, "40 lb", `pressure "40 lb": "lb" is a unit of force, known are psf, kPa, psi, MPa, Pa`},
		{pressure, "-3 psf", `pressure "-3 psf": negative; write 3 psf`},
		{pressure, "1,500 psf", `pressure "1,500 psf": a comma in a number; write 1500 psf`},
		{pressure, "1,9 kPa", `pressure "1,9 kPa": a comma in a number, decimals follow a point; write 1.9 kPa`},
		{pressure, "1 3/2 kPa", `pressure "1 3/2 kPa": a whole number with a fraction of one or more; write 2.5 kPa`},
		{pressure, "1/0 psf", `pressure "1/0 psf": a fraction with a zero denominator`},
		{pressure, "1000001 MPa", `pressure "1000001 MPa": more than 1000000 MPa`},
		{pressure, "heavy", `pressure "heavy": does not start with a number`},
		{force, "1500", `force "1500": no unit; write 1500 lb or 1500 kN`},
		{force, "6.7 kn", `force "6.7 kn": unknown unit "kn"; write 6.7 kN`},
		{force, "4 tons", `force "4 tons": unknown unit "tons", known are lb, kN, N, kip, kg`},
		{force, "4 psf", `force "4 psf": "psf" is a unit of pressure, known are lb, kN, N, kip, kg`},
		{force, "2000000 kN", `force "2000000 kN": more than 1000000 kN`},
		{angle, "400", `angle "400": more than 360 deg`},
		{angle, "45 rad", `angle "45 rad": unknown unit "rad", known are deg, °, degrees, degree`},
		{angle, "45 degs", `angle "45 degs": unknown unit "degs"; write 45 deg`},
		{angle, "89,5", `angle "89,5": a comma in a number, decimals follow a point; write 89.5`},
		{angle, "45°30'", `angle "45°30'": unexpected "°30'" behind the number 45`},
		{angle, "right", `angle "right": does not start with a number`},
	} {
		if _, err := c.parse(c.text); err == nil || err.Error() != c.want {
			t.Errorf("%q\n got %v\nwant %s", c.text, err, c.want)
		}
	}
}

func TestSystemString(t *testing.T) {
	if Imperial.String() != "imperial" || Metric.String() != "metric" {
		t.Errorf("systems are called %v and %v", Imperial, Metric)
	}
}
