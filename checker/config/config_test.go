package config_test

import (
	"os"
	"path/filepath"
	"strings"
	"testing"

	"plumbrule/checker/config"
	"plumbrule/checker/result"
)

const full = `sets: [irc-2021, common-practice]
folders:
  - {path: jobs/durham, sets: [us-ct-durham]}
  - {path: "jobs/**/old*", sets: [irc-2018]}
  - {path: ./jobs/garden.deck.yaml, sets: [../town.yaml]}
fail_on: life-safety
fail_on_not_shown: true
waivers: [waivers.yaml]
reports: [text, json=review.json]
`

func read(t *testing.T, text string) *config.Config {
	t.Helper()
	c, err := config.Read("plumbrule.yaml", []byte(text))
	if err != nil {
		t.Fatal(err)
	}
	return c
}

func texts(entries []config.Entry) string {
	var list []string
	for _, e := range entries {
		list = append(list, e.Text)
	}
	return strings.Join(list, " ")
}

func TestRead(t *testing.T) {
	c := read(t, full)
	if c.FailOn != result.LifeSafety || c.FailOnNotShown == nil || !*c.FailOnNotShown {
		t.Errorf("fails on %q, %v", c.FailOn, c.FailOnNotShown)
	}
	if texts(c.Sets) != "irc-2021 common-practice" || texts(c.Waivers) != "waivers.yaml" || texts(c.Reports) != "text json=review.json" {
		t.Errorf("%+v", c)
	}
	if at := c.Reports[1].Span.Start; at.Line != 9 || at.Column != 17 {
		t.Errorf("the second report stands at %d:%d", at.Line, at.Column)
	}
	if err := c.Refuse(c.Waivers[0], "no %s", "file"); err.Error() != "plumbrule.yaml:8:11: no file" {
		t.Errorf("%v", err)
	}
	empty := read(t, "{}\n")
	if empty.FailOn != "" || empty.FailOnNotShown != nil || empty.Sets != nil || empty.SetsFor("a.deck.yaml") != nil {
		t.Errorf("what is left out is there: %+v", empty)
	}
}

func TestSetsFor(t *testing.T) {
	c := read(t, full)
	for design, want := range map[string]string{
		"heron.deck.yaml":                 "irc-2021 common-practice",
		"jobs/heron.deck.yaml":            "irc-2021 common-practice",
		"jobs/durham/heron.deck.yaml":     "us-ct-durham",
		"jobs/durham/rear/a.deck.yaml":    "us-ct-durham",
		"jobs/durhams/heron.deck.yaml":    "irc-2021 common-practice",
		"jobs/durham/old/heron.deck.yaml": "irc-2018",
		"jobs/old-heron.deck.yaml":        "irc-2018",
		"jobs/x/y/older/z/a.deck.yaml":    "irc-2018",
		"old/heron.deck.yaml":             "irc-2021 common-practice",
		"jobs/garden.deck.yaml":           "../town.yaml",
		"../elsewhere/heron.deck.yaml":    "irc-2021 common-practice",
	} {
		if got := texts(c.SetsFor(design)); got != want {
			t.Errorf("%s: %s, want %s", design, got, want)
		}
	}
	if got := texts(read(t, "folders: [{path: ., sets: [a]}, {path: b, sets: [b]}]\n").SetsFor("x/y.deck.yaml")); got != "a" {
		t.Errorf("the folder of the file itself: %s", got)
	}
}

func TestReadRefuses(t *testing.T) {
	for text, want := range map[string]string{
		"set: [irc-2021]\n":                        "plumbrule.yaml:1:1: ",
		"sets: irc-2021\n":                         "plumbrule.yaml:1:7: ",
		"sets: []\n":                               "plumbrule.yaml:1:7: ",
		"sets: [a, a]\n":                           "plumbrule.yaml:1:",
		"folders: [{path: a}]\n":                   "plumbrule.yaml:1:11: ",
		"folders: [{path: \"a[\", sets: [b]}]\n":   `plumbrule.yaml:1:18: "a[" is no pattern of a path`,
		"folders: [{path: a, set: [b]}]\n":         "plumbrule.yaml:1:21: ",
		"fail_on: nothing\n":                       "plumbrule.yaml:1:10: ",
		"fail_on_not_shown: \"yes\"\n":             "plumbrule.yaml:1:20: ",
		"waivers: waivers.yaml\n":                  "plumbrule.yaml:1:10: ",
		"reports: [Text]\n":                        "plumbrule.yaml:1:11: ",
		"fail_on: structure\nfail_on: structure\n": "plumbrule.yaml:2:1: ",
		"fail_on: [\n":                             "plumbrule.yaml:",
		"":                                         "plumbrule.yaml: the file is empty",
	} {
		_, err := config.Read("plumbrule.yaml", []byte(text))
		if err == nil {
			t.Errorf("%q is read", text)
		} else if !strings.Contains(err.Error(), want) {
			t.Errorf("%q: error\n%v\ndoes not say\n%s", text, err, want)
		}
	}
}

func TestFind(t *testing.T) {
	root := t.TempDir()
	for _, dir := range []string{"a/b/c", "a/repo/.git", "a/repo/d", "a/tree/e", "a/dir/plumbrule.yaml"} {
		if err := os.MkdirAll(filepath.Join(root, dir), 0o755); err != nil {
			t.Fatal(err)
		}
	}
	for _, file := range []string{"a/plumbrule.yaml", "a/b/plumbrule.yaml", "a/tree/.git"} {
		if err := os.WriteFile(filepath.Join(root, file), nil, 0o644); err != nil {
			t.Fatal(err)
		}
	}
	for dir, want := range map[string]string{
		"a": "a/plumbrule.yaml", "a/b": "a/b/plumbrule.yaml", "a/b/c": "a/b/plumbrule.yaml", "a/b/c/not/there": "a/b/plumbrule.yaml",
		"a/repo/d": "", "a/repo": "", "a/tree/e": "", "a/dir": "a/plumbrule.yaml",
	} {
		if want != "" {
			want = filepath.Join(root, want)
		}
		if got := config.Find(filepath.Join(root, dir)); got != want {
			t.Errorf("%s: %q, want %q", dir, got, want)
		}
	}
	if err := os.WriteFile(filepath.Join(root, "a/repo/plumbrule.yaml"), nil, 0o644); err != nil {
		t.Fatal(err)
	}
	if got := config.Find(filepath.Join(root, "a/repo/d")); got != filepath.Join(root, "a/repo/plumbrule.yaml") {
		t.Errorf("the configuration in the root of the repository is not found: %q", got)
	}
}
