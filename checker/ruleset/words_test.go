package ruleset_test

import (
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"plumbrule/checker/ruleset"
)

const wordy = "checks:\n  kinds/all:"

func TestSetHasWordsOfItsOwn(t *testing.T) {
	l := library(t, "State of Trial\n", "State of Trial\nwords: {length: extent, a flag: a banner, figure: number}\n",
		"[the old town]\n", "[the old town]\nwords: {figure: value, every kind: all kinds}\n")
	state, town := byName(t, l, "state"), byName(t, l, "town")
	want := []ruleset.Word{{"a flag", "a banner"}, {"every kind", "all kinds"}, {"figure", "value"}, {"length", "extent"}}
	if diff := cmp.Diff(want, town.Words); diff != "" {
		t.Error(diff)
	}
	for _, tt := range []struct {
		set                      *ruleset.Set
		description, rise, title string
	}{
		{byName(t, l, "trial"), "A check that asks for a figure of every kind there is.", "a length", "Every kind"},
		{state, "A check that asks for a number of every kind there is.", "an extent", "Every kind"},
		{town, "A check that asks for a value of all kinds there is.", "an extent", "All kinds"},
	} {
		check := tt.set.Describe("kinds/every-one")
		if check.Description != tt.description || check.Figure("rise").About != tt.rise || check.Title != tt.title {
			t.Errorf("%s: %q, %q, %q", tt.set.ID, check.Title, check.Description, check.Figure("rise").About)
		}
		if plain := tt.set.Catalog().Find("kinds/every-one"); plain.Title != "Every kind" || plain.Figure("rise").About != "a length" {
			t.Errorf("%s: the catalog says %q", tt.set.ID, plain.Title)
		}
	}
	if got := town.Wording().Say("a length"); got != "an extent" {
		t.Error(got)
	}
	if state.Describe("kinds/none") != nil {
		t.Error("a check that the set does not have is described")
	}
}

func TestWordsRefused(t *testing.T) {
	for _, tt := range []struct{ name, words, want string }{
		{"no check says it", "words: {gutter: eaves}\n", `trial/set.yaml:10:9: no check of the set says "gutter"`},
		{"a longer one hides it", "words: {flag: banner, a flag: a standard}\n", `trial/set.yaml:10:9: no check of the set says "flag"`},
		{"a part of a word", "words: {leng: extent}\n", `trial/set.yaml:10:9: no check of the set says "leng"`},
		{"a figure's value is no text of a check", "words: {rail: bar}\n", `no check of the set says "rail"`},
		{"none", "words: {}\n", "trial/set.yaml:10:8: "},
		{"empty", "words: {length: \"\"}\n", "trial/set.yaml:10:17: "},
		{"number", "words: {length: 3}\n", "trial/set.yaml:10:17: "},
		{"spaces", "words: {\"a  flag\": banner}\n", "trial/set.yaml:10:9: "},
		{"braces", "words: {length: \"{have}\"}\n", "trial/set.yaml:10:17: "},
	} {
		t.Run(tt.name, func(t *testing.T) {
			refused(t, files(strings.Replace(set, wordy, tt.words+wordy, 1), table), tt.want)
		})
	}
}
