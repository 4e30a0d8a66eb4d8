package engine_test

import (
	"context"
	"strings"
	"testing"

	"plumbrule/checker/measure"
	"plumbrule/checker/result"
)

// TestFailureCostsOnlyItself breaks one check in ways that show only when it
// runs, and expects the other one untouched.
func TestFailureCostsOnlyItself(t *testing.T) {
	sound := evaluate(t, nil, imperialSet)
	tests := []struct{ name, old, new, want string }{
		{"conflict", "applies if count(input.guards) > 0", "applies := 1 if count(input.guards) > 0\n\napplies := 2 if count(input.guards) > 1", "eval_conflict_error"},
		{"failing function", "\tsome guard in input.guards\n}\n\nunknown", "\tsome guard in input.guards\n\tto_number(guard.at[0]) > 1\n}\n\nunknown", "to_number"},
		{"silence", "\tsome guard in input.guards\n}\n\nunknown", "\tsome guard in input.guards\n\tguard.opening.value < 0\n}\n\n_unknown", "the check said nothing about any subject"},
		{"have of another kind", `"have": guard.opening.value`, `"have": "wide"`, `readings: "have": "wide" is no length, which is a whole number`},
		{"have with decimals", `"have": guard.opening.value`, `"have": guard.opening.value / 3`, "which is a whole number"},
		{"limit of another kind", `"limit": figures.sphere`, `"limit": [figures.sphere]`, `readings: "limit": [101600000] is no length`},
		{"place unknown", `"at": guard.opening.at`, `"at": ["/guards/9"]`, `readings: the place "/guards/9" is not in the design`},
		{"second place unknown", `"at": guard.opening.at`, `"at": [guard.at[0], "/x"]`, `readings: the place "/x" is not in the design`},
		{"place no list", `"at": guard.opening.at`, `"at": guard.at[0]`, `readings: a row has no list of places under "at"`},
		{"no place", `"at": guard.opening.at`, `"at": []`, "readings: a reading names no place in the design"},
		{"place no text", `"at": guard.opening.at`, `"at": [1]`, "readings: a place is 1, not a text"},
		{"outside no flag", `"outside": guard.opening.value >= figures.sphere`, `"outside": "yes"`, `readings: a row has no true or false under "outside"`},
		{"outside missing", "readings contains {\n\t\"at\": guard.opening.at, \"have\": guard.opening.value,\n\t\"figure\": \"sphere\", \"limit\": figures.sphere,\n\t\"outside\": guard.opening.value >= figures.sphere,\n} if {", "readings contains object.union({\"at\": guard.at}, {\"figure\": \"sphere\", \"limit\": figures.sphere}) if {", `readings: a row has no true or false under "outside"`},
		{"key unknown", "readings contains {\n\t\"at\": guard.opening.at,", "readings contains object.union({\"colour\": 1}, {\n\t\"at\": guard.opening.at,", `readings: a row has the key "colour", which nobody knows`},
		{"figure unknown", `"figure": "sphere"`, `"figure": concat("", ["sp", "ere"])`, `readings: the check asks for no figure "spere"`},
		{"figure not given", `"figure": "sphere"`, `"figure": "spare"`, `readings: set feet does not give the figure "spare"`},
		{"cell without table", `"figure": "sphere"`, `"cell": [0], "figure": "sphere"`, `readings: the cell [0] is not in a table`},
		{"limit stated nowhere", `"figure": "sphere"`, `"stated_at": true, "figure": "sphere"`, `readings: a row has no list of places under "stated_at"`},
		{"limit stated elsewhere", `"figure": "sphere"`, `"stated_at": ["/stairs/0"], "figure": "sphere"`, `readings: the listing is at "/stairs/0", which is not among the places under "at"`},
		{"stated limit of no figure", `"figure": "sphere"`, `"stated_at": guard.opening.at, "figure": concat("", ["sp", "ere"])`, `readings: the check asks for no figure "spere"`},
		{"stated limit with a cell", `"figure": "sphere"`, `"stated_at": guard.opening.at, "cell": [0], "figure": "sphere"`, `readings: a row has the key "cell", which nobody knows`},
		{"message unknown", `"figure": "sphere"`, `"say": lower("NONE"), "figure": "sphere"`, `readings: the check has no message "none"`},
		{"message lacks a value", `"figure": "sphere"`, `"say": "wide", "figure": "sphere"`, "readings: the message names {width}, which the check did not return"},
		{"value of another kind", `"figure": "sphere"`, `"width": true, "figure": "sphere"`, `readings: value "width": true is no length`},
		{"row no object", "readings contains {\n\t\"at\": guard.opening.at, \"have\": guard.opening.value,\n\t\"figure\": \"sphere\", \"limit\": figures.sphere,\n\t\"outside\": guard.opening.value >= figures.sphere,\n} if {", "readings contains [guard.at[0], figures.sphere] if {", "readings: a row is [\"/guards/0\",101600000], not an object"},
	}
	const (
		figures  = "#     sphere: {type: length, relation: less than, about: sphere that must not pass}\n"
		messages = "#     within: \"opening is {have}\"\n"
	)
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			changed := func(modules map[string]string) {
				replace(openingFile, figures, figures+"#     spare: {type: length, relation: at most, about: a spare, optional: true}\n#   values: {width: length}\n")(modules)
				replace(openingFile, messages, messages+"#     wide: \"{width} wide\"\n")(modules)
				replace(openingFile, tt.old, tt.new)(modules)
				if strings.Contains(tt.new, "object.union({\"colour\"") {
					replace(openingFile, "figures.sphere,\n} if {", "figures.sphere,\n}) if {")(modules)
				}
			}
			results := evaluate(t, changed, imperialSet)
			broken := at(t, results, "")
			if broken.Outcome != result.CouldNotRun || broken.Check != "guards/opening" || broken.Consequence != result.Workmanship {
				t.Errorf("result %+v", broken)
			}
			if !strings.Contains(broken.Reason, tt.want) || !strings.Contains(broken.Message, tt.want) || strings.Contains(broken.Reason, "\n") {
				t.Errorf("reason %q does not say %q on one line", broken.Reason, tt.want)
			}
			for _, r := range sound {
				if r.Check == "stairs/rise" {
					if got := at(t, results, r.At[0]); got.Outcome != r.Outcome || got.Message != r.Message {
						t.Errorf("the other check says %s %q at %s, said %s %q", got.Outcome, got.Message, r.At[0], r.Outcome, r.Message)
					}
				}
			}
			if len(results) != 1+4 {
				t.Errorf("%d results, want the failure and the 4 of the other check", len(results))
			}
		})
	}
}

// TestRefusedWhenLoaded changes one thing in a check and expects the compiler
// to refuse it at its place.
func TestRefusedWhenLoaded(t *testing.T) {
	tests := []struct{ name, old, new, want string }{
		{"misspelt fact", "guard.opening.value,", "guard.openning.value,", "opening.rego:21:34: undefined ref: guard.openning.value; there is no openning, the nearest is opening"},
		{"misspelt list of facts", "count(input.guards)", "count(input.gaurds)", "opening.rego:18:18: undefined ref: input.gaurds; there is no gaurds, the nearest is guards"},
		{"fact of another kind", "guard.opening.value,", "guard.opening.value.text,", "opening.rego:21:34: undefined ref: guard.opening.value.text"},
		{"text compared as a list", "not guard.opening", "not guard.at[0][0]", "opening.rego:"},
		{"misspelt figure", "\"limit\": figures.sphere", "\"limit\": figures.spere", "opening.rego:23:36: undefined ref: data.figures.guards.opening.spere; there is no spere, the nearest is sphere"},
		{"figure of another kind", "\"limit\": figures.sphere", "\"limit\": figures.sphere.rise", "opening.rego:23:36: undefined ref: data.figures.guards.opening.sphere.rise"},
		{"network", "not guard.opening", "http.send({\"method\": \"get\", \"url\": \"http://example.invalid\"})", "undefined function http.send"},
		{"clock", "not guard.opening", "time.now_ns() > 0", "undefined function time.now_ns"},
		{"chance", "not guard.opening", `rand.intn("a", 5) > 0`, "undefined function rand.intn"},
		{"environment", "not guard.opening", "opa.runtime().env", "undefined function opa.runtime"},
		{"name lookup", "not guard.opening", `net.lookup_ip_addr("example.invalid")`, "undefined function net.lookup_ip_addr"},
		{"identity", "not guard.opening", `uuid.rfc4122("x")`, "undefined function uuid.rfc4122"},
		{"unused import", "import data.figures", "import data.figures.guards.opening as other\nimport data.figures", "import data.figures.guards.opening as other unused"},
		{"unsafe variable", "not guard.opening", "not gaurd.opening", "opening.rego:"},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			_, err := build(t, replace(openingFile, tt.old, tt.new), imperialSet)
			if err == nil {
				t.Fatal("loaded")
			}
			if !strings.Contains(err.Error(), tt.want) {
				t.Errorf("error\n%v\ndoes not say\n%s", err, tt.want)
			}
		})
	}
}

func TestEndedContextRunsNothing(t *testing.T) {
	e, err := build(t, nil, imperialSet, metricSet)
	if err != nil {
		t.Fatal(err)
	}
	ctx, cancel := context.WithCancel(t.Context())
	cancel()
	results := e.Evaluate(ctx, sampleFacts(), document(t, designText), measure.Imperial)
	if len(results) != 3 {
		t.Fatalf("%d results, want one for each check of each set", len(results))
	}
	for _, r := range results {
		if r.Outcome != result.CouldNotRun || !strings.Contains(r.Reason, "context canceled") {
			t.Errorf("result %+v", r)
		}
	}
}
