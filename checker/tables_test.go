package checker_test

import (
	"context"
	"maps"
	"slices"
	"sync"
	"testing"

	"plumbrule/checker"
	"plumbrule/checker/catalog"
	"plumbrule/checker/engine"
	"plumbrule/checker/measure"
	"plumbrule/checker/result"
	"plumbrule/checker/ruleset"
	"plumbrule/checker/ruleset/rulesettest"
)

const (
	secondReading = "ruleset/testdata/us-cells.csv"
	readOnce      = "ruleset/testdata/read-once.csv"

	sixteenth      = measure.Inch / 16
	halfMillimetre = measure.Millimetre / 2 // less than any unit by which figures are changed
)

// tabledSets are the sets whose tables have other readings to be held against.
var tabledSets = []string{"australia-ncc-2022", "ca-nb-southwest", "ca-ns-halifax", "dca6-2012", "irc-2018", "irc-2021", "irc-2024", "new-zealand", "wisconsin-decks"}

// readings gives what the second reading and the list of cells read once say of
// the cells of a set. Where a set knowingly differs, its own value is taken.
func readings(t *testing.T, set *ruleset.Set) map[string][]expectedCell {
	t.Helper()
	read, ok := readCells.Load(set)
	if !ok {
		read, _ = readCells.LoadOrStore(set, readAgain(t, set))
	}
	return maps.Clone(read.(map[string][]expectedCell))
}

// readCells keeps what was read for each set.
var readCells sync.Map

func readAgain(t *testing.T, set *ruleset.Set) map[string][]expectedCell {
	t.Helper()
	lines, err := rulesettest.Read(secondReading)
	if err != nil {
		t.Fatal(err)
	}
	all, err := rulesettest.ReadOnce(readOnce)
	if err != nil {
		t.Fatal(err)
	}
	for _, line := range lines {
		cells, err := line.Expected()
		if err != nil {
			t.Fatal(err)
		}
		all = append(all, cells...)
	}
	index, seen := rulesettest.NewIndex(set), map[string]bool{}
	byFigure := map[string][]expectedCell{}
	for _, e := range all {
		if e.Set != set.ID {
			continue
		}
		found, err := index.Find(set, e.Place)
		if err != nil {
			t.Fatal(err)
		}
		for _, f := range found {
			figure := f.Check + " " + f.Figure
			if known, ok := e.Differs(); ok {
				e.Text = known.Held
			}
			want, permitted, err := e.Whole(f.Table.Kind)
			if err != nil {
				t.Fatal(err)
			}
			if place := figure + e.String(); !seen[place] {
				seen[place] = true
				byFigure[figure] = append(byFigure[figure], expectedCell{f, measure.Length(want), permitted, e.Text == rulesettest.NotInTable})
			}
		}
	}
	return byFigure
}

// expectedCell is a cell with the value that another reading gives it.
type expectedCell struct {
	rulesettest.Found
	value     measure.Length
	permitted bool
	unheld    bool // it was not seen, and members in it are left alone
}

// put puts two members on the sheet to which the cell applies: one at the
// value, one half a millimeter past it.
func (e expectedCell) put(s *sheet, relation result.Relation, build subject) {
	k := keysOf(e.Found)
	if e.unheld {
		build(s, k, sixteenth)
		s.expect(false, "%v, which the set does not hold", e.At)
		s.want[len(s.want)-1].unread = true
		return
	}
	if !e.permitted {
		build(s, k, sixteenth)
		s.expect(true, "%v, where nothing is permitted", e.At)
		return
	}
	past := e.value + halfMillimetre
	if relation == result.AtLeast {
		past = e.value - halfMillimetre
	}
	build(s, k, e.value)
	s.expect(false, "%v at %s", e.At, e.value.Text(measure.Imperial))
	build(s, k, past)
	s.expect(true, "%v at %s", e.At, past.Text(measure.Imperial))
}

// TestTablesThroughChecks takes every cell of the other readings through the
// check that reads it: a member at the value is within, one half a millimeter past it is
// outside.
func TestTablesThroughChecks(t *testing.T) {
	for _, id := range tabledSets {
		c, err := checker.New(checker.Options{Sets: []string{id}})
		if err != nil {
			t.Fatal(err)
		}
		set := c.Sets()[0]
		byFigure := readings(t, set)
		tried := 0
		for f := range rulesettest.Cells(set) {
			figure := f.Check + " " + f.Figure
			cells := byFigure[figure]
			delete(byFigure, figure)
			if len(cells) == 0 || figure == "beams/span factors" {
				continue
			}
			build, ok := subjects[figure]
			if !ok {
				t.Errorf("%s: no member is made up for %s", id, figure)
				continue
			}
			var s sheet
			for _, cell := range cells {
				cell.put(&s, relationOf(t, c.Catalog(), f), build)
			}
			tried += len(s.want)
			tryOut(t, c.Catalog(), figuresOf(c.Catalog(), set, f.Check), &s)
		}
		t.Logf("%s: %d members at and past the cells of its tables", id, tried)
	}
}

// tryOut evaluates a sheet under a set and holds every subject against what
// was expected of it.
func tryOut(t *testing.T, checks *catalog.Catalog, set *ruleset.Set, s *sheet) {
	t.Helper()
	e, err := engine.New(engine.Options{Checks: checks, Sets: []*ruleset.Set{set}})
	if err != nil {
		t.Fatal(err)
	}
	results := e.Evaluate(context.Background(), &s.facts, s.document(t), measure.Imperial)
	if i := slices.IndexFunc(results, func(r result.Result) bool { return r.Outcome == result.CouldNotRun }); i >= 0 {
		t.Fatalf("%s %s could not run: %s", set.ID, results[i].Check, results[i].Reason)
	}
	outside, seen := s.outside(results)
	for i, want := range s.want {
		if seen[i] == want.unread || outside[i] != want.outside {
			t.Errorf("%s %s: %s: outside is %t (said: %t), want %t", set.ID, set.Checks[0].ID, want.what, outside[i], seen[i], want.outside)
		}
	}
}
