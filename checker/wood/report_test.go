package wood_test

import (
	"slices"
	"strings"
	"testing"

	"plumbrule/checker/measure"
	"plumbrule/checker/wood"
)

func no2(t testing.TB, species wood.Species, nominal string) wood.Lumber {
	return wood.Lumber{Species: species, Grade: wood.No2, Size: size(t, nominal), Wet: true}
}

// reports collects one report of every kind.
func reports(t *testing.T) []wood.Report {
	t.Helper()
	var all []wood.Report
	keep := func(r wood.Report, err error) {
		t.Helper()
		if err != nil {
			t.Fatal(err)
		}
		all = append(all, r)
	}
	span := func(s wood.Span, err error) { t.Helper(); keep(s.Report, err) }
	checks := func(c wood.Checks, err error) { t.Helper(); keep(c.Report, err) }

	limits := wood.CodeLimits()
	limits.Total, limits.Bearing, limits.Longest, limits.ShearAtDepth = 240, 3*measure.Inch/2, 18*measure.Foot, true
	joist := wood.Joist{Lumber: no2(t, wood.HemFir, "2x10"), Spacing: 16 * measure.Inch, Load: live40(t), Limits: limits}
	joist.Lumber.Incised = true
	span(joist.MaxSpan(wood.Strict()))
	span(joist.MaxCantilever(11*measure.Foot, wood.Strict()))
	checks(joist.Check(wood.Overhang(11*measure.Foot, 30*measure.Inch), wood.Strict()))
	joist.Lumber.Brace = wood.Brace{Unbraced: 11 * measure.Foot}
	joist.Lumber.Temperature = wood.UpTo125F
	span(joist.MaxSpan(wood.Strict()))

	beam := wood.Beam{Lumber: no2(t, wood.SouthernPine, "2x12"), Tributary: 8 * measure.Foot, Load: live40(t), Limits: limits}
	beam.Lumber.Plies = 2
	span(beam.MaxSpan(wood.Strict()))
	span(beam.MaxSpan(wood.TableBeams()))
	span(beam.MaxEqualSpan(3, wood.Strict()))
	span(beam.MaxCantilever(8*measure.Foot, wood.TableBeams()))
	checks(beam.CheckPlies(wood.Equal(3, 7*measure.Foot), [][]measure.Length{{7 * measure.Foot}, {14 * measure.Foot}}, wood.Strict()))

	flat := no2(t, wood.HemFir, "2x6")
	flat.Flat = true
	adjusted, err := flat.Adjust(wood.TwoMonths, true, wood.Strict())
	keep(adjusted.Report, err)

	post := wood.Post{Lumber: no2(t, wood.SouthernPine, "6x6"), Load: force(t, "8000 lb"), Eccentricity: measure.Inch}
	span(post.MaxHeight(wood.Strict()))
	checks(post.Check(9*measure.Foot, wood.Strict()))
	post.Eccentricity = 0
	span(post.MaxHeight(wood.Strict()))
	span(post.MaxHeight(wood.TablePosts()))

	footing, err := wood.Footing{Load: force(t, "6000 lb"), Soil: pressure(t, "1500 psf"), Shape: wood.Round, Post: 11 * measure.Inch / 2, Weighed: true}.Size()
	keep(footing.Report, err)
	row, err := wood.TableFooting(10*measure.Foot, 10*measure.Foot, pressure(t, "1500 psf"))
	keep(row.Report, err)
	row, err = wood.TableFootingByArea(100, pressure(t, "40 psf"), pressure(t, "1500 psf"))
	keep(row.Report, err)

	for _, c := range []wood.Connection{ledgerBolt(t), {Fastener: lag(t, "1/4 in"), Side: plank(0), Main: plank(45), Double: true}, ledgerLag(t)} {
		y, err := c.Yield()
		keep(y.Report, err)
		_, r := y.Adjusted(wood.TwoMonths, wood.WetInService, 0.9)
		keep(r, nil)
	}
	span(wood.LedgerSpacing(force(t, "375 lb"), 12*measure.Foot, live40(t)))
	span(wood.TableLedgerSpacing(wood.LedgerBolt, 6*measure.Foot, live40(t)))

	stringer := wood.Stringer{Lumber: no2(t, wood.NorthernSpecies, "2x12"), Throat: 41 * measure.Inch / 8, Width: 18 * measure.Inch, Load: live40(t)}
	span(stringer.MaxSpan(wood.Strict()))

	guard := wood.GuardPost{Force: force(t, "200 lb"), Height: 36 * measure.Inch, Upper: 4 * measure.Inch, Lower: 8 * measure.Inch}
	base, err := guard.Base()
	keep(base.Report, err)
	checks(guard.Bending(no2(t, wood.SouthernPine, "4x4"), wood.TenMinutes, wood.Strict()))

	span(wood.TableJoistSpan(wood.GroupFirs, size(t, "2x8"), measure.Foot, live40(t)))
	span(wood.TableJoistSpanWithCantilever(wood.GroupCedars, size(t, "2x6"), measure.Foot, live40(t)))
	span(wood.TableOverhang(wood.GroupFirs, size(t, "2x8"), measure.Foot, live40(t)))
	s, _, err := wood.TableMaxCantilever(wood.GroupFirs, size(t, "2x8"), 8*measure.Foot, live40(t))
	span(s, err)
	span(wood.TableBeamSpan(wood.GroupCedars, size(t, "4x10"), 1, 6*measure.Foot, live40(t)))
	span(wood.TableBeamSpan2021(wood.GroupFirs, size(t, "2x10"), 2, 10*measure.Foot, live40(t)))
	span(wood.TablePostHeight(wood.DouglasFirLarch, 18*measure.Foot, 18*measure.Foot))
	span(wood.TablePostHeightByArea(wood.GroupSouthernPine, size(t, "4x4"), 80, pressure(t, "40 psf")))
	return all
}

func TestEveryStepCanBeRedone(t *testing.T) {
	steps := 0
	for _, r := range reports(t) {
		redo(t, r)
		steps += len(r.Steps)
	}
	if steps < 500 {
		t.Errorf("only %d steps", steps)
	}
	t.Logf("%d steps of %d reports redone", steps, len(reports(t)))
}

func TestReportsAreDeterministic(t *testing.T) {
	first, second := reports(t), reports(t)
	for i := range first {
		if !slices.Equal(first[i].Lines(), second[i].Lines()) {
			t.Errorf("report %d differs between two runs", i)
		}
	}
}

// Strict reports hold nothing fitted; those of the table profiles say what is.
func TestFittedFiguresAreNamed(t *testing.T) {
	beam := wood.Beam{Lumber: no2(t, wood.SouthernPine, "2x10"), Tributary: 8 * measure.Foot, Load: live40(t), Limits: wood.CodeLimits()}
	beam.Lumber.Plies = 2
	strict, err := beam.MaxSpan(wood.Strict())
	if err != nil {
		t.Fatal(err)
	}
	table, err := beam.MaxSpan(wood.TableBeams())
	if err != nil {
		t.Fatal(err)
	}
	if got := strict.Report.Weakest(); got != wood.Recalled {
		t.Errorf("the weakest step of a strict report is %q", got)
	}
	if got := table.Report.Weakest(); got != wood.Fitted {
		t.Errorf("the weakest step of a table report is %q", got)
	}
	// √(1/1.10) of the printed span is what the NDS allows.
	if ratio := in(strict.Length) / in(table.Length); ratio < 0.953 || ratio > 0.954 {
		t.Errorf("strict two-ply span is %.4f of the table's", ratio)
	}
}

func TestLines(t *testing.T) {
	s, err := wood.TableJoistSpan(wood.GroupSouthernPine, size(t, "2x8"), 16*measure.Inch, live40(t))
	if err != nil {
		t.Fatal(err)
	}
	text := strings.Join(s.Report.Lines(), "\n")
	for _, want := range []string{
		"longest joist span\n",
		"assumed: simple span between centers of bearing, even load\n",
		"\nw = w_D + w_Q = 66.6667 plf\n",
		"\nFb = 925 psi  [NDS Supplement Table 4B, southern pine No. 2, its row governs cells of printed span tables, which come out; recalled]\n",
		"\nL_b = √(8 · Fb′ · S / (w / 12)) = ",
		"= 142 in (11'-10\")",
	} {
		if !strings.Contains(text, want) {
			t.Errorf("no %q in\n%s", want, text)
		}
	}
}
