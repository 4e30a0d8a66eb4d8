package checker_test

import (
	"bytes"
	"context"
	"fmt"
	"strings"
	"testing"

	"plumbrule/checker"
	"plumbrule/checker/compare/json"
	"plumbrule/checker/compare/text"
	"plumbrule/checker/packet/html"
	"plumbrule/checker/report"
	"plumbrule/checker/result"
	"plumbrule/checker/source"
	"plumbrule/schema"
)

// listedDeck has boards and treads that go by their listing; only the boards
// name a product.
const listedDeck = `deck: 1
platforms:
  - mark: A
    measured_to: frame
    outline: {along_house: 12 ft, out_from_house: 10 ft}
    joists: {size: 2x8, direction: out_from_house, layout: on_center, spacing: %s}
    decking:
      material: %s
      product: Fenboard 25, report 0123
      board_angle: 45
      listed_max_spacing: 16 in
      listed_max_spacing_diagonal: 12 in
stairs:
  - {mark: ST1, width: 42 in, tread: {material: composite, listed_max_stringer_spacing: 10 in}, stringers: {spacing: 12 in}}
`

// answersOf gives what one check of one set says of a text.
func answersOf(t *testing.T, set, check, text string) []result.Result {
	t.Helper()
	return outcomes(t, set, check, "listed.deck.yaml", []byte(text))
}

// A limit that the design states of a product is no figure of any set: neither
// clause nor source nor status of one stands beside it.
func TestListedLimitIsNoFigureOfTheSet(t *testing.T) {
	deck := fmt.Sprintf(listedDeck, "16 in", "composite")
	for check, sets := range map[string][]string{
		"decking/joist-spacing":   {"irc-2018", "irc-2021", "irc-2024", "new-zealand", "australia-ncc-2022"},
		"stairs/stringer-spacing": {"common-practice", "dca6-2012", "canada-nbc-2020", "ca-on"},
	} {
		for _, set := range sets {
			list := answersOf(t, set, check, deck)
			if len(list) != 1 || list[0].Outcome != result.Outside {
				t.Errorf("%s %s: %+v", set, check, list)
				continue
			}
			r := list[0]
			if r.Clause != "" || r.Source != "" || r.Table != "" || r.Status != result.StatedInDesign || r.Limit.Standard != "" {
				t.Errorf("%s %s rests on %q, %q, %q, %q", set, check, r.Clause, r.Status, r.Source, r.Table)
			}
			want := result.Listing{Place: result.Place{Pointer: "/platforms/0/decking/listed_max_spacing_diagonal", Text: "12 in"}, Product: "Fenboard 25, report 0123"}
			if check == "stairs/stringer-spacing" {
				want = result.Listing{Place: result.Place{Pointer: "/stairs/0/tread/listed_max_stringer_spacing", Text: "10 in"}}
			}
			if r.Listing == nil || r.Listing.Pointer != want.Pointer || r.Listing.Text != want.Text || r.Listing.Product != want.Product || r.Listing.Span.Start.Line == 0 {
				t.Errorf("%s %s: the listing is %+v", set, check, r.Listing)
			}
			if len(r.Related) == 0 || r.Related[len(r.Related)-1].Pointer != want.Pointer {
				t.Errorf("%s %s does not point to the listing: %+v", set, check, r.Related)
			}
		}
	}
}

// Every format cites field, line and product, and none of them a clause.
func TestEveryFormatCitesTheListing(t *testing.T) {
	in := checker.Input{Name: "listed.deck.yaml", Data: fmt.Appendf(nil, listedDeck, "16 in", "composite")}
	c := checkerFor(t, "irc-2021")
	told := map[string]string{}
	for _, format := range report.Formats() {
		var out bytes.Buffer
		if err := format.New(report.Options{Width: 400, Verbose: true}).Write(&out, c.Check(context.Background(), in)); err != nil {
			t.Fatal(err)
		}
		told[format.Name] = out.String()
	}
	p, problems, err := c.Packet(context.Background(), in, checker.PacketOptions{})
	if err != nil || len(problems) > 0 {
		t.Fatal(problems, err)
	}
	var out bytes.Buffer
	if err := html.Write(&out, p); err != nil {
		t.Fatal(err)
	}
	told["packet"] = strings.NewReplacer("<wbr>", "", "\u200b", "").Replace(out.String())
	for name, said := range told {
		said = strings.ReplaceAll(said, `\`, "")
		for _, want := range []string{"listed_max_spacing_diagonal", "Fenboard 25, report 0123", result.StatedInDesign} {
			if !strings.Contains(said, want) {
				t.Errorf("%s does not say %q", name, want)
			}
		}
		if name != "json" && !strings.Contains(said, "listed_max_spacing_diagonal, line 12") {
			t.Errorf("%s does not name the line", name)
		}
		if strings.Contains(said, "Table R507.7") {
			t.Errorf("%s cites the table of wood boards", name)
		}
	}
	doc, err := source.Read("report.json", []byte(told["json"]))
	if err != nil {
		t.Fatal(err)
	}
	for _, p := range schema.Validate("report", doc) {
		t.Errorf("the JSON report does not fit its schema: %s: %s", p.Pointer, p.Message)
	}
	if want := `"clause"`; strings.Contains(cutOut(told["json"], `"check": "decking/joist-spacing"`, `"fingerprint"`), want) {
		t.Errorf("the JSON report gives a clause beside a listing")
	}
}

// cutOut gives the text from one word to the next occurrence of another.
func cutOut(text, from, to string) string {
	_, rest, _ := strings.Cut(text, from)
	found, _, _ := strings.Cut(rest, to)
	return found
}

// Two revisions are compared by what they state, and the comparison cites it.
func TestComparisonCitesTheListing(t *testing.T) {
	was := checker.Input{Name: "was.deck.yaml", Data: fmt.Appendf(nil, listedDeck, "24 in", "composite")}
	is := checker.Input{Name: "is.deck.yaml", Data: fmt.Appendf(nil, listedDeck, "16 in", "composite")}
	r := checkerFor(t, "irc-2021").Compare(context.Background(), was, is)
	var out, lines bytes.Buffer
	if err := json.Revisions(&out, r); err != nil {
		t.Fatal(err)
	}
	if err := text.Revisions(&lines, r, text.Options{Width: 400}); err != nil {
		t.Fatal(err)
	}
	doc, err := source.Read("compare.json", out.Bytes())
	if err != nil {
		t.Fatal(err)
	}
	for _, p := range schema.Validate("compare", doc) {
		t.Errorf("the comparison does not fit its schema: %s: %s", p.Pointer, p.Message)
	}
	if !strings.Contains(out.String(), `"product": "Fenboard 25, report 0123"`) {
		t.Error("the JSON comparison does not name the product")
	}
	if !strings.Contains(lines.String(), "decking/joist-spacing Fenboard 25, report 0123: listed_max_spacing_diagonal, line 12") {
		t.Errorf("the comparison does not cite the listing:\n%s", &lines)
	}
}

// What is not wood is never held against a table of wood boards, whatever set
// is asked; without a listing it waits for that alone.
func TestOtherBoardsGoByTheirListingInEverySet(t *testing.T) {
	for _, set := range everySet(t).Sets() {
		for _, material := range []string{"composite", "pvc", "aluminum", "other"} {
			deck := fmt.Sprintf(listedDeck, "12 in", material)
			list := answersOf(t, set.ID, "decking/joist-spacing", deck)
			if len(list) == 0 {
				break // the set has no such check
			}
			if len(list) != 1 || list[0].Outcome != result.Within || list[0].Listing == nil {
				t.Errorf("%s, %s: %+v", set.ID, material, list)
			}
			bare := strings.Replace(deck, "      listed_max_spacing_diagonal: 12 in\n", "", 1)
			list = answersOf(t, set.ID, "decking/joist-spacing", bare)
			if len(list) != 1 || list[0].Outcome != result.NotShown || list[0].Needs != "platforms[].decking.listed_max_spacing_diagonal" {
				t.Errorf("%s, %s without a listing: %+v", set.ID, material, list)
			}
		}
	}
}
