package checker_test

import (
	"math/big"
	"slices"
	"testing"

	"plumbrule/checker/facts"
	"plumbrule/checker/measure"
	"plumbrule/checker/ruleset/rulesettest"
)

// factorCells are the effective spans of joists of ten feet, by their
// cantilever, as the list of cells that only one reader has gives them.
func factorCells(t *testing.T, set string) (cantilevers, spans []measure.Length) {
	t.Helper()
	once, err := rulesettest.ReadOnce(readOnce)
	if err != nil {
		t.Fatal(err)
	}
	for _, e := range once {
		if e.Set != set || e.Table != "joist-span-factors" {
			continue
		}
		cantilever, _, err := measure.ParseLength(e.At[0])
		if err != nil {
			t.Fatal(err)
		}
		span, _, err := measure.ParseLength(e.Text)
		if err != nil {
			t.Fatal(err)
		}
		cantilevers, spans = append(cantilevers, cantilever), append(spans, span)
	}
	return cantilevers, spans
}

// factorSheet has beams below joists whose effective span is just that of a row
// of the table, and a nanometre past it; their cantilever is just that of a
// column of factors, and a nanometre past it.
func factorSheet(s *sheet, m *mutation, figure string) {
	if figure != "beams/span spans" {
		return
	}
	cantilevers, spans := factorCells(m.t, m.set.ID)
	if len(spans) == 0 {
		return
	}
	// Three 2x12 of southern pine below joists of 8 ft and of 10 ft.
	limit := 13*measure.Foot + 3*measure.Inch
	row := 8 * measure.Foot
	for i, cantilever := range cantilevers {
		joists := part(row, tenFeet, spans[i])
		past := part(joists, cantilever, tenFeet)
		factored(s, joists, past, limit, false)
		factored(s, joists+2, past, limit, true)
		// The next longer cantilever has the next greater factor, the last one none.
		factored(s, joists, past+2, limit, true)
	}
}

// part is value·over/under, rounded down.
func part(value, over, under measure.Length) measure.Length {
	product := new(big.Int).Mul(big.NewInt(int64(value)), big.NewInt(int64(over)))
	return measure.Length(product.Quo(product, big.NewInt(int64(under))).Int64())
}

func factored(s *sheet, joists, past, span measure.Length, outside bool) {
	at, place := s.at()
	live, snow := keys{"load": "40 psf"}.loads(at)
	s.facts.BeamSpans = append(s.facts.BeamSpans, facts.BeamSpan{
		At: at, Beam: "B1", Bay: 1, Missing: []string{}, ClearSpan: shown(span, place), SpanToCenter: shown(span, place),
		Size: shown("2x12", at), Plies: shown(int64(3), at), Lumber: lumber(keys{"group": "southern pine"}, at),
		JoistSpan: shown(joists, at), JoistClearSpan: shown(joists, at), JoistCantilever: shown(past, at),
		LiveLoad: live, GroundSnowLoad: snow,
	})
	s.expect(outside, "a beam below joists of %d nm that pass it by %d nm", joists, past)
}

// The factors that are remembered follow, but for one that is held to be the
// safer, from the share of load that a cantilever adds: a half and the share,
// over three quarters.
func TestJoistSpanFactorsFollowTheLoad(t *testing.T) {
	for _, set := range []string{irc2021, irc2024} {
		cantilevers, spans := factorCells(t, set)
		if len(spans) != 6 || !slices.IsSorted(cantilevers) || !slices.IsSorted(spans) {
			t.Fatalf("%s: %v %v", set, cantilevers, spans)
		}
		for i, span := range spans {
			// (tenFeet/2 + cantilever) / (3/4), within a hundredth of ten feet.
			rule := (tenFeet/2 + cantilevers[i]) * 4 / 3
			if off := max(span-rule, rule-span); off > tenFeet/80 {
				t.Errorf("%s: joists that pass by %s have %s, the rule gives %s", set, cantilevers[i].Text(measure.Imperial), span.Text(measure.Imperial), rule.Text(measure.Imperial))
			}
		}
	}
}
