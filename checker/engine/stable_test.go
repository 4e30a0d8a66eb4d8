package engine_test

import (
	"math/rand/v2"
	"reflect"
	"runtime"
	"slices"
	"sync"
	"testing"

	"plumbrule/checker/engine"
	"plumbrule/checker/measure"
)

// TestOrderOfInputDoesNotShow shuffles sets and the facts of each kind.
func TestOrderOfInputDoesNotShow(t *testing.T) {
	checks, err := catalogOf(t, map[string]string{riseFile: rise, openingFile: opening})
	if err != nil {
		t.Fatal(err)
	}
	doc := document(t, designText)
	sets := setOf(t, checks, imperialSet, metricSet)
	e, err := engine.New(engine.Options{Checks: checks, Sets: sets})
	if err != nil {
		t.Fatal(err)
	}
	want := e.Evaluate(t.Context(), sampleFacts(), doc, measure.Metric)
	random := rand.New(rand.NewPCG(1, 2))
	for range 20 {
		shuffled := slices.Clone(sets)
		random.Shuffle(len(shuffled), func(i, j int) { shuffled[i], shuffled[j] = shuffled[j], shuffled[i] })
		f := sampleFacts()
		random.Shuffle(len(f.Flights), func(i, j int) { f.Flights[i], f.Flights[j] = f.Flights[j], f.Flights[i] })
		random.Shuffle(len(f.Guards), func(i, j int) { f.Guards[i], f.Guards[j] = f.Guards[j], f.Guards[i] })
		e, err := engine.New(engine.Options{Checks: checks, Sets: shuffled})
		if err != nil {
			t.Fatal(err)
		}
		if got := e.Evaluate(t.Context(), f, doc, measure.Metric); !reflect.DeepEqual(got, want) {
			t.Fatalf("results differ:\n%+v\nwant\n%+v", got, want)
		}
	}
}

// TestConcurrentUse runs one engine from many goroutines; the race detector
// looks on.
func TestConcurrentUse(t *testing.T) {
	e, err := build(t, nil, imperialSet, metricSet)
	if err != nil {
		t.Fatal(err)
	}
	doc, f := document(t, designText), sampleFacts()
	want := e.Evaluate(t.Context(), f, doc, measure.Imperial)
	var all sync.WaitGroup
	for range 4 * runtime.GOMAXPROCS(0) {
		all.Go(func() {
			for range 5 {
				if got := e.Evaluate(t.Context(), f, doc, measure.Imperial); !reflect.DeepEqual(got, want) {
					t.Errorf("results differ: %+v", got)
				}
			}
		})
	}
	all.Wait()
}
