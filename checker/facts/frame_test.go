package facts_test

import (
	"fmt"
	"strings"
	"testing"

	"plumbrule/checker/facts"
	"plumbrule/checker/measure"
)

// frame is a platform of 2x10 joists on a 2x10 ledger; outline and beams are
// left to the case.
func frame(outline, joists, beams string) string {
	return "platforms:\n" +
		"  - mark: A\n    support: ledger\n    measured_to: frame\n    outline: " + outline + "\n" +
		"    ledger: {size: 2x10}\n    rim_joist: {size: 2x10}\n" +
		"    joists: {size: 2x10, direction: out_from_house, " + joists + "}\n" +
		"    beams:\n" + beams
}

const (
	onCenter16 = "layout: on_center, spacing: 16 in"
	twelveOut  = "{along_house: 16 ft, out_from_house: 12 ft}"
)

func dropped(mark, where string) string {
	return fmt.Sprintf("      - {mark: %s, size: 2x10, plies: 2, kind: dropped, %s}\n", mark, where)
}

func flush(mark, where string) string {
	return fmt.Sprintf("      - {mark: %s, size: 2x10, plies: 2, kind: flush, %s}\n", mark, where)
}

// spans writes spans and cantilevers as lines, to compare a whole frame at once.
func spans(f *facts.Facts) string {
	var b strings.Builder
	text := func(l *facts.Length) string {
		if l == nil {
			return "?"
		}
		return l.Value.Text(measure.Imperial)
	}
	for _, s := range f.JoistSpans {
		fmt.Fprintf(&b, "%d %s to %s: clear %s, center %s %s\n", s.Count, s.From, s.To, text(s.ClearSpan), text(s.SpanToCenter), strings.Join(s.Missing, " "))
	}
	for _, c := range f.JoistCantilevers {
		fmt.Fprintf(&b, "%d past %s: %s behind it %s %s\n", c.Count, c.Past, text(c.Cantilever), text(c.BackSpan), strings.Join(c.Missing, " "))
	}
	for _, r := range f.JoistRuns {
		fmt.Fprintf(&b, "%d cut %s\n", r.Count, text(r.Length))
	}
	return b.String()
}

// Every expected length below was worked out by hand from the plan: a beam of
// two plies is 3 in wide, a ledger and a rim 1-1/2 in.
func TestFrames(t *testing.T) {
	cases := []struct{ name, design, want string }{
		{
			"rectangle on one beam",
			frame(twelveOut, onCenter16, dropped("B1", "from_house: 10 ft")),
			// 120 - 1-1/2 - 1-1/2 = 117 clear; 120 - 3/4 to center; 144 - 120 past it; 144 - 3 cut.
			"13 ledger to B1: clear 9'-9\", center 9'-11 1/4\" \n" +
				"13 past B1: 24\" behind it 9'-11 1/4\" \n" +
				"13 cut 11'-9\"\n",
		},
		{
			"two beams, the last under the ends",
			frame(twelveOut, onCenter16, dropped("B1", "from_house: 6 ft")+dropped("B2", "from_house: 142-1/2 in")),
			"13 ledger to B1: clear 5'-9\", center 5'-11 1/4\" \n" +
				"13 B1 to B2: clear 5'-7 1/2\", center 5'-10 1/2\" \n" +
				"13 cut 11'-9\"\n",
		},
		{
			"flush beam cuts the joists",
			frame(twelveOut, onCenter16, flush("B1", "from_house: 6 ft")+dropped("B2", "from_house: 142-1/2 in")),
			"13 ledger to B1: clear 5'-9\", center 5'-11 1/4\" \n" +
				"13 B1 to B2: clear 5'-7 1/2\", center 5'-10 1/2\" \n" +
				// 72 - 1-1/2 - 1-1/2, and 144 - 73-1/2 less the rim.
				"26 cut 5'-9\"\n",
		},
		{
			"plies not shown: no clear span, never a guess",
			frame(twelveOut, onCenter16, "      - {mark: B1, size: 2x10, kind: dropped, from_house: 10 ft}\n"),
			"13 ledger to B1: clear ?, center 9'-11 1/4\" platforms[].beams[].plies\n" +
				"13 past B1: 24\" behind it 9'-11 1/4\" \n" +
				"13 cut 11'-9\"\n",
		},
		{
			"no beam shown",
			strings.TrimSuffix(frame(twelveOut, onCenter16, ""), "    beams:\n"),
			"13 ledger to edge: clear ?, center ? platforms[].beams\n",
		},
		{
			"L: joists reach different edges, an outside joist closes the inner side",
			frame("{corners: [[0 ft, 0 ft], [16 ft, 0 ft], [16 ft, 8 ft], [8 ft, 8 ft], [8 ft, 14 ft], [0 ft, 14 ft]], edges: [house, right, return, inner, front, left]}", "layout: equal, max_spacing: 16 in",
				dropped("B1", "from_house: 7 ft")+dropped("B2", "line: [[0 ft, 13 ft], [8 ft, 13 ft]]")),
			// 13 joists at 15.875 in; the center of the seventh falls on the inner edge at 96 in, so it closes that side.
			"13 ledger to B1: clear 6'-9\", center 6'-11 1/4\" \n" +
				"7 B1 to B2: clear 5'-9\", center 6'-0\" \n" +
				"7 past B2: 12\" behind it 6'-0\" \n" +
				"6 past B1: 12\" behind it 6'-11 1/4\" \n" +
				"7 cut 13'-9\"\n6 cut 7'-9\"\n",
		},
		{
			"L: an outside joist is added where the layout leaves the inner side open",
			frame("{corners: [[0 ft, 0 ft], [16 ft, 0 ft], [16 ft, 8 ft], [8 ft, 8 ft], [8 ft, 14 ft], [0 ft, 14 ft]], edges: [house, right, return, inner, front, left]}", "layout: on_center, spacing: 18 in",
				dropped("B1", "from_house: 7 ft")+dropped("B2", "line: [[0 ft, 13 ft], [8 ft, 13 ft]]")),
			// Joists at 0, 18, ... 180 and 190-1/2 in, 12 of them; those to 90 in, six, and one at 94-1/2 run on to 14 ft.
			"13 ledger to B1: clear 6'-9\", center 6'-11 1/4\" \n" +
				"7 B1 to B2: clear 5'-9\", center 6'-0\" \n" +
				"7 past B2: 12\" behind it 6'-0\" \n" +
				"6 past B1: 12\" behind it 6'-11 1/4\" \n" +
				"7 cut 13'-9\"\n6 cut 7'-9\"\n",
		},
		{
			"angled flush beam across a clipped corner",
			frame("{corners: [[0 ft, 0 ft], [8 ft, 0 ft], [8 ft, 6 ft], [4 ft, 10 ft], [0 ft, 10 ft]], edges: [house, right, clip, front, left]}", "layout: on_center, spacing: 48 in",
				dropped("B1", "line: [[0 ft, 9 ft], [4 ft, 9 ft]]")+flush("B2", "line: [[8 ft, 6 ft], [4 ft, 10 ft]]")),
			// Joists at 0, 4 and 8 ft, near edges: centers at 3/4, 48-3/4 and 95-1/4 in. The second meets the beam's line at
			// 168 - 48-3/4 = 119-1/4, the third at 72-3/4; across the joist the beam is 3 x sqrt 2 wide, half of it 2.1213 in.
			"1 ledger to B1: clear 8'-9\", center 8'-11 1/4\" \n" +
				"2 ledger to B2: clear 9'-7.6287\", center 9'-10 1/2\" \n" +
				"1 past B1: 12\" behind it 8'-11 1/4\" \n" +
				"1 cut 9'-9\"\n1 cut 9'-7.6287\"\n1 cut 5'-9.1287\"\n",
		},
		{
			"opening: headers carry the cut joists",
			frame(twelveOut, onCenter16+", openings: [{what: tree, corners: [[4 ft, 4 ft], [6 ft, 4 ft], [6 ft, 6 ft], [4 ft, 6 ft]], headers: {size: 2x10, plies: 2}}]",
				dropped("B1", "from_house: 10 ft")),
			// The joists at 48-3/4 and 64-3/4 in end at 4 ft and start again at 6 ft, each with 3 in of header:
			// 48 - 1-1/2 - 3 clear, 120 - 1-1/2 - 75 clear, and 144 - 1-1/2 - 75 cut.
			"11 ledger to B1: clear 9'-9\", center 9'-11 1/4\" \n" +
				"2 ledger to header: clear 43-1/2\", center 45-3/4\" \n" +
				"2 header to B1: clear 43-1/2\", center 46-1/2\" \n" +
				"11 past B1: 24\" behind it 9'-11 1/4\" \n" +
				"2 past B1: 24\" behind it 46-1/2\" \n" +
				"11 cut 11'-9\"\n2 cut 43-1/2\"\n2 cut 5'-7 1/2\"\n",
		},
		{
			"outline without a named house edge: the ledger has no place",
			frame("{corners: [[0 ft, 0 ft], [8 ft, 0 ft], [8 ft, 6 ft]]}", onCenter16, dropped("B1", "from_house: 4 ft")),
			"0  to : clear ?, center ? platforms[].outline.edges\n",
		},
	}
	for _, c := range cases {
		t.Run(c.name, func(t *testing.T) {
			got := spans(derive(t, c.design))
			if got != c.want {
				t.Errorf("got\n%s\nwant\n%s", got, c.want)
			}
		})
	}
}
