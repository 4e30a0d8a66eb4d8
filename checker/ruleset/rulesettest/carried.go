package rulesettest

import (
	"fmt"
	"slices"
	"strconv"
	"strings"
)

// groups are the species groups of joists, cantilevers and posts.
var groups = map[string]string{
	"SP": "southern pine",
	"DF": "douglas fir-larch group",
	"RW": "redwood group",
}

// Expected gives the cells of sets that carry a line. Lines that no set
// carries give none: design values of single fasteners, spans of joists with a
// cantilever, heights of posts under snow.
func (r Reading) Expected() ([]Expected, error) {
	to, ok := carriers[r.Table]
	if !ok {
		return nil, fmt.Errorf("line %d: nobody says which set carries the table %q", r.Line, r.Table)
	}
	if to == nil {
		return nil, nil
	}
	cells, err := to(r)
	if err != nil {
		return nil, fmt.Errorf("line %d: %w", r.Line, err)
	}
	for i := range cells {
		cells[i].Line = r.Line
		if cells[i].Text == "" {
			cells[i].Text = r.Text()
		}
	}
	return cells, nil
}

// Carriers takes a line to the cells that carry it. A set that took a figure
// over from memory holds it as recalled, though the line was seen in print.
var carriers = map[string]func(Reading) ([]Expected, error){
	"R507.6 joist span":                      joistSpan,
	"R507.5(2015) joist span, no cantilever": earlierJoistSpan,
	"R507.6 joist span with L/4 cantilever":  nil,
	"DCA6 Table 2 overhang":                  overhang,
	"R507.6 max cantilever":                  cantilever,
	"R507.5 beam span":                       beamSpan,
	"R507.5 beam span 1-ply":                 singlePly,
	"R507.5(1) beam span":                    laterBeamSpan,
	"DCA6 Table 4 footing round":             spansTable("footing-diameters"),
	"DCA6 Table 4 footing square":            spansTable("footing-sides"),
	"DCA6 Table 4 footing thickness":         spansTable("footing-thicknesses"),
	"DCA6 Table 4 post height 6x6":           spansTable("post-heights"),
	"R507.3.1 footing square":                footing("footing-sides"),
	"R507.3.1 footing round":                 footing("footing-diameters"),
	"R507.3.1 footing thickness":             footing("footing-thicknesses"),
	"R507.9.1.3 ledger spacing":              ledgerSpacing,
	"R507.4 post height":                     postHeight,
	"NDS Table 12K lag/steel plate":          nil,
	"NDS Table 12A bolt 1/2in 1.5x1.5":       nil,
}

func joistSpan(r Reading) ([]Expected, error) {
	spacing, load, err := pair(r.Condition, "%s oc", "%s live", "%s snow")
	if err != nil {
		return nil, err
	}
	at := []string{groups[r.Group], r.Item, spacing + " in", load + " psf"}
	cells := in("joist-spans", at, r.Published, "irc-2021")
	if load == "40" {
		cells = append(cells, in("joist-spans", at, r.Published, "irc-2018", "dca6-2012")...)
	}
	return append(cells, in("joist-spans", at, false, "irc-2024")...), nil
}

func earlierJoistSpan(r Reading) ([]Expected, error) {
	spacing, load, err := pair(r.Condition, "%s oc", "%s live")
	return in("joist-spans", []string{groups[r.Group], r.Item, spacing + " in", load + " psf"}, r.Published, "irc-2018"), err
}

func overhang(r Reading) ([]Expected, error) {
	spacing, _, err := pair(r.Condition, "%s oc", "at %s span")
	return in("joist-overhangs", []string{groups[r.Group], r.Item, spacing + " in", "40 psf"}, r.Published, "dca6-2012"), err
}

func cantilever(r Reading) ([]Expected, error) {
	span, load, err := pair(r.Condition, "back span %s", "%s live")
	return in("joist-cantilevers", []string{groups[r.Group], r.Item, span, load + " psf"}, false, "irc-2021", "irc-2024"), err
}

// beamSpan is a line of the older table. The newer one took its southern pine
// rows over, and the guide of 2012 prints them 3 in shorter, clear of the posts.
func beamSpan(r Reading) ([]Expected, error) {
	joists, err := one(r.Condition, "joist %s")
	if err != nil {
		return nil, err
	}
	shorter, err := less(r.Value, 3)
	if err != nil {
		return nil, err
	}
	group := "other species"
	if r.Group == "SP" {
		group = groups["SP"]
	}
	var cells []Expected
	for size := range strings.SplitSeq(r.Item, "/") {
		at := []string{group, size, "40 psf", joists}
		cells = append(cells, in("beam-spans", at, r.Published, "irc-2018", "wisconsin-decks")...)
		if r.Group == "SP" {
			cells = append(cells, in("beam-spans", at, false, "irc-2021", "irc-2024")...)
		}
		for _, cell := range in("beam-spans", at, false, "dca6-2012") {
			cell.Text = shorter + " " + r.Unit
			cells = append(cells, cell)
		}
	}
	return cells, nil
}

func singlePly(r Reading) ([]Expected, error) {
	joists, err := one(r.Condition, "joist %s")
	return in("beam-spans", []string{groups[r.Group], r.Item, "40 psf", joists}, false, "irc-2018", "irc-2021", "irc-2024"), err
}

func laterBeamSpan(r Reading) ([]Expected, error) {
	joists, err := one(r.Condition, "eff. joist %s")
	at := []string{groups["DF"], r.Item, "40 psf", joists}
	return append(in("beam-spans", at, r.Published, "irc-2021"), in("beam-spans", at, false, "irc-2024")...), err
}

// spansTable is a line of the guide's table by spans. The reading calls the
// spans of beam and joists by each other's names, which the first column of the
// table shows: it runs from 6 ft to 18 ft, and that is the beam's.
func spansTable(table string) func(Reading) ([]Expected, error) {
	return func(r Reading) ([]Expected, error) {
		beam, joists, err := pair(r.Condition, "joist %s", "beam %s")
		at := []string{"40 psf", "1500 psf", beam, joists}
		if table == "post-heights" {
			group := map[string]string{"Southern Pine": "southern pine", "DF-L incised": "douglas fir-larch"}[r.Group]
			at = []string{group, "6x6", "40 psf", beam, joists}
		}
		return in(table, at, r.Published, "dca6-2012"), err
	}
}

func footing(table string) func(Reading) ([]Expected, error) {
	return func(r Reading) ([]Expected, error) {
		area, soil, err := pair(r.Condition, "trib %s sf", "soil %s")
		return in(table, []string{r.Group, soil, area}, false, "irc-2018", "irc-2021", "irc-2024"), err
	}
}

func ledgerSpacing(r Reading) ([]Expected, error) {
	joists, err := one(r.Condition, "joist %s")
	if err != nil {
		return nil, err
	}
	kind, ok := map[string][]string{
		"lag":                            {"sawn lumber", "1-1/2 in", "lag screw", "1/2 in"},
		"bolt":                           {"sawn lumber", "1-1/2 in", "bolt", "1/2 in"},
		"bolt+1/2 washers/1in sheathing": {"sawn lumber", "1-1/2 in", "bolt", "1 in"},
		"lag 1in EWP":                    {"engineered rim board", "1 in", "lag screw", "1/2 in"},
		"lag 1-1/8 EWP":                  {"engineered rim board", "1-1/8 in", "lag screw", "1/2 in"},
	}[r.Group]
	if !ok {
		return nil, fmt.Errorf("the fastener %q is not known", r.Group)
	}
	band := []string{"band joist", "1 in", kind[2], kind[3]}
	below := func(rim []string, load string) []string { return append(slices.Clone(rim), load, joists) }
	if strings.Contains(r.Edition, "70 psf snow") {
		at := below(band, "70 psf")
		return append(in(spacings, at, r.Published, "irc-2021"), in(spacings, at, false, "irc-2024")...), nil
	}
	at := below(kind, "40 psf")
	cells := append(in(spacings, at, r.Published, "wisconsin-decks"), in(spacings, at, false, "dca6-2012")...)
	if kind[0] == "sawn lumber" {
		at = below(band, "40 psf")
		cells = append(cells, in(spacings, at, r.Published, "irc-2018", "irc-2021")...)
		cells = append(cells, in(spacings, at, false, "irc-2024")...)
	}
	return cells, nil
}

const spacings = "ledger-fastener-spacing"

func postHeight(r Reading) ([]Expected, error) {
	load, area, err := pair(r.Condition, "%s psf", "trib %s sf")
	if load == "50" {
		return nil, err
	}
	return in("post-heights", []string{groups[r.Group], r.Item, load + " psf", area}, false, "irc-2021", "irc-2024"), err
}

func in(table string, at []string, published bool, sets ...string) []Expected {
	var cells []Expected
	for _, set := range sets {
		cells = append(cells, Expected{Place: Place{Set: set, Table: table, At: at}, Published: published})
	}
	return cells
}

// one takes the words of a pattern off a text.
func one(text, pattern string) (string, error) {
	before, after, _ := strings.Cut(pattern, "%s")
	if !strings.HasPrefix(text, before) || !strings.HasSuffix(text, after) || len(text) < len(before)+len(after) {
		return "", fmt.Errorf("%q does not read %q", text, pattern)
	}
	return text[len(before) : len(text)-len(after)], nil
}

// pair does so for two texts with a comma between them, the second of which may
// follow one of several patterns.
func pair(text, first string, second ...string) (a, b string, err error) {
	left, right, _ := strings.Cut(text, ", ")
	if a, err = one(left, first); err != nil {
		return "", "", err
	}
	for _, pattern := range second {
		if b, err = one(right, pattern); err == nil {
			return a, b, nil
		}
	}
	return "", "", err
}

func less(value string, by int) (string, error) {
	n, err := strconv.Atoi(value)
	return strconv.Itoa(n - by), err
}
