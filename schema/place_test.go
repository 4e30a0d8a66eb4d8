package schema

import (
	"strings"
	"testing"
)

func TestQuantityAt(t *testing.T) {
	for pointer, want := range map[string]Quantity{
		"/site/live_load":                           Pressure,
		"/site/frost_depth":                         Length,
		"/site/grade_fall/slope":                    Slope,
		"/stairs/0/headroom":                        Length, // or the words open to sky
		"/stairs/3/risers":                          Plain,
		"/platforms/0/beams/1/posts_at/2":           Length,
		"/platforms/0/beams/1/posts_at":             Plain,
		"/platforms/0/beams/1/size":                 Size,
		"/platforms/0/beams/1/actual":               Size,
		"/platforms/0/beams/1/line/0":               Point,
		"/platforms/0/outline/corners/3":            Point,
		"/platforms/0/outline/corners/3/0":          Length,
		"/platforms/0/edges/left of the bay/drop":   Length, // a name of the author's own
		"/platforms/0/decking/board_angle":          Angle,
		"/platforms/0/loads/0/weight":               Force,
		"/platforms/0/loads/0/at":                   Point,
		"/house/openings/0/threshold_above_decking": Length,
		"/job/title":                                Plain,
		"":                                          Plain,
		"/nowhere/0":                                Plain,
	} {
		if got := QuantityAt("design", pointer); got != want {
			t.Errorf("%s: %d, want %d", pointer, got, want)
		}
	}
	if got := QuantityAt("roof", "/site/live_load"); got != Plain {
		t.Errorf("an unknown schema gives %d", got)
	}
}

func TestFieldAt(t *testing.T) {
	for path, want := range map[string]struct {
		ok        bool
		described string // how the description begins
		own       int
	}{
		"guards[].height":                          {true, "From the ", 0},
		"guards.height":                            {false, "", 0}, // a list without its brackets
		"guards[].hight":                           {false, "", 0},
		"platforms[].edges.<edge>.drop":            {true, "Height of the walking surface", 0},
		"platforms[].edges.front.drop":             {true, "Height of the walking surface", 1},
		"lumber.<name>.grade":                      {true, "Grade as it is stamped.", 0},
		"lumber.<name>.stamp":                      {false, "", 0},
		"stairs[].<name>":                          {false, "", 0}, // stairs leave no name open
		"platforms[].joists.hangers.skewed_at":     {true, "Names of the edges", 0},
		"house.openings[].threshold_above_decking": {true, "", 0},
		"": {false, "", 0},
	} {
		got, ok := FieldAt("design", path)
		if ok != want.ok || len(got.OwnNames) != want.own || !strings.HasPrefix(got.Description, want.described) {
			t.Errorf("%s: %v, %+v", path, ok, got)
		}
	}
	if _, ok := FieldAt("roof", "guards[].height"); ok {
		t.Error("an unknown schema has a field")
	}
}

func TestHasField(t *testing.T) {
	for key, want := range map[string]bool{"lumber": true, "gap_to_house": true, "gap to house": false, "gutter": false, "": false} {
		if got := HasField("design", key); got != want {
			t.Errorf("%q: %v, want %v", key, got, want)
		}
	}
	if HasField("roof", "lumber") {
		t.Error("an unknown schema has a field")
	}
}
