package remedy_test

import (
	"context"
	"fmt"
	"slices"
	"strconv"
	"strings"
	"sync"
	"sync/atomic"
	"testing"

	"plumbrule/checker/measure"
	"plumbrule/checker/mending"
	"plumbrule/checker/remedy"
	"plumbrule/checker/result"
	"plumbrule/checker/source"
)

// toy is a design of as many stairs as widths, checked by one rule: a stair is
// at least 36 in wide. What it says beside that is up to the test.
type toy struct {
	calls atomic.Int64
	also  func(widths []measure.Length) []result.Result
}

func text(widths ...string) string {
	return "stairs:\n  - {width: " + strings.Join(widths, "}\n  - {width: ") + "}\n"
}

func (c *toy) check(_ context.Context, data []byte) result.Design {
	c.calls.Add(1)
	doc, err := source.Read("toy.deck.yaml", data)
	if err != nil {
		return result.Design{Problems: []result.Problem{{Message: err.Error()}}}
	}
	d := result.Design{File: doc.Name, Document: doc}
	var widths []measure.Length
	for i, stair := range doc.Find("/stairs").Items {
		l, _, err := measure.ParseLength(stair.Member("width").Value.Text)
		if err != nil {
			return result.Design{Problems: []result.Problem{{Message: err.Error()}}}
		}
		widths = append(widths, l)
		d.Findings = append(d.Findings, reading("stairs/width", "/stairs/"+strconv.Itoa(i)+"/width", l, 36*measure.Inch))
	}
	if c.also != nil {
		d.Findings = append(d.Findings, c.also(widths)...)
	}
	d.Readings = slices.DeleteFunc(slices.Clone(d.Findings), func(r result.Result) bool { return r.Outcome != result.Within })
	d.Findings = slices.DeleteFunc(d.Findings, func(r result.Result) bool { return r.Outcome == result.Within })
	return d
}

// reading compares a length with the least that it may be.
func reading(check, at string, have, limit measure.Length) result.Result {
	value := func(l measure.Length) *result.Value {
		n, unit := l.In(measure.Imperial)
		return &result.Value{Number: n, Unit: unit, Text: l.Text(measure.Imperial)}
	}
	r := result.Result{Check: check, Set: "toy", At: []string{at}, Outcome: result.Within, Have: value(have), Limit: value(limit), Margin: value(have - limit)}
	r.Limit.Relation = result.AtLeast
	if have < limit {
		r.Outcome, r.Message = result.Outside, "too narrow"
	}
	return r
}

func (c *toy) find(ctx context.Context, widths ...string) result.Design {
	d := c.check(ctx, []byte(text(widths...)))
	c.calls.Store(0)
	remedy.Find(ctx, &d, remedy.Options{Check: c.check, About: c.about})
	return d
}

// about says of the rule on widths that whole inches are tried, and of a check
// that names no changes what is usual.
func (c *toy) about(check string) remedy.About {
	switch check {
	case "stairs/width":
		return remedy.About{Tries: []mending.Kind{mending.WholeInches}}
	case "office/width":
		return remedy.About{Tries: mending.Usual()}
	case "office/stock":
		return remedy.About{Tries: []mending.Kind{mending.AcceptedWord}, Accepted: []string{"40 in"}}
	case "guards/required":
		return remedy.About{Asks: true}
	}
	return remedy.About{}
}

func texts(d result.Design) []string {
	var list []string
	for _, f := range d.Findings {
		for _, r := range f.Remedies {
			list = append(list, f.At[0]+" "+r.Text)
		}
	}
	return list
}

func TestFind(t *testing.T) {
	var c toy
	d := c.find(context.Background(), "34-1/2 in", "3 ft", "30 in")
	want := []string{
		"/stairs/0/width stair width 36 in instead of 34-1/2 in: at the limit",
		"/stairs/2/width stair width 36 in instead of 30 in: at the limit",
	}
	if got := texts(d); !slices.Equal(got, want) {
		t.Errorf("got %q", got)
	}
	if n := c.calls.Load(); n != 2 {
		t.Errorf("%d designs were checked for two changes", n)
	}
	change := d.Findings[0].Remedies[0].Changes[0]
	if change.Pointer != "/stairs/0/width" || change.From != "34-1/2 in" || change.To != "36 in" || change.Text != "36 in" {
		t.Errorf("change %+v", change)
	}
}

// Something else that gets worse, appears or can no longer be seen takes a
// remedy away, and so does a design that cannot be read any more.
func TestNothingElseGetsWorse(t *testing.T) {
	const other = "/stairs/1/width"
	excused := func(widths []measure.Length) []result.Result {
		r := reading("layout/other", other, 50*measure.Inch-widths[0], 15*measure.Inch)
		if r.Outcome == result.Outside {
			r.Outcome = result.Excused
		}
		return []result.Result{r}
	}
	wide := func(r result.Result) func([]measure.Length) []result.Result {
		return func(widths []measure.Length) []result.Result {
			if widths[0] < 36*measure.Inch {
				return nil
			}
			return []result.Result{r}
		}
	}
	for name, c := range map[string]struct {
		also func([]measure.Length) []result.Result
		want int
	}{
		"nothing": {nil, 1},
		"within by less": {func(w []measure.Length) []result.Result {
			return []result.Result{reading("layout/other", other, 99*measure.Inch-w[0], 9*measure.Inch)}
		}, 1},
		"outside, not before": {func(w []measure.Length) []result.Result {
			return []result.Result{reading("layout/other", other, 50*measure.Inch-w[0], 15*measure.Inch)}
		}, 0},
		"farther outside": {func(w []measure.Length) []result.Result {
			return []result.Result{reading("layout/other", other, 50*measure.Inch-w[0], 45*measure.Inch)}
		}, 0},
		"less outside": {func(w []measure.Length) []result.Result {
			return []result.Result{reading("layout/other", other, w[0], 45*measure.Inch)}
		}, 1},
		"excused, not before": {excused, 0},
		"asked for anyway": {func(w []measure.Length) []result.Result {
			return []result.Result{reading("guards/required", other, 50*measure.Inch-w[0], 45*measure.Inch)}
		}, 1},
		"not shown":     {wide(result.Result{Check: "layout/other", Set: "toy", At: []string{other}, Needs: "x", Outcome: result.NotShown}), 0},
		"could not run": {wide(result.Result{Check: "layout/other", Set: "toy", At: []string{""}, Outcome: result.CouldNotRun}), 0},
		"by another set": {func(w []measure.Length) []result.Result {
			r := reading("stairs/width", "/stairs/0/width", w[0], 38*measure.Inch)
			r.Set = "stricter"
			return []result.Result{r}
		}, 2},
	} {
		t.Run(name, func(t *testing.T) {
			d := (&toy{also: c.also}).find(context.Background(), "34 in", "40 in")
			if got := texts(d); len(got) != c.want {
				t.Errorf("%d remedies: %q", len(got), got)
			}
			if name == "by another set" && !strings.Contains(texts(d)[0], "width 38 in") {
				t.Errorf("one set alone is content with %q", texts(d))
			}
		})
	}
}

// on is a finding of a check on the width of the first stair, outside below a
// limit.
func on(check, set string, limit measure.Length) func([]measure.Length) []result.Result {
	return func(w []measure.Length) []result.Result {
		r := reading(check, "/stairs/0/width", w[0], limit)
		r.Set = set
		return []result.Result{r}
	}
}

// Whoever makes one change of a value must not be asked for another one by the
// next finding: of several findings on a field each gets the smallest change
// that answers all of them, at the limit and to both sides of it.
func TestSeveralFindingsOnOneField(t *testing.T) {
	const at = "/stairs/0/width stair width "
	for _, c := range []struct {
		name, width string
		also        func([]measure.Length) []result.Result
		want        []string
	}{
		{"another check asks for more", "34 in", on("office/width", "toy", 41*measure.Inch), []string{
			at + "41 in instead of 34 in: inside by 5\"", at + "41 in instead of 34 in: at the limit",
		}},
		{"half an inch is enough", "34 in", on("office/width", "toy", 40*measure.Inch+measure.Inch/3), []string{
			at + "40-1/2 in instead of 34 in: inside by 4-1/2\"", at + "40-1/2 in instead of 34 in: inside by 0.1667\"",
		}},
		{"another check asks for less", "34 in", on("office/width", "toy", 35*measure.Inch), []string{
			at + "36 in instead of 34 in: at the limit", at + "36 in instead of 34 in: inside by 1\"",
		}},
		{"another set asks for more", "34 in", on("stairs/width", "town", 38*measure.Inch), []string{
			at + "38 in instead of 34 in: at the limit", at + "38 in instead of 34 in: at the limit",
		}},
		{"the other is at its limit", "34 in", on("office/width", "toy", 34*measure.Inch), []string{at + "36 in instead of 34 in: at the limit"}},
		{"in millimetres", "860 mm", on("office/width", "toy", 1005*measure.Millimetre), []string{
			at + "1010 mm instead of 860 mm: inside by 3.7638\"", at + "1010 mm instead of 860 mm: inside by 0.1969\"",
		}},
		{"another check asks for more and names no change", "34 in", on("layout/other", "toy", 99*measure.Inch), []string{
			at + "99 in instead of 34 in: inside by 5'-3\"", at + "99 in instead of 34 in: at the limit",
		}},
	} {
		t.Run(c.name, func(t *testing.T) {
			if got := texts((&toy{also: c.also}).find(context.Background(), c.width)); !slices.Equal(got, c.want) {
				t.Errorf("got  %q\nwant %q", got, c.want)
			}
		})
	}
}

// What another finding on the field asks for need not be measured: its word is
// tried, and the first goes on until both are content.
func TestFindingsWithoutMeasure(t *testing.T) {
	words := func(w []measure.Length) []result.Result {
		r := result.Result{Check: "office/stock", Set: "toy", At: []string{"/stairs/0/width"}, Outcome: result.Within}
		if w[0] != 40*measure.Inch {
			r.Outcome, r.Message = result.Outside, "not kept in stock"
		}
		return []result.Result{r}
	}
	want := []string{
		"/stairs/0/width stair width 40 in instead of 34 in: inside by 4\"", "/stairs/0/width stair width 40 in instead of 34 in",
	}
	if got := texts((&toy{also: words}).find(context.Background(), "34 in")); !slices.Equal(got, want) {
		t.Errorf("got  %q\nwant %q", got, want)
	}
}

// Where two findings on a field ask for what excludes each other, no change of
// it is of use to either.
func TestFindingsThatExcludeEachOther(t *testing.T) {
	odd := func(w []measure.Length) []result.Result {
		r := result.Result{Check: "office/stock", Set: "toy", At: []string{"/stairs/0/width"}, Outcome: result.Within}
		if w[0] != 40*measure.Inch {
			r.Outcome, r.Message = result.Outside, "not kept in stock"
		}
		narrow := reading("stairs/width", "/stairs/0/width", w[0], 36*measure.Inch)
		if narrow.Set = "town"; w[0] == 40*measure.Inch {
			narrow.Outcome = result.Outside // whatever its measure
		}
		return []result.Result{r, narrow}
	}
	if got := texts((&toy{also: odd}).find(context.Background(), "34 in")); len(got) > 0 {
		t.Errorf("got  %q", got)
	}
}

// A change that clears several findings stands under each of them, is tried
// once, and names them all.
func TestChangeThatClearsSeveral(t *testing.T) {
	c := toy{also: func(w []measure.Length) []result.Result {
		return []result.Result{reading("layout/other", "/stairs/1/width", w[0], 35*measure.Inch)}
	}}
	d := c.find(context.Background(), "34 in", "40 in")
	if n := c.calls.Load(); n != 1 {
		t.Errorf("%d designs were checked", n)
	}
	want := []string{
		"/stairs/0/width stair width 36 in instead of 34 in: at the limit",
		"/stairs/1/width stair width 36 in instead of 34 in: inside by 1\"",
	}
	if got := texts(d); !slices.Equal(got, want) {
		t.Fatalf("got  %q\nwant %q", got, want)
	}
	for i := range d.Findings {
		f := &d.Findings[i]
		if len(f.Remedies) != 1 {
			t.Fatalf("%s: %d remedies", f.Check, len(f.Remedies))
		}
		var clears []string
		for _, c := range f.Remedies[0].Clears {
			clears = append(clears, c.Check+" "+c.Set+" "+c.At)
		}
		if !slices.Equal(clears, []string{"stairs/width toy /stairs/0/width", "layout/other toy /stairs/1/width"}) {
			t.Errorf("%s: clears %q", f.Check, clears)
		}
		if also := f.Remedies[0].Also(f); len(also) != 1 || also[0].Check == f.Check {
			t.Errorf("%s: also clears %v", f.Check, also)
		}
	}
}

// A part that is taken out of a design is no mending of what was said of it, nor
// of anything else. A check that has nothing to ask any more is.
func TestPartsStayInTheDesign(t *testing.T) {
	narrow, wide := text("34 in", "40 in"), text("36 in", "40 in")
	alone := "stairs:\n  - {width: 36 in}\n"
	spared := result.Result{Check: "layout/other", Set: "toy", At: []string{"/stairs/1"}, Outcome: result.DoesNotApply, Reason: "the deck lies low"}
	second := reading("layout/other", "/stairs/1/width", 40*measure.Inch, 30*measure.Inch)
	low := second
	low.Outcome, low.Message = result.Outside, "too high"
	for _, c := range []struct {
		name     string
		changed  string
		was, is  []result.Result // beside the width of the first stair
		remedies int
	}{
		{"it is still there and within", wide, []result.Result{second}, []result.Result{second}, 1},
		{"it does not apply any more", wide, []result.Result{second}, []result.Result{spared}, 1},
		{"the stair is gone", alone, []result.Result{second}, nil, 0},
		{"the stair is gone and the check does not apply", alone, []result.Result{second}, []result.Result{spared}, 0},
		{"another finding is spared by it", wide, []result.Result{low}, []result.Result{spared}, 1},
	} {
		t.Run(c.name, func(t *testing.T) {
			design := func(data string, w measure.Length, more []result.Result) result.Design {
				doc, err := source.Read("toy.deck.yaml", []byte(data))
				if err != nil {
					t.Fatal(err)
				}
				d := result.Design{Document: doc}
				for _, r := range append([]result.Result{reading("stairs/width", "/stairs/0/width", w, 36*measure.Inch)}, more...) {
					if r.Outcome == result.Outside {
						d.Findings = append(d.Findings, r)
					} else {
						d.Readings = append(d.Readings, r)
					}
				}
				return d
			}
			d := design(narrow, 34*measure.Inch, c.was)
			remedy.Find(context.Background(), &d, remedy.Options{About: (&toy{}).about, Check: func(context.Context, []byte) result.Design {
				return design(c.changed, 36*measure.Inch, c.is)
			}})
			if got := texts(d); len(got) != c.remedies {
				t.Errorf("%d remedies, want %d: %q", len(got), c.remedies, got)
			}
		})
	}
}

// A ladder on which every step breaks something is left soon, and a design with
// very many findings costs no more than its share.
func TestTrialsAreCounted(t *testing.T) {
	stubborn := toy{also: func(w []measure.Length) []result.Result {
		return []result.Result{reading("layout/other", "/stairs/0/width", 50*measure.Inch-w[0], 45*measure.Inch)}
	}}
	if d := stubborn.find(context.Background(), "34 in"); len(texts(d)) > 0 || stubborn.calls.Load() != 5 {
		t.Errorf("%d designs checked, remedies %q", stubborn.calls.Load(), texts(d))
	}
	var many toy
	var widths []string
	for i := range 300 {
		widths = append(widths, fmt.Sprintf("%d.%02d in", 30+i/100, i%100))
	}
	d := many.find(context.Background(), widths...)
	if n := many.calls.Load(); n != 120 || len(texts(d)) != 120 || !strings.HasPrefix(texts(d)[0], "/stairs/0/") || !strings.HasPrefix(texts(d)[119], "/stairs/119/") {
		t.Errorf("%d designs checked, %d remedies", n, len(texts(d)))
	}
}

// A run that is stopped while changes are tried files nothing.
func TestStopped(t *testing.T) {
	ctx, cancel := context.WithCancel(context.Background())
	var c toy
	d := c.check(ctx, []byte(text("34 in", "33 in")))
	var once sync.Once
	remedy.Find(ctx, &d, remedy.Options{About: c.about, Check: func(ctx context.Context, data []byte) result.Design {
		once.Do(cancel)
		return c.check(ctx, data)
	}})
	if got := texts(d); len(got) > 0 {
		t.Errorf("got %q", got)
	}
}

// Of a check that a rule set brings the value at its place is tried.
func TestCheckOfARuleSet(t *testing.T) {
	c := toy{also: func(w []measure.Length) []result.Result {
		return []result.Result{reading("office/width", "/stairs/0/width", w[0], 40*measure.Inch+measure.Inch/3)}
	}}
	if got := texts(c.find(context.Background(), "38 in")); len(got) != 1 || !strings.Contains(got[0], `width 40-1/2 in instead of 38 in: inside by 0.1667"`) {
		t.Errorf("got %q", got)
	}
}
