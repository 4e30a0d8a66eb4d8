package measure

import "testing"

func BenchmarkParseLength(b *testing.B) {
	for _, text := range []string{`16 ft`, `12'-6 3/8"`, `3820 mm`} {
		b.Run(text, func(b *testing.B) {
			b.ReportAllocs()
			for b.Loop() {
				if _, _, err := ParseLength(text); err != nil {
					b.Fatal(err)
				}
			}
		})
	}
}

func BenchmarkParseLengthRefused(b *testing.B) {
	b.ReportAllocs()
	for b.Loop() {
		if _, _, err := ParseLength(`12' 14"`); err == nil {
			b.Fatal("not refused")
		}
	}
}

func BenchmarkLengthText(b *testing.B) {
	for _, c := range []struct {
		name string
		l    Length
		sys  System
	}{
		{"fraction", 12*Foot + 6*Inch + 3*Inch/8, Imperial}, {"decimals", 52 * Inch / 7, Imperial}, {"millimetres", 3820 * Millimetre, Metric},
	} {
		b.Run(c.name, func(b *testing.B) {
			b.ReportAllocs()
			for b.Loop() {
				_ = c.l.Text(c.sys)
			}
		})
	}
}

func BenchmarkDistinct(b *testing.B) {
	b.ReportAllocs()
	for b.Loop() {
		Distinct(8*Inch, 31*Inch/4, Imperial)
	}
}
