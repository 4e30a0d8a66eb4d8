package catalog_test

import (
	"testing"

	"plumbrule/checker/catalog"
)

func TestUnitAfter(t *testing.T) {
	risers, share := catalog.Unit{One: "riser", Many: "risers"}, catalog.Unit{One: "of the span", Many: "of the span"}
	for _, tt := range []struct {
		unit         catalog.Unit
		number, want string
	}{
		{risers, "0", "0 risers"},
		{risers, "1", "1 riser"},
		{risers, "-1", "-1 riser"},
		{risers, "2", "2 risers"},
		{risers, "11", "11 risers"},
		{share, "1/4", "1/4 of the span"},
		{share, "1", "1 of the span"},
		{catalog.Unit{}, "7", "7"},
	} {
		if got := tt.unit.After(tt.number); got != tt.want {
			t.Errorf("%s: %q, want %q", tt.number, got, tt.want)
		}
	}
}
