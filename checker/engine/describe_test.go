package engine_test

import (
	"slices"
	"testing"
)

func TestCatalogDescribesChecks(t *testing.T) {
	e, err := build(t, nil)
	if err != nil {
		t.Fatal(err)
	}
	all := e.Catalog()
	if len(all) != 2 || all[0].ID != "guards/opening" || all[1].ID != "stairs/rise" {
		t.Fatalf("checks %+v", all)
	}
	if want := []string{"flights[].of", "flights[].riser_max", "flights[].riser_max_n"}; !slices.Equal(all[1].Facts, want) {
		t.Errorf("facts %q, want %q", all[1].Facts, want)
	}
	old, ok := e.Describe("stairs/step")
	if !ok || old.ID != "stairs/rise" {
		t.Errorf("the alias describes %+v", old)
	}
	if _, ok := e.Describe("stairs/none"); ok {
		t.Error("a check that does not exist is described")
	}
}

// TestFactsAreFollowed looks through variables, rules of the check in any
// order, sets, functions and comprehensions for the fields that are read.
func TestFactsAreFollowed(t *testing.T) {
	tests := []struct {
		name, rules string
		want        []string
	}{
		{"rule by key", "_tall[i] := guard if some i, guard in input.guards\n\n_use if {\n\tsome g in _tall\n\tg.height.value > 0\n}", []string{"guards[].height"}},
		{"set of elements", "_tall contains guard if some guard in input.guards\n\n_use if {\n\tsome g in _tall\n\tg.mark == \"\"\n}", []string{"guards[].mark"}},
		{"function", "_mark(g) := g.mark\n\n_use if _mark(input.guards[_]) == \"\"", []string{"guards[].mark"}},
		{"nested", "_use if input.joist_spans[0].lumber.grade.value == \"\"", []string{"joist_spans[].lumber.grade"}},
		{"comprehension", "_use if count([1 | some g in input.guards; g.climbable.value]) > 0", []string{"guards[].climbable"}},
		{"field worked out", "_use if {\n\tsome name in [\"height\", \"opening\"]\n\tsome g in input.guards\n\tg[name].value > 0\n}", nil},
		{"plain", "_use if input.units == \"metric\"", []string{"units"}},
	}
	base := []string{"guards[].opening"}
	for _, tt := range tests {
		e, err := build(t, replace(openingFile, "unknown contains", tt.rules+"\n\nunknown contains"))
		if err != nil {
			t.Errorf("%s: %v", tt.name, err)
			continue
		}
		d, _ := e.Describe("guards/opening")
		want := slices.Sorted(slices.Values(append(slices.Clone(base), tt.want...)))
		if !slices.Equal(d.Facts, want) {
			t.Errorf("%s: facts %q, want %q", tt.name, d.Facts, want)
		}
	}
}
