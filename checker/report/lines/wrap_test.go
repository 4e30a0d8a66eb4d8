package lines

import (
	"slices"
	"strings"
	"testing"
)

func TestWrap(t *testing.T) {
	tests := []struct {
		name        string
		text        string
		first, rest int
		want        []string
	}{
		{"nothing", "", 10, 10, []string{""}},
		{"fits", "one two", 7, 7, []string{"one two"}},
		{"breaks", "one two three", 7, 7, []string{"one two", "three"}},
		{"less room at first", "one two three", 4, 9, []string{"one", "two three"}},
		{"no room at first", "one two", -3, 9, []string{"", "one two"}},
		{"juts out", "a incomprehensible b", 5, 5, []string{"a", "incomprehensible", "b"}},
		{"not at all", "one  two three", 0, 0, []string{"one  two three"}},
		{"glued", "one 6'-8\u00a01/2\" two", 9, 9, []string{"one", "6'-8 1/2\"", "two"}},
		{"wide", "梁 梁梁 梁", 4, 4, []string{"梁", "梁梁", "梁"}},
	}
	c := NewCells()
	for _, test := range tests {
		if got := c.Wrap(test.text, test.first, test.rest); !slices.Equal(got, test.want) {
			t.Errorf("%s: %q, want %q", test.name, got, test.want)
		}
	}
}

func TestKeep(t *testing.T) {
	c := NewCells()
	if got := c.Keep(`measured 6'-8 1/2"`); strings.Contains(got, " ") {
		t.Errorf("a value may still be broken: %q", got)
	}
	prose := "shown a ledger that is attached to brick veneer"
	if got := c.Keep(prose); got != prose {
		t.Errorf("prose is kept on one line: %q", got)
	}
}
