package checker_test

import (
	"context"
	"strings"
	"testing"

	"plumbrule/checker"
	"plumbrule/checker/result"
)

// amendedDeck has a value for every figure that the shipped amendments change.
const amendedDeck = `deck: 1
job: {title: Amber Court deck}
site: {live_load: 60 psf, frost_depth: 12 in}
platforms:
  - mark: A
    support: ledger
    measured_to: frame
    outline: {along_house: 12 ft, out_from_house: 10 ft}
    edges: {front: {drop: 20 in, drop_within_36_in: 20 in}}
    joists: {size: 2x8, direction: out_from_house, layout: on_center, spacing: 16 in}
    beams:
      - {mark: B1, size: 2x10, plies: 2, kind: dropped, from_house: 1 ft, posts_at: [1 ft, 6 ft, 11 ft]}
      - {mark: B2, size: 2x10, plies: 2, kind: dropped, from_house: 9 ft, posts_at: [1 ft, 6 ft, 11 ft]}
    posts: {size: 6x6}
    footings: {shape: round, diameter: 20 in, thickness: 10 in, depth: 60 in, soil: undisturbed}
stairs:
  - mark: ST1
    total_rise: 35 in
    risers: 5
    tread_depth: 10 in
    nosing: 1 in
    riser_opening: closed
    handrail: {sides: 1, height: 36 in, projection: 3 in}
guards:
  - {mark: G1, height: 44 in}
`

// amendment is one figure that a shipped set changes, with values inside, at
// and outside of it, not all of which fall out alike under the model code. No
// value lies inside a live load that is also the last that the tables cover.
type amendment struct {
	set, check, field   string
	inside, at, outside []string
	amended             string
}

const (
	rise      = "/stairs/0/total_rise" // of five risers
	treads    = "/stairs/0/tread_depth"
	depth     = "/platforms/0/footings/depth"
	liveLoad  = "/site/live_load"
	edgeDrop  = "/platforms/0/edges/front/drop_within_36_in"
	railing   = "/stairs/0/handrail/height"
	guardHigh = "/guards/0/height"
)

func amendments() []amendment {
	return []amendment{
		{"us-pa-ucc", "stairs/riser-height", rise, []string{"41-15/64 in", "1047.74 mm"}, []string{"41-1/4 in", "1047.75 mm"}, []string{"41-17/64 in", "1047.76 mm"},
			"amended by Pennsylvania, 34 Pa. Code 403.21; replaces 7-3/4 in (irc-2021 R311.7.5.1)"},
		{"us-pa-ucc", "stairs/tread-depth", treads, []string{"9-1/64 in", "228.61 mm"}, []string{"9 in", "228.6 mm"}, []string{"8-63/64 in", "228.59 mm"},
			"amended by Pennsylvania, 34 Pa. Code 403.21; replaces 10 in (irc-2021 R311.7.5.2)"},
		{"us-pa-ucc", "stairs/nosing", "/stairs/0/nosing", []string{"1-31/64 in", "38.09 mm"}, []string{"1-1/2 in", "38.1 mm"}, []string{"1-33/64 in", "38.11 mm"},
			"amended by Pennsylvania, 34 Pa. Code 403.21; replaces 1-1/4 in (irc-2021 R311.7.5.3)"},
		{"us-pa-ucc", "handrail/projection", "/stairs/0/handrail/projection", []string{"3-31/64 in", "88.89 mm"}, []string{"3-1/2 in", "88.9 mm"}, []string{"3-33/64 in", "88.91 mm"},
			"amended by Pennsylvania, 34 Pa. Code 403.21; replaces 4-1/2 in (irc-2021 R311.7.1)"},
		{"us-nm", "stairs/riser-height", rise, []string{"39-63/64 in", "1015.99 mm"}, []string{"40 in", "1016 mm"}, []string{"40-1/64 in", "1016.01 mm"},
			"amended by New Mexico, NMAC 14.7.3, R311.7.5.1; replaces 7-3/4 in (irc-2021 R311.7.5.1)"},
		{"us-nm", "stairs/tread-depth", treads, []string{"9-1/64 in", "228.61 mm"}, []string{"9 in", "228.6 mm"}, []string{"8-63/64 in", "228.59 mm"},
			"amended by New Mexico, NMAC 14.7.3, R311.7.5.2; replaces 10 in (irc-2021 R311.7.5.2)"},
		{"us-mi", "stairs/riser-height", rise, []string{"41-15/64 in", "1047.74 mm"}, []string{"41-1/4 in", "1047.75 mm"}, []string{"41-17/64 in", "1047.76 mm"},
			"amended by Michigan, MCL 125.1513d; replaces 7-3/4 in (irc-2021 R311.7.5.1)"},
		{"us-mi", "stairs/tread-depth", treads, []string{"9-1/64 in", "228.61 mm"}, []string{"9 in", "228.6 mm"}, []string{"8-63/64 in", "228.59 mm"},
			"amended by Michigan, MCL 125.1513d; replaces 10 in (irc-2021 R311.7.5.2)"},
		{"us-mi", "footings/depth", depth, []string{"42-1/64 in", "1066.81 mm"}, []string{"42 in", "1066.8 mm"}, []string{"41-63/64 in", "1066.79 mm"},
			"added by Michigan, Mich. Admin. Code R 408.30516"},
		{"us-wi", "guards/required", edgeDrop, []string{"23-63/64 in", "609.59 mm"}, []string{"24 in", "609.6 mm"}, []string{"24-1/64 in", "609.61 mm"},
			"amended by Wisconsin, SPS 320-325 App. B sec. 13; replaces 30 in (irc-2021 R312.1.1)"},
		{"us-wi", "handrail/height", railing, []string{"30-1/64 in", "762.01 mm"}, []string{"30 in", "762 mm"}, []string{"29-63/64 in", "761.99 mm"},
			"amended by Wisconsin, SPS 320-325 App. B sec. 14; replaces 34 in (irc-2021 R311.7.8.1)"},
		{"us-wi-howard", "guards/required", edgeDrop, []string{"23-63/64 in", "609.59 mm"}, []string{"24 in", "609.6 mm"}, []string{"24-1/64 in", "609.61 mm"},
			"amended by Wisconsin, SPS 320-325 App. B sec. 13; replaces 30 in (irc-2021 R312.1.1)"},
		{"us-wi-howard", "stairs/riser-height", rise, []string{"39-63/64 in", "1015.99 mm"}, []string{"40 in", "1016 mm"}, []string{"40-1/64 in", "1016.01 mm"},
			"amended by Village of Howard, Wisconsin, village guideline; replaces 7-3/4 in (irc-2021 R311.7.5.1)"},
		{"us-wi-howard", "footings/depth", depth, []string{"48-1/64 in", "1219.21 mm"}, []string{"48 in", "1219.2 mm"}, []string{"47-63/64 in", "1219.19 mm"},
			"amended by Village of Howard, Wisconsin, village guideline; replaces 12 in (irc-2021 R403.1.4)"},
		{"us-ct-durham", "stairs/riser-height", rise, []string{"41-15/64 in", "1047.74 mm"}, []string{"41-1/4 in", "1047.75 mm"}, []string{"41-17/64 in", "1047.76 mm"},
			"amended by Town of Durham, Connecticut, town handout; replaces 7-3/4 in (irc-2021 R311.7.5.1)"},
		{"us-ct-durham", "stairs/tread-depth", treads, []string{"9-1/64 in", "228.61 mm"}, []string{"9 in", "228.6 mm"}, []string{"8-63/64 in", "228.59 mm"},
			"amended by Town of Durham, Connecticut, town handout; replaces 10 in (irc-2021 R311.7.5.2)"},
		{"us-ct-durham", "footings/depth", depth, []string{"42-1/64 in", "1066.81 mm"}, []string{"42 in", "1066.8 mm"}, []string{"41-63/64 in", "1066.79 mm"},
			"amended by Town of Durham, Connecticut, town handout; replaces 12 in (irc-2021 R403.1.4)"},
		{"us-ca-guard-42", "guards/height", guardHigh, []string{"42-1/64 in", "1066.81 mm"}, []string{"42 in", "1066.8 mm"}, []string{"41-63/64 in", "1066.79 mm"},
			"amended by California, CRC R312.1; replaces 36 in (irc-2021 R312.1.2)"},
		{"us-ca-pleasanton", "guards/height", guardHigh, []string{"42-1/64 in", "1066.81 mm"}, []string{"42 in", "1066.8 mm"}, []string{"41-63/64 in", "1066.79 mm"},
			"amended by California, CRC R312.1; replaces 36 in (irc-2021 R312.1.2)"},
		{"us-ca-pleasanton", "scope/live-load", liveLoad, nil, []string{"60 psf"}, []string{"59.99 psf", "2.87 kPa"},
			"amended by City of Pleasanton, California, Pleasanton 20.10.050; replaces 40 psf (irc-2021 Table R301.5)"},
		{"us-wa", "scope/live-load", liveLoad, nil, []string{"60 psf"}, []string{"59.99 psf", "2.87 kPa"},
			"amended by Washington, Table R301.5 as amended; replaces 40 psf (irc-2021 Table R301.5)"},
		{"us-oh-brooklyn", "footings/depth", depth, []string{"36-1/64 in", "914.41 mm"}, []string{"36 in", "914.4 mm"}, []string{"35-63/64 in", "914.39 mm"},
			"amended by City of Brooklyn, Ohio, permit drawing list; replaces 12 in (irc-2021 R403.1.4)"},
		{"us-pa-philadelphia-existing", "guards/height", guardHigh, []string{"30-1/64 in", "762.01 mm"}, []string{"30 in", "762 mm"}, []string{"29-63/64 in", "761.99 mm"},
			"amended by City of Philadelphia, existing buildings, PM-307.1; replaces 36 in (irc-2021 R312.1.2)"},
		{"us-pa-philadelphia-existing", "handrail/height", railing, []string{"41-63/64 in", "1066.79 mm"}, []string{"42 in", "1066.8 mm"}, []string{"42-1/64 in", "1066.81 mm"},
			"amended by City of Philadelphia, existing buildings, PM-307.1; replaces 38 in (irc-2021 R311.7.8.1)"},
		{"us-oh-toledo-existing", "guards/required", edgeDrop, []string{"35-63/64 in", "914.39 mm"}, []string{"36 in", "914.4 mm"}, []string{"36-1/64 in", "914.41 mm"},
			"amended by City of Toledo, existing buildings, Toledo code 1745.12; replaces 30 in (irc-2021 R312.1.1)"},
		{"us-oh-toledo-existing", "guards/height", guardHigh, []string{"30-1/64 in", "762.01 mm"}, []string{"30 in", "762 mm"}, []string{"29-63/64 in", "761.99 mm"},
			"amended by City of Toledo, existing buildings, Toledo code 1745.12; replaces 36 in (irc-2021 R312.1.2)"},
	}
}

// amendedSets are the shipped amendments, with those that take a check out.
func amendedSets() []string {
	sets := []string{"us-ia-ankeny", "us-nj-light"}
	taken := map[string]bool{}
	for _, a := range amendments() {
		if !taken[a.set] {
			taken[a.set] = true
			sets = append(sets, a.set)
		}
	}
	return sets
}

// underBoth checks the design under the model code and under an amendment of
// it, and gives what became of one check, by set.
func underBoth(t *testing.T, c *checker.Checker, set, check, field, value string) map[string][]result.Result {
	t.Helper()
	const name = "amber-court.deck.yaml"
	data := []byte(amendedDeck)
	if field != "" {
		data = retype(t, name, data, field, value)
	}
	d := c.Check(context.Background(), checker.Input{Name: name, Data: data, Sets: []string{"irc-2021", set}}).Designs[0]
	for _, p := range d.Problems {
		t.Fatalf("%s = %s: %d:%d: %s", field, value, p.Span.Start.Line, p.Span.Start.Column, p.Message)
	}
	by := map[string][]result.Result{}
	for _, r := range append(d.Findings, d.Readings...) {
		if r.Check == check {
			by[r.Set] = append(by[r.Set], r)
		}
	}
	return by
}

func newAmended(t *testing.T) *checker.Checker {
	t.Helper()
	if c, ok := checkers.Load("amendments"); ok {
		return c.(*checker.Checker)
	}
	c, err := checker.New(checker.Options{Sets: append([]string{"irc-2021"}, amendedSets()...)})
	if err != nil {
		t.Fatal(err)
	}
	checkers.Store("amendments", c)
	return c
}

// TestAmendments types values inside, at and outside of every amended figure,
// in inches and millimetres, and sees that the town's figure decides and is
// said to, and that the model code would have said otherwise.
func TestAmendments(t *testing.T) {
	c := newAmended(t)
	for _, a := range amendments() {
		t.Run(a.set+"/"+strings.ReplaceAll(a.check, "/", " "), func(t *testing.T) {
			differs, said := false, false
			for i, values := range [][]string{a.inside, a.at, a.outside} {
				for _, value := range values {
					by := underBoth(t, c, a.set, a.check, a.field, value)
					outside := has(by[a.set], result.Outside)
					if outside != (i == 2) {
						t.Errorf("%s = %s: outside is %t", a.field, value, outside)
					}
					differs = differs || has(by["irc-2021"], result.Outside) != outside
					for _, r := range by[a.set] {
						said = said || r.Amended == a.amended
					}
				}
			}
			if !differs {
				t.Error("the model code says the same, so that nothing was amended")
			}
			if !said {
				t.Errorf("no result says %q", a.amended)
			}
		})
	}
}

// TestChecksTakenOut holds the amendments that leave a section out against the
// model code.
func TestChecksTakenOut(t *testing.T) {
	c := newAmended(t)
	for _, tt := range []struct{ set, check, field, value, reason string }{
		{"us-nj-light", "stairs/lighting", "", "", "taken out by New Jersey, R303.6 deleted, as of 2011: "},
		{"us-ia-ankeny", "stairs/open-riser", "/stairs/0/riser_opening", "5 in", "taken out by City of Ankeny, Iowa, R311.7.5.1 exception 4 (City of Ankeny): "},
	} {
		by := underBoth(t, c, tt.set, tt.check, tt.field, tt.value)
		list := by[tt.set]
		if len(list) != 1 || list[0].Outcome != result.DoesNotApply || !strings.HasPrefix(list[0].Reason, tt.reason) {
			t.Errorf("%s: %+v", tt.set, list)
		}
		if model := by["irc-2021"]; !has(model, result.Outside) && !has(model, result.NotShown) && !has(model, result.DoesNotApply) {
			t.Errorf("%s: the model code has nothing to take out: %+v", tt.set, model)
		}
	}
}

// TestAmendedCount asks for a handrail from the fifth riser on, where the model
// code does from the fourth.
func TestAmendedCount(t *testing.T) {
	c := newAmended(t)
	const set, check = "us-pa-philadelphia-existing", "handrail/required"
	bare := strings.Replace(amendedDeck, "{sides: 1,", "{sides: 0,", 1)
	for risers, want := range map[string]bool{"3": false, "4": false, "5": true, "6": true} {
		data := retype(t, "amber-court.deck.yaml", []byte(bare), "/stairs/0/risers", risers)
		d := c.Check(context.Background(), checker.Input{Name: "amber-court.deck.yaml", Data: data, Sets: []string{"irc-2021", set}}).Designs[0]
		outside := map[string]bool{}
		for _, r := range d.Findings {
			if r.Check == check && r.Outcome == result.Outside {
				outside[r.Set] = true
			}
		}
		if outside[set] != want || outside["irc-2021"] != (risers != "3") {
			t.Errorf("%s risers without a handrail: outside %v", risers, outside)
		}
	}
}
