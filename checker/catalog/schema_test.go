package catalog_test

import (
	"encoding/json"
	"slices"
	"testing"

	"plumbrule/checker/catalog"
	"plumbrule/checker/result"
	"plumbrule/schema"
)

// TestSchemaNamesWhatTheProgramKnows compares the words that the metadata
// schema allows with those of the program.
func TestSchemaNamesWhatTheProgramKnows(t *testing.T) {
	text, err := schema.JSON("check")
	if err != nil {
		t.Fatal(err)
	}
	type enum struct {
		Enum []string `json:"enum"`
	}
	var s struct {
		Properties struct {
			Custom struct {
				Properties struct {
					Consequence enum `json:"consequence"`
				} `json:"properties"`
			} `json:"custom"`
		} `json:"properties"`
		Defs struct {
			Plain  enum `json:"plain_type"`
			Figure struct {
				Properties struct {
					Type     enum `json:"type"`
					Relation enum `json:"relation"`
				} `json:"properties"`
			} `json:"figure"`
		} `json:"$defs"`
	}
	if err := json.Unmarshal(text, &s); err != nil {
		t.Fatal(err)
	}
	compare(t, "consequence", s.Properties.Custom.Properties.Consequence.Enum, result.Consequences())
	compare(t, "relation", s.Defs.Figure.Properties.Relation.Enum,
		[]result.Relation{result.AtMost, result.AtLeast, result.LessThan, result.MoreThan, result.Exactly, result.OneOf})
	plain := []catalog.Kind{catalog.Length, catalog.Pressure, catalog.Force, catalog.Angle, catalog.Slope, catalog.Ratio,
		catalog.Count, catalog.Flag, catalog.Words, catalog.List}
	compare(t, "value type", s.Defs.Plain.Enum, plain)
	compare(t, "figure type", s.Defs.Figure.Properties.Type.Enum, append(plain, catalog.Groups, catalog.Steps, catalog.Table))
}

func compare[T ~string](t *testing.T, what string, have []string, want []T) {
	t.Helper()
	var words []string
	for _, w := range want {
		words = append(words, string(w))
	}
	if !slices.Equal(have, words) {
		t.Errorf("%s: the schema has %q, the program %q", what, have, words)
	}
}
