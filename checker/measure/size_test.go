package measure

import "testing"

// Dry sizes of boards and dimension lumber and green sizes of timbers, PS 20, from memory.
func TestParseNominal(t *testing.T) {
	for _, c := range []struct{ typed, name, actual string }{
		{"1x4", "1x4", `3/4" x 3-1/2"`},
		{"1x8", "1x8", `3/4" x 7-1/4"`},
		{"5/4x6", "5/4x6", `1" x 5-1/2"`},
		{"5/4 x 6", "5/4x6", `1" x 5-1/2"`},
		{"5⁄4×6", "5/4x6", `1" x 5-1/2"`},
		{"2x4", "2x4", `1-1/2" x 3-1/2"`},
		{"2x6", "2x6", `1-1/2" x 5-1/2"`},
		{"2X8", "2x8", `1-1/2" x 7-1/4"`},
		{"2 x 10", "2x10", `1-1/2" x 9-1/4"`},
		{"2×12", "2x12", `1-1/2" x 11-1/4"`},
		{"3x12", "3x12", `2-1/2" x 11-1/4"`},
		{"4x4", "4x4", `3-1/2" x 3-1/2"`},
		{"4x10", "4x10", `3-1/2" x 9-1/4"`},
		{"6x6", "6x6", `5-1/2" x 5-1/2"`},
		{"6x10", "6x10", `5-1/2" x 9-1/2"`},
		{"8x8", "8x8", `7-1/2" x 7-1/2"`},
	} {
		size, err := ParseNominal(c.typed)
		if err != nil || size.Nominal != c.name || size.Actual(Imperial) != c.actual {
			t.Errorf("ParseNominal(%q) = %q %s, %v; want %q %s", c.typed, size.Nominal, size.Actual(Imperial), err, c.name, c.actual)
		}
		if got := size.Text(Metric); got != c.name {
			t.Errorf("%s prints as %s, want its name", c.name, got)
		}
		if either, system, err := ParseSize(c.typed); err != nil || either != size || system != Imperial {
			t.Errorf("ParseSize(%q) = %v, %v, %v; want what ParseNominal gives", c.typed, either, system, err)
		}
	}
}

func TestParseActual(t *testing.T) {
	for _, c := range []struct {
		typed  string
		want   Size
		system System
		text   string
	}{
		{"45 mm x 140 mm", Size{Thickness: 45 * Millimetre, Depth: 140 * Millimetre}, Metric, "45 mm x 140 mm"},
		{"45mm×140mm", Size{Thickness: 45 * Millimetre, Depth: 140 * Millimetre}, Metric, "45 mm x 140 mm"},
		{"1-1/2 in x 9-1/4 in", Size{Thickness: 3 * Inch / 2, Depth: 37 * Inch / 4}, Imperial, `1-1/2" x 9-1/4"`},
		{`1½" X 9¼"`, Size{Thickness: 3 * Inch / 2, Depth: 37 * Inch / 4}, Imperial, `1-1/2" x 9-1/4"`},
		{`2" x 10"`, Size{Thickness: 2 * Inch, Depth: 10 * Inch}, Imperial, `2" x 10"`}, // rough sawn, not a 2x10
	} {
		got, system, err := ParseActual(c.typed)
		if err != nil || got != c.want || system != c.system || got.Text(system) != c.text {
			t.Errorf("ParseActual(%q) = %v (%s), %v, %v; want %v (%s), %v", c.typed, got, got.Text(system), system, err, c.want, c.text, c.system)
		}
		if either, system, err := ParseSize(c.typed); err != nil || either != c.want || system != c.system {
			t.Errorf("ParseSize(%q) = %v, %v, %v; want what ParseActual gives", c.typed, either, system, err)
		}
	}
}

func TestNominalAgreesWithActual(t *testing.T) {
	nominal, err := ParseNominal("2x10")
	if err != nil {
		t.Fatal(err)
	}
	actual, _, err := ParseActual("38.1 mm x 234.95 mm")
	if err != nil {
		t.Fatal(err)
	}
	if nominal.Thickness != actual.Thickness || nominal.Depth != actual.Depth {
		t.Errorf("2x10 is %v, typed in millimetres %v", nominal, actual)
	}
}

func TestParseSizeRefusals(t *testing.T) {
	either := func(text string) error { _, _, err := ParseSize(text); return err }
	nominal := func(text string) error { _, err := ParseNominal(text); return err }
	for _, c := range []struct {
		parse      func(string) error
		text, want string
	}{
		{either, "10x2", `size "10x2": the thickness comes first; write 2x10`},
		{either, "2x7", `size "2x7": not a nominal softwood size; write 2x6 or 2x8`},
		{either, "7x10", `size "7x10": not a nominal softwood size; write 6x10 or 8x10`},
		{either, "2-2x10", `size "2-2x10": a count of plies is given apart from the size; write 2x10`},
		{either, "(3) 2x12", `size "(3) 2x12": a count of plies is given apart from the size; write 2x12`},
		{either, "2x10x12", `size "2x10x12": a third measure behind the size; write 2x10`},
		{either, "45x140", `size "45x140": no nominal size, and an actual one has its units; write 45 mm x 140 mm`},
		{either, "45 x 140 mm", `size "45 x 140 mm": no unit behind 45; write 45 mm x 140 mm`},
		{either, "45 mm x 140", `size "45 mm x 140": no unit behind 140; write 45 mm x 140 mm`},
		{either, "1-1/2 x 9-1/4", `size "1-1/2 x 9-1/4": a nominal size is two bare numbers such as 2x10; write 1-1/2 in x 9-1/4 in`},
		{either, "45 mm x 5 in", `size "45 mm x 5 in": one side imperial and the other metric`},
		{either, "45 mm x 1,5 m", `size "45 mm x 1,5 m": "1,5 m": a comma in a number, decimals follow a point; write 45 mm x 1.5 m`},
		{either, "-4 mm x 5 mm", `size "-4 mm x 5 mm": a negative side`},
		{either, "0 mm x 5 mm", `size "0 mm x 5 mm": a side of zero`},
		{either, "4 in by 6 in", `size "4 in by 6 in": not a thickness x a depth; write 4 in x 6 in`},
		{nominal, "2 by 10", `size "2 by 10": not a nominal size such as 2x10; write 2x10`},
		{nominal, `2" x 10"`, "size `2\" x 10\"`: a nominal size is two bare numbers such as 2x10; write 2x10"},
		{nominal, "beam", `size "beam": not a nominal size such as 2x10`},
	} {
		if err := c.parse(c.text); err == nil || err.Error() != c.want {
			t.Errorf("%q\n got %v\nwant %s", c.text, err, c.want)
		}
	}
}
