package facts_test

import (
	"testing"

	"plumbrule/checker/facts"
	"plumbrule/checker/measure"
	"plumbrule/checker/model"
	"plumbrule/checker/source"
)

// derive reads a design and derives its facts; the design must have no problems.
func derive(t *testing.T, design string) *facts.Facts {
	t.Helper()
	return derived(t, design).Facts
}

// derived is derive with the shapes behind the facts.
func derived(t *testing.T, design string) *facts.Derived {
	t.Helper()
	doc, err := source.Read("test.deck.yaml", []byte("deck: 1\n"+design))
	if err != nil {
		t.Fatal(err)
	}
	deck, problems := model.Read(doc)
	for _, p := range problems {
		t.Fatalf("%v: %s", p.Node.Span.Start, p.Message)
	}
	d, faults := facts.Derive(deck)
	for _, p := range faults {
		t.Fatalf("%s: %s", p.At, p.Message)
	}
	return d
}

// length parses a length; the test fails when it cannot.
func length(t *testing.T, text string) measure.Length {
	t.Helper()
	l, _, err := measure.ParseLength(text)
	if err != nil {
		t.Fatal(err)
	}
	return l
}

// want compares a fact with a length as typed, exactly.
func want(t *testing.T, what string, got *facts.Length, text string) {
	t.Helper()
	switch {
	case text == "" && got != nil:
		t.Errorf("%s is %s, want it not shown", what, got.Value.Text(measure.Imperial))
	case text == "":
	case got == nil:
		t.Errorf("%s is not shown, want %s", what, text)
	case got.Value != length(t, text):
		t.Errorf("%s is %s, want %s", what, got.Value.Text(measure.Imperial), text)
	}
}

// near compares a fact with a length as typed, to within a thousandth of an
// inch: check values of handbooks are rounded.
func near(t *testing.T, what string, got *facts.Length, text string) {
	t.Helper()
	if got == nil {
		t.Errorf("%s is not shown, want about %s", what, text)
		return
	}
	if off := got.Value - length(t, text); off > measure.Inch/1000 || off < -measure.Inch/1000 {
		t.Errorf("%s is %s, want about %s", what, got.Value.Text(measure.Imperial), text)
	}
}
