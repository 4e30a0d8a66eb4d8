package engine_test

import (
	"strings"
	"testing"
	"testing/fstest"

	"plumbrule/checker/catalog"
	"plumbrule/checker/engine"
	"plumbrule/checker/facts"
	"plumbrule/checker/measure"
	"plumbrule/checker/result"
	"plumbrule/checker/ruleset"
	"plumbrule/checker/source"
)

const defaults = `# METADATA
# title: Shapes
# scope: subpackages
# schemas:
#   - input: schema.facts
#   - data.figures: schema.figures
package checks
`

const rise = `# METADATA
# title: Riser height
# description: The greatest riser of each flight against the limit.
# custom:
#   id: stairs/rise
#   aliases: [stairs/step]
#   consequence: life safety
#   why: People fall where a step is higher than the foot expects.
#   applies_when: a flight of stairs is described
#   figures:
#     max: {type: length, relation: at most, about: greatest riser}
#   values: {n: count, of: count}
#   messages:
#     outside: "riser {n} of {of} is {have}, the limit is {limit}, over by {margin}"
#   exempt: {winder: "its {of} flights wind"}
#   mend: ["more risers: each becomes lower"]
package checks.stairs.rise

import data.figures.stairs.rise as figures

applies if count(input.flights) > 0

readings contains {
	"at": flight.riser_max.at, "have": flight.riser_max.value,
	"figure": "max", "limit": figures.max,
	"outside": flight.riser_max.value > figures.max,
	"n": flight.riser_max_n, "of": flight.of,
} if {
	some flight in input.flights
}

unknown contains {"at": flight.at, "needs": "stairs[].risers"} if {
	some flight in input.flights
	not flight.riser_max
	flight.of == 1
}

exempt contains {"at": flight.at, "because": "winder", "of": flight.of} if {
	some flight in input.flights
	not flight.riser_max
	flight.of > 1
}
`

const opening = `# METADATA
# title: Guard opening
# description: The widest opening of each guard against the sphere.
# custom:
#   id: guards/opening
#   consequence: workmanship
#   why: A child goes where its head goes.
#   applies_when: a guard is described
#   figures:
#     sphere: {type: length, relation: less than, about: sphere that must not pass}
#   messages:
#     outside: "opening is {have}, a sphere of {limit} must not pass"
#     within: "opening is {have}"
package checks.guards.opening

import data.figures.guards.opening as figures

applies if count(input.guards) > 0

readings contains {
	"at": guard.opening.at, "have": guard.opening.value,
	"figure": "sphere", "limit": figures.sphere,
	"outside": guard.opening.value >= figures.sphere,
} if {
	some guard in input.guards
}

unknown contains {"at": guard.at, "needs": "guards[].infill.opening"} if {
	some guard in input.guards
	not guard.opening
}
`

const imperialSet = `set: feet
title: Feet and inches
edition: "1"
publisher: the trial office
system: imperial
scope: figures for tests
not_covered: []
sources: {sheet: Trial sheet 1}
checks:
  stairs/rise:
    clause: A1
    figures:
      max: {value: 7-3/4 in, status: published, source: sheet}
  guards/opening:
    clause: A2
    note: a note of the check
    figures:
      sphere: {value: 4 in, status: recalled, note: a note of the figure, clause: A2.1}
`

const metricSet = `set: metres
title: Millimetres
edition: "2"
publisher: the trial office
system: metric
scope: figures for tests
not_covered: []
checks:
  stairs/rise:
    clause: M1
    figures:
      max: {value: 196.85 mm, status: common practice}
`

const designText = `deck: 1
stairs:
  - mark: ST1
    see: S3
    risers: 8 in
  - risers: 196.85 mm
  - width: 36 in
  - {mark: ST4, see: S4, kind: winding}
guards:
  - mark: G1
    see: S5
    infill: {opening: 4 in}
  - mark: G2
    infill: {opening: 3-63/64 in}
  - mark: G3
    infill:
      kind: balusters
`

func length(v measure.Length, at ...string) *facts.Length { return &facts.Length{Value: v, At: at} }

func sampleFacts() *facts.Facts {
	return &facts.Facts{
		Units: "imperial",
		Flights: []facts.Flight{
			{At: []string{"/stairs/0"}, Of: 1, RiserMax: length(8*measure.Inch, "/stairs/0/risers", "/stairs/0/see"), RiserMaxN: 7},
			{At: []string{"/stairs/1"}, Of: 1, RiserMax: length(196_850_000, "/stairs/1/risers")},
			{At: []string{"/stairs/2"}, Of: 1},
			{At: []string{"/stairs/3"}, Of: 2},
		},
		Guards: []facts.Guard{
			{At: []string{"/guards/0"}, Opening: length(4*measure.Inch, "/guards/0/infill/opening")},
			{At: []string{"/guards/1"}, Opening: length(4*measure.Inch-measure.Inch/64, "/guards/1/infill/opening")},
			{At: []string{"/guards/2"}},
		},
	}
}

func catalogOf(t testing.TB, modules map[string]string) (*catalog.Catalog, error) {
	t.Helper()
	tree := fstest.MapFS{"checks/defaults.rego": {Data: []byte(defaults)}}
	for name, text := range modules {
		tree[name] = &fstest.MapFile{Data: []byte(text)}
	}
	return catalog.Load(tree)
}

// setOf loads sets for a catalog.
func setOf(t testing.TB, checks *catalog.Catalog, texts ...string) []*ruleset.Set {
	t.Helper()
	var sets []*ruleset.Set
	for _, text := range texts {
		set, err := ruleset.Load(fstest.MapFS{"set.yaml": {Data: []byte(text)}}, "set.yaml", "set.yaml", checks)
		if err != nil {
			t.Fatal(err)
		}
		sets = append(sets, set)
	}
	return sets
}

const riseFile, openingFile = "checks/stairs/rise/rise.rego", "checks/guards/opening/opening.rego"

func document(t testing.TB, text string) *source.Document {
	t.Helper()
	doc, err := source.Read("sample.deck.yaml", []byte(text))
	if err != nil {
		t.Fatal(err)
	}
	return doc
}

// build makes an engine of the two sample checks, after changing their text.
func build(t testing.TB, change func(map[string]string), sets ...string) (*engine.Engine, error) {
	t.Helper()
	modules := map[string]string{riseFile: rise, openingFile: opening}
	if change != nil {
		change(modules)
	}
	checks, err := catalogOf(t, modules)
	if err != nil {
		return nil, err
	}
	return engine.New(engine.Options{Checks: checks, Sets: setOf(t, checks, sets...)})
}

func evaluate(t testing.TB, change func(map[string]string), sets ...string) []result.Result {
	t.Helper()
	e, err := build(t, change, sets...)
	if err != nil {
		t.Fatal(err)
	}
	return e.Evaluate(t.Context(), sampleFacts(), document(t, designText), measure.Imperial)
}

func replace(file, old, fresh string) func(map[string]string) {
	return func(modules map[string]string) {
		if !strings.Contains(modules[file], old) {
			panic("the module has no " + old)
		}
		modules[file] = strings.Replace(modules[file], old, fresh, 1)
	}
}

// at gives the only result at a place.
func at(t *testing.T, results []result.Result, pointer string) result.Result {
	t.Helper()
	var found []result.Result
	for _, r := range results {
		if r.At[0] == pointer {
			found = append(found, r)
		}
	}
	if len(found) != 1 {
		t.Fatalf("%d results at %s, want one:\n%+v", len(found), pointer, found)
	}
	return found[0]
}
