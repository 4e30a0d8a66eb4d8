package measure

import (
	"errors"
	"strings"
	"testing"
)

// Every group is one length in many spellings.
func TestParseLengthSpellings(t *testing.T) {
	const sixteenth = Inch / 16
	for _, group := range []struct {
		want   Length
		system System
		texts  []string
	}{
		{12*Foot + 6*Inch + 6*sixteenth, Imperial, []string{
			`12 ft 6-3/8 in`, `12' 6-3/8"`, `12'-6 3/8"`, `12'6 3/8"`, `150-3/8 in`, `150.375 in`, `150 3/8"`, `12 feet 6.375 inches`,
			`12ft6-3/8in`, `12 ft. 6-3/8 in.`, `12 FT 6-3/8 IN`, `12' - 6 3/8"`, `12' 6⅜"`, `12'-6-⅜"`, `12 ft 6 6/16 in`, `1203/8 in`,
			"12′ 6\u20113⁄8″", `12’-6 3/8”`, "12\u00a0ft\u00a06\u00a03/8\u202fin", `12' 6 3/8''`, `12ft. 6 3/8in.`, "\t12 ft 6-3/8 in ", `12 ft -6-3/8 in`,
		}},
		{11*Inch + 10*sixteenth, Imperial, []string{`11 5/8"`, `11-5/8 in`, `11.625 in`, `11 5/8 inch`, `0' 11 5/8"`, `0 ft 11-5/8 in`, `11⅝"`, `93/8 in`, `011 010/016"`, `0011.6250 in`}},
		{6 * Foot, Imperial, []string{`6 ft`, `6'`, `6'-0"`, `6' 0"`, `72 in`, `72"`, `6 feet`, `6.0 ft`, `6ft.`}},
		{78 * Inch, Imperial, []string{`6.5 ft`, `6-1/2 ft`, `6½'`, `6'-6"`, `6 1/2 foot`}},
		{12 * sixteenth, Imperial, []string{`3/4 in`, `.75 in`, `0.75"`, `¾ in`, `¾”`, `6/8"`, `0 3/4"`, `1/16 ft`, `0'-¾"`, `0' ¾"`}},
		{0, Imperial, []string{`0 in`, `0"`, `0 ft`, `0' 0"`, `-0 in`, `0/5 in`}},
		{-3 * Inch, Imperial, []string{`-3 in`, `−3"`, `-1/4 ft`, `-0'-3"`, `–3 in`}},
		{3820 * Millimetre, Metric, []string{`3820 mm`, `3.82 m`, `382 cm`, `3820mm`, `3820.000 mm`, `3820 millimetres`, `3.82 metres`, `382 centimeters`, `3.82 meter`}},
		{10_000, Metric, []string{`0.01 mm`, `.01 mm`, `1/100 mm`, `0.001 cm`, `0.00001 m`}},
		{375 * Millimetre / 10, Metric, []string{`37.5 mm`, `37-1/2 mm`, `37½ mm`, `3.75 cm`}},
		{254 * Millimetre / 10, Metric, []string{`25.4 mm`, `2.54 cm`}},
		{MaxLength, Metric, []string{`10000 m`, `10000000 mm`}},
	} {
		for _, text := range group.texts {
			got, system, err := ParseLength(text)
			if err != nil || got != group.want || system != group.system {
				t.Errorf("ParseLength(%q) = %d, %v, %v; want %d, %v", text, got, system, err, group.want, group.system)
			}
		}
	}
}

func TestVulgarFractions(t *testing.T) {
	for mark, plain := range map[string]string{
		"½": "1/2", "⅓": "1/3", "⅔": "2/3", "¼": "1/4", "¾": "3/4", "⅕": "1/5", "⅖": "2/5", "⅗": "3/5", "⅘": "4/5", "⅙": "1/6", "⅚": "5/6",
		"⅐": "1/7", "⅛": "1/8", "⅜": "3/8", "⅝": "5/8", "⅞": "7/8", "⅑": "1/9", "⅒": "1/10",
	} {
		if got, want := mustLength(t, "3"+mark+" in"), mustLength(t, "3-"+plain+" in"); got != want {
			t.Errorf("3%s in is %d, and 3-%s in is %d", mark, got, plain, want)
		}
	}
}

// What no whole number of nanometres can hold is rounded once, to the nearest.
func TestParseLengthRoundsOnce(t *testing.T) {
	for text, want := range map[string]Length{
		`1/3 in`:             8_466_667,   // 8 466 666.67
		`2/3 in`:             16_933_333,  // 16 933 333.33
		`1 ft 1/3 in`:        313_266_667, // 313 266 666.67
		`1/7 ft`:             43_542_857,  // 43 542 857.14
		`0.0000005 mm`:       1,           // half a nanometre, away from zero
		`-0.0000005 mm`:      -1,
		`0.00000049999 mm`:   0,
		`0.33333333333333 m`: 333_333_333,
	} {
		got, _, err := ParseLength(text)
		if err != nil || got != want {
			t.Errorf("ParseLength(%q) = %d, %v; want %d", text, got, err, want)
		}
	}
}

func TestInchAndMillimetreAgree(t *testing.T) {
	inch, _, err := ParseLength("1/64 in")
	if err != nil {
		t.Fatal(err)
	}
	millimetre, _, err := ParseLength("0.396875 mm")
	if err != nil {
		t.Fatal(err)
	}
	if inch != millimetre || inch != 396_875 {
		t.Errorf("1/64 in is %d nm and 0.396875 mm is %d nm, want 396875", inch, millimetre)
	}
}

func TestParseLengthRefusals(t *testing.T) {
	for _, c := range []struct{ text, want string }{
		{`16`, `length "16": no unit; write 16 in, 16 ft or 406.4 mm`},
		{`-16`, `length "-16": no unit; write -16 in, -16 ft or -406.4 mm`},
		{`11-5/8`, `length "11-5/8": no unit; write 11-5/8 in`},
		{`150.375`, `length "150.375": no unit; write 150.375 in or 3819.525 mm`},
		{`3820`, `length "3820": no unit; write 3820 mm or 3.82 m`},
		{`0`, `length "0": no unit; write 0 in or 0 mm`},
		{``, `length "": empty`},
		{"\u00a0", `length "\u00a0": empty`},
		{`1/0 in`, `length "1/0 in": a fraction with a zero denominator`},
		{`6 3/00 in`, `length "6 3/00 in": a fraction with a zero denominator`},
		{`3/ in`, `length "3/ in": a fraction without a denominator`},
		{`12' 14"`, `length ` + "`12' 14\"`" + `: twelve inches or more behind the feet; write 13'-2"`},
		{`12 ft 12 in`, `length "12 ft 12 in": twelve inches or more behind the feet; write 13'-0"`},
		{`6 9/8 in`, `length "6 9/8 in": a whole number with a fraction of one or more; write 7-1/8"`},
		{`6 9/7 in`, `length "6 9/7 in": a whole number with a fraction of one or more`},
		{`6-1/7 ft 3 in`, `length "6-1/7 ft 3 in": feet before inches are not whole`},
		{`4 7/6 mm`, `length "4 7/6 mm": a whole number with a fraction of one or more`},
		{`5' 6 9/8"`, `length ` + "`5' 6 9/8\"`" + `: a whole number with a fraction of one or more; write 5'-7 1/8"`},
		{`5' 6 0/0"`, `length ` + "`5' 6 0/0\"`" + `: a fraction with a zero denominator`},
		{`3,82 m`, `length "3,82 m": a comma in a number, decimals follow a point; write 3.82 m`},
		{`3,820 mm`, `length "3,820 mm": a comma in a number; write 3820 mm or 3.820 mm`},
		{`1,200 in`, `length "1,200 in": a comma in a number; write 1200 in`},
		{`5 ft 20 mm`, `length "5 ft 20 mm": ft and mm in one length, only feet and inches combine`},
		{`5 in 20 in`, `length "5 in 20 in": in and in in one length, only feet and inches combine`},
		{`3 m 20 cm`, `length "3 m 20 cm": m and cm in one length, only feet and inches combine; write 3.2 m`},
		{`6 in 3 ft`, `length "6 in 3 ft": inches before feet; write 3 ft 6 in`},
		{`6.5 ft 3 in`, `length "6.5 ft 3 in": feet before inches are not whole; write 81 in`},
		{`6 ft 3`, `length "6 ft 3": no unit at the end; write 6 ft 3 in`},
		{`6'-3 1/2`, `length "6'-3 1/2": no unit at the end; write 6'-3 1/2"`},
		{`12-6`, `length "12-6": no unit behind the feet; write 12'-6"`},
		{`12-6 3/8"`, "length `12-6 3/8\"`: no unit behind the feet; write 12'-6 3/8\""},
		{`12ft.5in`, `length "12ft.5in": no space behind the full stop; write 12ft. 5in`},
		{`12 ft .5 in`, `length "12 ft .5 in": inches behind feet start with a digit; write 12 ft 0.5 in`},
		{`6 inchs`, `length "6 inchs": unknown unit "inchs"; write 6 inch`},
		{`6 foots`, `length "6 foots": unknown unit "foots"; write 6 foot`},
		{`6 MM`, `length "6 MM": unknown unit "MM"; write 6 mm`},
		{`6 yd`, `length "6 yd": unknown unit "yd", known are in, ft, mm, cm, m`},
		{`40 psf`, `length "40 psf": "psf" is a unit of pressure, known are in, ft, mm, cm, m`},
		{`½3 in`, `length "½3 in": unexpected "3 in" behind the number ½`},
		{`12 ft 6 in 3/8`, `length "12 ft 6 in 3/8": unexpected " 3/8" behind the inches`},
		{`6 ft x`, `length "6 ft x": unexpected "x" behind 6 ft`},
		{`twelve ft`, `length "twelve ft": does not start with a number`},
		{`1.2.3 in`, `length "1.2.3 in": unexpected ".3 in" behind the number 1.2`},
		{`10001 m`, `length "10001 m": more than 10000 m`},
		{`99999999999999999999999999999999 ft`, `length "99999999999999999999999999999999 ft": a number of too many digits`},
		{`0.1234567890123456789 in`, `length "0.1234567890123456789 in": a number of too many digits`},
		{`100 ft 0.12345678901234567 in`, `length "100 ft 0.12345678901234567 in": a number of too many digits`},
		{`999999999999999999 1/999999999999999999 in`, `length "999999999999999999 1/999999999999999999 in": a number of too many digits`},
		{`999999999999999999 ft`, `length "999999999999999999 ft": more than 32808 ft`},
		{`999999999999999999' 13"`, "length `999999999999999999' 13\"`: more than 393701 in"},
		{`10000 m` + strings.Repeat(" ", 100), `length "10000 m` + strings.Repeat(" ", 88) + `…": longer than 96 bytes`},
		{"6\x00 in", `length "6\x00 in": unexpected "\x00 in" behind the number 6`},
		{"6 \xff", `length "6 \xff": unexpected "�" behind the number 6`},
	} {
		got, system, err := ParseLength(c.text)
		if err == nil {
			t.Errorf("ParseLength(%q) = %d, %v; want refusal %s", c.text, got, system, c.want)
			continue
		}
		if err.Error() != c.want {
			t.Errorf("ParseLength(%q)\n got %s\nwant %s", c.text, err, c.want)
		}
		var spelling *SpellingError
		if !errors.As(err, &spelling) || spelling.Kind != "length" {
			t.Errorf("ParseLength(%q): error is %#v, want a SpellingError about a length", c.text, err)
		}
		if got != 0 {
			t.Errorf("ParseLength(%q) = %d beside its error, want 0", c.text, got)
		}
	}
}

func TestSuggestLength(t *testing.T) {
	for bare, want := range map[string]string{
		"16": "16 in, 16 ft or 406.4 mm", " 16 ": "16 in, 16 ft or 406.4 mm", "61": "61 in or 1549.4 mm", "3820": "3820 mm or 3.82 m",
		"7 3/4": "7 3/4 in", "½": "½ in", "0": "0 in or 0 mm", "0.5": "0.5 in, 0.5 ft or 12.7 mm",
		"": "", "16 in": "", "sixteen": "", "6 ft 3": "", "1/0": "",
	} {
		if got := SuggestLength(bare); got != want {
			t.Errorf("SuggestLength(%q) = %q, want %q", bare, got, want)
		}
	}
}

func FuzzParseLength(f *testing.F) {
	for _, text := range corpus() {
		f.Add(text)
	}
	f.Fuzz(func(t *testing.T, text string) {
		length, system, err := ParseLength(text)
		if err != nil {
			return
		}
		for _, other := range []System{Imperial, Metric} {
			exact := length%sixtyFourth == 0
			if other == Metric {
				exact = length%1000 == 0
			}
			printed := length.Text(other)
			again, back, err := ParseLength(printed)
			if err != nil || back != other || exact && again != length {
				t.Errorf("%q (%v) is %d, prints as %q and reads back as %d, %v, %v", text, system, length, printed, again, back, err)
			}
		}
	})
}
