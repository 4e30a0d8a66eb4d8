package pages_test

import (
	"fmt"
	"slices"
	"strings"
	"sync"
	"testing"

	"plumbrule/checker"
	"plumbrule/checker/ruleset"
)

// loadSets loads every set that comes with the program, not through the pages.
var loadSets = sync.OnceValues(func() ([]*ruleset.Set, error) {
	library, err := checker.Library()
	if err != nil {
		return nil, err
	}
	ids, err := library.IDs()
	if err != nil {
		return nil, err
	}
	var all []*ruleset.Set
	for _, id := range ids {
		set, err := library.ByName(id)
		if err != nil {
			return nil, err
		}
		all = append(all, set)
	}
	return all, nil
})

func sets(t *testing.T) []*ruleset.Set {
	t.Helper()
	all, err := loadSets()
	if err != nil {
		t.Fatal(err)
	}
	return all
}

// TestEveryFigureHasItsStatus looks every figure up that a set gives itself, on
// the page of the set and on that of the check.
func TestEveryFigureHasItsStatus(t *testing.T) {
	rows := map[string][]string{} // of tables, by page
	for name, text := range made(t) {
		for line := range strings.SplitSeq(text, "\n") {
			if strings.HasPrefix(line, "|") {
				rows[name] = append(rows[name], line)
			}
		}
	}
	for _, set := range sets(t) {
		for i := range set.Checks {
			c := &set.Checks[i]
			for k := range c.Figures {
				f := &c.Figures[k]
				if f.Set != set.ID || f.Table != nil {
					continue
				}
				status := "| " + string(f.Status)
				if !hasRow(rows["sets/"+set.ID+".md"], "`"+c.ID+"`", "`"+f.Name+"`", status) {
					t.Errorf("the page of %s has no %s of %s as %s", set.ID, f.Name, c.ID, f.Status)
				}
				if !hasRow(rows["checks/"+c.ID+".md"], "`"+set.ID+"`", status) {
					t.Errorf("the page of %s has nothing of %s as %s", c.ID, set.ID, f.Status)
				}
			}
		}
	}
}

func hasRow(rows []string, words ...string) bool {
	return slices.ContainsFunc(rows, func(row string) bool {
		return !slices.ContainsFunc(words, func(word string) bool { return !strings.Contains(row, word) })
	})
}

// TestEveryCellIsMarked counts the marks on the cells of every set against the
// cells that ask for them.
func TestEveryCellIsMarked(t *testing.T) {
	all := made(t)
	for _, set := range sets(t) {
		want, seen := map[ruleset.Status]int{}, map[string]bool{}
		for i := range set.Checks {
			for _, f := range set.Checks[i].Figures {
				if f.Table == nil || f.Set != set.ID || seen[f.Table.Name] {
					continue
				}
				seen[f.Table.Name] = true
				for _, cell := range f.Table.Cells() {
					want[cell.Status]++
				}
			}
		}
		_, tables, _ := strings.Cut(all["sets/"+set.ID+".md"], "\n### Table ")
		have := map[ruleset.Status]int{
			ruleset.Recalled:       strings.Count(tables, " *r* "),
			ruleset.CommonPractice: strings.Count(tables, " *c* "),
		}
		for status, mark := range have {
			if mark != want[status] {
				t.Errorf("%s: %d cells are marked as %s, %d are", set.ID, mark, status, want[status])
			}
		}
	}
}

// TestCellsStandInTheirPlace reads a table back from its page: the cell in a row
// and column is the one that the set has for these keys.
func TestCellsStandInTheirPlace(t *testing.T) {
	page := made(t)["sets/irc-2021.md"]
	_, table, found := strings.Cut(page, "\n### Table joist-spans\n")
	if !found {
		t.Fatal("the page has no table of joist spans")
	}
	table, _, _ = strings.Cut(table, "\n### ")
	cells := map[string]string{}
	var group string
	var head []string
	for line := range strings.SplitSeq(table, "\n") {
		row := strings.Split(strings.Trim(line, "| "), " | ")
		switch {
		case strings.HasPrefix(line, "Group: "):
			group, head = strings.Trim(strings.TrimPrefix(line, "Group: "), "*"), nil
		case !strings.HasPrefix(line, "| "):
		case head == nil:
			head = row
		default:
			for i := 2; i < len(row); i++ {
				text, _, _ := strings.Cut(row[i], " *")
				cells[fmt.Sprintf("%s, %s, %s, %s", group, row[0], row[1], head[i])] = strings.TrimSuffix(text, ` \`)
			}
		}
	}
	for _, set := range sets(t) {
		if set.ID != "irc-2021" {
			continue
		}
		for _, cell := range set.Check("joists/span").Figure("spans").Table.Cells() {
			if cells[cell.Row] != cell.Text {
				t.Errorf("%s: the page has %q, the set %q", cell.Row, cells[cell.Row], cell.Text)
			}
		}
	}
	if len(cells) < 100 {
		t.Errorf("only %d cells read back", len(cells))
	}
}
