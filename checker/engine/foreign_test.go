package engine_test

import (
	"context"
	"flag"
	"fmt"
	"os"
	"strings"
	"testing"
	"testing/fstest"
	"time"

	"plumbrule/checker/engine"
	"plumbrule/checker/measure"
	"plumbrule/checker/result"
	"plumbrule/checker/ruleset"
	"plumbrule/checker/sandbox"
)

// TestMain lets this very binary be the process in which the Rego of strangers
// runs: confined as the program does it, or free, to show what the confinement
// is for.
func TestMain(m *testing.M) {
	if len(os.Args) > 1 && (os.Args[1] == "confined" || os.Args[1] == "free") {
		if err := serve(os.Args[1] == "free", os.Args[2:]); err != nil {
			fmt.Fprintln(os.Stderr, err)
			os.Exit(3)
		}
		os.Exit(0)
	}
	os.Exit(m.Run())
}

func serve(free bool, args []string) error {
	var limits sandbox.Limits
	flags := flag.NewFlagSet("confined", flag.ContinueOnError)
	flags.DurationVar(&limits.Time, "time", 0, "")
	flags.Int64Var(&limits.Memory, "memory", 0, "")
	flags.Int64Var(&limits.Question, "question", 0, "")
	if err := flags.Parse(args); err != nil {
		return err
	}
	if !free {
		if err := sandbox.Confine(limits); err != nil {
			return err
		}
	}
	return engine.Serve(context.Background(), os.Stdin, os.Stdout, ours())
}

// ours are the checks that come with the program of these tests.
func ours() fstest.MapFS {
	return fstest.MapFS{
		"checks/defaults.rego": {Data: []byte(defaults)}, riseFile: {Data: []byte(rise)}, openingFile: {Data: []byte(opening)},
		"lib/stairs.rego": {Data: []byte("package lib.stairs\n\nsay(_) := \"outside\"\n")},
	}
}

// kick is a check that a set brings; its readings hold every flight's riser
// against a figure of the set and one of the program's check.
const kick = `# METADATA
# title: Kick
# description: The height of each riser against that of a kick board.
# custom:
#   id: office/kick
#   consequence: workmanship
#   why: A foot catches under a board that ends too high.
#   applies_when: a flight of stairs is described
#   figures:
#     max: {type: length, relation: at most, about: greatest riser behind a kick board}
#   messages:
#     outside: "the riser is {have}, the limit is {limit}"
#   exempt: {winder: "it winds"}
#   reads: [stairs/rise]
package checks.office.kick

import data.figures.office.kick as figures
import data.figures.stairs.rise as theirs
import data.lib.office as lib
import data.lib.stairs

applies if count(input.flights) > 0

readings contains {
	"at": flight.riser_max.at, "have": flight.riser_max.value,
	"figure": "max", "limit": figures.max,
	"outside": lib.over(flight.riser_max.value, min({figures.max, theirs.max})),
	"say": stairs.say(flight.of),
} if {
	some flight in input.flights
}

unknown contains {"at": flight.at, "needs": "stairs[].risers"} if {
	some flight in input.flights
	not flight.riser_max
	flight.of == 1
}

exempt contains {"at": flight.at, "because": "winder"} if {
	some flight in input.flights
	not flight.riser_max
	flight.of > 1
}
`

// toe is the second check that the set brings, in which tests put hostile rules.
const toe = `# METADATA
# title: Toe
# description: Something that a test puts here.
# custom:
#   id: office/toe
#   consequence: workmanship
#   why: Toes are easily hurt.
#   applies_when: a flight of stairs is described
#   figures:
#     max: {type: length, relation: at most, about: nothing}
#   messages:
#     outside: "the toe is {have}"
package checks.office.toe

import data.figures.office.toe as figures

applies if count(input.flights) > 0

readings contains {"at": flight.at, "have": n, "figure": "max", "limit": figures.max, "outside": false} if {
	some flight in input.flights
	n := _n
}

_n := 1
`

const officeSet = `set: office
title: House rules of an office
edition: "1"
publisher: the trial office
system: imperial
scope: figures for tests
not_covered: []
checks:
  stairs/rise:
    clause: O1
    figures:
      max: {value: 7-1/2 in, status: common practice}
  office/kick:
    clause: O2
    figures:
      max: {value: 7-7/8 in, status: common practice}
  office/toe:
    clause: O3
    figures:
      max: {value: 7 in, status: common practice}
`

const kickFile, toeFile = "checks/office/kick/kick.rego", "checks/office/toe/toe.rego"

// office loads the set with its checks, after changing their text.
func office(t *testing.T, change func(map[string]string)) (*ruleset.Set, *engineSource) {
	t.Helper()
	files := map[string]string{
		"set.yaml": officeSet, kickFile: kick, toeFile: toe,
		"lib/office.rego": "package lib.office\n\nover(a, b) if a > b\n",
	}
	if change != nil {
		change(files)
	}
	tree := fstest.MapFS{}
	for name, text := range files {
		tree[name] = &fstest.MapFile{Data: []byte(text)}
	}
	modules := map[string]string{riseFile: rise, openingFile: opening, "lib/stairs.rego": string(ours()["lib/stairs.rego"].Data)}
	checks, err := catalogOf(t, modules)
	if err != nil {
		t.Fatal(err)
	}
	set, err := ruleset.Load(tree, "set.yaml", "office/set.yaml", checks)
	if err != nil {
		t.Fatal(err)
	}
	return set, &engineSource{options: engine.Options{Checks: checks, Sets: []*ruleset.Set{set}}}
}

// engineSource is an engine that lacks its runner.
type engineSource struct{ options engine.Options }

func (s *engineSource) evaluate(t *testing.T, runner engine.Runner) []result.Result {
	t.Helper()
	s.options.Foreign = runner
	e, err := engine.New(s.options)
	if err != nil {
		t.Fatal(err)
	}
	return e.Evaluate(t.Context(), sampleFacts(), document(t, designText), measure.Imperial)
}

func confined(change func(*sandbox.Limits)) *sandbox.Sandbox {
	limits := sandbox.Limits{Time: 20 * time.Second, Memory: 1 << 30, Question: 1 << 20, Answer: 1 << 20}
	if change != nil {
		change(&limits)
	}
	return &sandbox.Sandbox{Command: []string{os.Args[0], "confined"}, Limits: limits}
}

func free(limits *sandbox.Sandbox) *sandbox.Sandbox {
	return &sandbox.Sandbox{Command: []string{os.Args[0], "free"}, Limits: sandbox.Limits{
		Time: time.Minute, Memory: limits.Limits.Memory, Question: 1 << 20, Answer: 64 << 20,
	}}
}

// of gives the results of one check, as "outcome place".
func of(results []result.Result, check string) []string {
	var list []string
	for _, r := range results {
		if r.Check == check {
			list = append(list, string(r.Outcome)+" "+r.At[0])
		}
	}
	return list
}

// failed gives the reason for which a check could not run, "" if it could.
func failed(results []result.Result, check string) string {
	for _, r := range results {
		if r.Check == check && r.Outcome == result.CouldNotRun {
			return r.Reason
		}
	}
	return ""
}

func TestForeignCheckIsOneLikeOthers(t *testing.T) {
	_, source := office(t, nil)
	results := source.evaluate(t, confined(nil))
	want := "outside /stairs/0/risers, outside /stairs/1/risers, not shown /stairs/2, does not apply /stairs/3"
	if got := strings.Join(of(results, "office/kick"), ", "); got != want {
		t.Errorf("it says %s, want %s", got, want)
	}
	r := at(t, onlyOf(results, "office/kick"), "/stairs/0/risers")
	if r.Message != `the riser is 8", the limit is 7-7/8"` || r.Set != "office" || r.Clause != "O2" || r.Mark != "ST1" || r.Status != "common practice" {
		t.Errorf("result %+v", r)
	}
	if got := len(of(results, "stairs/rise")); got != 4 {
		t.Errorf("the program's own check gives %d results", got)
	}
}

func onlyOf(results []result.Result, check string) []result.Result {
	var list []result.Result
	for _, r := range results {
		if r.Check == check {
			list = append(list, r)
		}
	}
	return list
}

func TestForeignCheckWithoutRunner(t *testing.T) {
	_, source := office(t, nil)
	results := source.evaluate(t, nil)
	if reason := failed(results, "office/kick"); !strings.Contains(reason, "no process to run it in") {
		t.Errorf("reason %q", reason)
	}
	if got := len(of(results, "stairs/rise")); got != 4 {
		t.Errorf("the program's own check gives %d results", got)
	}
}

// TestForeignFailureCostsItsOwnChecks breaks what a set brings at every stage,
// and expects the program's own check untouched.
func TestForeignFailureCostsItsOwnChecks(t *testing.T) {
	// kickStands says whether the set's other check, sound in itself, stands.
	for _, test := range []struct {
		name       string
		change     func(map[string]string)
		want       string
		kickStands bool
	}{
		{"no Rego", replace(toeFile, "_n := 1", "_n := ("), toeFile + ":25", false},
		{"deep nesting", replace(toeFile, "_n := 1", "_n := "+strings.Repeat("[", 200000)), toeFile, false},
		{"does not compile", replace(toeFile, "_n := 1", "_n := input.flight"), "there is no flight, the nearest is flights", false},
		{"reaches out", replace(toeFile, "_n := 1", `_n := http.send({"method": "get", "url": "http://localhost"}).status_code`), "undefined function http.send", false},
		{"looks at the clock", replace(toeFile, "_n := 1", `_n := time.now_ns()`), "undefined function time.now_ns", false},
		{"rolls dice", replace(toeFile, "_n := 1", `_n := rand.intn("a", 6)`), "undefined function rand.intn", false},
		{"looks at the environment", replace(toeFile, "_n := 1", `_n := opa.runtime().env.HOME`), "undefined function opa.runtime", false},
		{"package of the program", replace(toeFile, "package checks.office.toe", "package checks.stairs.rise"), "the package of check office/toe must be checks.office.toe", false},
		{"library in the program's", func(m map[string]string) { m["lib/office.rego"] = "package lib.stairs\n\nover(a, b) if a > b\n" }, "lib/office.rego:1:1: data.lib.stairs is not where this file may stand", false},
		{"check in the library", func(m map[string]string) { m["lib/more.rego"] = strings.ReplaceAll(toe, "office", "guards") }, "lib/more.rego:13:1: data.checks.guards.toe is not where this file may stand", false},
		{"figure it did not ask for", replace(toeFile, "_n := 1", "_n := data.figures.guards.opening.sphere"), "is neither a figure of the check", false},
		{"fails", replace(toeFile, "_n := 1", `_n := to_number("x")`), "to_number", true},
		{"place unknown", replace(toeFile, `"at": flight.at`, `"at": ["/stairs/9"]`), `the place "/stairs/9" is not in the design`, true},
		{"key unknown", replace(toeFile, `readings contains {"at": flight.at,`, `readings contains object.union({"colour": 1}, {"at": flight.at,`), "a row has the key", true},
		{"value of another kind", replace(toeFile, "_n := 1", `_n := "wide"`), "is no length", true},
		{"long complaint", replace(toeFile, "_n := 1", `_n := to_number(concat("", [s | some _ in numbers.range(1, 9000); s := "long"]))`), "…", true},
		{"silence", replace(toeFile, "n := _n", "n := _n; n > 1"), "said nothing about any subject", true},
	} {
		t.Run(test.name, func(t *testing.T) {
			change := func(files map[string]string) {
				test.change(files)
				if strings.Contains(files[toeFile], "object.union") {
					files[toeFile] = strings.Replace(files[toeFile], `"outside": false}`, `"outside": false})`, 1)
				}
			}
			_, source := office(t, change)
			results := source.evaluate(t, confined(nil))
			if reason := failed(results, "office/toe"); !strings.Contains(reason, test.want) || len(reason) > 1000 {
				t.Errorf("reason %.1000q, want %s", reason, test.want)
			}
			if reason := failed(results, "office/kick"); (reason == "") != test.kickStands {
				t.Errorf("the set's other check: %q", reason)
			}
			if got := len(of(results, "stairs/rise")); got != 4 || failed(results, "stairs/rise") != "" {
				t.Errorf("the program's own check gives %d results", got)
			}
		})
	}
}
