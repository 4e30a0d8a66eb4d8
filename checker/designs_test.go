package checker_test

import (
	"bytes"
	"context"
	"fmt"
	"os"
	"path/filepath"
	"runtime"
	"slices"
	"strings"
	"testing"

	"plumbrule/checker"
	"plumbrule/checker/report/json"
	"plumbrule/checker/report/text"
	"plumbrule/checker/result"
)

func designFiles(t testing.TB) []string {
	t.Helper()
	files, err := filepath.Glob("../fixtures/designs/*.deck.yaml")
	if err != nil || len(files) < 4 {
		t.Fatal(files, err)
	}
	return files
}

func readInput(t testing.TB, file string) checker.Input {
	t.Helper()
	data, err := os.ReadFile(file)
	if err != nil {
		t.Fatal(err)
	}
	return checker.Input{Name: filepath.Base(file), Data: data}
}

// What the default sets say of each design stands beside it, one line per
// finding, and was read line by line before it was accepted.
func TestDesigns(t *testing.T) {
	for _, file := range designFiles(t) {
		t.Run(filepath.Base(file), func(t *testing.T) {
			report := checkerFor(t, "").Check(context.Background(), readInput(t, file))
			d := &report.Designs[0]
			if len(d.Problems) > 0 {
				t.Fatalf("cannot be read: %+v", d.Problems)
			}
			if d.Counts.CouldNotRun > 0 {
				t.Errorf("%d checks could not run", d.Counts.CouldNotRun)
			}
			var out bytes.Buffer
			if err := text.New(text.Options{Compact: true}).Write(&out, report); err != nil {
				t.Fatal(err)
			}
			fmt.Fprintf(&out, "disposition: %s\n", d.Disposition)
			compare(t, strings.TrimSuffix(file, ".deck.yaml")+".want", out.String())
		})
	}
}

// Every finding points at a place of the file, has a fingerprint of its own,
// and says what it needs to say.
func TestFindingsAreWhole(t *testing.T) {
	for _, file := range designFiles(t) {
		report := checkerFor(t, "").Check(context.Background(), readInput(t, file))
		d := &report.Designs[0]
		prints := map[string]string{}
		for i := range d.Findings {
			r := &d.Findings[i]
			if r.Span.Start.Line < 1 || r.Span.End.Offset > len(d.Document.Bytes) || len(r.At) == 0 || d.Document.Find(r.At[0]) == nil {
				t.Errorf("%s: %s points nowhere: %+v", file, r.Check, r.Span)
			}
			if r.Message == "" || strings.ContainsAny(r.Message, "\n{}") || strings.HasSuffix(r.Message, ".") {
				t.Errorf("%s: %s says %q", file, r.Check, r.Message)
			}
			key := r.Fingerprint + r.Set
			if other, twice := prints[key]; twice {
				t.Errorf("%s: %q and %q have one fingerprint", file, other, r.Message)
			}
			prints[key] = r.Message
		}
	}
}

// The reviewer's design was typed in with what a hand check finds in it; the
// checks named here have to find it too.
func TestWhatAHandCheckFinds(t *testing.T) {
	report := checkerFor(t, "").Check(context.Background(), readInput(t, "../fixtures/designs/ketch-point.deck.yaml"))
	outcomes := map[result.Outcome][]string{}
	for _, r := range report.Designs[0].Findings {
		outcomes[r.Outcome] = append(outcomes[r.Outcome], r.Check)
	}
	wanted := map[result.Outcome][]string{
		result.Outside: {
			"stairs/tread-count", "stairs/tread-depth", "stairs/riser-height", "stairs/riser-variation", "stairs/riser-sum",
			"stairs/open-riser", "handrail/height", "handrail/grip", "handrail/continuity", "guards/opening", "guards/required",
			"joists/span", "joists/cantilever", "decking/joist-spacing", "layout/rectangle",
			"ledger/substrate", "beams/ply-joint", "footings/area", "posts/height", "scope/hot-tub",
		},
		result.NotShown: {
			"footings/depth", "ledger/flashing", "ledger/lateral-devices", "joists/hangers", "guards/post-fixing",
			"stairs/stringer-spacing", "stairs/landing", "stairs/lighting", "ledger/fastener-placement",
		},
	}
	for outcome, checks := range wanted {
		for _, check := range checks {
			if !slices.Contains(outcomes[outcome], check) {
				t.Errorf("%s is not %s", check, outcome)
			}
		}
	}
}

// A plain deck that every US edition should find in order.
func TestPlainDeckHasNothingOutside(t *testing.T) {
	for _, set := range []string{"irc-2018", "irc-2021", "irc-2024", "common-practice"} {
		report := checkerFor(t, set).Check(context.Background(), readInput(t, "../fixtures/designs/alder-lane.deck.yaml"))
		for _, r := range report.Designs[0].Findings {
			if r.Outcome == result.Outside || r.Outcome == result.CouldNotRun {
				t.Errorf("%s: %s: %s", set, r.Check, r.Message)
			}
		}
	}
}

// Same input, same bytes, however the work is shared out.
func TestSameInputSameBytes(t *testing.T) {
	var inputs []checker.Input
	for _, file := range designFiles(t) {
		inputs = append(inputs, readInput(t, file))
	}
	defer runtime.GOMAXPROCS(runtime.GOMAXPROCS(0))
	first := ""
	for i := range 6 {
		runtime.GOMAXPROCS(1 + 7*(i%2))
		report := checkerFor(t, "").Check(context.Background(), inputs...)
		var out bytes.Buffer
		if err := json.New(json.Options{}).Write(&out, report); err != nil {
			t.Fatal(err)
		}
		if err := text.New(text.Options{Width: 100, Verbose: true}).Write(&out, report); err != nil {
			t.Fatal(err)
		}
		switch {
		case first == "":
			first = out.String()
		case first != out.String():
			t.Fatalf("run %d differs from the first", i+1)
		}
	}
}

// What is no text of a design at all is said in every format, and the other
// designs of the run are reported on.
func TestEmptyAndForeignFiles(t *testing.T) {
	plain := readInput(t, "../fixtures/designs/alder-lane.deck.yaml")
	for name, data := range map[string]string{
		"empty": "", "blank": "\n\n", "comments": "# nothing here\n", "utf-16": "\xff\xfed\x00", "binary": "\x00\x01\xff", "text": "not a design",
	} {
		report := checkerFor(t, "").Check(context.Background(), checker.Input{Name: name + ".deck.yaml", Data: []byte(data)}, plain)
		if n := len(report.Designs[0].Problems); n == 0 {
			t.Errorf("%s: no problem is reported", name)
		}
		var out bytes.Buffer
		if err := text.New(text.Options{Width: 80}).Write(&out, report); err != nil {
			t.Errorf("%s: %v", name, err)
		}
		if !strings.Contains(out.String(), "cannot read") || !strings.Contains(out.String(), "alder-lane") {
			t.Errorf("%s: the report says\n%s", name, out.String())
		}
	}
}

// A file that cannot be read costs itself only.
func TestBrokenFileCostsItselfOnly(t *testing.T) {
	report := checkerFor(t, "").Check(context.Background(),
		checker.Input{Name: "broken.deck.yaml", Data: []byte("deck: [1\n")},
		checker.Input{Name: "absent.deck.yaml", Err: os.ErrNotExist},
		checker.Input{Name: "crossed.deck.yaml", Data: []byte("deck: 1\nplatforms: [{outline: {corners: [[0 ft, 0 ft], [9 ft, 0 ft], [0 ft, 9 ft], [9 ft, 9 ft]]}}]\n")},
		readInput(t, "../fixtures/designs/alder-lane.deck.yaml"))
	for i, want := range []result.Disposition{result.NotReviewed, result.NotReviewed, result.NotReviewed, result.NoExceptions} {
		if got := report.Designs[i].Disposition; got != want {
			t.Errorf("%s: %q, want %q", report.Designs[i].File, got, want)
		}
	}
	if p := report.Designs[2].Problems; len(p) != 1 || p[0].Span.Start.Line != 2 || !strings.Contains(p[0].Message, "cannot be drawn") {
		t.Errorf("crossed outline: %+v", p)
	}
}
