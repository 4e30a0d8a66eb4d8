package checker_test

import (
	"bytes"
	"context"
	"testing"

	"plumbrule/checker"
	between "plumbrule/checker/compare"
	"plumbrule/checker/draw"
	"plumbrule/checker/draw/svg"
)

// Drawings of a checked design are those that its report gives, though the
// design is laid out once for both.
func TestDrawingsWithFindings(t *testing.T) {
	marked := 0
	for _, file := range designFiles(t) {
		in := readInput(t, file)
		c := checkerFor(t, "")
		report := c.Check(context.Background(), in)
		want, problems, err := checker.Drawings(in, draw.Options{Report: &report})
		if err != nil || len(problems) > 0 {
			t.Fatalf("%s: %v %v", file, err, problems)
		}
		got, problems, err := c.Drawings(context.Background(), in, draw.Options{})
		if err != nil || len(problems) > 0 || len(got) != len(want) {
			t.Fatalf("%s: %d sheets, want %d, %v %v", file, len(got), len(want), err, problems)
		}
		for i := range want {
			var a, b bytes.Buffer
			if err := svg.Write(&a, want[i]); err != nil {
				t.Fatal(err)
			}
			if err := svg.Write(&b, got[i]); err != nil {
				t.Fatal(err)
			}
			if !bytes.Equal(a.Bytes(), b.Bytes()) {
				t.Errorf("%s: sheet %s is another", file, want[i].Number)
			}
			marked += len(got[i].Findings)
		}
	}
	if marked == 0 {
		t.Error("no finding is marked on any sheet")
	}
}

// A design that cannot be read has problems and no sheets, and an unknown paper
// is told.
func TestDrawingsRefused(t *testing.T) {
	c := checkerFor(t, "")
	sheets, problems, err := c.Drawings(context.Background(), checker.Input{Name: "torn.deck.yaml", Data: []byte("deck: [")}, draw.Options{})
	if sheets != nil || len(problems) != 1 || err != nil {
		t.Errorf("%v %v %v", sheets, problems, err)
	}
	in := readInput(t, "../fixtures/designs/alder-lane.deck.yaml")
	if _, _, err := c.Drawings(context.Background(), in, draw.Options{Paper: "papyrus"}); err == nil {
		t.Error("an unknown paper is taken")
	}
}

// Two revisions of one name and with the same marks are checked in one run, and
// each finding keeps the places of its own file.
func TestCompareKeepsPlacesApart(t *testing.T) {
	was := checker.Input{Name: "steep.deck.yaml", Data: []byte(steepDeck)}
	is := checker.Input{Name: "steep.deck.yaml", Data: []byte("# revision B\n\n\n" + steepDeck)}
	r := revisions(t, was, is)
	open := r.Of(between.StillOpen)
	if len(open) == 0 {
		t.Fatal("nothing is still outside")
	}
	for _, m := range open {
		if m.Is.Span.Start.Line != m.Was.Span.Start.Line+3 {
			t.Errorf("%s: line %d, and %d three lines further down", m.Is.Check, m.Was.Span.Start.Line, m.Is.Span.Start.Line)
		}
	}
	if r.Was.Document == r.Is.Document || len(r.Changes) > 0 {
		t.Errorf("%+v", r.Changes)
	}
}
