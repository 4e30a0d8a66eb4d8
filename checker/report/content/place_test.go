package content_test

import (
	"testing"

	"plumbrule/checker/report/content"
	"plumbrule/checker/result"
)

func TestPlaceName(t *testing.T) {
	tests := map[string]string{
		"":                             "the file",
		"/job":                         "job",
		"/stairs/0/total_rise":         "total_rise",
		"/stairs/0/measured_risers/11": "measured_risers, number 12",
		"/measured/0/1/2":              "measured, number 1, number 2, number 3",
		"/lumber/a~1b":                 "a/b",
		"/3":                           "the file, number 4",
	}
	for pointer, want := range tests {
		if got := content.PlaceName(nil, &result.Place{Pointer: pointer}); got != want {
			t.Errorf("%q: %q, want %q", pointer, got, want)
		}
	}
	place := &result.Place{Pointer: "/stairs/0/total_rise", Text: "56 in"}
	if got := content.PlaceName(nil, place); got != "total_rise: 56 in" {
		t.Errorf("got %q", got)
	}
}

func TestSentences(t *testing.T) {
	for _, c := range [][2]string{
		{"riser height is 8\"", "Riser height is 8\"."},
		{"b1 is too short", "b1 is too short."}, // a mark keeps its spelling
		{"äußerst", "Äußerst."},
		{"done.", "Done."},
		{"", ""},
	} {
		if got := content.Sentence(c[0]); got != c[1] {
			t.Errorf("%q becomes %q, want %q", c[0], got, c[1])
		}
	}
	if got := content.Sentences("", "a", "", "b."); got != "A. B." {
		t.Errorf("got %q", got)
	}
}
