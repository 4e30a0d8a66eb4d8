package facts_test

import (
	"encoding/json"
	"strings"
	"testing"

	"plumbrule/checker/facts"
)

// TestDocumentHasNoNull writes facts of nothing and of little: lists that hold
// nothing are there, and empty.
func TestDocumentHasNoNull(t *testing.T) {
	of := facts.Facts{Flights: []facts.Flight{{RiserMax: &facts.Length{Value: 1}}}}
	text, err := json.Marshal(&of)
	if err != nil {
		t.Fatal(err)
	}
	for _, want := range []string{`"stairs":[]`, `"riser_heights":[]`, `"riser_max":{"value":1,"at":[]}`} {
		if !strings.Contains(string(text), want) {
			t.Errorf("no %s in %s", want, text)
		}
	}
	if strings.Contains(string(text), "null") {
		t.Errorf("null in %s", text)
	}
	if of.Stairs != nil || of.Flights[0].RiserHeights != nil || of.Flights[0].RiserMax.At != nil {
		t.Error("writing changed the facts")
	}
}
