package checker_test

import (
	"bytes"
	"context"
	"fmt"
	"io"
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"

	"plumbrule/checker"
	between "plumbrule/checker/compare"
	"plumbrule/checker/compare/json"
	"plumbrule/checker/compare/markdown"
	"plumbrule/checker/compare/text"
	"plumbrule/checker/result"
	"plumbrule/checker/source"
)

func revisions(t *testing.T, was, is checker.Input) *between.Revisions {
	t.Helper()
	r := checkerFor(t, "").Compare(context.Background(), was, is)
	for _, p := range append(r.Was.Problems, r.Is.Problems...) {
		t.Fatalf("%d:%d: %s", p.Span.Start.Line, p.Span.Start.Column, p.Message)
	}
	return r
}

func pairOfRevisions(t *testing.T) (was, is checker.Input) {
	t.Helper()
	return readInput(t, "../fixtures/compare/before.deck.yaml"), readInput(t, "../fixtures/compare/after.deck.yaml")
}

// changed are the states in which something is another than before.
func changed(r *between.Revisions) []string {
	var list []string
	for i := range r.Matters {
		m := &r.Matters[i]
		switch m.State {
		case between.StillOpen, between.StillAsked, between.Excused:
			if m.Trend == "" || m.Trend == between.Unchanged {
				continue
			}
		}
		list = append(list, string(m.State)+" "+m.Result().Check+": "+m.Result().Message)
	}
	return list
}

// A design against itself: nothing is changed, and nothing has become anything.
func TestCompareWithItself(t *testing.T) {
	for _, file := range append(designFiles(t), "../fixtures/compare/before.deck.yaml") {
		in := readInput(t, file)
		r := revisions(t, in, in)
		if len(r.Changes) > 0 || len(changed(r)) > 0 || r.Worse(result.Workmanship, true) {
			t.Errorf("%s: %+v\n%s", file, r.Changes, strings.Join(changed(r), "\n"))
		}
		everyFindingOnce(t, r)
	}
}

// everyFindingOnce holds that no finding of either revision is lost or told
// twice.
func everyFindingOnce(t *testing.T, r *between.Revisions) {
	t.Helper()
	count := map[*result.Result]int{}
	for i := range r.Matters {
		count[r.Matters[i].Was]++
		count[r.Matters[i].Is]++
	}
	for _, d := range []*result.Design{&r.Was, &r.Is} {
		for i := range d.Findings {
			if n := count[&d.Findings[i]]; n != 1 {
				t.Errorf("%s: %s: %q stands in %d places", d.File, d.Findings[i].Check, d.Findings[i].Message, n)
			}
		}
	}
}

// mirror gives for each state what it is on the way back.
func mirror(s between.State) between.State {
	pairs := [][2]between.State{
		{between.New, between.Gone}, {between.Revealed, between.Hidden}, {between.Asked, between.Dropped}, {between.NotShown, between.NowShown},
		{between.CouldNot, between.RanAgain},
	}
	for _, p := range pairs {
		if i := slices.Index(p[:], s); i >= 0 {
			return p[1-i]
		}
	}
	return s
}

// The way back tells the same story backwards, between revisions of one design
// and between designs that have nothing in common.
func TestCompareBothWays(t *testing.T) {
	was, is := pairOfRevisions(t)
	inputs := []checker.Input{was, is}
	for _, file := range designFiles(t) {
		inputs = append(inputs, readInput(t, file))
	}
	for i, a := range inputs {
		for _, b := range inputs[i+1:] {
			there, back := revisions(t, a, b), revisions(t, b, a)
			everyFindingOnce(t, there)
			everyFindingOnce(t, back)
			for _, s := range between.States() {
				if x, y := prints(there.Of(s)), prints(back.Of(mirror(s))); !slices.Equal(x, y) {
					t.Errorf("%s to %s, %s:\n%s\nback, %s:\n%s", a.Name, b.Name, s, strings.Join(x, "\n"), mirror(s), strings.Join(y, "\n"))
				}
			}
		}
	}
	r := revisions(t, was, is)
	for _, s := range []between.State{between.New, between.Gone, between.StillOpen, between.NotShown, between.NowShown, between.Asked, between.StillAsked} {
		if len(r.Of(s)) == 0 {
			t.Errorf("the fixture has nothing that is %s", s)
		}
	}
}

// prints tells matters apart whichever way they are compared.
func prints(list []*between.Matter) []string {
	var all []string
	for _, m := range list {
		words := []string{m.Result().Set, m.Result().Check}
		for _, r := range []*result.Result{m.Was, m.Is} {
			if r != nil {
				words = append(words, r.Fingerprint)
			}
		}
		slices.Sort(words[2:])
		all = append(all, strings.Join(words, " "))
	}
	slices.Sort(all)
	return all
}

// Elements with marks in another order are the same elements, and so are the
// findings on them.
func TestCompareReordered(t *testing.T) {
	for _, file := range designFiles(t) {
		in := readInput(t, file)
		turned := checker.Input{Name: "turned.deck.json", Data: reversed(t, in)}
		r := revisions(t, in, turned)
		for _, c := range r.Changes {
			if c.Kind != between.Moved {
				t.Errorf("%s: %s: %s", file, c.Kind, c.Name)
			}
		}
		if list := changed(r); len(list) > 0 {
			t.Errorf("%s:\n%s", file, strings.Join(list, "\n"))
		}
		everyFindingOnce(t, r)
	}
}

// reversed writes a design with all lists of marked elements the other way
// round.
func reversed(t *testing.T, in checker.Input) []byte {
	t.Helper()
	doc, err := source.Read(in.Name, in.Data)
	if err != nil {
		t.Fatal(err)
	}
	var out bytes.Buffer
	writeReversed(&out, doc.Root)
	return out.Bytes()
}

func writeReversed(out *bytes.Buffer, n *source.Node) {
	switch n.Kind {
	case source.Object:
		out.WriteByte('{')
		for i, m := range n.Members {
			if i > 0 {
				out.WriteByte(',')
			}
			fmt.Fprintf(out, "%q:", m.Key)
			writeReversed(out, m.Value)
		}
		out.WriteByte('}')
	case source.Array:
		items := slices.Clone(n.Items)
		if !slices.ContainsFunc(items, func(item *source.Node) bool { return item.Member("mark") == nil }) {
			slices.Reverse(items)
		}
		out.WriteByte('[')
		for i, item := range items {
			if i > 0 {
				out.WriteByte(',')
			}
			writeReversed(out, item)
		}
		out.WriteByte(']')
	case source.String:
		fmt.Fprintf(out, "%q", n.Text)
	default:
		out.WriteString(n.Text)
	}
}

// Leaving out one field after the other: no finding is lost or told twice, the
// change is the field, and putting it back tells the reverse.
func TestCompareWithoutOneField(t *testing.T) {
	in := readInput(t, "../fixtures/compare/before.deck.yaml")
	lines := strings.Split(string(in.Data), "\n")
	tried := 0
	for i, line := range lines {
		if !regexp.MustCompile(`^    [a-z_]+: [^{\[]+$`).MatchString(line) {
			continue
		}
		without := slices.Delete(slices.Clone(lines), i, i+1)
		less := checker.Input{Name: in.Name, Data: []byte(strings.Join(without, "\n"))}
		if r := checkerFor(t, "").Compare(context.Background(), in, less); len(r.Is.Problems) > 0 {
			continue // what is left contradicts itself
		}
		r, back := revisions(t, in, less), revisions(t, less, in)
		everyFindingOnce(t, r)
		if len(r.Changes) != 1 || r.Changes[0].Kind != between.NotShownNow || len(back.Changes) != 1 || back.Changes[0].Kind != between.Shown {
			t.Errorf("without %q: %+v", line, r.Changes)
		}
		if a, b := prints(r.Of(between.Hidden)), prints(back.Of(between.Revealed)); !slices.Equal(a, b) {
			t.Errorf("without %q hidden are %v, and with it revealed %v", line, a, b)
		}
		for _, m := range r.Of(between.Gone) {
			if m.Reason == "" && m.Is == nil && slices.ContainsFunc(r.Is.Findings, func(f result.Result) bool {
				return f.Check == m.Was.Check && f.Outcome == result.NotShown && f.Mark == m.Was.Mark
			}) {
				t.Errorf("without %q %s counts as gone, though nobody can tell", line, m.Was.Check)
			}
		}
		tried++
	}
	if tried < 8 {
		t.Errorf("only %d fields left out", tried)
	}
}

// What both say and both lack is the same, in whatever units a revision is typed.
func TestCompareInOtherUnits(t *testing.T) {
	in := readInput(t, "../fixtures/designs/alder-lane.deck.yaml")
	inches := regexp.MustCompile(`(: |, |\[)(\d+) in([,}\]]|$)`)
	metric := regexp.MustCompile(`(?m)`+inches.String()).ReplaceAllFunc(in.Data, func(m []byte) []byte {
		parts := inches.FindSubmatch(m)
		n, err := strconv.ParseFloat(string(parts[2]), 64)
		if err != nil {
			t.Fatal(err)
		}
		return fmt.Appendf(nil, "%s%g mm%s", parts[1], n*25.4, parts[3])
	})
	if bytes.Count(metric, []byte(" mm")) < 10 {
		t.Fatal("too little was put into millimetres")
	}
	r := revisions(t, in, checker.Input{Name: in.Name, Data: metric})
	if len(r.Changes) > 0 || len(changed(r)) > 0 {
		t.Errorf("%+v\n%s", r.Changes, strings.Join(changed(r), "\n"))
	}
}

// Each format of both comparisons stands beside the fixture as it is written,
// and was read line by line before it was accepted.
func TestCompareFormats(t *testing.T) {
	const dir = "../fixtures/compare/"
	was, is := pairOfRevisions(t)
	r := revisions(t, was, is)
	sets, err := checker.New(checker.Options{Sets: []string{"irc-2018", "irc-2021", "us-mi"}})
	if err != nil {
		t.Fatal(err)
	}
	s := sets.CompareSets(context.Background(), is)
	for name, write := range map[string]func(io.Writer) error{
		"revisions.text.want":     func(w io.Writer) error { return text.Revisions(w, r, text.Options{Verbose: true}) },
		"revisions.json.want":     func(w io.Writer) error { return json.Revisions(w, r) },
		"revisions.markdown.want": func(w io.Writer) error { return markdown.Revisions(w, r) },
		"sets.text.want":          func(w io.Writer) error { return text.Sets(w, s, text.Options{Width: 100}) },
		"sets.json.want":          func(w io.Writer) error { return json.Sets(w, s) },
		"sets.markdown.want":      func(w io.Writer) error { return markdown.Sets(w, s) },
	} {
		var out bytes.Buffer
		if err := write(&out); err != nil {
			t.Errorf("%s: %v", name, err)
		}
		compare(t, filepath.FromSlash(dir+name), out.String())
	}
}

// Sets that are compared with themselves differ in nothing, and an amendment
// differs in what it amends.
func TestCompareSets(t *testing.T) {
	data, err := os.ReadFile("../fixtures/compare/after.deck.yaml")
	if err != nil {
		t.Fatal(err)
	}
	c, err := checker.New(checker.Options{Sets: []string{"irc-2021", "us-mi"}})
	if err != nil {
		t.Fatal(err)
	}
	s := c.CompareSets(context.Background(), checker.Input{Name: "after.deck.yaml", Data: data})
	amended := []string{"footings/depth", "stairs/riser-height", "stairs/tread-depth"}
	for i := range s.Rows {
		if !slices.Contains(amended, s.Rows[i].Check) {
			t.Errorf("%s differs in %s", s.Rows[i].Check, s.Rows[i].Difference)
		}
	}
	for _, check := range amended {
		if !slices.ContainsFunc(s.Rows, func(r between.Row) bool { return r.Check == check }) {
			t.Errorf("%s does not differ", check)
		}
	}
	if s.Same < 100 || len(s.Gaps[0])+len(s.Gaps[1]) > 0 {
		t.Errorf("%d the same, gaps %v", s.Same, s.Gaps)
	}
	if !s.Worse(result.Structure, false) || s.Worse(result.LifeSafety, false) {
		t.Error("deeper footings are of structure, and lower stairs are worse for nobody")
	}
}
