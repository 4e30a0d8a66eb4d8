package checker_test

import (
	"context"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"plumbrule/checker"
	"plumbrule/checker/result"
)

const steepDeck = "deck: 1\nstairs:\n  - {mark: ST1, total_rise: 24 in, risers: 3}\n"

const leave = `waivers:
  - {check: stairs/riser-height, design: "*.deck.yaml", place: ST1, sets: [irc-2021], by: the office, until: 2026-12-31, reason: it was there}
`

func waiving(t *testing.T, sets ...string) *checker.Checker {
	t.Helper()
	c, err := checker.New(checker.Options{
		Sets: sets, Today: "2026-12-31",
		Waivers: []checker.WaiverFile{{Name: "leave.yaml", Dir: "/jobs", Data: []byte(leave)}},
	})
	if err != nil {
		t.Fatal(err)
	}
	return c
}

func riser(d *result.Design) string {
	for _, r := range d.Findings {
		if r.Check == "stairs/riser-height" {
			return string(r.Outcome)
		}
	}
	return ""
}

// TestWaiversCountBeforeTheDisposition checks one design that a waiver covers
// and two that it does not: one elsewhere, one for which the list is not.
func TestWaiversCountBeforeTheDisposition(t *testing.T) {
	in := func(path string, waivers []string) checker.Input {
		return checker.Input{Name: filepath.Base(path), Path: path, Data: []byte(steepDeck), Waivers: waivers}
	}
	report := waiving(t, "irc-2021").Check(context.Background(),
		in("/jobs/heron.deck.yaml", nil), in("/more/heron.deck.yaml", nil), in("/jobs/egret.deck.yaml", []string{}))
	if len(report.Designs) != 3 {
		t.Fatalf("%d entries, the last about %s", len(report.Designs), report.Designs[len(report.Designs)-1].File)
	}
	excused, elsewhere, other := &report.Designs[0], &report.Designs[1], &report.Designs[2]
	if riser(excused) != "excused" || excused.Counts.Excused != 1 || excused.Disposition != result.CannotCheck {
		t.Errorf("covered: %s, %+v, %s", riser(excused), excused.Counts, excused.Disposition)
	}
	for _, d := range []*result.Design{elsewhere, other} {
		if riser(d) != "outside" || d.Counts.Excused != 0 || d.Disposition != result.ReviseAndResubmit {
			t.Errorf("not covered: %s, %+v, %s", riser(d), d.Counts, d.Disposition)
		}
	}
}

// TestWaiversAreJudgedOverTheRun has a list that is of use on one of two
// designs, then on none.
func TestWaiversAreJudgedOverTheRun(t *testing.T) {
	low := []byte(strings.Replace(steepDeck, "24 in", "21 in", 1))
	steep := checker.Input{Name: "a.deck.yaml", Path: "/jobs/a.deck.yaml", Data: []byte(steepDeck)}
	fine := checker.Input{Name: "b.deck.yaml", Path: "/jobs/b.deck.yaml", Data: low}
	c := waiving(t, "irc-2021")
	if n := len(c.Check(context.Background(), steep, fine).Designs); n != 2 {
		t.Errorf("a waiver of use is among %d entries", n)
	}
	report := c.Check(context.Background(), fine, fine)
	if len(report.Designs) != 3 {
		t.Fatalf("%d entries", len(report.Designs))
	}
	d := report.Designs[2]
	if d.File != "leave.yaml" || d.Kind != result.KindWaivers || d.Findings[0].Check != "waivers/unused" || !strings.Contains(d.Findings[0].Message, "in the 2 designs") {
		t.Errorf("%+v", d)
	}
	if c.Check(context.Background(), checker.Input{Name: "x", Err: os.ErrNotExist}).Designs[0].Disposition != result.NotReviewed {
		t.Error("a design that cannot be opened is reviewed")
	}
}

func TestWaiversNeedADay(t *testing.T) {
	_, err := checker.New(checker.Options{Waivers: []checker.WaiverFile{{Name: "leave.yaml", Data: []byte(leave)}}})
	if err == nil || !strings.Contains(err.Error(), "nobody said which day it is") {
		t.Errorf("%v", err)
	}
	if _, err := checker.New(checker.Options{Waivers: []checker.WaiverFile{{Name: "leave.yaml", Data: []byte("waivers: [{}]")}}}); err == nil || !strings.Contains(err.Error(), "leave.yaml:1:11: ") {
		t.Errorf("%v", err)
	}
}

// TestSetsOfADesign holds designs against some of the sets of a checker, each
// named by its id or its path, and names in the report those that were used.
func TestSetsOfADesign(t *testing.T) {
	file := filepath.Join(t.TempDir(), "town.yaml")
	town := "set: town\ntitle: Town rules\nedition: \"1\"\npublisher: the office\nextends: irc-2021\nchecks:\n" +
		"  stairs/riser-height: {clause: T1, figures: {max: {value: 8 in, status: common practice}}}\n"
	if err := os.WriteFile(file, []byte(town), 0o600); err != nil {
		t.Fatal(err)
	}
	c, err := checker.New(checker.Options{Sets: []string{"irc-2021", file, "common-practice"}})
	if err != nil {
		t.Fatal(err)
	}
	in := func(sets ...string) checker.Input {
		return checker.Input{Name: "a.deck.yaml", Data: []byte(steepDeck), Sets: sets}
	}
	report := c.Check(context.Background(), in(), in(file), in("common-practice", "irc-2021"), in())
	for i, want := range [][]string{{"irc-2021", "town", "common-practice"}, {"town"}, {"irc-2021", "common-practice"}, {"irc-2021", "town", "common-practice"}} {
		d := &report.Designs[i]
		if !slices.Equal(d.Sets, want) {
			t.Errorf("design %d: sets %v, want %v", i, d.Sets, want)
		}
		for _, r := range append(d.Findings, d.Readings...) {
			if !slices.Contains(want, r.Set) {
				t.Errorf("design %d has a result of %s", i, r.Set)
			}
		}
	}
	if riser(&report.Designs[1]) != "" || riser(&report.Designs[2]) != "outside" {
		t.Error("8 in is outside where the town allows it, or not outside where it does not")
	}
}
