package ruleset_test

import (
	"archive/tar"
	"bytes"
	"compress/gzip"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"plumbrule/checker/archive"
)

// brought is the metadata of a check that a set brings; nothing here reads more.
const brought = `# METADATA
# title: House rule
# description: A check that stands beside a set.
# custom:
#   id: office/rule
#   consequence: workmanship
#   why: So that a set brings a check.
#   applies_when: anything is shown
#   figures:
#     few: {type: count, unit: [step, steps], relation: at most, about: a count}
#   messages: {outside: "too many"}
package checks.office.rule
`

const office = `set: office
title: House rules
edition: "1"
publisher: the trial office
system: metric
scope: figures of a check that it brings
not_covered: []
checks:
  office/rule:
    clause: O1
    figures:
      few: {value: 3, status: common practice}
`

const broughtFile = "checks/office/rule/rule.rego"

// directory writes files on disk.
func directory(t *testing.T, files map[string]string) string {
	t.Helper()
	dir := filepath.Join(t.TempDir(), "office")
	for name, text := range files {
		file := filepath.Join(dir, filepath.FromSlash(name))
		if err := os.MkdirAll(filepath.Dir(file), 0o755); err != nil {
			t.Fatal(err)
		}
		if err := os.WriteFile(file, []byte(text), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	return dir
}

func TestSetBringsChecks(t *testing.T) {
	files := map[string]string{"set.yaml": office, broughtFile: brought}
	dir := directory(t, files)
	packed := map[string][]byte{}
	for name, text := range files {
		packed[name] = []byte(text)
	}
	// As others run it, the program's checks are in it too.
	packed["checks/kinds/every_one/every_one.rego"] = []byte(every)
	packed["checks/defaults.rego"] = []byte(defaults)
	var text bytes.Buffer
	if err := archive.Write(&text, packed); err != nil {
		t.Fatal(err)
	}
	bundle := filepath.Join(t.TempDir(), "office.tar.gz")
	if err := os.WriteFile(bundle, text.Bytes(), 0o600); err != nil {
		t.Fatal(err)
	}
	for _, name := range []string{dir, filepath.Join(dir, "set.yaml"), bundle} {
		s := byName(t, library(t), name)
		check := s.Catalog().Find("office/rule")
		if check == nil || !check.Foreign || s.Check("office/rule").Figure("few").Value != int64(3) || len(s.Catalog().Foreign()) != 1 {
			t.Errorf("%s brings %+v", name, check)
		}
		if s.Catalog().Find("kinds/every-one").Foreign {
			t.Errorf("%s takes the place of the program's checks", name)
		}
	}
	if byName(t, library(t), "state").Catalog().Find("office/rule") != nil {
		t.Error("a set of the program has the check too")
	}
}

// TestOverlayInheritsChecks extends a set that brings a check by one that
// changes its figure and brings another.
func TestOverlayInheritsChecks(t *testing.T) {
	dir := directory(t, map[string]string{
		"base/set.yaml": office, "base/" + broughtFile: brought,
		"town/set.yaml": "set: town\ntitle: Town\nedition: \"1\"\npublisher: the town\nextends: ../base\nchecks:\n" +
			"  office/rule:\n    clause: T1\n    figures:\n      few: {value: 2, status: common practice}\n" +
			"  town/rule:\n    clause: T2\n    figures:\n      few: {value: 1, status: common practice}\n",
		"town/checks/town/rule/rule.rego": strings.ReplaceAll(brought, "office", "town"),
	})
	s := byName(t, library(t), filepath.Join(dir, "town"))
	var names []string
	for _, m := range s.Catalog().Foreign() {
		names = append(names, m.Name)
	}
	if s.Check("office/rule").Figure("few").Value != int64(2) || s.Check("town/rule") == nil ||
		!slices.Equal(names, []string{broughtFile, "checks/town/rule/rule.rego"}) {
		t.Errorf("checks %+v of %v", s.Checks, names)
	}
}

// TestHostileDirectories puts what must not be followed in the place of each
// part of a set.
func TestHostileDirectories(t *testing.T) {
	outside := directory(t, map[string]string{"set.yaml": office, "rule.rego": brought, "checks/office/rule/rule.rego": brought, "other.yaml": set})
	link := func(from, to string) func(string) error {
		return func(dir string) error {
			to := filepath.Join(dir, filepath.FromSlash(to))
			return os.Symlink(filepath.Join(outside, filepath.FromSlash(from)), to)
		}
	}
	for _, test := range []struct {
		name  string
		files map[string]string
		make  func(dir string) error
		want  string
	}{
		{"set", map[string]string{"x": ""}, link("set.yaml", "set.yaml"), `"set.yaml" is a symbolic link`},
		{"hard link to a set", map[string]string{"x": ""}, func(dir string) error {
			return os.Link(filepath.Join(outside, "set.yaml"), filepath.Join(dir, "set.yaml"))
		}, `"set.yaml" is a hard link`},
		{"checks", map[string]string{"set.yaml": office}, link("checks", "checks"), `"checks" is a symbolic link`},
		{"check", map[string]string{"set.yaml": office, "checks/office/rule/x": ""}, link("rule.rego", broughtFile), `is a symbolic link`},
		{"tables", map[string]string{"set.yaml": set}, link(".", "tables"), `"tables" is a symbolic link`},
		{"set below", map[string]string{"set.yaml": strings.Replace(office, "system: metric", "extends: away/other.yaml", 1)}, link(".", "away"), `"away" is a symbolic link`},
		{"large set", map[string]string{"set.yaml": office + strings.Repeat("# more\n", 400000)}, func(string) error { return nil }, `"set.yaml" is too large`},
		{"large check", map[string]string{"set.yaml": office, broughtFile: brought + strings.Repeat("# more\n", 400000)}, func(string) error { return nil }, `rule.rego" is too large`},
	} {
		t.Run(test.name, func(t *testing.T) {
			dir := directory(t, test.files)
			if err := test.make(dir); err != nil {
				t.Skip("cannot be made here:", err)
			}
			if _, err := library(t).ByName(dir); err == nil || !strings.Contains(err.Error(), test.want) {
				t.Errorf("got %v, want %s", err, test.want)
			}
		})
	}
}

// TestHostileBundles names bundles that must not be unpacked.
func TestHostileBundles(t *testing.T) {
	for name, test := range map[string]struct {
		entries []tar.Header
		want    string
	}{
		"climbing":   {[]tar.Header{{Name: "../set.yaml"}}, `"../set.yaml" climbs out of its directory`},
		"absolute":   {[]tar.Header{{Name: "/set.yaml"}}, "is an absolute path"},
		"link":       {[]tar.Header{{Name: "set.yaml", Typeflag: tar.TypeSymlink, Linkname: "/etc/hostname"}}, `"set.yaml" is a symbolic link`},
		"hard link":  {[]tar.Header{{Name: "set.yaml", Typeflag: tar.TypeLink, Linkname: "/etc/hostname"}}, `"set.yaml" is a hard link`},
		"twice":      {[]tar.Header{{Name: "set.yaml"}, {Name: "set.yaml"}}, `"set.yaml" is there twice`},
		"bomb":       {[]tar.Header{{Name: "set.yaml", Size: 2 << 20}}, "times its packed size"},
		"large":      {[]tar.Header{{Name: "set.yaml", Size: 3 << 20}}, "is too large, the limit for a file is 2 MiB"},
		"no set":     {[]tar.Header{{Name: "readme"}}, "the bundle has no set.yaml"},
		"no bundle":  {nil, "is no bundle"},
		"empty file": {[]tar.Header{{Name: "set.yaml"}}, "office.tar.gz/set.yaml: the file is empty"},
	} {
		t.Run(name, func(t *testing.T) {
			var text bytes.Buffer
			zipped := gzip.NewWriter(&text)
			entries := tar.NewWriter(zipped)
			for _, header := range test.entries {
				header.Mode = 0o644
				if err := entries.WriteHeader(&header); err != nil {
					t.Fatal(err)
				}
				if _, err := entries.Write(make([]byte, header.Size)); err != nil {
					t.Fatal(err)
				}
			}
			if err := entries.Close(); err != nil {
				t.Fatal(err)
			}
			if err := zipped.Close(); err != nil {
				t.Fatal(err)
			}
			if test.entries == nil {
				text.Reset()
				text.WriteString(office)
			}
			file := filepath.Join(t.TempDir(), "office.tar.gz")
			if err := os.WriteFile(file, text.Bytes(), 0o600); err != nil {
				t.Fatal(err)
			}
			if _, err := library(t).ByName(file); err == nil || !strings.Contains(err.Error(), test.want) {
				t.Errorf("got %v, want %s", err, test.want)
			}
		})
	}
}

// TestFiles gives the files of sets of both kinds.
func TestFiles(t *testing.T) {
	dir := directory(t, map[string]string{"set.yaml": office, broughtFile: brought})
	for name, want := range map[string]string{"state": "state/set.yaml", dir: "set.yaml"} {
		files, file, err := library(t).Files(name)
		if err != nil || file != want {
			t.Errorf("%s: %s, %v", name, file, err)
			continue
		}
		if f, err := files.Open(file); err != nil || f.Close() != nil {
			t.Errorf("%s: %v", name, err)
		}
	}
	if _, _, err := library(t).Files("absent"); err == nil {
		t.Error("the files of a set that is not there")
	}
}
