package wood_test

import (
	"strconv"
	"strings"
	"testing"

	"plumbrule/checker/measure"
	"plumbrule/checker/wood"
)

func joistLoad(t *testing.T, c cell) wood.Load {
	if strings.HasSuffix(c.condition, "snow") {
		return wood.Load{Dead: pressure(t, "10 psf"), Imposed: pressure(t, "50 psf"), Duration: wood.TwoMonths}
	}
	return live40(t)
}

func joistSpan(t *testing.T, c cell) float64 {
	spacing := measure.Length(c.numbers(t)[0]) * measure.Inch
	s, err := wood.TableJoistSpan(group(t, c.group), size(t, c.item), spacing, joistLoad(t, c))
	if err != nil {
		t.Fatal(err)
	}
	return in(s.Length)
}

// Source: DCA 6 (2015 IRC edition) Table 2, 40 psf, read in a copy in public records. First principles, nothing fitted.
func TestPublishedJoistSpans(t *testing.T) {
	found := cells(t, func(c cell) bool { return c.table == "R507.6 joist span" && published(c) })
	hold(t, "DCA 6 Table 2, 40 psf", found, 1, score{36, 36, 36}, func(c cell) float64 { return joistSpan(t, c) })
}

// Source: IRC 2021 Table R507.6, 50 psf snow column, from memory.
func TestRecalledSnowJoistSpans(t *testing.T) {
	found := cells(t, func(c cell) bool { return c.table == "R507.6 joist span" && !published(c) })
	hold(t, "IRC 2021, 50 psf snow", found, 1, score{36, 35, 36}, func(c cell) float64 { return joistSpan(t, c) })
}

// Source: IRC 2015 Table R507.5 as reprinted in a trade magazine of 13 September 2018. Three 2x6 cells of it differ from
// the later printing by 2 to 4 in; they follow from a wet service factor of 1 for Douglas fir-larch.
func TestReprintedJoistSpans(t *testing.T) {
	found := cells(t, func(c cell) bool { return strings.HasPrefix(c.table, "R507.5(2015)") })
	hold(t, "IRC 2015 reprint", found, 1, score{21, 18, 18}, func(c cell) float64 { return joistSpan(t, c) })
}

// Source: IRC 2015 Table R507.5, 21 cells as reprinted in a trade magazine of 13 September 2018 and one in a state's
// copy, the others from memory.
func TestJoistSpansWithCantilever(t *testing.T) {
	found := cells(t, func(c cell) bool { return c.table == "R507.6 joist span with L/4 cantilever" })
	hold(t, "IRC 2015 with cantilever", found, 1, score{36, 36, 36}, func(c cell) float64 {
		spacing := measure.Length(c.numbers(t)[0]) * measure.Inch
		s, err := wood.TableJoistSpanWithCantilever(group(t, c.group), size(t, c.item), spacing, live40(t))
		if err != nil {
			t.Fatal(err)
		}
		return in(s.Length)
	})
}

// Source: DCA 6 (2015 IRC edition) Table 2, overhangs, read in a copy in public records; two cells were unreadable there
// and are guessed. The 3 in taken off are fitted.
func TestPublishedOverhangs(t *testing.T) {
	found := cells(t, func(c cell) bool { return c.table == "DCA6 Table 2 overhang" })
	hold(t, "DCA 6 overhangs", found, 1, score{36, 30, 36}, func(c cell) float64 {
		spacing := measure.Length(c.numbers(t)[0]) * measure.Inch
		s, err := wood.TableOverhang(group(t, c.group), size(t, c.item), spacing, live40(t))
		if err != nil {
			t.Fatal(err)
		}
		return in(s.Length)
	})
}

// Source: IRC 2021 Table R507.6, cantilevers by back span, from memory with low confidence. NP counts as 0.
func TestRecalledMaxCantilevers(t *testing.T) {
	found := cells(t, func(c cell) bool { return c.table == "R507.6 max cantilever" })
	for i := range found {
		if found[i].value == "NP" {
			found[i].value = "0"
		}
	}
	hold(t, "IRC 2021 cantilevers", found, 1, score{96, 87, 90}, func(c cell) float64 {
		s, permitted, err := wood.TableMaxCantilever(group(t, c.group), size(t, c.item), feet(c.numbers(t)[0]), live40(t))
		if err != nil {
			t.Fatal(err)
		}
		if !permitted {
			return 0
		}
		return in(s.Length)
	})
}

// spelled splits 3-2x10 into plies and size.
func spelled(t *testing.T, item string) (plies int, s measure.Size) {
	first, second, found := strings.Cut(item, "-")
	if !found {
		return 1, size(t, item)
	}
	n, err := strconv.Atoi(first)
	if err != nil {
		t.Fatal(err)
	}
	return n, size(t, second)
}

func beamSpan(t *testing.T, c cell, compute func(wood.Group, measure.Size, int, measure.Length, wood.Load) (wood.Span, error)) float64 {
	least := 0.0
	for i, item := range strings.Split(c.item, "/") { // 3x6/2-2x6 holds for either
		plies, s := spelled(t, item)
		span, err := compute(group(t, c.group), s, plies, feet(c.numbers(t)[0]), live40(t))
		if err != nil {
			t.Fatal(err)
		}
		if i == 0 || in(span.Length) < least {
			least = in(span.Length)
		}
	}
	return least
}

// Source: Wisconsin register CR 15-043 Tables 3A and 3B, the same numbers as IRC 2015 and 2018 Table R507.5 and DCA 6
// (2015 IRC edition) Table 3. 1.10 for two plies and half the dead load in the deflection are fitted.
func TestPublishedBeamSpans(t *testing.T) {
	found := cells(t, func(c cell) bool { return c.table == "R507.5 beam span" && published(c) })
	hold(t, "R507.5 beams", found, 1, score{140, 138, 140}, func(c cell) float64 { return beamSpan(t, c, wood.TableBeamSpan) })
}

// Source: IRC 2018 Table R507.5, single plies, from memory.
func TestRecalledSinglePlyBeams(t *testing.T) {
	found := cells(t, func(c cell) bool { return c.table == "R507.5 beam span 1-ply" })
	hold(t, "single plies", found, 1, score{28, 26, 27}, func(c cell) float64 { return beamSpan(t, c, wood.TableBeamSpan) })
}

// Source: IRC 2021 Table R507.5(1), one cell as quoted in print and the others from memory.
func TestBeamSpans2021(t *testing.T) {
	found := cells(t, func(c cell) bool { return c.table == "R507.5(1) beam span" })
	hold(t, "IRC 2021 beams", found, 1, score{42, 37, 42}, func(c cell) float64 { return beamSpan(t, c, wood.TableBeamSpan2021) })
}

// Source: DCA 6 (2015 IRC edition) Table 4, read in a copy in public records. The post of 165 lb is fitted.
func TestPublishedFootings(t *testing.T) {
	found := cells(t, func(c cell) bool { return strings.HasPrefix(c.table, "DCA6 Table 4 footing") })
	hold(t, "DCA 6 footings", found, 1, score{63, 63, 63}, func(c cell) float64 {
		n := c.numbers(t)
		row, err := wood.TableFooting(feet(n[0]), feet(n[1]), pressure(t, "1500 psf"))
		if err != nil {
			t.Fatal(err)
		}
		return footingColumn(c, row)
	})
}

func footingColumn(c cell, row wood.FootingRow) float64 {
	switch {
	case strings.HasSuffix(c.table, "round"):
		return in(row.Round)
	case strings.HasSuffix(c.table, "square"):
		return in(row.Square)
	}
	return in(row.Thickness)
}

// Source: IRC 2018 Table R507.3.1, from memory. The thickness rule is fitted.
func TestRecalledFootings(t *testing.T) {
	found := cells(t, func(c cell) bool { return strings.HasPrefix(c.table, "R507.3.1") })
	hold(t, "IRC 2018 footings", found, 1, score{192, 190, 192}, func(c cell) float64 {
		n := c.numbers(t)
		row, err := wood.TableFootingByArea(n[0], pressure(t, c.group), psfOf(t, n[1]))
		if err != nil {
			t.Fatal(err)
		}
		return footingColumn(c, row)
	})
}

// Source: DCA 6 (2015 IRC edition) Table 4, read in a copy in public records. Eccentricity and Ke are fitted.
func TestPublishedPostHeights(t *testing.T) {
	found := cells(t, func(c cell) bool { return c.table == "DCA6 Table 4 post height 6x6" })
	hold(t, "DCA 6 posts", found, 1, score{42, 30, 42}, func(c cell) float64 {
		species := wood.SouthernPine
		if c.group != "Southern Pine" {
			species = wood.DouglasFirLarch
		}
		n := c.numbers(t)
		s, err := wood.TablePostHeight(species, feet(n[0]), feet(n[1]))
		if err != nil {
			t.Fatal(err)
		}
		if got := in(s.Length) / 12; got > c.number(t) {
			t.Errorf("%v: %g ft is more than printed", c, got)
		}
		return in(s.Length) / 12
	})
}

// Source: IRC 2021 Table R507.4, from memory with medium confidence.
func TestRecalledPostHeights(t *testing.T) {
	found := cells(t, func(c cell) bool { return c.table == "R507.4 post height" })
	hold(t, "IRC 2021 posts", found, 3, score{48, 18, 46}, func(c cell) float64 {
		n := c.numbers(t)
		s, err := wood.TablePostHeightByArea(group(t, c.group), size(t, c.item), n[1], psfOf(t, n[0]))
		if err != nil {
			t.Fatal(err)
		}
		return in(s.Length)
	})
}

func ledgerSpacing(t *testing.T, c cell, load wood.Load) float64 {
	rows := map[string]wood.LedgerFastener{
		"lag": wood.LedgerLag, "bolt": wood.LedgerBolt, "bolt+1/2 washers/1in sheathing": wood.LedgerBoltWashers,
		"lag 1in EWP": wood.LedgerLagEWP, "lag 1-1/8 EWP": wood.LedgerLagEWPThicker,
	}
	row, ok := rows[c.group]
	if !ok {
		t.Fatalf("row %q", c.group)
	}
	s, err := wood.TableLedgerSpacing(row, feet(c.numbers(t)[0]), load)
	if err != nil {
		t.Fatal(err)
	}
	return in(s.Length)
}

// Source: Wisconsin register CR 15-043 Table 6, the same numbers as IRC 2009 to 2018 Table R507.2. One capacity for each
// row is fitted; it stands for laboratory tests.
func TestPublishedLedgerSpacings(t *testing.T) {
	found := cells(t, func(c cell) bool {
		return c.table == "R507.9.1.3 ledger spacing" && strings.Contains(c.edition, "50 psf")
	})
	hold(t, "ledger, 50 psf in all", found, 1, score{35, 33, 35}, func(c cell) float64 { return ledgerSpacing(t, c, live40(t)) })
}

// Source: a reprint of the 60 psf ledger spacings, which are those of 70 psf snow. The capacities are those of 50 psf,
// raised by CD 1.15.
func TestPublishedSnowLedgerSpacings(t *testing.T) {
	found := cells(t, func(c cell) bool {
		return c.table == "R507.9.1.3 ledger spacing" && strings.Contains(c.edition, "snow")
	})
	snow := wood.Load{Dead: pressure(t, "10 psf"), Imposed: pressure(t, "70 psf"), Duration: wood.TwoMonths}
	hold(t, "ledger, 70 psf snow", found, 1, score{21, 17, 21}, func(c cell) float64 { return ledgerSpacing(t, c, snow) })
}

func connectionValue(t *testing.T, c wood.Connection) float64 {
	y, err := c.Yield()
	if err != nil {
		t.Fatal(err)
	}
	lb, _ := y.Z.In(measure.Imperial)
	return float64(int(lb/10+0.5)) * 10 // both tables are printed to 10 lb
}

func inchText(t *testing.T, text string) measure.Length {
	v, err := strconv.ParseFloat(text, 64)
	if err != nil {
		t.Fatal(err)
	}
	return measure.Length(v*float64(measure.Inch) + 0.5)
}

// Source: NDS 2015 Table 12K, read in copies in public records.
func TestPublishedLagValues(t *testing.T) {
	found := cells(t, func(c cell) bool { return strings.HasPrefix(c.table, "NDS Table 12K") })
	hold(t, "NDS 12K", found, 10, score{200, 200, 200}, func(c cell) float64 {
		d, plate, _ := strings.Cut(strings.TrimPrefix(c.item, "D="), " t=")
		lag, err := wood.Lag(inchText(t, d))
		if err != nil {
			t.Fatal(err)
		}
		g, err := strconv.ParseFloat(strings.TrimPrefix(c.group, "G="), 64)
		if err != nil {
			t.Fatal(err)
		}
		main := wood.Layer{Length: 8 * lag.Diameter, G: g}
		if c.condition == "perp" {
			main.Angle = 90
		}
		return connectionValue(t, wood.Connection{Fastener: lag, Side: wood.Layer{Length: inchText(t, plate), Fe: wood.FeSteelGrade33}, Main: main})
	})
}

// Source: NDS 2015 Table 12A, 1/2 in bolts through 1-1/2 in and 1-1/2 in, from memory.
func TestRecalledBoltValues(t *testing.T) {
	found := cells(t, func(c cell) bool { return strings.HasPrefix(c.table, "NDS Table 12A") })
	bolt, err := wood.Bolt(measure.Inch / 2)
	if err != nil {
		t.Fatal(err)
	}
	hold(t, "NDS 12A", found, 10, score{24, 24, 24}, func(c cell) float64 {
		g, err := strconv.ParseFloat(strings.TrimPrefix(c.group, "G="), 64)
		if err != nil {
			t.Fatal(err)
		}
		side := wood.Layer{Length: 3 * measure.Inch / 2, G: g}
		main := side
		switch c.condition {
		case "perp":
			side.Angle, main.Angle = 90, 90
		case "s_perp":
			side.Angle = 90
		case "m_perp":
			main.Angle = 90
		}
		return connectionValue(t, wood.Connection{Fastener: bolt, Side: side, Main: main})
	})
}
