package wood_test

import (
	"testing"

	"plumbrule/checker/measure"
	"plumbrule/checker/wood"
)

func BenchmarkTableJoistSpan(b *testing.B) {
	load, s := live40(b), size(b, "2x10")
	for b.Loop() {
		if _, err := wood.TableJoistSpan(wood.GroupFirs, s, 16*measure.Inch, load); err != nil {
			b.Fatal(err)
		}
	}
}

func BenchmarkCheckOverhang(b *testing.B) {
	j := wood.Joist{Lumber: no2(b, wood.HemFir, "2x10"), Spacing: 16 * measure.Inch, Load: live40(b), Limits: wood.CodeLimits()}
	l := wood.Overhang(11*measure.Foot, 30*measure.Inch)
	for b.Loop() {
		if _, err := j.Check(l, wood.Strict()); err != nil {
			b.Fatal(err)
		}
	}
}

func BenchmarkEnvelopeFiveSpans(b *testing.B) {
	l := wood.Equal(5, 7*measure.Foot)
	actions := []wood.Action{{To: l.To, Line: 80, Permanent: true}, {To: l.To, Line: 320}}
	for b.Loop() {
		if _, err := l.Envelope(1e8, actions); err != nil {
			b.Fatal(err)
		}
	}
}

func BenchmarkMaxHeight(b *testing.B) {
	p := wood.Post{Lumber: no2(b, wood.SouthernPine, "6x6"), Load: force(b, "8000 lb"), Eccentricity: measure.Inch / 2}
	for b.Loop() {
		if _, err := p.MaxHeight(wood.Strict()); err != nil {
			b.Fatal(err)
		}
	}
}

func BenchmarkYield(b *testing.B) {
	c := ledgerBolt(b)
	for b.Loop() {
		if _, err := c.Yield(); err != nil {
			b.Fatal(err)
		}
	}
}
