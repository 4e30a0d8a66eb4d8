package engine_test

import (
	"context"
	"errors"
	"slices"
	"strings"
	"testing"
	"time"

	"plumbrule/checker/facts"
	"plumbrule/checker/measure"
	"plumbrule/checker/result"
)

func TestOutcomes(t *testing.T) {
	results := evaluate(t, nil, imperialSet)
	tests := []struct {
		at      string
		outcome result.Outcome
		message string
		reason  string
		margin  string
		number  float64
		line    int
		column  int
	}{
		{"/stairs/0/risers", result.Outside, `riser 7 of 1 is 8", the limit is 7-3/4", over by 1/4"`, "", `1/4"`, -0.25, 5, 13},
		{"/stairs/1/risers", result.Within, "", "", `0"`, 0, 6, 13},
		{"/stairs/2", result.NotShown, "stair 3: risers are not shown", "", "", 0, 7, 5},
		{"/stairs/3", result.DoesNotApply, "", "its 2 flights wind", "", 0, 8, 5},
		{"/guards/0/infill/opening", result.Outside, `opening is 4", a sphere of 4" must not pass`, "", `0"`, 0, 12, 23},
		{"/guards/1/infill/opening", result.Within, `opening is 3-63/64"`, "", `1/64"`, 0.015625, 14, 23},
		{"/guards/2", result.NotShown, "guard G3: infill opening is not shown", "", "", 0, 15, 5},
	}
	if len(results) != len(tests) {
		t.Errorf("%d results, want %d", len(results), len(tests))
	}
	for _, tt := range tests {
		r := at(t, results, tt.at)
		if r.Outcome != tt.outcome || r.Message != tt.message || r.Reason != tt.reason {
			t.Errorf("%s: %s, %q, %q", tt.at, r.Outcome, r.Message, r.Reason)
		}
		if r.Span.Start.Line != tt.line || r.Span.Start.Column != tt.column {
			t.Errorf("%s: at %d:%d, want %d:%d", tt.at, r.Span.Start.Line, r.Span.Start.Column, tt.line, tt.column)
		}
		if (r.Margin != nil) != (tt.margin != "") || r.Margin != nil && (r.Margin.Text != tt.margin || r.Margin.Number != tt.number || r.Margin.Unit != "in") {
			t.Errorf("%s: margin %+v, want %s", tt.at, r.Margin, tt.margin)
		}
	}
}

func TestResultsCarryWhatReportsPrint(t *testing.T) {
	results := evaluate(t, nil, imperialSet)
	r := at(t, results, "/stairs/0/risers")
	if r.Check != "stairs/rise" || r.Set != "feet" || r.Clause != "A1" || r.Status != "published" || r.Source != "Trial sheet 1" {
		t.Errorf("origin: %+v", r)
	}
	if r.Mark != "ST1" || r.See != "S3" || r.Consequence != result.LifeSafety || r.Title != "Riser height" || !slices.Equal(r.Mend, []string{"more risers: each becomes lower"}) {
		t.Errorf("words: %+v", r)
	}
	if r.Have.Number != 8 || r.Have.Unit != "in" || r.Limit.Number != 7.75 || r.Limit.Relation != result.AtMost || r.Limit.Standard != "" {
		t.Errorf("values: %+v, %+v", r.Have, r.Limit)
	}
	if len(r.Related) != 1 || r.Related[0].Pointer != "/stairs/0/see" || r.Related[0].Text != "S3" || r.Related[0].Span.Start.Line != 4 {
		t.Errorf("related: %+v", r.Related)
	}
	g := at(t, results, "/guards/0/infill/opening")
	if g.Mark != "G1" || g.Clause != "A2.1" || g.Status != "recalled" || g.Source != "" {
		t.Errorf("guard: %+v", g)
	}
	if want := []string{"a note of the figure", "a note of the check"}; !slices.Equal(g.Notes, want) {
		t.Errorf("notes %q, want %q", g.Notes, want)
	}
	missing := at(t, results, "/stairs/2")
	if missing.Needs != "stairs[].risers" || missing.Mark != "" || missing.Mend != nil || missing.Clause != "A1" {
		t.Errorf("not shown: %+v", missing)
	}
	if s := missing.Span; s.End.Offset != s.Start.Offset+1 || s.End.Column != s.Start.Column+1 {
		t.Errorf("what is not shown spans %+v, want the first character of what lacks it", s)
	}
}

func TestCheckDoesNotApply(t *testing.T) {
	e, err := build(t, nil, imperialSet)
	if err != nil {
		t.Fatal(err)
	}
	results := e.Evaluate(t.Context(), &facts.Facts{}, document(t, "deck: 1\n"), measure.Imperial)
	if len(results) != 2 {
		t.Fatalf("results %+v", results)
	}
	if r := results[1]; r.Outcome != result.DoesNotApply || r.Reason != "applies where a flight of stairs is described" || r.At[0] != "" || r.Span.Start.Line != 1 {
		t.Errorf("result %+v", r)
	}
}

// TestEqualInEitherUnit holds a limit of 7-3/4 in against 196.85 mm and the
// other way round: neither is outside, one step of either unit is.
func TestEqualInEitherUnit(t *testing.T) {
	e, err := build(t, nil, imperialSet, metricSet)
	if err != nil {
		t.Fatal(err)
	}
	for _, typed := range []struct {
		text    string
		outside bool
	}{{"7-3/4 in", false}, {"196.85 mm", false}, {"7-49/64 in", true}, {"196.86 mm", true}, {"196.84 mm", false}, {"7.75 in", false}} {
		value, system, err := measure.ParseLength(typed.text)
		if err != nil {
			t.Fatal(err)
		}
		f := &facts.Facts{Flights: []facts.Flight{{At: []string{""}, Of: 1, RiserMax: length(value, "/stairs")}}}
		doc := document(t, "stairs: "+typed.text+"\n")
		n := 0
		for _, r := range e.Evaluate(t.Context(), f, doc, system) {
			if r.Check != "stairs/rise" {
				continue
			}
			n++
			if (r.Outcome == result.Outside) != typed.outside {
				t.Errorf("%s under %s: %s", typed.text, r.Set, r.Outcome)
			}
			if equal := r.Have.Text == r.Limit.Text; equal != (value == 196_850_000) {
				t.Errorf("%s under %s: prints %s against %s", typed.text, r.Set, r.Have.Text, r.Limit.Text)
			}
			if (r.Limit.Standard != "") != (r.Set == "feet" && system == measure.Metric || r.Set == "metres" && system == measure.Imperial) {
				t.Errorf("%s under %s: limit beside it %q", typed.text, r.Set, r.Limit.Standard)
			}
		}
		if n != 2 {
			t.Errorf("%s: %d results of the check, want one for each set", typed.text, n)
		}
	}
}

// What a check works out from a figure and the design stands in no standard.
func TestDerivedLimitIsNotInTheStandard(t *testing.T) {
	for limit, want := range map[string]string{"figures.max": "196.85 mm", "figures.max + flight.of": ""} {
		e, err := build(t, replace(riseFile, `"limit": figures.max`, `"limit": `+limit), metricSet)
		if err != nil {
			t.Fatal(err)
		}
		r := at(t, e.Evaluate(t.Context(), sampleFacts(), document(t, designText), measure.Imperial), "/stairs/0/risers")
		if r.Limit.Standard != want {
			t.Errorf("the limit %s is %q in the standard, want %q", limit, r.Limit.Standard, want)
		}
	}
}

func TestTwoSetsShareFingerprints(t *testing.T) {
	results := evaluate(t, nil, imperialSet, metricSet)
	prints := map[string][]string{}
	for _, r := range results {
		if r.Check == "stairs/rise" {
			prints[r.At[0]] = append(prints[r.At[0]], r.Set+" "+r.Fingerprint)
		}
	}
	for place, both := range prints {
		if len(both) != 2 || strings.Fields(both[0])[1] != strings.Fields(both[1])[1] || both[0] == both[1] {
			t.Errorf("%s: %v", place, both)
		}
	}
}

func TestFingerprintSurvivesMovesAndChanges(t *testing.T) {
	e, err := build(t, nil, imperialSet)
	if err != nil {
		t.Fatal(err)
	}
	before := at(t, e.Evaluate(t.Context(), sampleFacts(), document(t, designText), measure.Imperial), "/stairs/0/risers").Fingerprint
	moved := "# a line more\n" + strings.Replace(designText, "  - mark: ST1\n    see: S3\n    risers: 8 in\n", "  - risers: 1 in\n  - mark: ST1\n    risers: 9 in\n", 1)
	f := &facts.Facts{Flights: []facts.Flight{{At: []string{"/stairs/1"}, Of: 1, RiserMax: length(9*measure.Inch, "/stairs/1/risers")}}}
	after := e.Evaluate(t.Context(), f, document(t, moved), measure.Metric)
	if got := at(t, after, "/stairs/1/risers").Fingerprint; got != before {
		t.Errorf("fingerprint %s became %s", before, got)
	}
	other := strings.Replace(moved, "ST1", "ST9", 1)
	if got := at(t, e.Evaluate(t.Context(), f, document(t, other), measure.Metric), "/stairs/1/risers").Fingerprint; got == before {
		t.Error("another stair has the same fingerprint")
	}
	seen := map[string]string{}
	for _, r := range evaluate(t, nil, imperialSet) {
		if place := seen[r.Fingerprint]; place != "" || len(r.Fingerprint) != 16 {
			t.Errorf("fingerprint %s of %s is that of %s too", r.Fingerprint, r.At[0], place)
		}
		seen[r.Fingerprint] = r.At[0]
	}
}

func TestOrder(t *testing.T) {
	var have []string
	for _, r := range evaluate(t, nil, metricSet, imperialSet) {
		have = append(have, strings.Join([]string{string(r.Outcome), r.At[0], r.Check, r.Set}, " "))
	}
	want := []string{
		"outside /stairs/0/risers stairs/rise feet", "outside /stairs/0/risers stairs/rise metres",
		"not shown /stairs/2 stairs/rise feet", "not shown /stairs/2 stairs/rise metres",
		"outside /guards/0/infill/opening guards/opening feet", "not shown /guards/2 guards/opening feet",
		"within /guards/1/infill/opening guards/opening feet",
		"within /stairs/1/risers stairs/rise feet", "does not apply /stairs/3 stairs/rise feet",
		"within /stairs/1/risers stairs/rise metres", "does not apply /stairs/3 stairs/rise metres",
	}
	if !slices.Equal(have, want) {
		t.Errorf("order\n%s\nwant\n%s", strings.Join(have, "\n"), strings.Join(want, "\n"))
	}
}

func TestStopsWhenToldTo(t *testing.T) {
	forever := replace(riseFile, "applies if count(input.flights) > 0",
		"applies if count([1 | some a in numbers.range(1, 5000); some b in numbers.range(1, 5000); some c in numbers.range(1, 5000); a + b == c * 0]) > 0")
	e, err := build(t, forever, imperialSet)
	if err != nil {
		t.Fatal(err)
	}
	ctx, cancel := context.WithTimeoutCause(t.Context(), 50*time.Millisecond, errors.New("the time is up"))
	defer cancel()
	done := make(chan []result.Result)
	go func() { done <- e.Evaluate(ctx, sampleFacts(), document(t, designText), measure.Imperial) }()
	select {
	case results := <-done:
		r := at(t, results, "")
		if r.Outcome != result.CouldNotRun || r.Check != "stairs/rise" || r.Reason != "stopped before it ended: the time is up" {
			t.Errorf("result %+v", r)
		}
	case <-time.After(20 * time.Second):
		t.Fatal("the check does not stop")
	}
}

func TestSetsOfOneNameAreRefused(t *testing.T) {
	if _, err := build(t, nil, imperialSet, imperialSet); err == nil || err.Error() != "rule set feet is given twice" {
		t.Errorf("error %v", err)
	}
}
