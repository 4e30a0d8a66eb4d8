package engine_test

import (
	"slices"
	"testing"
	"testing/fstest"

	"plumbrule/checker/engine"
	"plumbrule/checker/facts"
	"plumbrule/checker/measure"
	"plumbrule/checker/result"
	"plumbrule/checker/ruleset"
)

const span = `# METADATA
# title: Joist span
# description: Each run of joists against the span table and others of its figures.
# custom:
#   id: joists/span
#   consequence: structure
#   why: A joist that reaches too far sags and bounces.
#   applies_when: joists are described
#   figures:
#     spans: {type: table, value: length, keys: [size, spacing], relation: at most, about: greatest span}
#     part: {type: ratio, unit: of the span, relation: at most, about: greatest part of the span}
#     fall: {type: slope, relation: at most, about: greatest fall}
#     load: {type: pressure, relation: at least, about: least load}
#     pull: {type: force, relation: at least, about: least pull}
#     turn: {type: angle, relation: more than, about: least angle}
#     many: {type: count, unit: [step, steps], relation: exactly, about: joists}
#     dry: {type: flag, relation: exactly, about: dry}
#     kinds: {type: list, relation: one of, about: kinds}
#   values: {load: pressure, kind: words}
#   messages:
#     outside: "span is {have}, the limit is {limit}"
#     within: "{have} against {limit}"
#     margin: "{have} against {limit} leaves {margin}"
#     beyond: "{load} is beyond the table for {kind}"
#   unmended: [beyond]
#   mend: ["shorter joists"]
package checks.joists.span

import data.figures.joists.span as figures

applies if count(input.joist_spans) > 0

readings contains {
	"at": run.clear_span.at, "have": run.clear_span.value, "figure": "spans",
	"limit": figures.spans.cells[run.size.value][i], "cell": [run.size.value, i],
	"outside": run.clear_span.value > figures.spans.cells[run.size.value][i],
} if {
	some run in input.joist_spans
	i := min([k | some k, b in figures.spans.breaks.spacing; b >= run.spacing.value])
}

readings contains {
	"at": run.spacing.at, "figure": "spans", "outside": true, "say": "beyond",
	"load": 1000000000, "kind": run.size.value,
} if {
	some run in input.joist_spans
	run.spacing.value > max(figures.spans.breaks.spacing)
}

_others := [
	{"figure": "part", "have": {"rise": 651, "run": 2600}, "limit": figures.part, "outside": true},
	{"figure": "part", "have": {"rise": 2500000001, "run": 10000000000}, "limit": figures.part, "outside": true},
	{"figure": "part", "have": {"rise": 650, "run": 2600}, "limit": figures.part, "outside": false},
	{"figure": "fall", "have": {"rise": 1, "run": 40}, "limit": figures.fall, "outside": true},
	{"figure": "load", "have": 1900000000, "limit": figures.load, "outside": true},
	{"figure": "pull", "have": 889644324, "limit": figures.pull, "outside": false},
	{"figure": "turn", "have": 45000000, "limit": figures.turn, "outside": true},
	{"figure": "many", "have": 3, "limit": figures.many, "outside": true},
	{"figure": "dry", "have": false, "limit": figures.dry, "outside": true},
	{"figure": "kinds", "have": "flat", "limit": figures.kinds, "outside": true},
	{"figure": "many", "have": 12, "limit": figures.many, "outside": true, "say": "within"},
]

readings contains object.union({"at": ["/deck"], "say": "margin"}, other) if {
	count(input.doors) > 0
	some other in _others
	not other.figure in {"dry", "kinds", "many"}
}

readings contains object.union({"at": ["/deck"]}, other) if {
	count(input.doors) > 0
	some other in _others
	other.figure in {"dry", "kinds", "many"}
}
`

const spanSet = `set: feet
title: Feet and inches
edition: "1"
publisher: the trial office
system: imperial
scope: figures for tests
not_covered: []
sources: {sheet: Trial sheet 1}
checks:
  joists/span:
    clause: A1
    figures:
      spans: {table: spans}
      part: {value: 1/4, status: recalled}
      fall: {value: 1 in 48, status: recalled}
      load: {value: 40 psf, status: recalled}
      pull: {value: 200 lb, status: recalled}
      turn: {value: 45 deg, status: recalled}
      many: {value: 4, status: recalled}
      dry: {value: true, status: recalled}
      kinds: {value: [round, shaped, oval], status: recalled}
`

const spanTable = `table: spans
title: Table of spans
clause: Table A1
value: length
keys: [{name: size, type: words}, {name: spacing, type: length}]
columns: [12 in, 16 in, 24 in]
status: {12 in: {status: published, source: sheet}, 16 in: {status: recalled}, 24 in: {status: common practice}}
rows:
  - {at: [2x8], cells: [11 ft, 10 ft, 8 ft]}
`

func spanEngine(t *testing.T) *engine.Engine {
	t.Helper()
	checks, err := catalogOf(t, map[string]string{"checks/joists/span/span.rego": span})
	if err != nil {
		t.Fatal(err)
	}
	set, err := ruleset.Load(fstest.MapFS{"set.yaml": {Data: []byte(spanSet)}, "tables/spans.yaml": {Data: []byte(spanTable)}}, "set.yaml", "set.yaml", checks)
	if err != nil {
		t.Fatal(err)
	}
	e, err := engine.New(engine.Options{Checks: checks, Sets: []*ruleset.Set{set}})
	if err != nil {
		t.Fatal(err)
	}
	return e
}

const joistText = "deck: 1\na: 10 ft\nb: 10 ft\nc: 30 in\n"

func spanOf(spacing measure.Length, at string) facts.JoistSpan {
	return facts.JoistSpan{
		At: []string{at}, ClearSpan: length(10*measure.Foot, at), Spacing: length(spacing, at),
		Size: &facts.Words{Value: "2x8", At: []string{at}},
	}
}

func TestTableReadingsCarryTheirCell(t *testing.T) {
	f := &facts.Facts{JoistSpans: []facts.JoistSpan{spanOf(12*measure.Inch, "/a"), spanOf(13*measure.Inch, "/b"), spanOf(30*measure.Inch, "/c")}}
	results := spanEngine(t).Evaluate(t.Context(), f, document(t, joistText), measure.Imperial)
	if len(results) != 3 {
		t.Fatalf("results %+v", results)
	}
	a := at(t, results, "/a")
	if a.Outcome != result.Within || a.Status != "published" || a.Source != "Trial sheet 1" || a.Clause != "Table A1" || !slices.Equal(a.Notes, []string{"Table of spans: 2x8, 12 in"}) {
		t.Errorf("/a: %+v", a)
	}
	if a.Limit.Text != `11'-0"` || a.Margin.Text != `12"` {
		t.Errorf("/a: limit %+v, margin %+v", a.Limit, a.Margin)
	}
	b := at(t, results, "/b")
	want := []string{"Table of spans: 2x8, 16 in"}
	if b.Outcome != result.Within || b.Margin.Number != 0 || b.Status != "recalled" || !slices.Equal(b.Notes, want) {
		t.Errorf("/b: %+v", b)
	}
	c := at(t, results, "/c")
	if c.Outcome != result.Outside || c.Message != "20.8854 psf is beyond the table for 2x8" || c.Status != "recalled" || c.Have != nil || c.Limit != nil || c.Margin != nil {
		t.Errorf("/c: %+v", c)
	}
	if c.Mend != nil {
		t.Errorf("/c, which nothing mends, is to be mended by %q", c.Mend)
	}
}

// The ways to mend stand with what they mend only.
func TestWaysToMend(t *testing.T) {
	long := spanOf(12*measure.Inch, "/a")
	long.ClearSpan.Value = 12 * measure.Foot
	results := spanEngine(t).Evaluate(t.Context(), &facts.Facts{JoistSpans: []facts.JoistSpan{long, spanOf(12*measure.Inch, "/b")}},
		document(t, joistText), measure.Imperial)
	if a := at(t, results, "/a"); a.Outcome != result.Outside || !slices.Equal(a.Mend, []string{"shorter joists"}) {
		t.Errorf("/a: %+v", a)
	}
	if b := at(t, results, "/b"); b.Outcome != result.Within || b.Mend != nil {
		t.Errorf("/b: %+v", b)
	}
}

// TestCountsSayWhatTheyCount looks at the values beside the message, in every
// report: a number alone could be anything.
func TestCountsSayWhatTheyCount(t *testing.T) {
	f := &facts.Facts{JoistSpans: []facts.JoistSpan{spanOf(12*measure.Inch, "/a")}, Doors: []facts.Door{{}}}
	seen := 0
	for _, r := range spanEngine(t).Evaluate(t.Context(), f, document(t, joistText), measure.Imperial) {
		if r.Have == nil || r.Have.Unit != "count" && r.Message != "1/4 against 1/4 leaves 0" {
			continue
		}
		seen++
		got := []string{r.Have.Text, r.Limit.Text, r.Margin.Text}
		want := map[float64][]string{
			3:    {"3 steps", "4 steps", "1 step"},
			12:   {"12 steps", "4 steps", "8 steps"},
			0.25: {"1/4 of the span", "1/4 of the span", "0 of the span"},
		}[r.Have.Number]
		if !slices.Equal(got, want) {
			t.Errorf("%s: %q, want %q", r.Message, got, want)
		}
	}
	if seen != 3 {
		t.Errorf("%d values seen", seen)
	}
}

func TestEveryKindPrints(t *testing.T) {
	f := &facts.Facts{JoistSpans: []facts.JoistSpan{spanOf(12*measure.Inch, "/a")}, Doors: []facts.Door{{}}}
	var have []string
	for _, r := range spanEngine(t).Evaluate(t.Context(), f, document(t, joistText), measure.Metric) {
		if r.At[0] == "/deck" {
			have = append(have, r.Message)
		}
		if r.Outcome == result.CouldNotRun {
			t.Fatal(r.Reason)
		}
	}
	slices.Sort(have)
	want := []string{
		"0.2500000001 against 1/4 leaves under 0.001",
		"0.2504 against 1/4 leaves 0.0004",
		"1 in 40 (2.5%) against 1 in 48 (2.08%) leaves 0.42%",
		"1.9 kPa against 1.9152 kPa leaves 0.0152 kPa",
		"1/4 against 1/4 leaves 0",
		"12 against 4",
		"45° against 45° leaves 0°",
		"889644324 µN against 889644323 µN leaves under 0.001 kN",
		"span is 3, the limit is 4",
		"span is flat, the limit is round, shaped or oval",
		"span is no, the limit is yes",
	}
	if !slices.Equal(have, want) {
		t.Errorf("have\n%q\nwant\n%q", have, want)
	}
}
