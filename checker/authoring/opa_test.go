package authoring_test

import (
	"bytes"
	"context"
	"encoding/json"
	"fmt"
	"maps"
	"os"
	"os/exec"
	"path/filepath"
	"slices"
	"strings"
	"testing"
	"time"

	"plumbrule/checker"
	"plumbrule/checker/result"
)

// opaVersion is the one whose library the program uses.
const opaVersion = "v1.22.2"

// opa builds the Open Policy Agent as anybody would, and gives its file.
func opa(t *testing.T) string {
	t.Helper()
	if testing.Short() {
		t.Skip("building the Open Policy Agent takes its time")
	}
	dir := t.TempDir()
	ctx, cancel := context.WithTimeout(t.Context(), 8*time.Minute)
	defer cancel()
	cmd := exec.CommandContext(ctx, "go", "install", "github.com/open-policy-agent/opa@"+opaVersion)
	cmd.Dir = dir // outside of any module
	cmd.Env = append(os.Environ(), "GOBIN="+dir, "GOFLAGS=-mod=mod")
	said, err := cmd.CombinedOutput()
	if err == nil {
		return filepath.Join(dir, "opa")
	}
	for _, away := range []string{"dial tcp", "no such host", "i/o timeout", "connection refused", "GOPROXY=off", "TLS handshake timeout", "executable file not found"} {
		if strings.Contains(string(said)+err.Error(), away) {
			t.Skipf("the Open Policy Agent cannot be built here: %v\n%s", err, said)
		}
	}
	t.Fatalf("building the Open Policy Agent: %v\n%s", err, said)
	return ""
}

const designs = "../../fixtures/designs"

// designNames are the designs that a bundle is tried on.
func designNames() []string {
	return []string{"alder-lane", "heron-lane", "karaka-bay", "ketch-point", "quarry-hill"}
}

func read(t *testing.T, name string) checker.Input {
	t.Helper()
	found, err := filepath.Glob(filepath.Join(designs, name+".deck.*"))
	if err != nil || len(found) != 1 {
		t.Fatalf("designs called %s: %v, %v", name, found, err)
	}
	data, err := os.ReadFile(found[0])
	if err != nil {
		t.Fatal(err)
	}
	return checker.Input{Name: filepath.Base(found[0]), Data: data}
}

func check1(t *testing.T, c *checker.Checker, name string) result.Design {
	t.Helper()
	d := c.Check(t.Context(), read(t, name)).Designs[0]
	for _, p := range d.Problems {
		t.Fatalf("%s: %s", name, p.Message)
	}
	return d
}

// TestOrdinaryOPAGivesTheSameVerdicts packs sets, hands the bundles and the
// published facts of the designs to an ordinary Open Policy Agent, and compares
// what it says of every subject of every check with what the program says.
func TestOrdinaryOPAGivesTheSameVerdicts(t *testing.T) {
	agent := opa(t)
	for _, set := range []string{"irc-2021", "common-practice", start(t)} {
		bundle := pack1(t, set)
		c, err := checker.New(checker.Options{Sets: []string{set}, Sandbox: box()})
		if err != nil {
			t.Fatal(err)
		}
		for _, name := range designNames() {
			t.Run(filepath.Base(set)+"/"+name, func(t *testing.T) {
				d := check1(t, c, name)
				ours := map[string]int{}
				for _, r := range slices.Concat(d.Findings, d.Readings) {
					ours[said(r.Check, r.Outcome, r.At)]++
				}
				theirs := ask(t, agent, bundle, name)
				if len(ours) < 2 {
					t.Errorf("the program says %v only", ours)
				}
				for _, line := range slices.Sorted(maps.Keys(ours)) {
					if theirs[line] != ours[line] {
						t.Errorf("%d times here, %d times there: %s", ours[line], theirs[line], line)
					}
				}
				for _, line := range slices.Sorted(maps.Keys(theirs)) {
					if ours[line] == 0 {
						t.Errorf("there only: %s", line)
					}
				}
			})
		}
	}
}

// said is a verdict on one subject.
func said(check string, outcome result.Outcome, at []string) string {
	return fmt.Sprintf("%s: %s: %s", check, outcome, strings.Join(at, " "))
}

// ask evaluates a bundle on the facts of a design.
func ask(t *testing.T, agent, bundle, name string) map[string]int {
	t.Helper()
	f, problems := checker.Facts(read(t, name))
	if len(problems) > 0 {
		t.Fatal(problems)
	}
	input, err := json.Marshal(f)
	if err != nil {
		t.Fatal(err)
	}
	file := filepath.Join(t.TempDir(), "facts.json")
	if err := os.WriteFile(file, input, 0o600); err != nil {
		t.Fatal(err)
	}
	var complaint bytes.Buffer
	cmd := exec.CommandContext(t.Context(), agent, "eval", "--bundle", bundle, "--input", file, "--strict-builtin-errors", "--format", "raw", "data.plumbrule.review.rows")
	cmd.Stderr = &complaint
	out, err := cmd.Output()
	if err != nil {
		t.Fatalf("%v\n%s%s", err, out, &complaint)
	}
	type row struct {
		At      []string
		Outside bool
	}
	var rows map[string]struct {
		Applies                   bool
		Readings, Unknown, Exempt []row
	}
	if err := json.Unmarshal(out, &rows); err != nil {
		t.Fatalf("%v\n%.2000s", err, out)
	}
	lines := map[string]int{}
	count := func(check string, outcome result.Outcome, at []string) {
		var once []string // as facts may name a place twice
		for _, pointer := range at {
			if !slices.Contains(once, pointer) {
				once = append(once, pointer)
			}
		}
		if once == nil {
			once = []string{""}
		}
		lines[said(check, outcome, once)]++
	}
	for check, has := range rows {
		if !has.Applies {
			count(check, result.DoesNotApply, nil)
		}
		for _, r := range has.Readings {
			count(check, map[bool]result.Outcome{true: result.Outside, false: result.Within}[r.Outside], r.At)
		}
		for _, r := range has.Unknown {
			count(check, result.NotShown, r.At)
		}
		for _, r := range has.Exempt {
			count(check, result.DoesNotApply, r.At)
		}
	}
	return lines
}
