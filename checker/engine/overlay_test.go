package engine_test

import (
	"strings"
	"testing"
	"testing/fstest"

	"plumbrule/checker/engine"
	"plumbrule/checker/facts"
	"plumbrule/checker/measure"
	"plumbrule/checker/result"
	"plumbrule/checker/ruleset"
)

const townHead = "set: town\ntitle: Town rules\nedition: \"1\"\npublisher: the office\nplace: Town of Trial\nextends: set.yaml\nchecks:\n"

// overlaid evaluates the sample design under a set and under what a town
// changes in it.
func overlaid(t *testing.T, changes string) (e *engine.Engine, results []result.Result) {
	t.Helper()
	checks, err := catalogOf(t, map[string]string{riseFile: rise, openingFile: opening})
	if err != nil {
		t.Fatal(err)
	}
	files := fstest.MapFS{"set.yaml": {Data: []byte(imperialSet)}, "town.yaml": {Data: []byte(townHead + changes)}}
	var sets []*ruleset.Set
	for _, name := range []string{"set.yaml", "town.yaml"} {
		set, err := ruleset.Load(files, name, name, checks)
		if err != nil {
			t.Fatal(err)
		}
		sets = append(sets, set)
	}
	if e, err = engine.New(engine.Options{Checks: checks, Sets: sets}); err != nil {
		t.Fatal(err)
	}
	return e, e.Evaluate(t.Context(), sampleFacts(), document(t, designText), measure.Imperial, "town")
}

func TestAmendedFigureDecides(t *testing.T) {
	_, results := overlaid(t, "  stairs/rise:\n    clause: Ordinance 7\n    figures:\n      max: {value: 8 in, status: recalled}\n")
	r := at(t, results, "/stairs/0/risers")
	if r.Outcome != result.Within || r.Set != "town" || r.Clause != "Ordinance 7" || r.Status != "recalled" || r.Limit.Text != `8"` {
		t.Errorf("%+v", r)
	}
	if want := "amended by Town of Trial, Ordinance 7; replaces 7-3/4 in (feet A1)"; r.Amended != want {
		t.Errorf("amended %q, want %q", r.Amended, want)
	}
	if r := at(t, results, "/guards/0/infill/opening"); r.Amended != "" || r.Set != "town" || r.Outcome != result.Outside {
		t.Errorf("a figure of the set below: %+v", r)
	}
}

func TestCheckTakenOutSaysWhy(t *testing.T) {
	_, results := overlaid(t, "  stairs/rise: {off: true, clause: Ordinance 8, reason: the section is deleted}\n")
	var said []result.Result
	for _, r := range results {
		if r.Check == "stairs/rise" {
			said = append(said, r)
		}
	}
	if len(said) != 1 || said[0].Outcome != result.DoesNotApply || said[0].Clause != "Ordinance 8" ||
		said[0].Reason != "taken out by Town of Trial, Ordinance 8: the section is deleted" {
		t.Errorf("%+v", said)
	}
}

func TestEvaluateNamedSetsOnly(t *testing.T) {
	e, _ := overlaid(t, "  stairs/rise: {off: true, clause: A, reason: gone}\n")
	doc := document(t, designText)
	for _, tt := range []struct {
		sets []string
		want string
	}{{nil, "feet town"}, {[]string{"feet"}, "feet"}, {[]string{"town"}, "town"}, {[]string{"feet", "town"}, "feet town"}, {[]string{"none"}, ""}} {
		seen := map[string]bool{}
		for _, r := range e.Evaluate(t.Context(), sampleFacts(), doc, measure.Imperial, tt.sets...) {
			seen[r.Set] = true
		}
		var got []string
		for _, id := range []string{"feet", "town"} {
			if seen[id] {
				got = append(got, id)
			}
		}
		if strings.Join(got, " ") != tt.want {
			t.Errorf("%v: results of %v, want %s", tt.sets, got, tt.want)
		}
	}
}

func TestAmendedCellDecides(t *testing.T) {
	checks, err := catalogOf(t, map[string]string{"checks/joists/span/span.rego": span})
	if err != nil {
		t.Fatal(err)
	}
	files := fstest.MapFS{
		"set.yaml": {Data: []byte(spanSet)}, "tables/spans.yaml": {Data: []byte(spanTable)},
		"town.yaml": {Data: []byte(townHead + "  joists/span: {figures: {spans: {cells: [{at: [2x8, 16 in], value: 9 ft, status: recalled, clause: Ordinance 9}]}}}\n")},
	}
	set, err := ruleset.Load(files, "town.yaml", "town.yaml", checks)
	if err != nil {
		t.Fatal(err)
	}
	e, err := engine.New(engine.Options{Checks: checks, Sets: []*ruleset.Set{set}})
	if err != nil {
		t.Fatal(err)
	}
	f := &facts.Facts{JoistSpans: []facts.JoistSpan{spanOf(12*measure.Inch, "/a"), spanOf(13*measure.Inch, "/b")}}
	results := e.Evaluate(t.Context(), f, document(t, joistText), measure.Imperial)
	if a := at(t, results, "/a"); a.Outcome != result.Within || a.Amended != "" || a.Clause != "Table A1" {
		t.Errorf("a cell of the table: %+v", a)
	}
	b := at(t, results, "/b")
	if b.Outcome != result.Outside || b.Clause != "Ordinance 9" || b.Amended != "amended by Town of Trial, Ordinance 9; replaces 10 ft (feet Table A1)" {
		t.Errorf("an amended cell: %+v", b)
	}
}

// What a set says of the class holds for every outcome of the check, and for its
// own results only.
func TestResultsAreOfTheClassThatTheSetStates(t *testing.T) {
	e, results := overlaid(t, "  stairs/rise: {class: durability}\n")
	outcomes := map[result.Outcome]bool{}
	for _, r := range results {
		if r.Check != "stairs/rise" {
			continue
		}
		outcomes[r.Outcome] = true
		if r.Consequence != result.Durability {
			t.Errorf("%s at %v: %s", r.Outcome, r.At, r.Consequence)
		}
	}
	if !outcomes[result.Outside] || !outcomes[result.NotShown] {
		t.Errorf("tried %v only", outcomes)
	}
	for _, r := range e.Evaluate(t.Context(), sampleFacts(), document(t, designText), measure.Imperial, "feet") {
		if r.Check == "stairs/rise" && r.Consequence == result.Durability {
			t.Errorf("the set below has %s of the class too", r.Outcome)
		}
	}
}
