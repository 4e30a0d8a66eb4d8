package ruleset_test

import (
	"encoding/json"
	"reflect"
	"strings"
	"testing"
	"testing/fstest"

	"plumbrule/checker/catalog"
	"plumbrule/checker/ruleset"
)

// A table may leave cells out where the check has an answer for that, and
// nowhere else.
func TestCellsLeftOut(t *testing.T) {
	gap := strings.Replace(table, "not permitted", "not in this table", 1)
	refused(t, files(set, gap), "trial/tables/spans.yaml:13:40: the check has no answer for a cell that is left out")

	checks, err := catalog.Load(fstest.MapFS{
		"checks/defaults.rego":                  {Data: []byte(defaults)},
		"checks/kinds/every_one/every_one.rego": {Data: []byte(strings.Replace(every, "value: length, keys", "value: length, gaps: true, keys", 1))},
		"checks/kinds/reader/reader.rego":       {Data: []byte(reader)},
	})
	if err != nil {
		t.Fatal(err)
	}
	s, err := ruleset.NewLibrary(files(set, gap), checks).ByName("trial")
	if err != nil {
		t.Fatal(err)
	}
	spans := s.Check("kinds/every-one").Figure("spans")
	cell, err := spans.Table.Cell([]any{"pines", json.Number("1"), json.Number("1")})
	if err != nil || !cell.Gap || cell.Value != nil {
		t.Errorf("cell %+v, %v", cell, err)
	}
	cells := spans.Value.(map[string]any)["cells"].(map[string]any)["pines"].([]any)[1]
	if want := []any{int64(96 * 25_400_000), "not in this table"}; !reflect.DeepEqual(cells, want) {
		t.Errorf("checks read %v, want %v", cells, want)
	}
	if whole, holed := load(t).Summary().Figures.Recalled, s.Summary().Figures.Recalled; holed != whole-1 {
		t.Errorf("%d figures recalled with a cell left out, %d with all", holed, whole)
	}
}
