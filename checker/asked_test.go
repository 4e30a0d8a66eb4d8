package checker_test

import (
	"context"
	"os"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
	"testing"

	"plumbrule/checker"
	"plumbrule/checker/result"
	"plumbrule/checker/source"
)

// What a check asks for must be missing: whoever types the field named must
// have something to type. So for every result that is not shown, of every
// design here under every set, the field is looked up at the place it is said
// to be missing.
func TestWhatIsAskedForIsMissing(t *testing.T) {
	files := designFiles(t)
	more, err := filepath.Glob(filepath.Join(checkFixtures, "*", "*", "*.deck.yaml"))
	if err != nil || len(more) < 100 {
		t.Fatal(len(more), err)
	}
	var sets []string // those that amend another ask for the same
	for _, set := range everySet(t).Sets() {
		if set.Extends == "" {
			sets = append(sets, set.ID)
		}
	}
	asked := 0
	for _, file := range append(files, more...) {
		data, err := os.ReadFile(file)
		if err != nil {
			t.Fatal(err)
		}
		report := everySet(t).Check(context.Background(), checker.Input{Name: file, Data: data, Sets: sets})
		d := &report.Designs[0]
		for i := range d.Findings {
			r := &d.Findings[i]
			if r.Outcome != result.NotShown {
				continue
			}
			asked++
			if isShown(d.Document, r.Needs, r.At[0]) {
				t.Errorf("%s: %s of %s asks for %s at %q, which is shown", file, r.Check, r.Set, r.Needs, r.At[0])
			}
		}
	}
	t.Logf("%d fields asked for", asked)
}

// isShown reports whether the field of a path, as guards[].height, is there for
// the element that a pointer leads to, or for all elements where it leads to
// none. The word unknown shows nothing.
func isShown(doc *source.Document, path, pointer string) bool {
	tokens := strings.Split(strings.ReplaceAll(path, "[]", ".[]"), ".")
	var here []string
	if pointer != "" {
		here = strings.Split(pointer, "/")[1:]
	}
	return shownAt(doc.Root, tokens, here)
}

func shownAt(n *source.Node, tokens, here []string) bool {
	if len(tokens) == 0 { // one item of what takes two, as posts of a beam, shows not all of it
		return n.Text != "unknown" && (n.Kind != source.Array || len(n.Items) > 1)
	}
	token, rest := tokens[0], tokens[1:]
	next := []string(nil)
	if token == "[]" {
		if len(here) > 0 {
			if i, err := strconv.Atoi(here[0]); err == nil && i < len(n.Items) {
				return shownAt(n.Items[i], rest, here[1:])
			}
		}
		return len(n.Items) > 0 && !slices.ContainsFunc(n.Items, func(item *source.Node) bool { return !shownAt(item, rest, nil) })
	}
	if strings.HasPrefix(token, "<") { // any of that kind
		return len(n.Members) > 0 && !slices.ContainsFunc(n.Members, func(m source.Member) bool { return !shownAt(m.Value, rest, nil) })
	}
	m := n.Member(token)
	if m == nil {
		other := map[string]string{"size": "actual"}[token] // another spelling of the same
		return len(rest) == 0 && other != "" && n.Member(other) != nil
	}
	if len(here) > 0 && here[0] == token {
		next = here[1:]
	}
	return shownAt(m.Value, rest, next)
}
