package report_test

import (
	"bytes"
	"io/fs"
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"testing"

	"plumbrule/checker/report"
	"plumbrule/checker/report/content"
	"plumbrule/checker/report/reporttest"
)

// TestFormats runs every format there is, so that a new one is held to what all
// promise without a test of its own.
func TestFormats(t *testing.T) {
	canned := reporttest.Canned(t)
	seen := map[string]bool{}
	for _, format := range report.Formats() {
		if seen[format.Name] {
			t.Errorf("two formats are named %q", format.Name)
		}
		seen[format.Name] = true
		if !regexp.MustCompile(`^[a-z]+$`).MatchString(format.Name) || format.About == "" || strings.ContainsAny(format.About, ".\n") && !strings.Contains(format.About, "schema.json") {
			t.Errorf("%q: %q", format.Name, format.About)
		}
		for _, opts := range []report.Options{{}, {Width: 40, Colour: true}, {Width: 120, Verbose: true}} {
			var out bytes.Buffer
			if err := format.New(opts).Write(&out, canned); err != nil {
				t.Errorf("%s: %v", format.Name, err)
			}
			text := strings.Join(strings.Fields(out.String()), " ")
			for _, want := range append(content.Cautions(nil), "irc-2021", "Model residential code", "docks and piers") {
				if !strings.Contains(text, want) {
					t.Errorf("%s, %+v: no %q", format.Name, opts, want)
				}
			}
			if words := verdicts(text); words != nil {
				t.Errorf("%s: a verdict: %q", format.Name, words)
			}
		}
	}
}

// verdicts gives the words in a text that would say that a deck is in order,
// which no report may. The name of a class is none.
func verdicts(text string) []string {
	text = strings.ReplaceAll(text, "life safety", "")
	text = strings.ReplaceAll(text, "LIFE SAFETY", "")
	return regexp.MustCompile(`(?i)\b(un)?safe(ly|ty)?\b|\bcompl(y|ies|iant|iance)\b|\bpass(es|ed)?\b|\bapprov\w+`).FindAllString(text, -1)
}

func TestVerdictsAreSeen(t *testing.T) {
	for _, text := range []string{"deck is safe", "Compliant", "it passes", "Approved.", "proof of safety", "complies"} {
		if verdicts(text) == nil {
			t.Errorf("%q goes unseen", text)
		}
	}
	if words := verdicts("life safety: the compass passage LIFE SAFETY"); words != nil {
		t.Errorf("seen %q", words)
	}
}

// TestGoldenFilesHoldNoVerdict covers what the formats' own tests print.
func TestGoldenFilesHoldNoVerdict(t *testing.T) {
	n := 0
	err := filepath.WalkDir(".", func(path string, _ fs.DirEntry, err error) error {
		if err != nil || filepath.Ext(path) != ".golden" {
			return err
		}
		n++
		data, err := os.ReadFile(path)
		if words := verdicts(string(data)); words != nil {
			t.Errorf("%s: %q", path, words)
		}
		return err
	})
	if err != nil || n < 10 {
		t.Errorf("%d files read: %v", n, err)
	}
}
