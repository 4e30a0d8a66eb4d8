package caution_test

import (
	"regexp"
	"slices"
	"strings"
	"testing"

	"plumbrule/checker/caution"
	"plumbrule/checker/wording"
)

func texts(lines []caution.Line, wordings ...wording.Wording) []string {
	list := make([]string, len(lines))
	for i, line := range lines {
		list[i] = line.In(wordings...)
	}
	return list
}

func TestTermsInTheWordsOfASet(t *testing.T) {
	w := wording.New(map[string]string{"building department": "old council", "a licensed engineer": "an architect of bridges", "ledger": "wall plate", "pipe": "main"})
	line := caution.Line("{Ledgers} by {the building department}, {a licensed engineer} and the ledger")
	said, phrases := line.In(w), line.Replaced(w)
	if said != "Wall plates by the old council, an architect of bridges and the ledger" {
		t.Error(said)
	}
	if !slices.Equal(phrases, []string{"ledger", "building department", "a licensed engineer"}) {
		t.Error(phrases)
	}
	if line.In() != "Ledgers by the building department, a licensed engineer and the ledger" {
		t.Error(line.In())
	}
}

// TestWhatIsDeferredToIsNoTerm replaces every term by the least that a set can
// say, and every other word too: who decides is still said.
func TestWhatIsDeferredToIsNoTerm(t *testing.T) {
	words := map[string]string{}
	terms := 0
	for _, line := range caution.All() {
		for _, term := range regexp.MustCompile(`\{([^{}]+)\}`).FindAllStringSubmatch(string(line), -1) {
			words[strings.ToLower(term[1])] = "x"
			terms++
		}
		for _, word := range regexp.MustCompile(`\w+`).FindAllString(string(line), -1) {
			words[strings.ToLower(word)] = "x"
		}
	}
	if terms < 10 {
		t.Fatalf("%d terms", terms)
	}
	w := wording.New(words)
	for name, tt := range map[string]struct {
		lines []caution.Line
		want  []string
	}{
		"closing": {caution.Closing(), []string{
			"no proof that nobody can get hurt", "The authority at the place decides, not this report", "any local amendments",
			"licensed practice has to answer", "Have it inspected", "each needs an engineer", "stairs are where people get hurt",
		}},
		"short":   {[]caution.Line{caution.Short()}, []string{"nothing found is no proof", "the authority at the place", "licensed practice", " decide"}},
		"decides": {[]caution.Line{caution.Decides()}, []string{"The authority at the place", " decides", "licensed practice answers"}},
	} {
		said := strings.Join(texts(tt.lines, w), "\n")
		if !strings.Contains(said, "x") {
			t.Errorf("%s: nothing is replaced in %q", name, said)
		}
		for _, want := range tt.want {
			if !strings.Contains(said, want) {
				t.Errorf("%s: %q is lost: %q", name, want, said)
			}
		}
	}
}

func TestTermsInTheWordsOfSeveralSets(t *testing.T) {
	const line = caution.Line("{Things}, a {thing} of {places}")
	english := wording.New(map[string]string{"thing": "object"})
	other := wording.New(map[string]string{"places": "towns"})
	for _, tt := range []struct {
		name     string
		wordings []wording.Wording
		want     string
	}{
		{"no set", nil, "Things, a thing of places"},
		{"one", []wording.Wording{english}, "Objects, a object of places"},
		{"alike", []wording.Wording{english, english, {}, {}}, "Objects / Things, a object / thing of places"},
		{"several", []wording.Wording{other, english}, "Things / Objects, a thing / object of towns / places"},
	} {
		if got := line.In(tt.wordings...); got != tt.want {
			t.Errorf("%s: %q", tt.name, got)
		}
	}
}

// TestBracesClose keeps a remark from losing its end.
func TestBracesClose(t *testing.T) {
	for i, said := range texts(caution.All()) {
		line := string(caution.All()[i])
		if strings.ContainsAny(said, "{}") || strings.Count(line, "{") != strings.Count(line, "}") || len(said) != len(strings.NewReplacer("{", "", "}", "").Replace(line)) {
			t.Errorf("%q is said %q", line, said)
		}
	}
}
