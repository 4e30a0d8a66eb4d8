package pages_test

import (
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"testing"

	"plumbrule/checker"
	"plumbrule/checker/result"
	"plumbrule/checker/waive"
)

var waivers = regexp.MustCompile("(?s)```yaml\n(waivers:.*?)```")

// TestWaiversExcuseTheirFinding takes the entry of every page, reads it as a file
// of waivers, and holds it against the page's own design.
func TestWaiversExcuseTheirFinding(t *testing.T) {
	checks, err := checker.Checks()
	if err != nil {
		t.Fatal(err)
	}
	reports := loaded(t).Outside()
	if len(reports) < 100 {
		t.Errorf("only %d examples", len(reports))
	}
	for id, d := range reports {
		page, err := os.ReadFile(filepath.Join(docs, "checks", id+".md"))
		if err != nil {
			t.Error(err)
			continue
		}
		entry := waivers.FindSubmatch(page)
		if entry == nil {
			t.Errorf("the page of %s has no waiver", id)
			continue
		}
		list, err := waive.Read("waivers.yaml", "", entry[1], checks)
		if err != nil {
			t.Errorf("%s: %v", id, err)
			continue
		}
		d.Findings = slices.Clone(d.Findings)
		list.Apply(&d, d.File, "")
		if n := excused(id, d.Findings); n == 0 {
			t.Errorf("%s: the waiver excuses nothing", id)
		}
		if n := len(d.Findings); excused("", d.Findings) > excused(id, d.Findings) {
			t.Errorf("%s: of %d findings the waiver excuses some of other checks", id, n)
		}
	}
}

// excused counts what is excused of one check, or of all for "".
func excused(check string, list []result.Result) int {
	n := 0
	for _, r := range list {
		if r.Outcome == result.Excused && (check == "" || r.Check == check) {
			n++
		}
	}
	return n
}
