package compare

import (
	"fmt"
	"strings"
	"testing"

	"plumbrule/checker/source"
)

func read(t testing.TB, name, text string) *source.Document {
	t.Helper()
	doc, err := source.Read(name, []byte(text))
	if err != nil {
		t.Fatal(err)
	}
	return doc
}

// lines writes changes as "kind: name: old -> new".
func lines(t testing.TB, was, is string) []string {
	t.Helper()
	a, b := read(t, "was.yaml", was), read(t, "is.yaml", is)
	var list []string
	for _, c := range pair(a, b).changes(a, b) {
		list = append(list, fmt.Sprintf("%s: %s: %s -> %s", c.Kind, c.Name, c.Was.Text, c.Is.Text))
	}
	return list
}

func TestChanges(t *testing.T) {
	cases := []struct {
		name, was, is string
		want          []string
	}{
		{"nothing", "stairs: [{mark: ST1, risers: 6}]", "stairs:\n- risers: 6\n  mark: ST1\n", nil},
		{
			"other units and spellings of all quantities",
			`{site: {live_load: 40 psf, frost_depth: 42 in, grade_fall: {slope: 1 in 50}}, platforms: [{mark: A, loads: [{weight: 1000 lb, at: [14 ft, 6 ft]}], decking: {board_angle: 45}, rim_joist: {size: 2x10}, beams: [{actual: 45 mm x 140 mm}]}], stairs: [{headroom: 6 ft 8 in}]}`,
			`{site: {live_load: 40.0 psf, frost_depth: 1066.8 mm, grade_fall: {slope: 2%}}, platforms: [{mark: A, loads: [{weight: 1 kip, at: ["168 in", "72 in"]}], decking: {board_angle: 45 deg}, rim_joist: {size: 2 x 10}, beams: [{actual: 4.5 cm x 14 cm}]}], stairs: [{headroom: 80 in}]}`,
			nil,
		},
		{"a title is no length", "job: {title: 12 ft}", "job: {title: 144 in}", []string{"changed: job: title: 12 ft -> 144 in"}},
		{"a load in another unit is another load", "site: {live_load: 40 psf}", "site: {live_load: 1.9 kPa}", []string{"changed: site: live load: 40 psf -> 1.9 kPa"}},
		{"a word in place of a length", "stairs: [{mark: ST1, headroom: 7 ft}]", "stairs: [{mark: ST1, headroom: open to sky}]", []string{"changed: stair ST1: headroom: 7 ft -> open to sky"}},
		{"a number in quotes is the same revision", "job: {revision: 2}", `job: {revision: "2"}`, nil},
		{"shown and not shown any more", "site: {live_load: 40 psf, soil_bearing: null}", "site: {soil_bearing: 1500 psf}",
			[]string{"not shown now: site: live load: 40 psf -> ", "now shown: site: soil bearing:  -> 1500 psf"}},
		{"another element in front", "guards: [{mark: G1, height: 36 in}, {mark: G2, height: 36 in}]", "guards: [{mark: G0, height: 42 in}, {mark: G1, height: 36 in}, {mark: G2, height: 38 in}]",
			[]string{"added: guard G0:  -> {mark: G0, height: 42 in}", "changed: guard G2: height: 36 in -> 38 in"}},
		{"an element without a mark in front", "stairs: [{risers: 6, width: 36 in, tread_depth: 10 in}]", "stairs: [{risers: 3, width: 4 ft, tread_depth: 11 in}, {risers: 6, width: 36 in, tread_depth: 10-1/2 in}]",
			[]string{"added: stair 1:  -> {risers: 3, width: 4 ft, tread_depth: 11 in}", "changed: stair 2: tread depth: 10 in -> 10-1/2 in"}},
		{"a post in front", "platforms: [{mark: A, beams: [{mark: B1, posts_at: [8 ft, 15 ft]}]}]", "platforms: [{mark: A, beams: [{mark: B1, posts_at: [1 ft, 8 ft, 15 ft]}]}]",
			[]string{"added: platform A, beam B1: posts at, number 1:  -> 1 ft"}},
		{"a post moved and another put in", "platforms: [{beams: [{posts_at: [1 ft, 7 ft, 15 ft]}]}]", "platforms: [{beams: [{posts_at: [1 ft, 6 ft 6 in, 11 ft, 15 ft]}]}]",
			[]string{"changed: platform 1, beam 1: posts at, number 2: 7 ft -> 6 ft 6 in", "added: platform 1, beam 1: posts at, number 3:  -> 11 ft"}},
		{"in another order", "guards: [{mark: G1, height: 36 in}, {mark: G2, height: 42 in}, {mark: G3}]", "guards: [{mark: G3}, {mark: G1, height: 36 in}, {mark: G2, height: 42 in}]",
			[]string{"moved: guard G3: number 3 -> number 1"}},
		{"values in another order", "stairs: [{measured_risers: [7 in, 8 in]}]", "stairs: [{measured_risers: [8 in, 7 in]}]",
			[]string{"moved: stair 1: measured risers, number 2: number 1 -> number 2"}},
		{"another mark", "guards: [{mark: G1, height: 36 in}]", "guards: [{mark: GA, height: 36 in}]", []string{"changed: guard GA: mark: G1 -> GA"}},
		{"a mark put on", "guards: [{height: 36 in, see: S3}]", "guards: [{mark: G1, height: 37 in, see: S3}]",
			[]string{"now shown: guard G1: mark:  -> G1", "changed: guard G1: height: 36 in -> 37 in"}},
		{"two marks alike", "guards: [{mark: G, height: 36 in}, {mark: G, height: 42 in}]", "guards: [{mark: G, height: 36 in}, {mark: G, height: 40 in}]",
			[]string{"changed: guard G: height: 42 in -> 40 in"}},
		{"another element in place of one", "stairs: [{mark: ST1, risers: 6}]", "stairs: [{mark: ST2, risers: 9}]",
			[]string{"removed: stair ST1: {mark: ST1, risers: 6} -> ", "added: stair ST2:  -> {mark: ST2, risers: 9}"}},
		{"the legs of a walk by their edges", "platforms: [{outline: {walk: [{edge: house, go: 16 ft, turn: 90}, {edge: front, go: 16 ft, turn: 90}]}}]",
			"platforms: [{outline: {walk: [{edge: house, go: 16 ft, turn: 90}, {edge: right, go: 4 ft, turn: 90}, {edge: front, go: 15 ft, turn: 90}]}}]",
			[]string{"added: platform 1, outline, walk right:  -> {edge: right, go: 4 ft, turn: 90}", "changed: platform 1, outline, walk front: go: 16 ft -> 15 ft"}},
		{"a corner is one value", "platforms: [{outline: {corners: [[0 ft, 0 ft], [16 ft, 0 ft]]}}]", "platforms: [{outline: {corners: [[0 ft, 0 ft], [15 ft, 0 in]]}}]",
			[]string{"changed: platform 1: outline, corners, number 2: [16 ft, 0 ft] -> [15 ft, 0 in]"}},
		{"a list of elements that was not there", "stairs: []", "{stairs: [{mark: ST1}], guards: [{mark: G1}]}",
			[]string{"added: stair ST1:  -> {mark: ST1}", "added: guard G1:  -> {mark: G1}"}},
		{"a description in place of a word", "stairs: [{lighting: true}]", "stairs: [{lighting: {present: true}}]", []string{"changed: stair 1: lighting: true -> {present: true}"}},
		{"an element with many values is counted", "stairs: []", "stairs: [{mark: S, risers: 1, treads: 1, width: 1 in, nosing: 1 in, tread_depth: 1 in, total_rise: 1 in, total_run: 1 in, measured_risers: [1 in, 1 in, 1 in, 1 in, 1 in]}]",
			[]string{"added: stair S:  -> 13 values"}},
	}
	for _, c := range cases {
		t.Run(c.name, func(t *testing.T) {
			got := lines(t, c.was, c.is)
			if strings.Join(got, "\n") != strings.Join(c.want, "\n") {
				t.Errorf("got\n%s\nwant\n%s", strings.Join(got, "\n"), strings.Join(c.want, "\n"))
			}
		})
	}
}

// TestChangesBothWays sees to it that the way back tells the same story.
func TestChangesBothWays(t *testing.T) {
	was := "guards: [{mark: G1, height: 36 in}, {mark: G2}, {height: 1 in, see: S1}]\nsite: {live_load: 40 psf}\nstairs: [{measured_risers: [7 in, 8 in, 9 in]}]"
	is := "guards: [{mark: G2}, {mark: G1, height: 40 in}, {height: 2 in, see: S1}, {mark: G9}]\nstairs: [{measured_risers: [7 in, 9 in]}]"
	there, back := lines(t, was, is), lines(t, is, was)
	if len(there) != len(back) || len(there) < 5 {
		t.Fatalf("there\n%s\nback\n%s", strings.Join(there, "\n"), strings.Join(back, "\n"))
	}
	mirror := map[string]string{"added": "removed", "removed": "added", "now shown": "not shown now", "not shown now": "now shown"}
	count := map[string]int{}
	for _, line := range there {
		kind, _, _ := strings.Cut(line, ":")
		count[kind]++
	}
	for _, line := range back {
		kind, _, _ := strings.Cut(line, ":")
		if other := mirror[kind]; other != "" {
			kind = other
		}
		count[kind]--
	}
	for kind, n := range count {
		if n != 0 {
			t.Errorf("%s: %d more there than back", kind, n)
		}
	}
}

// TestPlaces holds the places of a value that one revision lacks.
func TestPlaces(t *testing.T) {
	a := read(t, "was.yaml", "site:\n  live_load: 40 psf\n  frost_depth: 30 in\n")
	b := read(t, "is.yaml", "# moved down\nsite:\n  live_load: 50 psf\n")
	list := pair(a, b).changes(a, b)
	if len(list) != 2 {
		t.Fatal(list)
	}
	gone, load := list[0], list[1]
	if load.Was.Span.Start.Line != 2 || load.Is.Span.Start.Line != 3 || load.Is.Pointer != "/site/live_load" {
		t.Errorf("the load: %+v", load)
	}
	if gone.Was.Span.Start.Line != 3 || !gone.Is.Missing || gone.Is.Pointer != "/site" || gone.Is.Span.Start.Line != 3 || gone.Is.Span.Start != gone.Is.Span.End {
		t.Errorf("the frost depth: %+v", gone)
	}
}

// TestLongLists sees to it that lists of absurd length take no absurd time, and
// that every entry is still accounted for.
func TestLongLists(t *testing.T) {
	const n = 3000
	entries := func(start int) string {
		var b strings.Builder
		for i := range n {
			fmt.Fprintf(&b, "%d in,", start+i)
		}
		return "stairs: [{measured_risers: [" + b.String() + "]}]"
	}
	if got := len(lines(t, entries(1), entries(n+1))); got != n {
		t.Errorf("%d changes, want %d", got, n)
	}
}

func TestRising(t *testing.T) {
	for _, c := range []struct {
		numbers []int
		stay    int
	}{{nil, 0}, {[]int{0, 1, 2}, 3}, {[]int{2, 0, 1}, 2}, {[]int{1, 0}, 1}, {[]int{3, 2, 1, 0}, 1}, {[]int{0, 4, 1, 2, 3}, 4}} {
		if got := len(rising(c.numbers)); got != c.stay {
			t.Errorf("%v: %d stay, want %d", c.numbers, got, c.stay)
		}
	}
}
