package ruleset_test

import (
	"encoding/json"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"testing/fstest"

	"github.com/google/go-cmp/cmp"

	"plumbrule/checker/catalog"
	"plumbrule/checker/measure"
	"plumbrule/checker/result"
	"plumbrule/checker/ruleset"
)

const defaults = `# METADATA
# title: Shapes
# scope: subpackages
# schemas:
#   - input: schema.facts
#   - data.figures: schema.figures
package checks
`

const every = `# METADATA
# title: Every kind
# description: A check that asks for a figure of every kind there is.
# custom:
#   id: kinds/every-one
#   aliases: [kinds/all]
#   consequence: workmanship
#   why: So that every kind is read once.
#   applies_when: anything is shown
#   figures:
#     rise: {type: length, relation: at most, about: a length}
#     load: {type: pressure, relation: at most, about: a pressure}
#     pull: {type: force, relation: at least, about: a force}
#     pitch: {type: angle, relation: at most, about: an angle}
#     fall: {type: slope, relation: at most, about: a slope}
#     part: {type: ratio, unit: of the span, relation: at most, about: a ratio}
#     many: {type: count, unit: [step, steps], relation: at least, about: a count}
#     lit: {type: flag, about: a flag}
#     word: {type: words, about: a word}
#     words: {type: list, about: some words}
#     groups: {type: groups, about: words by name}
#     steps: {type: steps, about: loads to read}
#     spans: {type: table, relation: at most, about: spans, value: length, keys: [group, spacing, load]}
#     spare: {type: length, relation: at most, about: a spare, optional: true}
#   messages: {outside: "too much"}
package checks.kinds.every_one

import data.figures.kinds.every_one as figures

applies if figures.lit

readings contains {"at": [""], "figure": "rise", "outside": false} if figures.lit
`

const reader = `# METADATA
# title: Reads another
# description: A check that reads the figures of another.
# custom:
#   id: kinds/reader
#   consequence: workmanship
#   why: So that reading others is tested.
#   applies_when: anything is shown
#   reads: [kinds/every-one]
#   figures:
#     few: {type: count, unit: [step, steps], relation: at most, about: a count}
#   messages: {outside: "too many"}
package checks.kinds.reader

import data.figures.kinds.every_one

applies if every_one.lit

readings contains {"at": [""], "figure": "few", "outside": false} if every_one.lit
`

const set = `set: trial
title: Trial standard
edition: "2030"
publisher: the trial office
system: metric
scope: figures of every kind
not_covered: [everything else]
sources:
  sheet: Trial sheet 1
checks:
  kinds/all:
    clause: T1
    note: of the check
    figures:
      rise: {value: 7-3/4 in, status: published, source: sheet}
      load: {value: 40 psf, status: recalled, note: of the figure}
      pull: {value: 200 lb, status: common practice}
      pitch: {value: 42 deg, status: recalled}
      fall: {value: 1 in 48, status: recalled}
      part: {value: 2/8, status: recalled, clause: T1.2}
      many: {value: 4, status: recalled}
      lit: {value: true, status: recalled}
      word: {value: flat board, status: recalled}
      words: {value: [rail, ledge], status: recalled}
      groups: {value: {pines: [southern pine], firs: [douglas fir, hem-fir]}, status: recalled}
      steps: {value: [{upto: 50 psf, read: 50 psf}, {upto: 60 psf, read: 70 psf}], status: recalled}
      spans: {table: spans}
  kinds/reader:
    clause: T2
    figures:
      few: {value: 9, status: recalled}
`

const table = `table: spans
title: Table of spans
clause: Table T1
value: length
note: of the table
keys:
  - {name: group, type: words}
  - {name: spacing, type: length}
  - {name: load, type: pressure}
columns: [40 psf, 50 psf]
status: {40 psf: {status: published, source: sheet}, 50 psf: {status: recalled}}
rows:
  - {at: [pines, 24 in], cells: [8 ft, not permitted]}
  - {at: [pines, 12 in], cells: [11 ft, {value: 10 ft, status: common practice, note: of the cell}]}
  - {at: [firs, 12 in], cells: [10 ft, 9 ft]}
  - {at: [firs, 2 ft], cells: [7 ft, 6 ft]}
`

func checks(t testing.TB) *catalog.Catalog {
	t.Helper()
	c, err := catalog.Load(fstest.MapFS{
		"checks/defaults.rego":                  {Data: []byte(defaults)},
		"checks/kinds/every_one/every_one.rego": {Data: []byte(every)},
		"checks/kinds/reader/reader.rego":       {Data: []byte(reader)},
	})
	if err != nil {
		t.Fatal(err)
	}
	return c
}

func files(set, table string) fstest.MapFS {
	return fstest.MapFS{"trial/set.yaml": {Data: []byte(set)}, "trial/tables/spans.yaml": {Data: []byte(table)}}
}

func load(t testing.TB) *ruleset.Set {
	t.Helper()
	s, err := ruleset.NewLibrary(files(set, table), checks(t)).ByName("trial")
	if err != nil {
		t.Fatal(err)
	}
	return s
}

func TestFiguresBecomeWholeNumbers(t *testing.T) {
	const in = int64(25_400_000)
	want := map[string]any{
		"rise": 31 * in / 4, "load": int64(1_915_210_359), "pull": int64(889_644_323), "pitch": int64(42_000_000),
		"fall": map[string]any{"rise": int64(1), "run": int64(48)}, "part": map[string]any{"rise": int64(1), "run": int64(4)},
		"many": int64(4), "lit": true, "word": "flat board", "words": []any{"rail", "ledge"},
		"groups": map[string]any{"pines": []any{"southern pine"}, "firs": []any{"douglas fir", "hem-fir"}},
		"steps": []any{
			map[string]any{"upto": int64(2_394_012_949), "read": int64(2_394_012_949)},
			map[string]any{"upto": int64(2_872_815_539), "read": int64(3_351_618_129)},
		},
		"spans": map[string]any{
			"breaks": map[string]any{"spacing": []any{12 * in, 24 * in}, "load": []any{int64(1_915_210_359), int64(2_394_012_949)}},
			"cells": map[string]any{
				"pines": []any{[]any{132 * in, 120 * in}, []any{96 * in, nil}},
				"firs":  []any{[]any{120 * in, 108 * in}, []any{84 * in, 72 * in}},
			},
		},
	}
	have := load(t).Data()["kinds"].(map[string]any)["every_one"]
	if diff := cmp.Diff(want, have); diff != "" {
		t.Error(diff)
	}
}

func TestSetKeepsWhatReportsNeed(t *testing.T) {
	s := load(t)
	if s.ID != "trial" || s.Edition != "2030" || s.System != measure.Metric || s.File != "trial/set.yaml" {
		t.Errorf("head %+v", s)
	}
	check := s.Check("kinds/every-one")
	if check == nil {
		t.Fatal("the check named by its alias is not found by its id")
	}
	if check.Clause != "T1" || check.Note != "of the check" {
		t.Errorf("check %q %q", check.Clause, check.Note)
	}
	rise, part, spans := check.Figure("rise"), check.Figure("part"), check.Figure("spans")
	if rise.Text != "7-3/4 in" || rise.Status != ruleset.Published || rise.Source != "Trial sheet 1" || rise.Clause != "T1" {
		t.Errorf("rise %+v", rise)
	}
	if part.Clause != "T1.2" || part.Source != "" {
		t.Errorf("part %+v", part)
	}
	if spans.Clause != "Table T1" || spans.Status != ruleset.Recalled || spans.Text != "Table of spans" || spans.Note != "of the table" {
		t.Errorf("spans %+v", spans)
	}
	if check.Figure("spare") != nil {
		t.Error("an optional figure that the set leaves out is there")
	}
	// 12 figures of the first check but one recalled or common, 8 cells, and 1 of the second check.
	want := result.FigureCounts{Published: 1 + 4, CommonPractice: 1 + 1, Recalled: 10 + 3 + 1}
	if got := s.Summary().Figures; got != want {
		t.Errorf("counts %+v, want %+v", got, want)
	}
}

func TestTableCell(t *testing.T) {
	spans := load(t).Check("kinds/every-one").Figure("spans").Table
	cell, err := spans.Cell([]any{"pines", json.Number("0"), json.Number("1")})
	if err != nil {
		t.Fatal(err)
	}
	if *cell.Value != 120*25_400_000 || cell.Text != "10 ft" || cell.Status != ruleset.CommonPractice || cell.Note != "of the cell" || cell.Row != "pines, 12 in, 50 psf" {
		t.Errorf("cell %+v", cell)
	}
	if cell, err = spans.Cell([]any{"pines", json.Number("1"), json.Number("1")}); err != nil || cell.Value != nil || cell.Text != "not permitted" {
		t.Errorf("cell %+v, %v", cell, err)
	}
	if cell, err = spans.Cell([]any{"firs", json.Number("1"), json.Number("0")}); err != nil || cell.Source != "Trial sheet 1" || cell.Row != "firs, 24 in, 40 psf" {
		t.Errorf("cell %+v, %v", cell, err)
	}
	for _, path := range [][]any{nil, {"oaks", json.Number("0"), json.Number("0")}, {"pines", json.Number("2"), json.Number("0")},
		{"pines", json.Number("-1"), json.Number("0")}, {json.Number("0"), json.Number("0"), json.Number("0")}, {"pines", "12 in", json.Number("0")}} {
		if _, err := spans.Cell(path); err == nil {
			t.Errorf("path %v leads somewhere", path)
		}
	}
}

// TestSetRefused changes one thing at a time in a set that loads.
func TestSetRefused(t *testing.T) {
	tests := []struct{ name, old, new, want string }{
		{"unknown check", "kinds/reader:", "kinds/raeder:", `trial/set.yaml:28:3: there is no check "kinds/raeder"; did you mean kinds/reader?`},
		{"check twice", "kinds/reader:", "kinds/every-one:", "trial/set.yaml:28:3: kinds/every-one names the check kinds/every-one, which the set has already"},
		{"unknown figure", "rise: {", "rice: {", `trial/set.yaml:15:7: check kinds/every-one asks for no figure "rice"; did you mean rise?`},
		{"missing figure", "      few: {value: 9, status: recalled}\n", "      {}\n", `trial/set.yaml:28:3: check kinds/reader needs the figure "few": a count`},
		{"unit", "7-3/4 in", `"7.75"`, `trial/set.yaml:15:21: figure "rise": `},
		{"number for a length", "value: 7-3/4 in", "value: 8", `trial/set.yaml:15:21: figure "rise": a length is written as text with its unit: 8 in, 8 ft or 203.2 mm`},
		{"negative", "7-3/4 in", "-1 in", "a figure cannot be negative"},
		{"length for a pressure", "40 psf", "40 in", `figure "load": `},
		{"text for a count", "value: 4,", `value: "4",`, `figure "many": a count is a whole number`},
		{"fraction for a count", "value: 4,", `value: 4.5,`, `figure "many": a count is a whole number`},
		{"text for a flag", "value: true", `value: "true"`, `figure "lit": a flag is true or false`},
		{"ratio", "2/8", "2:8", `"2:8" is not a ratio`},
		{"ratio over zero", "2/8", "2/0", `"2/0" is not a ratio`},
		{"slope", "1 in 48", "48", `figure "fall": `},
		{"list", "[rail, ledge]", "rail", `figure "words": a list holds`},
		{"list of numbers", "[rail, ledge]", "[rail, 2]", `trial/set.yaml:24:29: figure "words": a list holds texts`},
		{"groups", "{pines: [southern pine]", "{pines: southern pine", `trial/set.yaml:25:31: figure "groups": a list holds`},
		{"steps fall", "upto: 60 psf", "upto: 50 psf", `trial/set.yaml:26:60: figure "steps": steps must rise, 50 psf does not`},
		{"steps miss a key", "{upto: 60 psf, read: 70 psf}", "{upto: 60 psf}", "a step has the keys upto and read"},
		{"published without source", "published, source: sheet", "published", "trial/set.yaml:15:13: a published figure names the source"},
		{"recalled with source", "{value: 9, status: recalled}", "{value: 9, status: recalled, source: sheet}", "trial/set.yaml:31:41: only a published figure has a source, this one is recalled"},
		{"unknown source", "source: sheet}\n      load", "source: shet}\n      load", `there is no source "shet"; did you mean sheet?`},
		{"value for a table", "{table: spans}", "{value: 3 ft, status: recalled}", `figure "spans" is a table`},
		{"table for a value", "{value: 9, status: recalled}", "{table: spans}", `trial/set.yaml:31:13: figure "few" is a count, not a table`},
		{"no such table", "{table: spans}", "{table: spam}", `trial/set.yaml:27:22: table "spam": `},
		{"table with status", "{table: spans}", "{table: spans, status: recalled}", "trial/set.yaml:27:"},
		{"unknown status", "status: common practice", "status: guessed", "trial/set.yaml:17:"},
		{"unknown key", "clause: T2", "clauses: T2", "trial/set.yaml:29:5: "},
		{"name", "set: trial", "set: tribal", `trial/set.yaml: the set calls itself "tribal"`},
		{"missing neighbour", set[strings.Index(set, "  kinds/all"):strings.Index(set, "  kinds/reader")], "", "trial/set.yaml:11:3: check kinds/reader reads the figures of kinds/every-one"},
		{"syntax", "clause: T2", "clause: [T2", "trial/set.yaml:"},
		{"a later version's key", "edition:", "inherits: irc-2021\nedition:", "trial/set.yaml:3:1: "},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			if !strings.Contains(set, tt.old) {
				t.Fatalf("the set has no %q to change", tt.old)
			}
			refused(t, files(strings.Replace(set, tt.old, tt.new, 1), table), tt.want)
		})
	}
}

func TestTableRefused(t *testing.T) {
	tests := []struct{ name, old, new, want string }{
		{"hole", "  - {at: [firs, 2 ft], cells: [7 ft, 6 ft]}\n", "", "trial/tables/spans.yaml:12:1: the table has a hole: no row firs, 24 in"},
		{"row twice", "[firs, 2 ft]", "[pines, 2 ft]", "trial/tables/spans.yaml:16:10: the row stands in line 13 already"},
		{"row too short", "[firs, 2 ft]", "[firs]", "trial/tables/spans.yaml:16:10: the row has 1 key values"},
		{"cell missing", "[7 ft, 6 ft]", "[7 ft]", "trial/tables/spans.yaml:16:31: the row has 1 cells, the table 2 columns"},
		{"cell without unit", "[7 ft, 6 ft]", `[7 ft, "6"]`, "trial/tables/spans.yaml:16:38: "},
		{"cell words", "not permitted", "none", `a cell that allows nothing says "not permitted"`},
		{"key without unit", "[firs, 2 ft]", `[firs, "2"]`, `trial/tables/spans.yaml:16:17: key "spacing": `},
		{"number for a word", "[firs, 2 ft]", "[3, 2 ft]", `trial/tables/spans.yaml:16:11: key "group" is a word`},
		{"columns fall", "[40 psf, 50 psf]", "[50 psf, 40 psf]", "trial/tables/spans.yaml:10:19: columns must rise, 40 psf does not"},
		{"column twice", "[40 psf, 50 psf]", "[40 psf, 40 psf]", "column 40 psf stands here twice"},
		{"column without status", ", 50 psf: {status: recalled}}", "}", "trial/tables/spans.yaml:11:9: column 50 psf has no status"},
		{"status of no column", "50 psf: {status", "55 psf: {status", `there is no column "55 psf"; did you mean 50 psf?`},
		{"published without source", "published, source: sheet", "published", "trial/tables/spans.yaml:11:18: a published figure names the source"},
		{"other name", "table: spans", "table: span", `trial/tables/spans.yaml:1:8: the table is called "span", its file "spans"`},
		{"other keys", "name: group", "name: species", "trial/tables/spans.yaml:7:3: the check asks for the keys group, spacing, load in this order"},
		{"a count of nothing", "{name: spacing, type: length}", "{name: spacing, type: count}", `lacks the key "unit"`},
		{"other cells", "value: length", "value: count", "trial/tables/spans.yaml:4:8: the check asks for cells of type length"},
		{"unknown key", "note: of the table", "notes: of the table", "trial/tables/spans.yaml:5:1: "},
		{"syntax", "columns: [", "columns: ]", `trial/set.yaml:27:22: table "spans": trial/tables/spans.yaml:10:`},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			if !strings.Contains(table, tt.old) {
				t.Fatalf("the table has no %q to change", tt.old)
			}
			refused(t, files(set, strings.Replace(table, tt.old, tt.new, 1)), tt.want)
		})
	}
}

func refused(t *testing.T, files fstest.MapFS, want string) {
	t.Helper()
	_, err := ruleset.NewLibrary(files, checks(t)).ByName("trial")
	if err == nil {
		t.Fatal("loaded")
	}
	if !strings.Contains(err.Error(), want) {
		t.Errorf("error\n%v\ndoes not say\n%s", err, want)
	}
}

func TestOneStatusForAllColumns(t *testing.T) {
	all := strings.Replace(table, "{40 psf: {status: published, source: sheet}, 50 psf: {status: recalled}}", "{status: recalled}", 1)
	s, err := ruleset.NewLibrary(files(set, all), checks(t)).ByName("trial")
	if err != nil {
		t.Fatal(err)
	}
	cell, err := s.Check("kinds/every-one").Figure("spans").Table.Cell([]any{"firs", json.Number("0"), json.Number("0")})
	if err != nil || cell.Status != ruleset.Recalled || cell.Source != "" {
		t.Errorf("cell %+v, %v", cell, err)
	}
}

func TestByName(t *testing.T) {
	library := ruleset.NewLibrary(files(set, table), checks(t))
	ids, err := library.IDs()
	if err != nil || len(ids) != 1 || ids[0] != "trial" {
		t.Errorf("ids %v, %v", ids, err)
	}
	if _, err := library.ByName("trail"); err == nil || !strings.Contains(err.Error(), `there is no rule set "trail"; did you mean trial? A file of your own is named by its path, as ./trail.yaml`) {
		t.Errorf("error %v", err)
	}
	dir := t.TempDir()
	if err := os.MkdirAll(filepath.Join(dir, "town", "tables"), 0o755); err != nil {
		t.Fatal(err)
	}
	town := filepath.Join(dir, "town", "town.yaml")
	for name, text := range map[string]string{town: set, filepath.Join(dir, "town", "set.yaml"): set, filepath.Join(dir, "town", "tables", "spans.yaml"): table} {
		if err := os.WriteFile(name, []byte(text), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	for _, name := range []string{town, filepath.Join(dir, "town")} {
		if s, err := library.ByName(name); err != nil || s.ID != "trial" {
			t.Errorf("%s: %v", name, err)
		}
	}
	if _, err := library.ByName(filepath.Join(dir, "none.yaml")); err == nil || !strings.Contains(err.Error(), "none.yaml") {
		t.Errorf("a file that is not there gives %v", err)
	}
	for _, name := range []string{"", "..", "."} {
		if _, err := library.ByName(name); err == nil {
			t.Errorf("the name %q loads", name)
		}
	}
}

func BenchmarkLoad(b *testing.B) {
	library := ruleset.NewLibrary(files(set, table), checks(b))
	for b.Loop() {
		if _, err := library.ByName("trial"); err != nil {
			b.Fatal(err)
		}
	}
}
