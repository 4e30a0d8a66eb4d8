package checker_test

import (
	"bytes"
	"cmp"
	"context"
	"os"
	"path/filepath"
	"runtime"
	"slices"
	"strconv"
	"strings"
	"testing"

	"plumbrule/checker"
	"plumbrule/checker/edit"
	"plumbrule/checker/report/json"
	"plumbrule/checker/result"
	"plumbrule/checker/source"
)

// menderFor gives a checker that tries remedies, of one set or the default ones.
func menderFor(t testing.TB, set string) *checker.Checker {
	t.Helper()
	return prepared(t, preparation{set: set, remedies: true})
}

func only(t testing.TB, c *checker.Checker, name, text string) result.Design {
	t.Helper()
	d := c.Check(context.Background(), checker.Input{Name: name, Data: []byte(text)}).Designs[0]
	for _, p := range d.Problems {
		t.Fatalf("%s:%d: %s", name, p.Span.Start.Line, p.Message)
	}
	return d
}

// applied types the changes of a remedy into a text, from the last to the first.
func applied(text string, remedy *result.Remedy) string {
	changes := slices.Clone(remedy.Changes)
	slices.SortFunc(changes, func(a, b result.Change) int { return cmp.Compare(b.Span.Start.Offset, a.Span.Start.Offset) })
	for _, c := range changes {
		text = text[:c.Span.Start.Offset] + c.Text + text[c.Span.End.Offset:]
	}
	return text
}

// spoken is what a report says of an element: one check of one set, in one way.
type spoken struct {
	set, check, needs, element string
	outcome                    result.Outcome
}

// element is the innermost thing of a list that a place lies in, a stair or a
// beam. Posts of a beam and what is typed for a stair belong to it.
func element(at string) string {
	tokens := strings.Split(at, "/")
	for i := len(tokens) - 1; i > 0; i-- {
		_, err := strconv.Atoi(tokens[i])
		if err == nil && tokens[i-1] != "posts_at" && tokens[i-1] != "ply_joints_at" {
			return strings.Join(tokens[:i+1], "/")
		}
	}
	return ""
}

// excesses are by how much the findings on a design lie outside, worked out here
// from what was measured and its limit: 0 where nothing was measured.
func excesses(d *result.Design) map[spoken][]float64 {
	list := map[spoken][]float64{}
	for _, f := range d.Findings {
		excess := 0.0
		if f.Have != nil && f.Limit != nil && f.Have.Unit != "" && f.Have.Unit == f.Limit.Unit {
			excess = max(f.Have.Number-f.Limit.Number, f.Limit.Number-f.Have.Number)
		}
		key := spoken{f.Set, f.Check, f.Needs, element(f.At[0]), f.Outcome}
		list[key] = append(list[key], excess)
	}
	for _, e := range list {
		slices.SortFunc(e, func(a, b float64) int { return cmp.Compare(b, a) })
	}
	return list
}

// holds types a remedy in and checks the design anew, without the search: what
// it clears has to be gone, and nothing else may be worse.
func holds(t *testing.T, name, text, set string, before *result.Design, f *result.Result, remedy *result.Remedy) {
	t.Helper()
	after := only(t, checkerFor(t, set), name, applied(text, remedy))
	was, is := excesses(before), excesses(&after)
	for key, list := range is {
		if len(list) > len(was[key]) {
			t.Errorf("%s: %s: with %q there is something else: %v", name, f.Check, remedy.Text, key)
			continue
		}
		for i := range list {
			if list[i] > was[key][i]+1e-9 {
				t.Errorf("%s: %s: with %q this is farther outside: %v, %v and not %v", name, f.Check, remedy.Text, key, list, was[key])
			}
		}
	}
	for _, c := range remedy.Clears {
		for _, g := range after.Findings {
			if g.Check == c.Check && g.Set == c.Set && g.At[0] == c.At {
				t.Errorf("%s: %s: with %q it still says: %s", name, c.Check, remedy.Text, g.Message)
			}
		}
	}
	if !slices.ContainsFunc(remedy.Clears, func(c result.Cleared) bool { return c.Check == f.Check && c.Set == f.Set && c.At == f.At[0] }) {
		t.Errorf("%s: %s: %q does not say that it clears this", name, f.Check, remedy.Text)
	}
	if after.Counts.Outside > before.Counts.Outside-len(remedy.Clears) {
		t.Errorf("%s: %s: with %q there are %d findings outside, there were %d, and it clears %d",
			name, f.Check, remedy.Text, after.Counts.Outside, before.Counts.Outside, len(remedy.Clears))
	}
}

// agree holds the remedies of a design against each other: what clears several
// findings stands under each of them, and of two changes of the same value
// neither leaves a finding that the other clears.
func agree(t *testing.T, d *result.Design) {
	t.Helper()
	const most = 3
	clears := func(r *result.Remedy, f *result.Result) bool {
		return slices.ContainsFunc(r.Clears, func(c result.Cleared) bool { return c.Check == f.Check && c.Set == f.Set && c.At == f.At[0] })
	}
	for i := range d.Findings {
		for j := range d.Findings[i].Remedies {
			one := &d.Findings[i].Remedies[j]
			for k := range d.Findings {
				f := &d.Findings[k]
				same := slices.ContainsFunc(f.Remedies, func(r result.Remedy) bool { return r.Changes[0].Pointer == one.Changes[0].Pointer })
				if clears(one, f) && !same && len(f.Remedies) < most {
					t.Errorf("%s: %q clears %s and does not stand under it", d.File, one.Text, f.Check)
				}
				for n := range f.Remedies {
					other := &f.Remedies[n]
					if other.Changes[0].Pointer == one.Changes[0].Pointer && slices.Contains(f.At, one.Changes[0].Pointer) && !clears(one, f) {
						t.Errorf("%s: %q leaves %s outside, %q does not", d.File, one.Text, f.Check, other.Text)
					}
				}
			}
		}
	}
}

// unmendedFixtures are the checks that name changes of which none holds on their
// fixtures, with the reason.
func unmendedFixtures() map[string]string {
	return map[string]string{
		"decking/last-row": "no gap that a set accepts makes a board of the sliver",
		"posts/height":     "the posts are taller than any in the table, or their load or species is in none",
	}
}

// Every remedy that is printed is typed in by this test and holds.
func TestRemediesHold(t *testing.T) {
	type design struct{ file, set string }
	var designs []design
	for _, f := range fixtureFolders(t) {
		files, err := filepath.Glob(filepath.Join(f.dir, "outside*.deck.yaml"))
		if err != nil {
			t.Fatal(err)
		}
		for _, file := range files {
			designs = append(designs, design{file, f.set()})
		}
	}
	for _, file := range designFiles(t) {
		designs = append(designs, design{file, ""})
	}
	findings, mended, remedies := 0, 0, 0
	byCheck := map[string]bool{}
	for _, one := range designs {
		data, err := os.ReadFile(one.file)
		if err != nil {
			t.Fatal(err)
		}
		d := only(t, menderFor(t, one.set), filepath.Base(one.file), string(data))
		agree(t, &d)
		for i := range d.Findings {
			f := &d.Findings[i]
			if f.Outcome != result.Outside {
				continue
			}
			findings++
			byCheck[f.Check] = byCheck[f.Check] || len(f.Remedies) > 0
			if len(f.Remedies) > 0 {
				mended++
			}
			for j := range f.Remedies {
				remedies++
				if !toldBy(menderFor(t, one.set), f, f.Remedies[j].Text) {
					t.Errorf("%s: no word of its remedies tells %q", f.Check, f.Remedies[j].Text)
				}
				holds(t, filepath.Base(one.file), string(data), one.set, &d, f, &f.Remedies[j])
			}
		}
	}
	checks := 0
	known, err := checker.Checks()
	if err != nil {
		t.Fatal(err)
	}
	for id, has := range byCheck {
		if has {
			checks++
		} else if len(known.Find(id).Tries) > 0 && unmendedFixtures()[id] == "" {
			t.Errorf("%s names changes, and none of them is offered anywhere", id)
		}
	}
	t.Logf("%d designs, %d findings outside: %d with remedies, %d without; %d remedies typed in; %d of %d checks have some",
		len(designs), findings, mended, findings-mended, remedies, checks, len(byCheck))
	if mended < 145 || checks < 90 {
		t.Errorf("remedies for %d findings of %d checks are fewer than there were", mended, checks)
	}
}

// A change that mends its finding is not offered where something else pays for
// it. Each case says which change that would be and what it breaks, and the
// test makes the change itself to see that it does.
func TestRemedyThatBreaksSomethingElse(t *testing.T) {
	heron, err := os.ReadFile("../fixtures/designs/heron-lane.deck.yaml")
	if err != nil {
		t.Fatal(err)
	}
	frame := func(joists, beam string) string {
		return `deck: 1
site: {live_load: 40 psf, ground_snow_load: 25 psf}
lumber: {framing: {species: southern pine, grade: No. 2, treated: true, incised: false, wet_service: true}}
platforms:
  - mark: A
    support: ledger
    measured_to: frame
    outline: {along_house: 12 ft, out_from_house: ` + beam + `
    ledger: {size: 2x10, lumber: framing}
    joists: {` + joists + `, lumber: framing, direction: out_from_house, layout: on_center}
`
	}
	for _, c := range []struct {
		name, text, check string
		from, to          string // the change that must not be offered
		breaks            string
	}{
		{"a riser more asks for a handrail", string(heron), "stairs/riser-height", "risers: 3", "risers: 4", "handrail/required"},
		{
			"deeper joists do not fit a flush beam",
			frame("size: 2x8, spacing: 16 in", "13 ft}\n    beams: [{mark: B1, kind: flush, size: 2x8, plies: 3, lumber: framing, from_house: 12 ft 11 in, posts_at: [1 ft, 6 ft, 11 ft]}]\n    posts: {size: 6x6}"),
			"joists/span", "joists: {size: 2x8", "joists: {size: 2x10", "beams/depth",
		},
		{
			"a beam closer to the house leaves too much past it",
			frame("size: 2x10, spacing: 16 in", "18 ft}\n    beams: [{mark: B1, kind: dropped, size: 2x12, plies: 3, lumber: framing, from_house: 14 ft 8 in, posts_at: [1 ft, 6 ft, 11 ft]}]\n    posts: {size: 6x6}"),
			"joists/span", "from_house: 14 ft 8 in", "from_house: 14 ft 3 in", "joists/cantilever",
		},
	} {
		t.Run(c.name, func(t *testing.T) {
			d := only(t, menderFor(t, "irc-2021"), "a.deck.yaml", c.text)
			i := slices.IndexFunc(d.Findings, func(f result.Result) bool { return f.Check == c.check && f.Outcome == result.Outside })
			if i < 0 || strings.Count(c.text, c.from) != 1 {
				t.Fatalf("nothing outside by %s", c.check)
			}
			text := strings.Replace(c.text, c.from, c.to, 1)
			changed := only(t, checkerFor(t, "irc-2021"), "a.deck.yaml", text)
			says := func(d *result.Design, check string) bool {
				return slices.ContainsFunc(d.Findings, func(f result.Result) bool { return f.Check == check && f.Outcome == result.Outside })
			}
			if says(&changed, c.check) || says(&d, c.breaks) || !says(&changed, c.breaks) {
				t.Fatalf("the change does not trade %s for %s", c.check, c.breaks)
			}
			for j := range d.Findings[i].Remedies {
				remedy := &d.Findings[i].Remedies[j]
				t.Log("offered:", remedy.Text)
				holds(t, "a.deck.yaml", c.text, "irc-2021", &d, &d.Findings[i], remedy)
				if applied(c.text, remedy) == text {
					t.Errorf("%q is offered", remedy.Text)
				}
			}
		})
	}
}

// What is stated beside a value follows when it changes, and both are said.
func TestStatedTotalsFollow(t *testing.T) {
	const text = `{"deck": 1, "stairs": [{"mark": "ST1", "total_rise": "7' 9\"", "total_run": "9' 2\"", "risers": 11, "treads": 10,
	"tread_depth": "11 in", "width": "36 in", "handrail": {"sides": 1, "height": "36 in"}}]}`
	d := only(t, menderFor(t, "irc-2021"), "a.deck.json", text)
	for _, f := range d.Findings {
		if f.Check != "stairs/riser-height" {
			continue
		}
		if len(f.Remedies) == 0 {
			t.Fatal("no remedy")
		}
		const want = `12 risers instead of 11 and 11 treads instead of 10 and total run 10 ft 1 in instead of 9' 2": measured 7-3/4", at the limit`
		if f.Remedies[0].Text != want {
			t.Errorf("got  %s\nwant %s", f.Remedies[0].Text, want)
		}
		if changed := applied(text, &f.Remedies[0]); !strings.Contains(changed, `"total_run": "10 ft 1 in", "risers": 12, "treads": 11`) {
			t.Errorf("typed in it is\n%s", changed)
		}
		return
	}
	t.Error("the risers are not outside")
}

// A value typed in again as it stands changes nothing that is found.
func TestValueTypedAgain(t *testing.T) {
	in := readInput(t, "../fixtures/designs/heron-lane.deck.yaml")
	doc, err := source.Read(in.Name, in.Data)
	if err != nil {
		t.Fatal(err)
	}
	found := func(data []byte) string {
		var out bytes.Buffer
		report := checkerFor(t, "").Check(context.Background(), checker.Input{Name: in.Name, Data: data})
		for _, list := range [][]result.Result{report.Designs[0].Findings, report.Designs[0].Readings} {
			for _, r := range list {
				out.WriteString(r.Set + r.Check + string(r.Outcome) + r.Message + r.Fingerprint + "\n")
			}
		}
		return out.String()
	}
	want := found(in.Data)
	var visit func(n *source.Node)
	visit = func(n *source.Node) {
		for _, m := range n.Members {
			visit(m.Value)
		}
		for _, item := range n.Items {
			visit(item)
		}
		if n.Parent == nil {
			return
		}
		data, err := edit.Apply(doc, []edit.Edit{{Pointer: n.Pointer, Value: n}})
		if err != nil {
			t.Fatal(err)
		}
		if got := found(data); got != want {
			t.Errorf("%s typed again changes what is found", n.Pointer)
		}
	}
	visit(doc.Root)
}

// The same remedies, in the same order, however the trials are shared out.
func TestSameRemediesOnAnyMachine(t *testing.T) {
	in := readInput(t, "../fixtures/designs/quarry-hill.deck.yaml")
	defer runtime.GOMAXPROCS(runtime.GOMAXPROCS(0))
	first := ""
	for _, procs := range []int{1, 2, 8} {
		runtime.GOMAXPROCS(procs)
		var out bytes.Buffer
		if err := json.New(json.Options{}).Write(&out, menderFor(t, "").Check(context.Background(), in)); err != nil {
			t.Fatal(err)
		}
		if first == "" {
			first = out.String()
		}
		if out.String() != first || !strings.Contains(first, `"remedies"`) {
			t.Errorf("%d processors: another report", procs)
		}
	}
}

// Nothing is tried for what cannot be read, and a run that was stopped offers
// nothing half tried.
func TestNoRemediesWithoutChecks(t *testing.T) {
	ctx, cancel := context.WithCancel(context.Background())
	cancel()
	in := readInput(t, "../fixtures/designs/heron-lane.deck.yaml")
	report := menderFor(t, "").Check(ctx, in, checker.Input{Name: "torn.deck.yaml", Data: []byte("deck: [\n")}, checker.Input{Name: "gone.deck.yaml", Err: os.ErrNotExist})
	for _, d := range report.Designs {
		for _, f := range d.Findings {
			if len(f.Remedies) > 0 {
				t.Errorf("%s: %s", d.File, f.Remedies[0].Text)
			}
		}
	}
}

func BenchmarkRemedies(b *testing.B) {
	for _, file := range designFiles(b) {
		b.Run(strings.TrimSuffix(filepath.Base(file), ".deck.yaml"), func(b *testing.B) {
			in, c := readInput(b, file), menderFor(b, "")
			for b.Loop() {
				c.Check(context.Background(), in)
			}
		})
	}
}

// spelled writes a design anew: as JSON, or as YAML in block style.
func spelled(b *strings.Builder, n *source.Node, indent string, asJSON bool) {
	entry := func(lead string, value *source.Node) {
		b.WriteString(lead)
		if block := len(value.Members)+len(value.Items) > 0; block && !asJSON {
			b.WriteString("\n")
			spelled(b, value, indent+"  ", asJSON)
			return
		}
		spelled(b, value, "", asJSON)
		if !asJSON {
			b.WriteString("\n")
		}
	}
	brackets := map[source.Kind][2]string{source.Object: {"{", "}"}, source.Array: {"[", "]"}}[n.Kind]
	inside := asJSON || len(n.Members)+len(n.Items) == 0
	if inside {
		b.WriteString(brackets[0])
		defer func() { b.WriteString(brackets[1]) }()
	}
	comma := func(i int) {
		if asJSON && i > 0 {
			b.WriteString(",\n")
		}
	}
	switch n.Kind {
	case source.Object:
		for i, m := range n.Members {
			comma(i)
			if asJSON {
				entry(strconv.Quote(m.Key)+": ", m.Value)
			} else {
				entry(indent+m.Key+": ", m.Value)
			}
		}
	case source.Array:
		for i, item := range n.Items {
			comma(i)
			if asJSON {
				entry("", item)
			} else {
				entry(indent+"- ", item)
			}
		}
	case source.String:
		b.WriteString(strconv.Quote(n.Text))
	default:
		b.WriteString(n.Text)
	}
}

// The same design has the same remedies in every spelling, and they can be typed
// into each.
func TestRemediesInEverySpelling(t *testing.T) {
	in := readInput(t, "../fixtures/designs/ketch-point.deck.yaml")
	doc, err := source.Read(in.Name, in.Data)
	if err != nil {
		t.Fatal(err)
	}
	var block, asJSON strings.Builder
	spelled(&block, doc.Root, "", false)
	spelled(&asJSON, doc.Root, "", true)
	var want []string
	for name, text := range map[string]string{in.Name: string(in.Data), "block.deck.yaml": block.String(), "a.deck.json": asJSON.String()} {
		d := only(t, menderFor(t, ""), name, text)
		var got []string
		for i := range d.Findings {
			for j := range d.Findings[i].Remedies {
				remedy := &d.Findings[i].Remedies[j]
				got = append(got, d.Findings[i].Message+": "+remedy.Text)
				holds(t, name, text, "", &d, &d.Findings[i], remedy)
			}
		}
		slices.Sort(got)
		if want == nil {
			want = got
		}
		if !slices.Equal(got, want) || len(got) < 15 {
			t.Errorf("%s: %d remedies\n%s\nelsewhere\n%s", name, len(got), strings.Join(got, "\n"), strings.Join(want, "\n"))
		}
	}
}
