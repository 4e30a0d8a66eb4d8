package items_test

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"plumbrule/checker/report/items"
	"plumbrule/checker/report/reporttest"
	"plumbrule/checker/result"
)

// outside is a finding on the element of a mark.
func outside(check, at, mark, see string) result.Result {
	return result.Result{
		Check: check, Set: "town", Outcome: result.Outside, Consequence: result.Structure, At: []string{at}, Mark: mark, See: see,
		Message: check + " at " + mark, Fingerprint: check + " " + mark,
	}
}

// missing is a value that the element of a mark does not show.
func missing(check, at, mark, needs string) result.Result {
	r := outside(check, at, mark, "")
	r.Outcome, r.Needs, r.Fingerprint = result.NotShown, needs, r.Fingerprint+" "+needs
	return r
}

func failed(check string, at ...string) result.Result {
	return result.Result{Check: check, Set: "town", Outcome: result.CouldNotRun, At: at, Reason: "it broke", Fingerprint: check}
}

func report(findings ...result.Result) *result.Report {
	return &result.Report{
		Sets:    []result.Set{{ID: "town"}},
		Designs: []result.Design{{File: "a.deck.yaml", Findings: findings}},
	}
}

// next is what the report of a list leaves to the one after it.
func next(file string, list items.List) items.Previous {
	review := items.Review{File: file}
	for r, number := range list.Numbers() {
		found := items.Found{Check: r.Check, Set: r.Set, Fingerprint: r.Fingerprint}
		i := slices.IndexFunc(review.Items, func(e items.Earlier) bool { return e.Number == number })
		if i >= 0 {
			review.Items[i].Found = append(review.Items[i].Found, found)
			continue
		}
		e := items.Earlier{Number: number, Outcome: r.Outcome, Mark: r.Mark, See: r.See, Message: r.Message, Found: []items.Found{found}}
		if len(r.At) > 0 {
			e.At = r.At[0]
		}
		review.Items = append(review.Items, e)
	}
	for _, p := range list.Past {
		review.Items = append(review.Items, p.Earlier)
	}
	return items.Previous{review}
}

// words writes a list as "outside S1: 1 x B1; past: 2 closed".
func words(list items.List) string {
	var lines []string
	line := func(title string, list []items.Item) {
		var parts []string
		for _, item := range list {
			var prints []string
			for _, r := range item.Results {
				prints = append(prints, r.Fingerprint)
			}
			parts = append(parts, fmt.Sprintf("%d %s", item.Number, strings.Join(prints, "+")))
		}
		if len(parts) > 0 {
			lines = append(lines, title+": "+strings.Join(parts, ", "))
		}
	}
	for _, class := range list.Outside {
		for _, sheet := range class.Sheets {
			line(string(class.Consequence)+" "+sheet.Title, sheet.Items)
		}
	}
	for _, sheet := range list.NotShown {
		line("not shown "+sheet.Title, sheet.Items)
	}
	line("could not run", list.CouldNotRun)
	line("excused", list.Excused)
	for _, p := range list.Past {
		state := "closed"
		if !p.Closed {
			state = fmt.Sprintf("open (%s; %d)", p.Reason, p.Now)
		}
		lines = append(lines, fmt.Sprintf("past %d %s", p.Number, state))
	}
	return strings.Join(lines, "\n")
}

func check(t *testing.T, got items.List, want ...string) {
	t.Helper()
	if words(got) != strings.Join(want, "\n") {
		t.Errorf("got\n%s\nwant\n%s", words(got), strings.Join(want, "\n"))
	}
}

func TestFirstNumbers(t *testing.T) {
	workmanship := outside("w", "/w", "W", "S1")
	workmanship.Consequence = result.Workmanship
	other := outside("a", "/a", "A", "S2")
	other.Set, other.Limit = "state", &result.Value{Text: "1"}
	waived := outside("c", "/c", "C", "")
	waived.Outcome = result.Excused
	list := items.Number(report(
		workmanship,
		missing("m", "/a", "A", "x"),
		outside("a", "/a", "A", "S2"),
		failed("f"),
		outside("b", "/b", "B", "S1"),
		missing("n", "/a", "A", "y"),
		missing("o", "/a", "A", "x"),
		waived,
		other,
	), 0, nil)
	check(t, list,
		"structure sheet S1: 1 b B",
		"structure sheet S2: 2 a A+a A", // one check by two sets is one item
		"workmanship sheet S1: 3 w W",
		"not shown no sheet named: 4 m A x+o A x, 5 n A y", // two checks that miss one value, too
		"could not run: 6 f",
		"excused: 7 c C",
	)
	if n := len(list.Numbers()); n != 9 {
		t.Errorf("%d results have numbers, want all 9", n)
	}
}

func TestNumbersAreKept(t *testing.T) {
	first := items.Number(report(outside("a", "/0", "A", ""), outside("b", "/1", "B", ""), outside("c", "/2", "C", "")), 0, nil)
	check(t, first, "structure no sheet named: 1 a A, 2 b B, 3 c C")

	// B is mended; D is new and stands before the others in the file.
	second := items.Number(report(outside("d", "/0", "D", ""), outside("c", "/1", "C", ""), outside("a", "/2", "A", "")), 0, next("a.deck.yaml", first))
	check(t, second, "structure no sheet named: 1 a A, 3 c C, 4 d D", "past 2 closed")

	// The number of a closed item is not given away, and B is found again.
	third := items.Number(report(outside("e", "/3", "E", ""), outside("b", "/1", "B", "")), 0, next("a.deck.yaml", second))
	check(t, third, "structure no sheet named: 2 b B, 5 e E", "past 1 closed", "past 3 closed", "past 4 closed")

	// An excuse does not take the number away.
	waived := outside("e", "/3", "E", "")
	waived.Outcome = result.Excused
	fourth := items.Number(report(waived), 0, next("a.deck.yaml", third))
	check(t, fourth, "excused: 5 e E", "past 1 closed", "past 2 closed", "past 3 closed", "past 4 closed")
}

// TestNotFoundIsNotClosed holds what nobody can tell open.
func TestNotFoundIsNotClosed(t *testing.T) {
	before := items.Number(report(outside("a", "/stairs/0/risers", "ST1", "")), 0, nil)
	cases := []struct {
		name string
		now  func() *result.Report
		want []string
	}{
		{"mended", func() *result.Report { return report() }, []string{"past 1 closed"}},
		{"unreadable", func() *result.Report {
			r := report()
			r.Designs[0].Problems = []result.Problem{{Message: "torn"}}
			return r
		}, []string{"past 1 open (the design could not be read; 0)"}},
		{"another set", func() *result.Report {
			r := report()
			r.Sets[0].ID = "state"
			return r
		}, []string{"past 1 open (the rule set town was not run; 0)"}},
		{"not the sets of this design", func() *result.Report {
			r := report()
			r.Sets = append(r.Sets, result.Set{ID: "state"})
			r.Designs[0].Sets = []string{"state"}
			return r
		}, []string{"past 1 open (the rule set town was not run; 0)"}},
		{"failed as a whole", func() *result.Report { return report(failed("a")) },
			[]string{"could not run: 2 a", "past 1 open (the check a could not run, see item 2; 2)"}},
		{"failed elsewhere", func() *result.Report { return report(failed("a", "/stairs/1")) },
			[]string{"could not run: 2 a", "past 1 closed"}},
		{"value taken out", func() *result.Report { return report(missing("a", "/stairs/3", "ST1", "risers")) },
			[]string{"not shown no sheet named: 2 a ST1 risers", "past 1 open (what it rests on is not shown any more, see item 2; 2)"}},
		{"value of what is around it taken out", func() *result.Report { return report(missing("a", "/stairs/0", "other", "x")) },
			[]string{"not shown no sheet named: 2 a other x", "past 1 open (what it rests on is not shown any more, see item 2; 2)"}},
		{"another element lacks it", func() *result.Report { return report(missing("a", "/stairs/0/risers", "ST2", "risers")) },
			[]string{"not shown no sheet named: 2 a ST2 risers", "past 1 closed"}},
		{"another check lacks it", func() *result.Report { return report(missing("b", "/stairs/0", "ST1", "risers")) },
			[]string{"not shown no sheet named: 2 b ST1 risers", "past 1 closed"}},
	}
	for _, c := range cases {
		t.Run(c.name, func(t *testing.T) {
			check(t, items.Number(c.now(), 0, next("a.deck.yaml", before)), c.want...)
		})
	}
}

// TestMarksGivenTwice covers elements that nothing tells apart.
func TestMarksGivenTwice(t *testing.T) {
	both := items.Number(report(outside("a", "/0", "A", ""), outside("a", "/1", "A", "")), 0, nil)
	check(t, both, "structure no sheet named: 1 a A, 2 a A")
	previous := next("a.deck.yaml", both)
	check(t, items.Number(report(outside("a", "/0", "A", ""), outside("a", "/1", "A", "")), 0, previous), "structure no sheet named: 1 a A, 2 a A")
	check(t, items.Number(report(outside("a", "/1", "A", "")), 0, previous), "structure no sheet named: 1 a A", "past 2 closed")
}

func TestItemsThatBecomeOne(t *testing.T) {
	apart := items.Number(report(missing("a", "/0", "A", "x"), missing("b", "/0/y", "A", "x")), 0, nil)
	check(t, apart, "not shown no sheet named: 1 a A x, 2 b A x")
	joined := items.Number(report(missing("a", "/0", "A", "x"), missing("b", "/0", "A", "x")), 0, next("a.deck.yaml", apart))
	check(t, joined, "not shown no sheet named: 1 a A x+b A x", "past 2 open (it is part of item 1 now; 1)")
}

func TestWhichDesign(t *testing.T) {
	previous := next("jobs/old.deck.yaml", items.Number(report(outside("a", "/0", "A", "")), 0, nil))
	one := report(outside("b", "/0", "B", ""))
	if list := items.Number(one, 0, previous); len(list.Past) != 1 {
		t.Errorf("a file of another name is not taken for the next revision: %s", words(list))
	}
	one.Designs = append(one.Designs, result.Design{Kind: result.KindWaivers, File: "waivers.yaml"})
	if list := items.Number(one, 0, previous); len(list.Past) != 1 {
		t.Errorf("a file of waivers counts as a second design: %s", words(list))
	}
	if list := items.Number(one, 1, previous); len(list.Past) != 0 {
		t.Errorf("a file of waivers is taken for the design: %s", words(list))
	}
	two := report(outside("b", "/0", "B", ""))
	two.Designs = append(two.Designs, result.Design{File: "./jobs/old.deck.yaml"})
	if list := items.Number(two, 0, previous); len(list.Past) != 0 {
		t.Errorf("items of another design: %s", words(list))
	}
	if list := items.Number(two, 1, previous); len(list.Past) != 1 {
		t.Errorf("a file is not known by another spelling of its name: %s", words(list))
	}
}

// TestCanned numbers everything exactly once, in a report with everything in it.
func TestCanned(t *testing.T) {
	canned := reporttest.Canned(t)
	for i := range canned.Designs {
		list := items.Number(&canned, i, nil)
		numbers := list.Numbers()
		highest := 0
		for j := range canned.Designs[i].Findings {
			n := numbers[&canned.Designs[i].Findings[j]]
			if n == 0 {
				t.Errorf("%s: finding %d has no number", canned.Designs[i].File, j)
			}
			highest = max(highest, n)
		}
		seen := map[int]bool{}
		for _, n := range numbers {
			seen[n] = true
		}
		if len(seen) != highest {
			t.Errorf("%s: %d numbers up to %d", canned.Designs[i].File, len(seen), highest)
		}
		if again := items.Number(&canned, i, next(canned.Designs[i].File, list)); words(again) != words(list) {
			t.Errorf("%s: a second run of the same gives\n%s\nwas\n%s", canned.Designs[i].File, words(again), words(list))
		}
	}
}

func TestID(t *testing.T) {
	item := items.Item{Results: []*result.Result{{Fingerprint: "0123456789abcdef"}}}
	if got := item.ID(); got != "01234567" {
		t.Errorf("got %q", got)
	}
	item.Results[0].Fingerprint = "aa10"
	if got := item.ID(); got != "aa10" {
		t.Errorf("got %q", got)
	}
}
