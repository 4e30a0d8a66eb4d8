package draw_test

import (
	"fmt"
	"path/filepath"
	"slices"
	"testing"

	"plumbrule/checker/draw"
	"plumbrule/checker/draw/paper"
	"plumbrule/checker/facts"
	"plumbrule/checker/model"
	"plumbrule/checker/result"
	"plumbrule/checker/source"
)

// derive takes a description to what follows from it.
func derive(t *testing.T, name, text string) *facts.Derived {
	t.Helper()
	doc, err := source.Read(name+".deck.yaml", []byte(text))
	if err != nil {
		t.Fatalf("%s: %v\n%s", name, err, text)
	}
	deck, problems := model.Read(doc)
	if len(problems) > 0 {
		t.Fatalf("%s: %v\n%s", name, problems[0], text)
	}
	derived, faults := facts.Derive(deck)
	if len(faults) > 0 {
		t.Fatalf("%s: %s\n%s", name, faults[0].Message, text)
	}
	return derived
}

// crowd is a report with findings on many members of a design.
func crowd(d *facts.Derived) *result.Report {
	design := result.Design{File: "crowd.deck.yaml", Disposition: result.ReviseAndResubmit}
	put := func(check, at string) {
		design.Findings = append(design.Findings, result.Result{Check: check, Set: "town", Clause: "1.2", Outcome: result.Outside, Consequence: result.LifeSafety,
			At: []string{at}, Message: "what is at " + at + " is outside", Fingerprint: check + at})
	}
	for i := range d.Deck.Platforms {
		at := fmt.Sprintf("/platforms/%d", i)
		for _, part := range []string{"/joists", "/joists/spacing", "/ledger", "/ledger/fasteners", "/beams/0", "/posts", "/footings/depth", "/decking", "/rim_joist", "/edges/front", "/edges/right", "/surface_above_grade"} {
			put("structure/"+part[1:3], at+part)
		}
	}
	for i := range d.Deck.Stairs {
		at := fmt.Sprintf("/stairs/%d", i)
		for _, part := range []string{"/handrail/height", "/risers", "/measured_risers/1", "/measured_treads/0", "/tread_depth", "/landing_bottom", "/stringers", "/headroom"} {
			put("stairs/"+part[1:4], at+part)
		}
	}
	put("guards/height", "/guards/0/height")
	return &result.Report{Sets: []result.Set{{ID: "town", Title: "Rules of a town", Edition: "7"}}, Designs: []result.Design{design}}
}

// count draws a design and adds its faults up by their kind.
func count(t *testing.T, where string, d *facts.Derived, options draw.Options, sums map[string]int) {
	t.Helper()
	sheets, err := draw.Sheets(d, options)
	if err != nil {
		t.Fatal(err)
	}
	for _, s := range sheets {
		sums["texts"] += len(paper.Texts(s.Items))
		for _, f := range legibility(s) {
			sums[f.kind]++
			if f.kind != "patch" {
				t.Errorf("%s, %s: %s: %s", where, s.Name, f.kind, f.words)
			}
		}
	}
}

// Every sheet can be read: no words on words, no line through words, nothing
// past the border, no letters too small, numbers of findings by their spots and
// off the dimensions.
func TestSheetsCanBeRead(t *testing.T) {
	sums := map[string]int{}
	for _, file := range append(designFiles(), fixture("heron-lane")) {
		d := read(t, file)
		for i, name := range draw.Papers() {
			if i > 0 && testing.Short() {
				break
			}
			where := filepath.Base(file) + " on " + name
			count(t, where, d, draw.Options{Paper: name, Source: filepath.Base(file)}, sums)
			count(t, where+", with findings", d, draw.Options{Paper: name, Source: filepath.Base(file), Report: crowd(d)}, sums)
		}
	}
	logged(t, sums)
}

// So can those of designs that are hard to draw.
func TestHardDesignsCanBeRead(t *testing.T) {
	random := 12
	if testing.Short() {
		random = 2
	}
	sums := map[string]int{}
	for _, h := range hards(random) {
		d := derive(t, h.name, h.text)
		count(t, h.name, d, draw.Options{Source: "hard.deck.yaml"}, sums)
		count(t, h.name+" on letter, with findings", d, draw.Options{Paper: "letter", Source: "hard.deck.yaml", Report: crowd(d)}, sums)
	}
	logged(t, sums)
}

func logged(t *testing.T, sums map[string]int) {
	t.Helper()
	var kinds []string
	for kind := range sums {
		kinds = append(kinds, kind)
	}
	slices.Sort(kinds)
	for _, kind := range kinds {
		t.Logf("%s: %d", kind, sums[kind])
	}
	if sums["texts"] < 1000 {
		t.Errorf("only %d texts were looked at", sums["texts"])
	}
}
