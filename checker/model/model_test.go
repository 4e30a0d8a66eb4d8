package model_test

import (
	"os"
	"path/filepath"
	"strings"
	"testing"

	"plumbrule/checker/measure"
	"plumbrule/checker/model"
	"plumbrule/checker/source"
)

func read(t *testing.T, text string) (*model.Deck, []model.Problem) {
	t.Helper()
	doc, err := source.Read("test.deck.yaml", []byte(text))
	if err != nil {
		t.Fatal(err)
	}
	return model.Read(doc)
}

func TestDesignsAreRead(t *testing.T) {
	files, err := filepath.Glob("../../fixtures/designs/*.deck.yaml")
	if err != nil || len(files) < 4 {
		t.Fatal(files, err)
	}
	for _, file := range files {
		data, err := os.ReadFile(file)
		if err != nil {
			t.Fatal(err)
		}
		if _, problems := read(t, string(data)); len(problems) > 0 {
			t.Errorf("%s: %s", file, problems[0].Message)
		}
	}
}

func TestValuesAndPlaces(t *testing.T) {
	deck, problems := read(t, `
deck: 1
job: {title: Trial, revision: 3}
site: {live_load: 1.9 kPa, grade_fall: {direction: out, slope: 1 in 12}}
lumber: {framing: {species: hem-fir, incised: true}}
platforms:
  - mark: A
    outline: {walk: [{edge: house, go: 3820 mm, turn: 90}, {go: 12' 6-3/8", turn: 89.5}, {go: 3 m, turn: 90.5 deg}]}
    edges: {house: {drop: 0 in}, edge 2: {drop: 40 in, guard: none}}
    joists: {actual: 45 mm x 140 mm, lumber: framing}
stairs:
  - {headroom: open to sky, riser_opening: 3-1/2 in, lighting: false, stringers: {kind: cut, size: 2x12}}
  - {headroom: 6 ft 8 in, riser_opening: closed, lighting: {present: true, at: top landing}}
house: {openings: [{kind: door, threshold_above_decking: -1 in}]}
`)
	for _, p := range problems {
		t.Errorf("%v: %s", p.Node.Span.Start, p.Message)
	}
	if deck.Job.Revision.V != "3" || deck.Job.Revision.At != "/job/revision" {
		t.Errorf("revision %+v", deck.Job.Revision)
	}
	if deck.Site.LiveLoad.V != 1_900_000_000 || deck.Site.GradeFall.Slope.V != (measure.Slope{Rise: 1, Run: 12}) {
		t.Errorf("site %+v %+v", deck.Site.LiveLoad, deck.Site.GradeFall.Slope)
	}
	walk := deck.Platforms[0].Outline.Walk
	if walk[1].Go.V != 150*measure.Inch+3*measure.Inch/8 || walk[1].Turn.V != 89_500_000 || walk[2].Turn.V != 90_500_000 {
		t.Errorf("walk %+v %+v", walk[1].Go, walk[1].Turn)
	}
	joists := deck.Platforms[0].Joists
	if joists.Dimensions().V.Depth != 140*measure.Millimetre || joists.Lumber.V != "framing" || joists.At != "/platforms/0/joists" {
		t.Errorf("joists %+v", joists)
	}
	open, closed := deck.Stairs[0], deck.Stairs[1]
	if open.Headroom.Length != nil || open.Headroom.Word != "open to sky" || open.RiserOpening.Length.V != 7*measure.Inch/2 || open.Lighting.Present.V {
		t.Errorf("first stair %+v", open)
	}
	if closed.Headroom.Length.V != 80*measure.Inch || closed.RiserOpening.Word != "closed" || !closed.Lighting.Present.V {
		t.Errorf("second stair %+v", closed)
	}
	if open.Stringers.Dimensions().V.Depth != 45*measure.Inch/4 {
		t.Errorf("2x12 is %v deep", open.Stringers.Dimensions().V.Depth)
	}
	if deck.House.Openings[0].ThresholdAboveDecking.V != -measure.Inch {
		t.Error("a threshold may lie below the decking")
	}
	if names := deck.Platforms[0].Outline.Names(); strings.Join(names, ",") != "house,edge 2,edge 3" {
		t.Errorf("edges %v", names)
	}
}

func TestSystemIsThatOfMostLengths(t *testing.T) {
	metric, _ := read(t, "deck: 1\nstairs: [{width: 900 mm, total_rise: 1143 mm, nosing: 1 in}]\n")
	even, _ := read(t, "deck: 1\nstairs: [{width: 900 mm, nosing: 1 in}]\n")
	if metric.System != measure.Metric || even.System != measure.Imperial {
		t.Errorf("systems %v and %v", metric.System, even.System)
	}
}

func TestRefused(t *testing.T) {
	cases := []struct{ name, text, at, message, hint string }{
		{"negative length", "guards: [{height: -36 in}]", "/guards/0/height", "a length here cannot be negative", ""},
		{"unknown guard", "platforms: [{outline: {along_house: 9 ft, out_from_house: 9 ft}, edges: {front: {guard: G2}}}]\nguards: [{mark: G1}]",
			"/platforms/0/edges/front/guard", `there is no guard "G2" in this design`, `did you mean "G1"?`},
		{"no guards at all", "platforms: [{outline: {along_house: 9 ft, out_from_house: 9 ft}, edges: {front: {guard: G2}}}]",
			"/platforms/0/edges/front/guard", `there is no guard "G2" in this design`, "none is described"},
		{"unknown guard round an opening", "platforms: [{joists: {openings: [{guard: G2}, {guard: none}]}}]\nguards: [{mark: G1}]",
			"/platforms/0/joists/openings/0/guard", `there is no guard "G2" in this design`, `did you mean "G1"?`},
		{"unknown edge", "platforms: [{outline: {along_house: 9 ft, out_from_house: 9 ft}, edges: {frnt: {drop: 9 in}}}]",
			"/platforms/0/edges/frnt", `there is no edge "frnt" in this design`, `did you mean "front"?`},
		{"unknown lumber", "lumber: {framing: {}}\nplatforms: [{joists: {lumber: posts}}]", "/platforms/0/joists/lumber", `there is no lumber "posts"`, "there are: framing"},
		{"unknown platform of a stair", "platforms: [{mark: upper}]\nstairs: [{from: {platform: uper}}]", "/stairs/0/from/platform", `there is no platform "uper"`, `did you mean "upper"?`},
		{"unknown edge of a stair", "platforms: [{mark: A, outline: {along_house: 9 ft, out_from_house: 9 ft}}]\nstairs: [{from: {platform: A, edge: back}}]",
			"/stairs/0/from/edge", `there is no edge "back"`, "there are: house, right, front, left"},
		{"stair to nowhere", "platforms: [{mark: A}]\nstairs: [{to: B}]", "/stairs/0/to", `there is no platform "B"`, "there are: A"},
		{"hung from nothing", "platforms: [{mark: A, hung_from: C}]", "/platforms/0/hung_from", `there is no platform "C"`, "there are: A"},
		{"mark twice", "stairs: [{mark: ST1}, {mark: ST1}]", "/stairs/1/mark", `two stairs have the mark "ST1", the other is on line 2`, ""},
		{"too few edge names", "platforms: [{outline: {corners: [[0 ft, 0 ft], [9 ft, 0 ft], [9 ft, 9 ft]], edges: [house, right]}}]",
			"/platforms/0/outline/edges", "2 edge names for an outline of 3 corners", ""},
	}
	for _, c := range cases {
		t.Run(c.name, func(t *testing.T) {
			_, problems := read(t, "deck: 1\n"+c.text+"\n")
			if len(problems) != 1 {
				t.Fatalf("%d problems, want one: %+v", len(problems), problems)
			}
			p := problems[0]
			if p.Node.Pointer != c.at || !strings.HasPrefix(p.Message, c.message) || p.Hint != c.hint {
				t.Errorf("%s: %q (%q), want %s: %q (%q)", p.Node.Pointer, p.Message, p.Hint, c.at, c.message, c.hint)
			}
		})
	}
}
