package authoring_test

import (
	"context"
	"flag"
	"fmt"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"
	"time"

	"plumbrule/checker"
	"plumbrule/checker/authoring"
	"plumbrule/checker/sandbox"
)

// TestMain lets this very binary be the process in which sets run what they
// bring.
func TestMain(m *testing.M) {
	if len(os.Args) > 1 && os.Args[1] == "confined" {
		if err := serve(os.Args[2:]); err != nil {
			fmt.Fprintln(os.Stderr, err)
			os.Exit(3)
		}
		os.Exit(0)
	}
	os.Exit(m.Run())
}

func serve(args []string) error {
	var limits sandbox.Limits
	flags := flag.NewFlagSet("confined", flag.ContinueOnError)
	flags.DurationVar(&limits.Time, "time", 0, "")
	flags.Int64Var(&limits.Memory, "memory", 0, "")
	flags.Int64Var(&limits.Question, "question", 0, "")
	if err := flags.Parse(args); err != nil {
		return err
	}
	if err := sandbox.Confine(limits); err != nil {
		return err
	}
	return checker.ServeForeign(context.Background(), os.Stdin, os.Stdout)
}

func box() *sandbox.Sandbox {
	limits := sandbox.Default()
	limits.Time = time.Minute // a slow machine is no failure here
	return &sandbox.Sandbox{Command: []string{os.Args[0], "confined"}, Limits: limits}
}

// start makes the set that Start writes, called office.
func start(t *testing.T) string {
	t.Helper()
	dir := filepath.Join(t.TempDir(), "Office")
	if _, err := authoring.Start(dir); err != nil {
		t.Fatal(err)
	}
	return dir
}

// change replaces text in a file of a set.
func change(t *testing.T, dir, file, old, fresh string) {
	t.Helper()
	name := filepath.Join(dir, filepath.FromSlash(file))
	text, err := os.ReadFile(name)
	if err != nil {
		t.Fatal(err)
	}
	if !strings.Contains(string(text), old) {
		t.Fatalf("%s has no %q", file, old)
	}
	if err := os.WriteFile(name, []byte(strings.Replace(string(text), old, fresh, 1)), 0o644); err != nil {
		t.Fatal(err)
	}
}

func TestStartedSetIsSound(t *testing.T) {
	trial, err := authoring.Try(t.Context(), start(t), box())
	if err != nil {
		t.Fatal(err)
	}
	if len(trial.Problems) > 0 {
		t.Errorf("it has problems: %s", strings.Join(trial.Problems, "\n"))
	}
	if trial.Set.ID != "office" || !slices.Equal(trial.Own, []string{"office/stair-width"}) ||
		trial.Tests != 5 || trial.Fixtures != 6 || trial.Lines < 20 || trial.Unreached != 0 || trial.Summary().CommonPractice != 4 {
		t.Errorf("trial %+v", trial)
	}
}

func TestStart(t *testing.T) {
	dir := start(t)
	if _, err := authoring.Start(dir); err == nil || !strings.Contains(err.Error(), "is not empty") {
		t.Errorf("over another set: %v", err)
	}
	if _, err := authoring.Start(filepath.Join(t.TempDir(), "...")); err == nil || !strings.Contains(err.Error(), "gives no name") {
		t.Errorf("without a name: %v", err)
	}
	taken := filepath.Join(t.TempDir(), "stairs")
	if _, err := authoring.Start(taken); err != nil {
		t.Fatal(err)
	}
	if _, err := os.Stat(filepath.Join(taken, "checks", "mystairs", "stair_width", "stair_width.rego")); err != nil {
		t.Errorf("a set called like a topic of the program: %v", err)
	}
}

const (
	check   = "checks/office/stair_width/stair_width.rego"
	test    = "checks/office/stair_width/stair_width_test.rego"
	fixture = "fixtures/office/stair-width/"
)

// TestTryFinds spoils the set in one way and expects the place to be named.
func TestTryFinds(t *testing.T) {
	for _, tt := range []struct{ name, file, old, fresh, want string }{
		{"test that fails", test, `"row": 1, "limit": 1066800000, "outside": true`, `"row": 1, "limit": 1066800000, "outside": false`, test + ":24: test_limit: it fails for high stair, under it"},
		{"line without a test", test, "test_rise_not_shown if", "_rise_not_shown if", check + ":50: no test reaches this line"},
		{"skipped test", test, "test_no_stair if", "todo_test_no_stair if", "it is skipped"},
		{"check that is no Rego", check, "applies if count(input.stairs) > 0", "applies if {", check + ":24"},
		{"misspelt fact", check, "not stair.width", "not stair.wdth", "there is no wdth, the nearest is width"},
		{"misspelt fact in a test", test, "check.applies with input.stairs as [_stair(1, 1)]", "input.stirs", "there is no stirs, the nearest is stairs"},
		{"clock", check, "applies if count(input.stairs) > 0", "applies if time.now_ns() > 0", "undefined function time.now_ns"},
		{"check without end", check, "applies if count(input.stairs) > 0",
			"applies if {\n\tcount(input.stairs) > 0\n\tcount([1 | some a in numbers.range(1, 9999); some b in numbers.range(1, 9999); a + b < 0]) == 0\n}", "it took too long"},
		{"fixture outside that is within", fixture + "outside.deck.yaml", "width: 41 in", "width: 42 in", fixture + "outside.deck.yaml: office/stair-width says within, the name says outside"},
		{"fixture that is no design", fixture + "within.deck.yaml", "deck: 1", "deck: 2", fixture + "within.deck.yaml:1:7: "},
		{"check without figures", "set.yaml", "  office/stair-width:\n    clause: house rule 2\n    figures:\n      widths: {table: stair-widths}\n", "", "gives no figures for the check office/stair-width"},
	} {
		t.Run(tt.name, func(t *testing.T) {
			dir := start(t)
			change(t, dir, tt.file, tt.old, tt.fresh)
			if !strings.HasPrefix(tt.file, fixture) { // which take their time
				if err := os.RemoveAll(filepath.Join(dir, "fixtures")); err != nil {
					t.Fatal(err)
				}
			}
			within := box()
			if strings.Contains(tt.name, "without end") {
				within.Limits.Time = 2 * time.Second
			}
			trial, err := authoring.Try(t.Context(), dir, within)
			if err != nil {
				t.Fatal(err)
			}
			if problems := strings.Join(trial.Problems, "\n"); !strings.Contains(problems, tt.want) {
				t.Errorf("problems\n%s\ndo not say\n%s", problems, tt.want)
			}
		})
	}
}

// TestTryRefuses spoils what is read before anything runs.
func TestTryRefuses(t *testing.T) {
	for _, tt := range []struct{ name, file, old, fresh, want string }{
		{"figure", "set.yaml", "7-1/2 in", "7-1/2", "set.yaml:21:20: "},
		{"words that nothing says", "set.yaml", "# words: {building department: council, ", "words: {gutter: eaves, ", "set.yaml:14:9: no check of the set says \"gutter\""},
		{"check unknown", "set.yaml", "office/stair-width", "office/stair-widht", "did you mean office/stair-width?"},
		{"table", "tables/stair-widths.yaml", "cells: [36 in, 42 in, 48 in]", "cells: [36 in, 42 in]", "tables/stair-widths.yaml:"},
		{"metadata", check, "consequence: workmanship", "consequence: none", "stair_width.rego:6:18: "},
		{"topic of the program", check, "id: office/stair-width", "id: stairs/stair-width", `lies in the topic "stairs" of the program`},
	} {
		t.Run(tt.name, func(t *testing.T) {
			dir := start(t)
			change(t, dir, tt.file, tt.old, tt.fresh)
			if _, err := authoring.Try(t.Context(), dir, box()); err == nil || !strings.Contains(err.Error(), tt.want) {
				t.Errorf("got %v, want %s", err, tt.want)
			}
		})
	}
}

// TestWordsOfTheScaffold takes the mark of a comment off the words of a new set.
func TestWordsOfTheScaffold(t *testing.T) {
	dir := start(t)
	change(t, dir, "set.yaml", "# words: {", "words: {")
	if err := os.RemoveAll(filepath.Join(dir, "fixtures")); err != nil {
		t.Fatal(err)
	}
	trial, err := authoring.Try(t.Context(), dir, box())
	if err != nil {
		t.Fatal(err)
	}
	if len(trial.Set.Words) != 2 || trial.Set.Wording().Say("a guard by the building department") != "a balustrade by the council" {
		t.Errorf("words %+v", trial.Set.Words)
	}
}

func TestTryFixtureNames(t *testing.T) {
	dir := start(t)
	from := filepath.Join(dir, "fixtures", "office", "stair-width")
	for old, fresh := range map[string]string{"within.deck.yaml": "inside.deck.yaml", "outside.deck.yaml": "outside-by-an-inch.deck.yaml"} {
		if err := os.Rename(filepath.Join(from, old), filepath.Join(from, fresh)); err != nil {
			t.Fatal(err)
		}
	}
	if err := os.Rename(filepath.Join(dir, "fixtures", "stairs", "riser-height"), filepath.Join(dir, "fixtures", "stairs", "riser-hight")); err != nil {
		t.Fatal(err)
	}
	trial, err := authoring.Try(t.Context(), dir, box())
	if err != nil {
		t.Fatal(err)
	}
	want := []string{
		fixture + "inside.deck.yaml: the name of a fixture begins with within, outside, not-shown or does-not-apply",
		"fixtures/stairs/riser-hight/outside.deck.yaml: the set has no check stairs/riser-hight; did you mean stairs/riser-height?",
		"fixtures/stairs/riser-hight/within.deck.yaml: the set has no check stairs/riser-hight; did you mean stairs/riser-height?",
	}
	if !slices.Equal(trial.Problems, want) {
		t.Errorf("problems\n%s\nwant\n%s", strings.Join(trial.Problems, "\n"), strings.Join(want, "\n"))
	}
}
