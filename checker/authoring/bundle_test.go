package authoring_test

import (
	"bytes"
	"encoding/json"
	"io/fs"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"plumbrule/checker"
	"plumbrule/checker/archive"
	"plumbrule/checker/authoring"
)

// pack bundles a set, checks that a second time gives the same bytes, and gives
// the file.
func pack(t *testing.T, set string) (string, authoring.Bundled) {
	t.Helper()
	var first, second bytes.Buffer
	is, err := authoring.Bundle(t.Context(), set, &first, box())
	if err != nil {
		t.Fatal(err)
	}
	if _, err := authoring.Bundle(t.Context(), set, &second, box()); err != nil {
		t.Fatal(err)
	}
	if !bytes.Equal(first.Bytes(), second.Bytes()) {
		t.Errorf("%s packed twice gives other bytes", set)
	}
	file := filepath.Join(t.TempDir(), "set.tar.gz")
	if err := os.WriteFile(file, first.Bytes(), 0o644); err != nil {
		t.Fatal(err)
	}
	return file, is
}

func TestBundleHoldsAManifest(t *testing.T) {
	file, is := pack(t, start(t))
	if is != (authoring.Bundled{Set: "office", Checks: 2, Sources: true}) {
		t.Errorf("it says %+v", is)
	}
	files, err := archive.Bundle(file, archive.Default())
	if err != nil {
		t.Fatal(err)
	}
	text, err := fs.ReadFile(files, ".manifest")
	if err != nil {
		t.Fatal(err)
	}
	var manifest struct {
		Revision string
		Roots    []string
		Metadata map[string]string
	}
	if err := json.Unmarshal(text, &manifest); err != nil {
		t.Fatal(err)
	}
	if len(manifest.Revision) != 16 || strings.Join(manifest.Roots, " ") != "checks figures lib plumbrule" || manifest.Metadata["rule_set"] != "office" {
		t.Errorf("manifest %s", text)
	}
	var set struct {
		Checks map[string]struct {
			Clause  string
			Figures map[string]map[string]string
		}
	}
	if text, err = fs.ReadFile(files, "plumbrule/set/data.json"); err != nil {
		t.Fatal(err)
	}
	if err := json.Unmarshal(text, &set); err != nil {
		t.Fatal(err)
	}
	if riser := set.Checks["stairs/riser-height"]; riser.Clause != "house rule 1" || riser.Figures["max"]["status"] != "common practice" || riser.Figures["max"]["text"] != "7-1/2 in" {
		t.Errorf("words and figures %+v", riser)
	}
	if _, err := fs.Stat(files, "checks/defaults.rego"); err == nil {
		t.Error("it binds schemas that it does not hold")
	}
}

// TestBundleIsASet checks a design under a set and under its bundle.
func TestBundleIsASet(t *testing.T) {
	dir := start(t)
	file, _ := pack(t, dir)
	for _, sets := range [][2]string{{dir, file}, {"irc-2021", pack1(t, "irc-2021")}} {
		var reports [2]string
		for i, set := range sets {
			c, err := checker.New(checker.Options{Sets: []string{set}, Sandbox: box()})
			if err != nil {
				t.Fatal(err)
			}
			d := check1(t, c, "quarry-hill")
			findings, err := json.Marshal(d.Findings)
			if err != nil {
				t.Fatal(err)
			}
			readings, err := json.Marshal(d.Readings)
			if err != nil {
				t.Fatal(err)
			}
			if len(d.Readings) == 0 || d.Counts.CouldNotRun > 0 {
				t.Errorf("%s: counts %+v", set, d.Counts)
			}
			reports[i] = string(findings) + string(readings)
		}
		if reports[0] != reports[1] {
			t.Errorf("the bundle of %s reports something else", sets[0])
		}
	}
}

func pack1(t *testing.T, set string) string {
	t.Helper()
	file, _ := pack(t, set)
	return file
}

// TestBundleOfAnOverlay packs a set that extends one of the program, which it
// can take along, and one that extends a file, which it cannot.
func TestBundleOfAnOverlay(t *testing.T) {
	dir := start(t)
	overlay := func(name, extends string) string {
		file := filepath.Join(filepath.Dir(dir), name)
		text := "set: town\ntitle: Town\nedition: \"1\"\npublisher: the town\nextends: " + extends +
			"\nchecks:\n  stairs/riser-height:\n    clause: T1\n    figures:\n      max: {value: 7 in, status: common practice}\n"
		if err := os.WriteFile(file, []byte(text), 0o644); err != nil {
			t.Fatal(err)
		}
		return file
	}
	if file, is := pack(t, overlay("town.yaml", "irc-2021")); !is.Sources || is.Checks < 20 {
		t.Errorf("over a set of the program: %+v", is)
	} else if _, err := checker.New(checker.Options{Sets: []string{file}}); err != nil {
		t.Error(err)
	}
	file, is := pack(t, overlay("other.yaml", "Office/set.yaml"))
	if is.Sources || is.Checks != 2 {
		t.Errorf("over a file: %+v", is)
	}
	if _, err := checker.New(checker.Options{Sets: []string{file}}); err == nil || !strings.Contains(err.Error(), "has no set.yaml") {
		t.Errorf("read back: %v", err)
	}
}

func TestBundleRefusesChecksThatDoNotLoad(t *testing.T) {
	dir := start(t)
	change(t, dir, check, "count(input.stairs)", "count(input.stirs)")
	if _, err := authoring.Bundle(t.Context(), dir, &bytes.Buffer{}, box()); err == nil || !strings.Contains(err.Error(), "the nearest is stairs") {
		t.Errorf("got %v", err)
	}
}
