package ruleset_test

import (
	"encoding/json"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"
	"testing/fstest"

	"github.com/google/go-cmp/cmp"

	"plumbrule/checker/measure"
	"plumbrule/checker/ruleset"
)

const state = `set: state
title: State rules
edition: "2031"
publisher: the state office
place: State of Trial
extends: trial
sources:
  act: Act of the state
checks:
  kinds/every-one:
    clause: A1
    figures:
      rise: {value: 8 in, status: published, source: act}
      spare: {value: 2 in, status: recalled, clause: A1.9}
      spans:
        cells:
          - {at: [pines, 12 in, 50 psf], value: 9 ft 6 in, status: recalled, note: of the state}
          - {at: [firs, 2 ft, 40 psf], value: not permitted, status: published, source: act, clause: A1.7}
  kinds/reader: {off: true, clause: A2, reason: the section is deleted}
`

const town = `set: town
title: Town rules
edition: "2032"
publisher: the town office
extends: state
not_covered: [the old town]
sources:
  sheet: Town sheet
checks:
  kinds/every-one:
    figures:
      rise: {value: 8-1/4 in, status: published, source: sheet, clause: B1}
      load: {status: published, source: act, clause: B2}
      many: {value: 4, status: recalled, clause: B3}
      spans: {cells: [{at: [pines, 1 ft, 50 psf], value: 9 ft, status: recalled, clause: B4}]}
  kinds/reader:
    off: false
    clause: B5
    figures:
      few: {value: 8, status: recalled}
`

// library holds the trial set, the state over it and the town over the state.
func library(t testing.TB, replace ...string) *ruleset.Library {
	t.Helper()
	r := strings.NewReplacer(replace...)
	tree := files(set, table)
	tree["state/set.yaml"] = &fstest.MapFile{Data: []byte(r.Replace(state))}
	tree["town/set.yaml"] = &fstest.MapFile{Data: []byte(r.Replace(town))}
	return ruleset.NewLibrary(tree, checks(t))
}

func byName(t testing.TB, l *ruleset.Library, name string) *ruleset.Set {
	t.Helper()
	s, err := l.ByName(name)
	if err != nil {
		t.Fatal(err)
	}
	return s
}

func TestOverlayKeepsWhatItDoesNotChange(t *testing.T) {
	s := byName(t, library(t), "town")
	if s.ID != "town" || s.Extends != "state" || s.Title != "Town rules" || s.Edition != "2032" || s.Publisher != "the town office" || s.Place != "" {
		t.Errorf("head %+v", s)
	}
	if s.System != measure.Metric || s.Scope != "figures of every kind" {
		t.Errorf("system %v, scope %q are not those of the set below", s.System, s.Scope)
	}
	if want := []string{"everything else", "the old town"}; !slices.Equal(s.NotCovered, want) {
		t.Errorf("not covered %q, want %q", s.NotCovered, want)
	}
	want := []ruleset.Source{{ID: "sheet", Title: "Town sheet"}, {ID: "act", Title: "Act of the state"}}
	if diff := cmp.Diff(want, s.Sources); diff != "" {
		t.Errorf("sources; the town's own sheet hides the one below\n%s", diff)
	}
	before := byName(t, library(t), "trial").Check("kinds/every-one")
	for _, name := range []string{"pull", "pitch", "fall", "part", "lit", "word", "words", "groups", "steps"} {
		if diff := cmp.Diff(before.Figure(name), s.Check("kinds/every-one").Figure(name)); diff != "" {
			t.Errorf("%s changed\n%s", name, diff)
		}
	}
}

func TestOverlayChangesFigures(t *testing.T) {
	c := byName(t, library(t), "town").Check("kinds/every-one")
	if c.Clause != "A1" {
		t.Errorf("clause %q", c.Clause)
	}
	tests := []struct {
		figure, text, clause, source, amended string
		status                                ruleset.Status
		history                               []string
	}{
		{"rise", "8-1/4 in", "B1", "Town sheet", "amended by the town office, B1; replaces 8 in (state A1)", ruleset.Published,
			[]string{"8 in (state A1)", "7-3/4 in (trial T1)"}},
		{"spare", "2 in", "A1.9", "", "added by State of Trial, A1.9", ruleset.Recalled, nil},
		{"load", "40 psf", "B2", "Act of the state", "confirmed by the town office, B2; as in trial T1", ruleset.Published, []string{"40 psf (trial T1)"}},
		{"many", "4 steps", "B3", "", "confirmed by the town office, B3; as in trial T1", ruleset.Recalled, []string{"4 steps (trial T1)"}},
		{"pull", "200 lb", "T1", "", "", ruleset.CommonPractice, nil},
	}
	for _, tt := range tests {
		f := c.Figure(tt.figure)
		if f.Text != tt.text || f.Clause != tt.clause || f.Source != tt.source || f.Status != tt.status {
			t.Errorf("%s: %+v", tt.figure, f)
		}
		if got := f.Amended(); got != tt.amended {
			t.Errorf("%s: %q, want %q", tt.figure, got, tt.amended)
		}
		if got := f.History(); !slices.Equal(got, tt.history) {
			t.Errorf("%s replaced %q, want %q", tt.figure, got, tt.history)
		}
	}
	if got := c.Figure("load").Note; got != "of the figure" {
		t.Errorf("a confirmed figure has the note %q", got)
	}
	names := []string{}
	for _, f := range c.Figures {
		names = append(names, f.Name)
	}
	if last := names[len(names)-1]; last != "spare" || names[0] != "rise" {
		t.Errorf("figures are not in the order of the check: %v", names)
	}
}

func TestOverlayChangesCells(t *testing.T) {
	l := library(t)
	town, state, trial := byName(t, l, "town"), byName(t, l, "state"), byName(t, l, "trial")
	cell := func(s *ruleset.Set, path ...any) ruleset.Cell {
		c, err := s.Check("kinds/every-one").Figure("spans").Table.Cell(path)
		if err != nil {
			t.Fatal(err)
		}
		return c
	}
	pines := []any{"pines", json.Number("0"), json.Number("1")}
	firs := []any{"firs", json.Number("1"), json.Number("0")}
	for _, tt := range []struct {
		name                string
		cell                ruleset.Cell
		text, note, amended string
	}{
		{"the town's", cell(town, pines...), "9 ft", "", "amended by the town office, B4; replaces 9 ft 6 in (state A1)"},
		{"the state's", cell(state, pines...), "9 ft 6 in", "of the state", "amended by State of Trial, A1; replaces 10 ft (trial Table T1)"},
		{"the trial's", cell(trial, pines...), "10 ft", "of the cell", ""},
		{"refused by the state", cell(town, firs...), "not permitted", "", "amended by State of Trial, A1.7; replaces 7 ft (trial Table T1)"},
	} {
		if tt.cell.Text != tt.text || tt.cell.Note != tt.note || tt.cell.Amended() != tt.amended {
			t.Errorf("%s: %q %q %q", tt.name, tt.cell.Text, tt.cell.Note, tt.cell.Amended())
		}
	}
	if cell(town, firs...).Value != nil || *cell(town, pines...).Value != 108*25_400_000 {
		t.Error("values of the cells differ from their texts")
	}
	spans := town.Check("kinds/every-one").Figure("spans")
	have := spans.Value.(map[string]any)["cells"].(map[string]any)
	want := map[string]any{
		"pines": []any{[]any{int64(132 * 25_400_000), int64(108 * 25_400_000)}, []any{int64(96 * 25_400_000), nil}},
		"firs":  []any{[]any{int64(120 * 25_400_000), int64(108 * 25_400_000)}, []any{nil, int64(72 * 25_400_000)}},
	}
	if diff := cmp.Diff(want, have); diff != "" {
		t.Errorf("what checks read\n%s", diff)
	}
	var rows []string
	for _, c := range spans.Table.Amended() {
		rows = append(rows, c.Row)
	}
	if !slices.Equal(rows, []string{"pines, 12 in, 50 psf", "firs, 24 in, 40 psf"}) {
		t.Errorf("amended cells %q", rows)
	}
}

func TestOverlayTakesAChecksOut(t *testing.T) {
	l := library(t)
	s := byName(t, l, "state")
	off := s.Check("kinds/reader").Off
	if off == nil || off.String() != "taken out by State of Trial, A2: the section is deleted" {
		t.Fatalf("off %v", off)
	}
	if s.Data()["kinds"].(map[string]any)["reader"] == nil {
		t.Error("figures of a check that is off are gone, others may read them")
	}
	again := byName(t, l, "town").Check("kinds/reader")
	if again.Off != nil || again.Figure("few").Text != "8 steps" || again.Clause != "B5" {
		t.Errorf("brought back: %+v", again)
	}
}

// TestOverlayReplacesATable and adds a check that the set below lacks.
func TestOverlayReplacesATable(t *testing.T) {
	alone, _, _ := strings.Cut(set, "  kinds/reader")
	tree := files(alone, table)
	tree["other/set.yaml"] = &fstest.MapFile{Data: []byte(`set: other
title: Other rules
edition: "1"
publisher: the other office
extends: ../trial/set.yaml
system: imperial
scope: what the other office says
checks:
  kinds/every-one:
    figures: {spans: {table: shorter}}
  kinds/reader:
    clause: C2
    figures: {few: {value: 3, status: recalled}}
`)}
	tree["other/tables/shorter.yaml"] = &fstest.MapFile{Data: []byte(strings.NewReplacer("table: spans", "table: shorter", "Table of spans", "Shorter spans", "Table T1", "Table C1", "11 ft", "10 ft").Replace(table))}
	s := byName(t, ruleset.NewLibrary(tree, checks(t)), "other")
	spans := s.Check("kinds/every-one").Figure("spans")
	if got, want := spans.Amended(), "amended by the other office, Table C1; replaces Table of spans (trial Table T1)"; got != want {
		t.Errorf("%q, want %q", got, want)
	}
	cell, err := spans.Table.Cell([]any{"pines", json.Number("0"), json.Number("0")})
	if err != nil || cell.Text != "10 ft" || cell.Source != "Trial sheet 1" {
		t.Errorf("cell %+v, %v", cell, err)
	}
	if got, want := s.Check("kinds/reader").Figure("few").Amended(), "added by the other office, C2"; got != want {
		t.Errorf("%q, want %q", got, want)
	}
	if s.System != measure.Imperial || s.Scope != "what the other office says" {
		t.Errorf("the set's own system %v and scope %q are not used", s.System, s.Scope)
	}
}

func TestOverlayRefused(t *testing.T) {
	tests := []struct{ name, set, old, new, want string }{
		{"no such set", "state", "extends: trial", "extends: trail", `state/set.yaml:6:10: there is no rule set "trail"; did you mean trial?`},
		{"no such file", "state", "extends: trial", "extends: ../trail/set.yaml", "state/set.yaml:6:10: the set trail/set.yaml cannot be read: file does not exist"},
		{"out of the sets", "state", "extends: trial", "extends: ../../trial/set.yaml", "state/set.yaml:6:10: "},
		{"absolute", "state", "extends: trial", "extends: /etc/set.yaml", `state/set.yaml:6:10: "/etc/set.yaml" is no path from this file's directory`},
		{"itself", "state", "extends: trial", "extends: state", "state/set.yaml:6:10: the set extends itself: state/set.yaml extends state/set.yaml"},
		{"ring", "town", "extends: trial", "extends: ../town/set.yaml", "state/set.yaml:6:10: the set extends itself: town/set.yaml extends state/set.yaml extends town/set.yaml"},
		{"fault below", "town", "status: recalled, clause: A1.9", "status: guessed, clause: A1.9", "state/set.yaml:14:36: "},
		{"id of the set below", "state", "set: state", "set: trial", "state/set.yaml:1:6: the set has the id of the one that it extends, trial/set.yaml"},
		{"no clause", "town", "{value: 4, status: recalled, clause: B3}", "{value: 4, status: recalled}", "town/set.yaml:14:7: a changed figure names the clause that changes it, here or for the check"},
		{"no clause for a cell", "town", ", clause: B4}", "}", "town/set.yaml:15:23: a changed cell names the clause that changes it"},
		{"unknown check", "state", "  kinds/reader:", "  kinds/raeder:", `state/set.yaml:19:3: there is no check "kinds/raeder"; did you mean kinds/reader?`},
		{"check twice", "state", "  kinds/reader:", "  kinds/all:", "state/set.yaml:19:3: kinds/all names the check kinds/every-one, which the set has already"},
		{"unknown figure", "state", "rise: {value: 8 in", "rice: {value: 8 in", `asks for no figure "rice"; did you mean rise?`},
		{"value without status", "state", "{value: 8 in, status: published, source: act}", "{value: 8 in}", "state/set.yaml:13:13: "},
		{"unit", "state", "{value: 8 in,", `{value: "8",`, `state/set.yaml:13:21: figure "rise": `},
		{"source below hidden or unknown", "state", "source: act}\n      spare", "source: axt}\n      spare", `there is no source "axt"; did you mean act?`},
		{"nothing to change", "state", "spare: {value: 2 in, status: recalled, clause: A1.9}", "spare: {clause: A1.9}", `state/set.yaml:14:7: the set below gives no figure "spare" to change`},
		{"cells of a length", "state", "      spans:\n", "      part:\n", `state/set.yaml:16:9: figure "part" is a ratio, and has no cells`},
		{"no such row", "state", "[pines, 12 in, 50 psf]", "[pines, 13 in, 50 psf]", "state/set.yaml:17:26: the table has no spacing 13 in; it has 12 in, 24 in"},
		{"no such word", "state", "[pines, 12 in, 50 psf]", "[oaks, 12 in, 50 psf]", "state/set.yaml:17:19: the table has no group oaks; it has pines, firs"},
		{"key without unit", "state", "[pines, 12 in, 50 psf]", `[pines, "12", 50 psf]`, `state/set.yaml:17:26: key "spacing": `},
		{"path too short", "state", "[pines, 12 in, 50 psf]", "[pines, 12 in]", "state/set.yaml:17:18: the cell is named by 2 values, the table has the keys group, spacing, load"},
		{"cell twice", "state", "[firs, 2 ft, 40 psf]", "[pines, 1 ft, 50 psf]", "state/set.yaml:18:18: the cell pines, 12 in, 50 psf is changed twice"},
		{"cell without unit", "state", "value: 9 ft 6 in", `value: "9"`, "state/set.yaml:17:49: "},
		{"cells beside a value", "town", "spans: {cells", "spans: {value: 3 ft, status: recalled, cells", "town/set.yaml:15:15: "},
		{"off without reason", "state", ", reason: the section is deleted", "", "state/set.yaml:19:17: "},
		{"off with figures", "state", "{off: true, ", "{off: true, figures: {few: {value: 3, status: recalled}}, ", "state/set.yaml:19:"},
		{"reason without off", "state", "{off: true, ", "{off: false, ", "state/set.yaml:19:"},
		{"changes nothing", "state", "{off: true, clause: A2, reason: the section is deleted}", "{clause: A2}", "state/set.yaml:19:17: "},
		{"off is not undone", "town", "    off: false\n", "", "town/set.yaml:16:3: check kinds/reader was taken out by State of Trial, A2: the section is deleted; write off: false to have it again"},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			if !strings.Contains(state, tt.old) && !strings.Contains(town, tt.old) {
				t.Fatalf("no set has %q to change", tt.old)
			}
			_, err := library(t, tt.old, tt.new).ByName(tt.set)
			if err == nil {
				t.Fatal("loaded")
			}
			if !strings.Contains(err.Error(), tt.want) {
				t.Errorf("error\n%v\ndoes not say\n%s", err, tt.want)
			}
		})
	}
}

// TestOverlayOnDisk extends a file beside it by its path, a set of the program
// by its id, and sees a ring through two names of one file.
func TestOverlayOnDisk(t *testing.T) {
	dir := t.TempDir()
	write := func(name, text string) string {
		file := filepath.Join(dir, name)
		if err := os.MkdirAll(filepath.Dir(file), 0o755); err != nil {
			t.Fatal(err)
		}
		if err := os.WriteFile(file, []byte(text), 0o644); err != nil {
			t.Fatal(err)
		}
		return file
	}
	write("state/set.yaml", state)
	file := write("towns/town.yaml", strings.Replace(town, "extends: state", "extends: ../state", 1))
	s := byName(t, ruleset.NewLibrary(files(set, table), checks(t)), file)
	if got := s.Check("kinds/every-one").Figure("rise").Text; got != "8-1/4 in" || s.Extends != "state" {
		t.Errorf("rise %s, extends %s", got, s.Extends)
	}
	if err := os.Symlink(filepath.Join(dir, "towns"), filepath.Join(dir, "villages")); err != nil {
		t.Skip("no symbolic links here:", err)
	}
	write("state/set.yaml", strings.Replace(state, "extends: trial", "extends: ../villages/town.yaml", 1))
	if _, err := ruleset.NewLibrary(files(set, table), checks(t)).ByName(file); err == nil || !strings.Contains(err.Error(), "the set extends itself") {
		t.Errorf("a ring through a symbolic link gives %v", err)
	}
}
