package waive_test

import (
	"fmt"
	"slices"
	"strings"
	"testing"
	"testing/fstest"

	"plumbrule/checker/catalog"
	"plumbrule/checker/result"
	"plumbrule/checker/source"
	"plumbrule/checker/waive"
)

const check = `# METADATA
# title: %[1]s
# description: A check for the tests of waivers.
# custom:
#   id: stairs/%[2]s
#   aliases: [stairs/old-%[2]s]
#   consequence: life safety
#   why: For tests.
#   applies_when: anything is shown
#   figures: {max: {type: length, relation: at most, about: a length}}
#   messages: {outside: "too much"}
package checks.stairs.%[2]s

import data.figures.stairs.%[2]s as figures

applies if count(input.flights) > 0

readings contains {"at": [""], "figure": "max", "have": 1, "limit": figures.max, "outside": false} if true
`

const defaults = "# METADATA\n# title: Shapes\n# scope: subpackages\n# schemas:\n#   - input: schema.facts\n#   - data.figures: schema.figures\npackage checks\n"

func checks(t *testing.T) *catalog.Catalog {
	t.Helper()
	c, err := catalog.Load(fstest.MapFS{
		"checks/defaults.rego":           {Data: []byte(defaults)},
		"checks/stairs/rise/rise.rego":   {Data: fmt.Appendf(nil, check, "Rise", "rise")},
		"checks/stairs/width/width.rego": {Data: fmt.Appendf(nil, check, "Width", "width")},
	})
	if err != nil {
		t.Fatal(err)
	}
	return c
}

func read(t *testing.T, text string) *waive.List {
	t.Helper()
	list, err := waive.Read("waivers.yaml", "/work", []byte(text), checks(t))
	if err != nil {
		t.Fatal(err)
	}
	return list
}

const deck = `stairs:
  - mark: ST1
    rise: 8 in
    rail: {mark: R1, rise: 9 in}
  - {mark: ST2, rise: 10 in}
`

// design has a finding of the check at each of three places under each of two
// sets, and one thing not shown.
func design(t *testing.T) *result.Design {
	t.Helper()
	doc, err := source.Read("heron.deck.yaml", []byte(deck))
	if err != nil {
		t.Fatal(err)
	}
	d := &result.Design{File: "heron.deck.yaml", Document: doc}
	for _, set := range []string{"a", "b"} {
		for i, at := range []string{"/stairs/0/rise", "/stairs/0/rail/rise", "/stairs/1/rise"} {
			d.Findings = append(d.Findings, result.Result{
				Check: "stairs/rise", Set: set, Outcome: result.Outside, At: []string{at}, Fingerprint: fmt.Sprintf("0000000%d", i),
			})
		}
	}
	d.Findings = append(d.Findings, result.Result{Check: "stairs/rise", Set: "a", Outcome: result.NotShown, At: []string{"/stairs/0"}})
	d.Readings = append(d.Readings, result.Result{Check: "stairs/width", Set: "a", Outcome: result.Within, At: []string{"/stairs/0"}})
	return d
}

// excused lists set and place of what was excused.
func excused(d *result.Design) string {
	var list []string
	for _, r := range d.Findings {
		if r.Outcome == result.Excused {
			list = append(list, r.Set+r.At[0])
		}
	}
	return strings.Join(list, " ")
}

const who = ", reason: it is listed, by: the office}"

func TestWhatAWaiverNames(t *testing.T) {
	all := "a/stairs/0/rise a/stairs/0/rail/rise a/stairs/1/rise b/stairs/0/rise b/stairs/0/rail/rise b/stairs/1/rise"
	tests := []struct{ name, waiver, want string }{
		{"the whole check", "{check: stairs/rise", all},
		{"by its old id", "{check: stairs/old-rise", all},
		{"another check", "{check: stairs/width", ""},
		{"mark", "{check: stairs/rise, place: ST2", "a/stairs/1/rise b/stairs/1/rise"},
		{"mark around a mark", "{check: stairs/rise, place: ST1", "a/stairs/0/rise a/stairs/0/rail/rise b/stairs/0/rise b/stairs/0/rail/rise"},
		{"inner mark", "{check: stairs/rise, place: R1", "a/stairs/0/rail/rise b/stairs/0/rail/rise"},
		{"unknown mark", "{check: stairs/rise, place: ST3", ""},
		{"pointer", "{check: stairs/rise, place: /stairs/0/rise", "a/stairs/0/rise b/stairs/0/rise"},
		{"pointer to what is around", "{check: stairs/rise, place: /stairs/0", "a/stairs/0/rise a/stairs/0/rail/rise b/stairs/0/rise b/stairs/0/rail/rise"},
		{"pointer that is a mere prefix", "{check: stairs/rise, place: /stairs/0/ri", ""},
		{"fingerprint", "{check: stairs/rise, fingerprint: \"00000002\"", "a/stairs/1/rise b/stairs/1/rise"},
		{"fingerprint elsewhere", "{check: stairs/rise, fingerprint: \"00000002\", place: ST1", ""},
		{"set", "{check: stairs/rise, place: ST2, sets: [b]", "b/stairs/1/rise"},
		{"design", "{check: stairs/rise, place: ST2, design: jobs/heron.deck.yaml", "a/stairs/1/rise b/stairs/1/rise"},
		{"design from here", "{check: stairs/rise, place: ST2, design: ./jobs/heron.deck.yaml", "a/stairs/1/rise b/stairs/1/rise"},
		{"pattern", "{check: stairs/rise, place: ST2, design: \"jobs/*.deck.yaml\"", "a/stairs/1/rise b/stairs/1/rise"},
		{"pattern of directories", "{check: stairs/rise, place: ST2, design: \"**/heron.*\"", "a/stairs/1/rise b/stairs/1/rise"},
		{"pattern of one directory", "{check: stairs/rise, place: ST2, design: \"*.deck.yaml\"", ""},
		{"other design", "{check: stairs/rise, design: jobs/egret.deck.yaml", ""},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			d := design(t)
			read(t, "waivers:\n  - "+tt.waiver+who+"\n").Apply(d, "/work/jobs/heron.deck.yaml", "2026-05-01")
			if got := excused(d); got != tt.want {
				t.Errorf("excused\n%s\nwant\n%s", got, tt.want)
			}
			for _, r := range d.Findings {
				if (r.Waiver != nil) != (r.Outcome == result.Excused) {
					t.Errorf("%s is %s, waiver %+v", r.At[0], r.Outcome, r.Waiver)
				}
			}
		})
	}
}

func TestExcusedFindingSaysByWhom(t *testing.T) {
	d := design(t)
	read(t, "waivers:\n  - {check: stairs/rise, place: ST2, sets: [a], reason: \"it was  there before\\nthe town\", by: the plan reviewer, until: 2026-05-01, document: letter 14}\n").
		Apply(d, "/work/heron.deck.yaml", "2026-05-01")
	r := d.Findings[2]
	if r.Outcome != result.Excused || r.Reason != "waived by the plan reviewer until 2026-05-01, letter 14: it was there before the town" {
		t.Errorf("%s, %q", r.Outcome, r.Reason)
	}
	want := result.Waiver{By: "the plan reviewer", Reason: "it was  there before\nthe town", Until: "2026-05-01", Document: "letter 14"}
	if *r.Waiver != want {
		t.Errorf("waiver %+v", r.Waiver)
	}
}

func TestLastDay(t *testing.T) {
	for today, want := range map[waive.Date]result.Outcome{"2026-04-30": result.Excused, "2026-05-01": result.Excused, "2026-05-02": result.Outside, "2027-01-01": result.Outside} {
		d := design(t)
		list := read(t, "waivers:\n  - {check: stairs/rise, place: ST2, sets: [a], reason: r, by: b, until: 2026-05-01}\n")
		used := list.Apply(d, "/work/heron.deck.yaml", today)
		r := d.Findings[2]
		if r.Outcome != want {
			t.Errorf("on %s it is %s", today, r.Outcome)
		}
		about, found := list.Findings([]waive.Use{used}, today)
		if found != (want == result.Outside) {
			t.Errorf("on %s the waiver itself is found: %t", today, found)
		}
		if !found {
			continue
		}
		if want := "the waiver by b ran out on 2026-05-01 (waivers.yaml:2)"; !slices.Equal(r.Notes, []string{want}) {
			t.Errorf("notes %q, want %q", r.Notes, want)
		}
		f := about.Findings[0]
		if f.Check != waive.Expired || f.Message != "waiver for stairs/rise at ST2 by b ran out on 2026-05-01, a finding stands again" || f.Span.Start.Line != 2 ||
			f.Outcome != result.Outside || f.Consequence != result.Workmanship || f.At[0] != "/waivers/0/until" {
			t.Errorf("%+v", f)
		}
		if about.Kind != result.KindWaivers || about.File != "waivers.yaml" || about.Counts.Outside != 1 || about.Disposition != result.CorrectionsNoted {
			t.Errorf("%+v", about)
		}
	}
}

// TestNextWaiverHolds has one that ran out before one that holds.
func TestNextWaiverHolds(t *testing.T) {
	d := design(t)
	list := read(t, `waivers:
  - {check: stairs/rise, place: ST2, sets: [a], reason: r, by: the first, until: 2026-01-31}
  - {check: stairs/rise, place: ST2, sets: [a], reason: r, by: the second, until: 2027-01-31}
`)
	used := list.Apply(d, "/work/heron.deck.yaml", "2026-05-01")
	if r := d.Findings[2]; r.Outcome != result.Excused || r.Waiver.By != "the second" || len(r.Notes) > 0 {
		t.Errorf("%+v", r)
	}
	about, _ := list.Findings([]waive.Use{used}, "2026-05-01")
	if len(about.Findings) != 1 || !strings.HasSuffix(about.Findings[0].Message, "by the first ran out on 2026-01-31, and nothing is left for it to excuse") {
		t.Errorf("%+v", about.Findings)
	}
}

func TestUnused(t *testing.T) {
	const unused = "waivers:\n  - {check: stairs/rise, place: ST9, design: \"jobs/*\"" + who + "\n"
	heron, egret, other := "/work/jobs/heron.deck.yaml", "/work/jobs/egret.deck.yaml", "/work/more/stork.deck.yaml"
	tests := []struct {
		name, text string
		designs    []string
		want       string
	}{
		{"one design", unused, []string{heron}, "waiver for stairs/rise at ST9 by the office excuses nothing in the design that it covers"},
		{"two designs", unused, []string{heron, egret, other}, "waiver for stairs/rise at ST9 by the office excuses nothing in the 2 designs that it covers"},
		{"no design of its own in the run", unused, []string{other}, ""},
		{"used once", strings.Replace(unused, "ST9", "ST1", 1), []string{heron, egret}, ""},
		{"a check within its limit", "waivers:\n  - {check: stairs/width" + who + "\n", []string{heron}, "waiver for stairs/width by the office excuses nothing in the design that it covers"},
		{"a set that did not run", "waivers:\n  - {check: stairs/width, sets: [b]" + who + "\n", []string{heron}, ""},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			list := read(t, tt.text)
			var uses []waive.Use
			for _, name := range tt.designs {
				uses = append(uses, list.Apply(design(t), name, "2026-05-01"))
			}
			about, found := list.Findings(uses, "2026-05-01")
			got := ""
			if found {
				got = about.Findings[0].Message
				if f := about.Findings[0]; f.Check != waive.Unused || f.Span.Start.Line != 2 || f.Have == nil || f.Limit == nil || len(f.Fingerprint) != 16 {
					t.Errorf("%+v", f)
				}
			}
			if got != tt.want {
				t.Errorf("%q, want %q", got, tt.want)
			}
		})
	}
}

// TestNotJudged leaves waivers alone whose design could not be read or whose
// check could not run.
func TestNotJudged(t *testing.T) {
	list := read(t, "waivers:\n  - {check: stairs/rise"+who+"\n")
	broken := &result.Design{Problems: []result.Problem{{Message: "no"}}}
	failed := &result.Design{Findings: []result.Result{{Check: "stairs/rise", Outcome: result.CouldNotRun}}}
	for name, d := range map[string]*result.Design{"unreadable": broken, "could not run": failed} {
		used := list.Apply(d, "/work/heron.deck.yaml", "2026-05-01")
		if _, found := list.Findings([]waive.Use{used}, "2026-05-01"); found {
			t.Errorf("%s: the waiver is judged", name)
		}
	}
}

func TestReadRefuses(t *testing.T) {
	tests := []struct{ name, text, want string }{
		{"no reason", "waivers:\n  - {check: stairs/rise, by: b}\n", "waivers.yaml:2:5: "},
		{"no by", "waivers:\n  - {check: stairs/rise, reason: r}\n", "waivers.yaml:2:5: "},
		{"blank reason", "waivers:\n  - {check: stairs/rise, reason: \"  \", by: b}\n", "waivers.yaml:2:34: "},
		{"blank by", "waivers:\n  - {check: stairs/rise, reason: r, by: \"\"}\n", "waivers.yaml:2:41: "},
		{"no check", "waivers:\n  - {reason: r, by: b}\n", "waivers.yaml:2:5: "},
		{"unknown check", "waivers:\n  - {check: stairs/rice" + who, `waivers.yaml:2:13: there is no check "stairs/rice"; did you mean stairs/rise?`},
		{"unknown key", "waivers:\n  - {check: stairs/rise, ends: 2026-01-01" + who, "waivers.yaml:2:26: "},
		{"no such day", "waivers:\n  - {check: stairs/rise, until: 2026-02-30" + who, `waivers.yaml:2:33: "2026-02-30" is no day`},
		{"another spelling of a day", "waivers:\n  - {check: stairs/rise, until: 31/01/2026" + who, "waivers.yaml:2:33: "},
		{"pattern", "waivers:\n  - {check: stairs/rise, design: \"jobs/[a\"" + who, `waivers.yaml:2:34: "jobs/[a" is no pattern of a path`},
		{"no list", "waivers: {}\n", "waivers.yaml:1:10: "},
		{"no waivers", "waiver: []\n", "waivers.yaml:1:1: "},
		{"syntax", "waivers: [\n", "waivers.yaml:"},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			_, err := waive.Read("waivers.yaml", "", []byte(tt.text), checks(t))
			if err == nil {
				t.Fatal("read")
			}
			if !strings.Contains(err.Error(), tt.want) {
				t.Errorf("error\n%v\ndoes not say\n%s", err, tt.want)
			}
		})
	}
}

func TestDated(t *testing.T) {
	for text, want := range map[string]bool{"waivers: []\n": false, "waivers:\n  - {check: stairs/rise" + who: false, "waivers:\n  - {check: stairs/rise, until: 2026-01-01" + who: true} {
		if got := read(t, text).Dated(); got != want {
			t.Errorf("%s: %t", text, got)
		}
	}
}
