package checker_test

import (
	"context"
	"fmt"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"sync"
	"testing"

	"plumbrule/checker/engine"
	"plumbrule/checker/facts"
	"plumbrule/checker/measure"
	"plumbrule/checker/model"
	"plumbrule/checker/result"
	"plumbrule/checker/source"
)

// A probe is a design or a sheet of members of which it is known, from
// elsewhere than the set, what one check must say.
type probe struct {
	name  string
	facts *facts.Facts
	doc   *source.Document
	// fits tells whether results are what must come of the probe.
	fits func([]result.Result) bool
	must bool // one that does not fit is an error; TestLimits says so of the fixtures
}

// evaluate gives the results of one check by set.
func (p *probe) evaluate(e *engine.Engine, check string) map[string][]result.Result {
	bySet := map[string][]result.Result{}
	for _, r := range e.Evaluate(context.Background(), p.facts, p.doc, measure.Imperial) {
		if r.Check == check {
			bySet[r.Set] = append(bySet[r.Set], r)
		}
	}
	return bySet
}

// outcomeOf is what is told apart: the outcomes and their places, not what is
// said of them.
func outcomeOf(results []result.Result) string {
	lines := make([]string, len(results))
	for i, r := range results {
		lines[i] = string(r.Outcome) + strings.Join(r.At, ",") + r.Needs
	}
	slices.Sort(lines)
	return strings.Join(lines, "\n")
}

// probe makes a sheet a probe.
func (s *sheet) probe(t *testing.T, name string) probe {
	t.Helper()
	return probe{name: name, facts: &s.facts, doc: s.document(t), must: true, fits: func(results []result.Result) bool {
		outside, _ := s.outside(results)
		for i, want := range s.want {
			if outside[i] != want.outside {
				return false
			}
		}
		return true
	}}
}

// siblings are the sets that are probed with what was written for another set.
// They share most figures; a probe that does not fit one of them is left out
// there, and the figures that differ have members of their own.
var siblings = map[string][]string{"irc-2021": {"irc-2018", "irc-2024"}, "canada-nbc-2020": {"ca-on", "ca-ns-halifax", "ca-nb-southwest"}}

// designProbes gives the probes of a check under a set that are designs: the
// fixtures of the check, and their limits.
func designProbes(t *testing.T, check, set string) []probe {
	t.Helper()
	var probes []probe
	meant := func(of string) bool { return of == set || slices.Contains(siblings[of], set) }
	for _, f := range allFixtures(t) {
		if f.check != check {
			continue
		}
		if meant(f.set()) {
			for _, name := range []string{"within", "outside"} {
				data := readDesign(t, filepath.Join(f.dir, name+".deck.yaml"))
				probes = append(probes, designProbe(t, f.check+"/"+name, data, fitting(name == "outside", false)))
			}
		}
		for _, l := range f.limits {
			if meant(l.set) {
				data := readDesign(t, filepath.Join(f.dir, l.design))
				probes = append(probes, limitProbes(t, f.check+"/"+l.design, data, l)...)
			}
		}
	}
	return probes
}

func readDesign(t *testing.T, file string) []byte {
	t.Helper()
	data, err := os.ReadFile(file)
	if err != nil {
		t.Fatal(err)
	}
	return data
}

func limitProbes(t *testing.T, name string, data []byte, l limit) []probe {
	t.Helper()
	var probes []probe
	for _, kind := range []struct {
		values       []string
		outside, any bool
	}{{l.inside, false, false}, {l.at, false, true}, {l.outside, true, false}} {
		for _, value := range kind.values {
			typed := retype(t, l.design, data, l.field, value)
			probes = append(probes, designProbe(t, fmt.Sprintf("%s %s = %s", name, l.field, value), typed, fitting(kind.outside, kind.any)))
		}
	}
	for _, value := range l.undecided {
		typed := retype(t, l.design, data, l.field, value)
		probes = append(probes, designProbe(t, fmt.Sprintf("%s %s = %s", name, l.field, value), typed, func(results []result.Result) bool {
			return has(results, result.NotShown) && !has(results, result.Outside)
		}))
	}
	return probes
}

// fitting asks for an outcome: something outside, or nothing. What lies exactly
// at a limit that is itself outside may be either.
func fitting(outside, either bool) func([]result.Result) bool {
	return func(results []result.Result) bool {
		if outside || !has(results, result.Outside) {
			return has(results, result.Outside) == outside
		}
		return either && strict(results)
	}
}

func designProbe(t *testing.T, name string, data []byte, fits func([]result.Result) bool) probe {
	t.Helper()
	doc, err := source.Read("probe.deck.yaml", data)
	if err != nil {
		t.Fatalf("%s: %v", name, err)
	}
	deck, problems := model.Read(doc)
	if len(problems) > 0 {
		t.Fatalf("%s: %v", name, problems[0])
	}
	derived, faults := facts.Derive(deck)
	if len(faults) > 0 {
		t.Fatalf("%s: %v", name, faults[0])
	}
	return probe{name: name, facts: derived.Facts, doc: doc, fits: fits}
}

// folders keeps the fixtures, which are read once.
var folders struct {
	sync.Once
	list []fixture
}

func allFixtures(t *testing.T) []fixture {
	t.Helper()
	folders.Do(func() { folders.list = fixtureFolders(t) })
	return folders.list
}
