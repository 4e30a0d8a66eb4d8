package checker_test

import (
	"bytes"
	"fmt"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"plumbrule/checker/measure"
	"plumbrule/checker/report/text"
	"plumbrule/checker/result"
)

func printed(t *testing.T, report result.Report, options text.Options) string {
	t.Helper()
	var out bytes.Buffer
	if err := text.New(options).Write(&out, report); err != nil {
		t.Fatal(err)
	}
	return out.String()
}

// What every set says of each design stands in a folder of the set's name, and
// was read line by line before it was accepted: of other countries everything,
// of US sets one line for each finding, of amendments the lines that are not
// those of the set below.
func TestDesignsUnderEverySet(t *testing.T) {
	for _, set := range everySet(t).Sets() {
		t.Run(set.ID, func(t *testing.T) {
			for _, file := range designFiles(t) {
				var got string
				switch report := underSet(t, file, set.ID); {
				case set.System == measure.Metric:
					got = printed(t, report, text.Options{Verbose: true})
				case set.Extends == "":
					got = compactly(t, report)
				default:
					got = apart(compactly(t, underSet(t, file, set.Extends)), compactly(t, report))
				}
				folder := filepath.Join(filepath.Dir(file), set.ID)
				if *update {
					if err := os.MkdirAll(folder, 0o755); err != nil {
						t.Fatal(err)
					}
				}
				compare(t, filepath.Join(folder, strings.TrimSuffix(filepath.Base(file), ".deck.yaml")+".want"), got)
			}
		})
	}
}

// TestNoReportWithoutSetOrDesign finds reports that nothing is compared with
// any more.
func TestNoReportWithoutSetOrDesign(t *testing.T) {
	known := map[string]bool{}
	for _, set := range everySet(t).Sets() {
		for _, file := range designFiles(t) {
			known[filepath.Join(filepath.Dir(file), set.ID, strings.TrimSuffix(filepath.Base(file), ".deck.yaml")+".want")] = true
		}
	}
	files, err := filepath.Glob("../fixtures/designs/*/*")
	if err != nil || len(files) == 0 {
		t.Fatal(files, err)
	}
	for _, file := range files {
		if !known[file] {
			t.Errorf("%s belongs to no set or design", file)
		}
	}
}

// compactly prints one line for each finding.
func compactly(t *testing.T, report result.Report) string {
	t.Helper()
	return printed(t, report, text.Options{Compact: true}) + fmt.Sprintf("disposition: %s\n", report.Designs[0].Disposition)
}

// apart gives the lines that two reports do not share, but for the names of
// the sets.
func apart(before, after string) string {
	said := func(line string) string {
		head, source, _ := strings.Cut(line, " [")
		_, clause, _ := strings.Cut(source, " ")
		return head + " " + clause
	}
	var out strings.Builder
	for _, side := range []struct{ sign, lines, others string }{{"-", before, after}, {"+", after, before}} {
		var others []string
		for line := range strings.Lines(side.others) {
			others = append(others, said(line))
		}
		for line := range strings.Lines(side.lines) {
			if !slices.Contains(others, said(line)) && !strings.HasPrefix(line, "rule sets in use") {
				out.WriteString(side.sign + " " + line)
			}
		}
	}
	return out.String()
}
