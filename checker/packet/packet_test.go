package packet_test

import (
	"os"
	"slices"
	"strings"
	"testing"

	"plumbrule/checker"
	"plumbrule/checker/packet"
	"plumbrule/checker/packet/packettest"
	"plumbrule/checker/report/content"
	"plumbrule/checker/report/items"
	"plumbrule/checker/result"
)

func section(t *testing.T, p *packet.Packet, id string) *packet.Section {
	t.Helper()
	for i := range p.Sections {
		if p.Sections[i].ID == id {
			return &p.Sections[i]
		}
	}
	t.Fatalf("no section %s", id)
	return nil
}

// rows lists the rows of all tables of a section, cells joined.
func rows(s *packet.Section) []string {
	var list []string
	for i := range s.Parts {
		if t := s.Parts[i].Table; t != nil {
			for _, r := range t.Rows {
				var words []string
				for k := range r.Cells {
					words = append(words, strings.TrimSpace(r.Cells[k].Text+" "+r.Cells[k].More))
				}
				list = append(list, strings.Join(words, " | "))
			}
		}
	}
	return list
}

func found(s *packet.Section) []packet.Item {
	var list []packet.Item
	for i := range s.Parts {
		list = append(list, s.Parts[i].Items...)
	}
	return list
}

// told gives what an item says under a term.
func told(item *packet.Item, term string) string {
	var words []string
	for _, l := range item.Lines {
		if l.Term == term {
			words = append(words, l.Text)
		}
	}
	return strings.Join(words, " / ")
}

// Items have the numbers of the review letter, outside and not shown apart.
func TestNumbersOfTheLetter(t *testing.T) {
	report := packettest.Report(t)
	p := packet.Build(report, packettest.Sheets(), nil)
	list := items.Number(report, 0, nil)
	want := map[int]result.Outcome{}
	for r, n := range list.Numbers() {
		want[n] = r.Outcome
	}
	for _, item := range found(section(t, p, "findings")) {
		if want[item.Number] != item.Outcome || item.Outcome == result.NotShown {
			t.Errorf("item %d is %s, the letter has %s", item.Number, item.Outcome, want[item.Number])
		}
		delete(want, item.Number)
	}
	for _, part := range section(t, p, "not-shown").Parts {
		for _, r := range part.Table.Rows {
			if want[r.Item] != result.NotShown {
				t.Errorf("row %d is %q in the letter", r.Item, want[r.Item])
			}
			delete(want, r.Item)
		}
	}
	if len(want) > 0 {
		t.Errorf("left out: %v", want)
	}
}

// A finding says everything that there is to say on it.
func TestFindingInFull(t *testing.T) {
	p := packettest.Packet(t)
	byCheck := map[string]*packet.Item{}
	list := found(section(t, p, "findings"))
	for i := range list {
		_, check, _ := strings.Cut(told(&list[i], "Held against"), " ")
		check, _, _ = strings.Cut(check, ",")
		byCheck[check] = &list[i]
	}
	for _, want := range []struct{ check, term, text string }{
		{"stairs/riser-height", "Measured", `8"`},
		{"stairs/riser-height", "Limit", `at most 7-3/4"`},
		{"stairs/riser-height", "Margin", `outside by 1/4"`},
		{"stairs/riser-height", "Held against", "irc-2021 stairs/riser-height, R311.7.5.1"},
		{"stairs/riser-height", "Figure", "recalled"},
		{"stairs/riser-height", "Also found", `Riser height is 8", the limit is 7-1/2". Held against common-practice stairs/riser-height; measured 8"; limit at most 7-1/2"; margin outside by 1/2"; figure common practice.`},
		{"stairs/riser-height", "Remark", "irc-2021: this figure is recalled, not read in print"},
		{"stairs/riser-height", "To mend", "more risers: each becomes lower / a raised landing at the foot, so that there is less to climb"},
		{"stairs/riser-height", "Tried", `risers: 8 in place of 7, each 7"`},
		{"stairs/riser-height", "Place", "sheet S3, ST1; stairs 1, risers (line 22 of the description)"},
		{"handrail/grip", "As described", "flat board"},
		{"handrail/grip", "Measured", ""},
		{"handrail/grip", "Figure", "published, read in source 1: an invented town's amendments, 2022 printing"},
		{"handrail/grip", "Amended", "amended by an invented town, Ordinance 7; replaces round (irc-2018 R311.7.8.3)"},
		{"beams/ply-joint", "By wood engineering", `9'-2" (bending governs)`},
		{"guards/height", "Waiver", "by the invented plan reviewer: the guard is listed, and was there before; written in letter 14 of the job file; until 2027-01-31"},
		{"layout/right-angle", "Reason", "a town's own check asked for more time than it may have"},
	} {
		item := byCheck[want.check]
		if item == nil {
			t.Errorf("no item of %s", want.check)
			continue
		}
		if got := told(item, want.term); got != want.text {
			t.Errorf("%s, %s: %q, want %q", want.check, want.term, got, want.text)
		}
	}
	if item := byCheck["guards/height"]; item != nil && told(item, "Reason") != "" {
		t.Error("the reason of a waiver is said twice")
	}
}

// What the standard prints in other units stands below the limit, where it does
// not widen its column.
func TestLimitOfTheStandard(t *testing.T) {
	report := packettest.Report(t)
	for i := range report.Designs[0].Readings {
		if r := &report.Designs[0].Readings[i]; r.Limit != nil {
			limit := *r.Limit
			limit.Standard = "9 cubits"
			r.Limit = &limit
		}
	}
	p := packet.Build(report, packettest.Sheets(), nil)
	below := map[string]int{}
	for _, id := range []string{"summary", "schedule"} {
		for _, part := range section(t, p, id).Parts {
			if part.Table == nil {
				continue
			}
			for _, row := range part.Table.Rows {
				for _, cell := range row.Cells {
					if strings.Contains(cell.Text, "cubits") {
						t.Errorf("%s: %q", id, cell.Text)
					}
					if cell.More == "9 cubits in the standard" {
						below[id]++
					}
				}
			}
		}
	}
	if below["summary"] == 0 || below["schedule"] == 0 {
		t.Errorf("limits of the standard below those of the design: %v", below)
	}
}

func TestSections(t *testing.T) {
	p := packettest.Packet(t)
	has := func(id, want string) {
		t.Helper()
		s := section(t, p, id)
		all := slices.Concat(s.Notes, rows(s))
		for i := range s.Parts {
			all = append(append(all, s.Parts[i].Notes...), s.Parts[i].List...)
			if d := s.Parts[i].Drawing; d != nil {
				all = append(all, d.Alt)
			}
		}
		if !slices.ContainsFunc(all, func(line string) bool { return strings.Contains(strings.ReplaceAll(line, "\u00a0", " "), want) }) {
			t.Errorf("%s: no %q in\n%s", id, want, strings.Join(all, "\n"))
		}
	}
	has("summary", "Disposition by these rule sets: revise and resubmit; 5 items not shown; 1 check could not run.")
	has("summary", "outside | 6 | ")
	has("summary", `Guard opening detail 2/S2, 欄干G1: guards 1, infill, opening | 3-7/8" | less than 4" | inside by 1/8" | irc-2021`)
	has("values", "ground snow load | ")
	has("values", "frost depth | not shown")
	has("drawings", `Plan of A from above. Scale 1/4" = 1'-0". Dimensions: 16'-0". Findings marked on it: 4 to 6, 10.`)
	has("earlier", "3. Post is too thin. Mark P9.")
	has("schedule", `Joist cantilever sheet S1, A: platforms 1, joists | no joist runs past its last support | irc-2021 | published | does not apply`)
	has("schedule", `Tread depth sheet S3, ST1: stairs 1, tread depth | 10-1/4" | at least 10" | inside by 1/4" | irc-2021 R311.7.5.2 | published | within`)
	has("assumed", "Dead load not shown: 10 psf taken | beams/ply-joint")
	has("assumed", "Even load | beams/ply-joint")
	has("assumed", "This figure is recalled, not read in print | irc-2021 stairs/riser-height")
	has("unread", "stairs 1, handrail, profile, type | flat board | ")
	has("sets", "docks and piers")
	has("sets", "Rules of an invented town <&>.")
	has("figures", "1 | an invented town's amendments, 2022 printing")
	has("waivers", "waivers.yaml, line 1: Waiver for guards/height at G9 excuses nothing")
	for _, caution := range content.Cautions(nil) {
		has("cautions", caution)
	}
	for _, row := range rows(section(t, p, "assumed")) {
		if strings.Contains(row, "Longest beam span") || strings.Contains(row, "any more") || strings.Contains(row, "b = 3 in") {
			t.Errorf("%q is no assumption", row)
		}
	}
}

// In the packets of whole designs every answer of every check of every set has
// its row, and no section goes missing.
func TestScheduleIsWhole(t *testing.T) {
	c, err := checker.New(checker.Options{})
	if err != nil {
		t.Fatal(err)
	}
	for _, name := range []string{"alder-lane", "karaka-bay", "ketch-point", "quarry-hill"} {
		data, err := os.ReadFile("../../fixtures/designs/" + name + ".deck.yaml")
		if err != nil {
			t.Fatal(err)
		}
		in := checker.Input{Name: name + ".deck.yaml", Data: data}
		p, problems, err := c.Packet(t.Context(), in, checker.PacketOptions{})
		if err != nil || len(problems) > 0 {
			t.Fatal(err, problems)
		}
		report := c.Check(t.Context(), in)
		d := &report.Designs[0]
		schedule := rows(section(t, p, "schedule"))
		if got, want := len(schedule), len(d.Findings)+len(d.Readings); got != want {
			t.Errorf("%s: %d rows for %d answers", name, got, want)
		}
		outcomes := map[string]int{}
		for _, row := range schedule {
			outcome := row[strings.LastIndex(row, "| ")+2:]
			outcomes[outcome]++
		}
		for _, tally := range content.Tallies(d.Counts) {
			if outcomes[string(tally.Outcome)] != tally.N {
				t.Errorf("%s: %d rows are %s, counted were %d", name, outcomes[string(tally.Outcome)], tally.Outcome, tally.N)
			}
		}
		for _, set := range c.Sets() {
			if !slices.ContainsFunc(p.Block, func(l packet.Line) bool { return l.Term == "Rule set "+set.ID }) {
				t.Errorf("%s: the title block does not name %s", name, set.ID)
			}
		}
		if len(section(t, p, "drawings").Parts) < 4 {
			t.Errorf("%s: drawings are missing", name)
		}
	}
}

// Nothing that a design leaves out breaks a packet.
func TestBareDesigns(t *testing.T) {
	report := &result.Report{Designs: []result.Design{{File: "-"}}}
	p := packet.Build(report, nil, nil)
	if p.Title != "standard input" || p.File != "standard input" {
		t.Errorf("title %q, file %q", p.Title, p.File)
	}
	section(t, p, "cautions")
}
