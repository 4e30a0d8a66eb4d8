package engine_test

import (
	"fmt"
	"strings"
	"testing"

	"plumbrule/checker/facts"
	"plumbrule/checker/measure"
	"plumbrule/checker/result"
)

// TestResultsInWordsOfTheSet holds results of a set with words of its own
// against those of one without, on one design.
func TestResultsInWordsOfTheSet(t *testing.T) {
	const words = "words: {riser: step, Riser height: Step height (Steigung), opening: gap, flights: runs, flight of stairs: run of steps}\n"
	plain := imperialSet
	worded := strings.Replace(strings.Replace(imperialSet, "set: feet", "set: other", 1), "checks:\n", words+"checks:\n", 1)
	both := map[string][]result.Result{}
	for _, r := range evaluate(t, nil, plain, worded) {
		both[r.Set] = append(both[r.Set], r)
	}
	if len(both["feet"]) == 0 || len(both["feet"]) != len(both["other"]) {
		t.Fatalf("%d and %d results", len(both["feet"]), len(both["other"]))
	}
	for _, tt := range []struct{ at, title, message, reason, mend string }{
		{"/stairs/0/risers", "Step height (Steigung)", `step 7 of 1 is 8", the limit is 7-3/4", over by 1/4"`, "", "more steps: each becomes lower"},
		{"/guards/0/infill/opening", "Guard gap", `gap is 4", a sphere of 4" must not pass`, "", ""},
		{"/stairs/2", "Step height (Steigung)", "stair 3: steps are not shown", "", ""},
		{"/guards/2", "Guard gap", "guard G3: infill gap is not shown", "", ""},
		{"/stairs/3", "Step height (Steigung)", "", "its 2 runs wind", ""},
	} {
		r := at(t, both["other"], tt.at)
		if r.Title != tt.title || r.Message != tt.message || r.Reason != tt.reason || strings.Join(r.Mend, "; ") != tt.mend {
			t.Errorf("%s: %q, %q, %q, %q", tt.at, r.Title, r.Message, r.Reason, r.Mend)
		}
		other := at(t, both["feet"], tt.at)
		if r.Fingerprint != other.Fingerprint || r.Needs != other.Needs || r.Outcome != other.Outcome || other.Title == r.Title {
			t.Errorf("%s: %+v\nand %+v", tt.at, other, r)
		}
	}
}

// TestMissingInWordsOfTheSet words what is not shown, but no name that the
// design gives.
func TestMissingInWordsOfTheSet(t *testing.T) {
	const words = "words: {guard: barrier, guards: guarding, edge: side, lumber: timber, drop within 36 in: fall within 36 in}\n"
	const text = "deck: 1\nplatforms:\n  - {mark: guard, edges: {guard: {drop: 1 m}}}\nlumber:\n  guard: {grade: No. 2}\n"
	tests := []struct{ at, needs, want string }{
		{"/platforms/0/edges/guard", "platforms[].edges.<edge>.guard", "platform guard: side guard barrier is not shown"},
		{"/platforms/0/edges/guard", "platforms[].edges.<edge>.drop_within_36_in", "platform guard: side guard fall within 36 in is not shown"},
		{"/platforms/0", "lumber.<guard>.treated", "platform guard: timber guard treated is not shown"},
		{"/platforms/0", "platforms[].decking.lumber", "platform guard: decking timber is not shown"},
		{"", "guards", "guarding is not shown"},
		{"", "stairs", "stairs are not shown"},
	}
	var rows strings.Builder
	for _, tt := range tests {
		fmt.Fprintf(&rows, "unknown contains {\"at\": [%q], \"needs\": %q} if count(input.guards) > 0\n\n", tt.at, tt.needs)
	}
	e, err := build(t, replace(openingFile, "unknown contains", rows.String()+"unknown contains"), strings.Replace(imperialSet, "checks:\n", words+"checks:\n", 1))
	if err != nil {
		t.Fatal(err)
	}
	f := &facts.Facts{Guards: []facts.Guard{{At: []string{"/platforms"}, Opening: length(measure.Inch, "/platforms")}}}
	said := map[string]bool{}
	for _, r := range e.Evaluate(t.Context(), f, document(t, text), measure.Imperial) {
		said[r.Message] = true
	}
	for _, tt := range tests {
		if !said[tt.want] {
			t.Errorf("%q is not said: %v", tt.want, said)
		}
	}
}

func TestReasonInWordsOfTheSet(t *testing.T) {
	worded := strings.Replace(imperialSet, "checks:\n", "words: {flight of stairs: run of steps}\nchecks:\n", 1)
	results := evaluate(t, replace(riseFile, "applies if count(input.flights) > 0", "applies if count(input.flights) > 9"), worded)
	if r := at(t, results, ""); r.Reason != "applies where a run of steps is described" {
		t.Errorf("%+v", r)
	}
}

// TestPartsByMarkOrInWordsOfTheSet names a part once by a text of the program
// and once by what the design calls it.
func TestPartsByMarkOrInWordsOfTheSet(t *testing.T) {
	worded := strings.Replace(imperialSet, "checks:\n", "words: {riser: step, flight: run}\nchecks:\n", 1)
	for value, want := range map[string]string{
		`"riser 7"`: "step 7 is high", // not: step riser 7
		`"ST1"`:     "step ST1 is high",
		`"flight"`:  "step flight is high", // a mark of the design below
		`"a riser"`: "step a step is high",
	} {
		e, err := build(t, func(modules map[string]string) {
			text := strings.Replace(modules[riseFile], "values: {n: count, ", "values: {n: count, who: part, ", 1)
			text = strings.Replace(text, "\"riser {n} of {of} is {have}, the limit is {limit}, over by {margin}\"", "\"riser {who} is high\"", 1)
			modules[riseFile] = strings.Replace(text, `"n": flight.riser_max_n,`, `"n": flight.riser_max_n, "who": `+value+`,`, 1)
		}, worded)
		if err != nil {
			t.Fatal(err)
		}
		doc := document(t, strings.Replace(designText, "mark: G1", "mark: flight", 1))
		if r := at(t, e.Evaluate(t.Context(), sampleFacts(), doc, measure.Imperial), "/stairs/0/risers"); r.Message != want {
			t.Errorf("%s: %q, want %q", value, r.Message, want)
		}
	}
}
