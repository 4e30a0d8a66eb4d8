package fieldsheet_test

import (
	"fmt"
	"math"
	"os"
	"slices"
	"strings"
	"testing"

	"plumbrule/checker/facts"
	"plumbrule/checker/fieldsheet"
	"plumbrule/checker/measure"
	"plumbrule/checker/model"
	"plumbrule/checker/source"
)

// build lays out the sheet of a design, which must be readable.
func build(t *testing.T, name, design string) *fieldsheet.Sheet {
	t.Helper()
	doc, err := source.Read(name, []byte(design))
	if err != nil {
		t.Fatal(err)
	}
	deck, problems := model.Read(doc)
	for _, p := range problems {
		t.Fatalf("%v: %s", p.Node.Span.Start, p.Message)
	}
	derived, faults := facts.Derive(deck)
	for _, p := range faults {
		t.Fatalf("%s: %s", p.At, p.Message)
	}
	return fieldsheet.Build(name, derived)
}

// fixture lays out the sheet of one of the sample designs.
func fixture(t *testing.T, name string) *fieldsheet.Sheet {
	t.Helper()
	file := name + ".deck.yaml"
	data, err := os.ReadFile("../../fixtures/designs/" + file)
	if err != nil {
		t.Fatal(err)
	}
	return build(t, file, string(data))
}

// inline lays out the sheet of a design written in a test.
func inline(t *testing.T, design string) *fieldsheet.Sheet {
	t.Helper()
	return build(t, "test.deck.yaml", "deck: 1\n"+design)
}

// numbers lists every cell of a sheet that is not words under its section,
// table, row and column: lengths in inches, angles in degrees, volumes in cubic
// inches, counts as they are, NaN for what is not shown.
func numbers(t *testing.T, sheet *fieldsheet.Sheet) map[string]float64 {
	t.Helper()
	all := map[string]float64{}
	for _, s := range sheet.Sections {
		for _, table := range s.Tables {
			for _, row := range table.Rows {
				label := []string{}
				for _, c := range row {
					if c.Kind == fieldsheet.Words && c.Text != "" {
						label = append(label, c.Text)
					}
				}
				for i, c := range row {
					if c.Kind == fieldsheet.Words {
						continue
					}
					key := key(s.Title, table.Title, strings.Join(label, " | "), table.Columns[i].Head)
					if _, twice := all[key]; twice {
						t.Errorf("two numbers are called %q", key)
					}
					all[key] = number(c)
				}
			}
		}
	}
	return all
}

// key joins the parts of a name, leaving out the empty ones.
func key(parts ...string) string {
	return strings.Join(slices.DeleteFunc(parts, func(s string) bool { return s == "" }), " > ")
}

func number(c fieldsheet.Cell) float64 {
	switch c.Kind {
	case fieldsheet.Length:
		return float64(c.Length) / float64(measure.Inch)
	case fieldsheet.Angle:
		return float64(c.Angle) / float64(measure.Degree)
	case fieldsheet.Count:
		return float64(c.Count)
	case fieldsheet.Volume:
		return c.Volume / (0.0254 * 0.0254 * 0.0254)
	}
	return math.NaN()
}

// expected are the numbers that a sheet has to hold, worked out in the test.
type expected map[string]float64

// unknown stands for a number that the design does not show.
var unknown = math.NaN()

func (e expected) set(value float64, parts ...string) { e[key(parts...)] = value }

// pair sets the two columns of a row.
func (e expected) pair(section, table, row string, heads [2]string, a, b float64) {
	e.set(a, section, table, row, heads[0])
	e.set(b, section, table, row, heads[1])
}

// The columns that tables share.
var (
	ends    = [2]string{"From left end", "From right end"}
	strung  = [2]string{"Along, from left end", "Out from the house"}
	heights = [2]string{"Ground to beam", "Cut length"}
)

// compare holds every number of the sheet against the expected one, to a
// millionth of an inch, and the other way round.
func (e expected) compare(t *testing.T, sheet *fieldsheet.Sheet) {
	t.Helper()
	got := numbers(t, sheet)
	for name, want := range e {
		have, ok := got[name]
		switch {
		case !ok:
			t.Errorf("the sheet lacks %q, want %.6f", name, want)
		case math.IsNaN(want) != math.IsNaN(have) || math.Abs(have-want) > 1e-6*max(1, math.Abs(want)/1000):
			t.Errorf("%s is %.6f, want %.6f", name, have, want)
		}
	}
	for name, have := range got {
		if _, ok := e[name]; !ok {
			t.Errorf("%s is %.6f, and nothing was expected", name, have)
		}
	}
	t.Logf("%d numbers", len(got))
}

// missing compares the list of what is not shown.
func missing(t *testing.T, sheet *fieldsheet.Sheet, want ...string) {
	t.Helper()
	var got []string
	for _, m := range sheet.NotShown {
		got = append(got, m.What+" -> "+m.Needs)
	}
	if !slices.Equal(got, want) {
		t.Errorf("not shown:\n%s\nwant:\n%s", strings.Join(got, "\n"), strings.Join(want, "\n"))
	}
}

// near compares one number of a sheet to a published or otherwise rounded value,
// to half a unit of its last place.
func near(t *testing.T, sheet *fieldsheet.Sheet, name string, want float64, places int) {
	t.Helper()
	have, ok := numbers(t, sheet)[name]
	if !ok {
		t.Errorf("the sheet lacks %q", name)
		return
	}
	if half := 0.5000001 * math.Pow10(-places); math.Abs(have-want) > half {
		t.Errorf("%s is %.6f, want %.*f", name, have, places, want)
	}
}

// table finds a table by the titles of its section and its own.
func table(t *testing.T, sheet *fieldsheet.Sheet, section, title string) *fieldsheet.Table {
	t.Helper()
	for i := range sheet.Sections {
		if sheet.Sections[i].Title != section {
			continue
		}
		for k := range sheet.Sections[i].Tables {
			if sheet.Sections[i].Tables[k].Title == title {
				return &sheet.Sections[i].Tables[k]
			}
		}
	}
	t.Fatalf("no table %q in %q", title, section)
	return nil
}

// column gives the lengths of a column in inches.
func column(t *testing.T, table *fieldsheet.Table, i int) []float64 {
	t.Helper()
	var list []float64
	for _, row := range table.Rows {
		list = append(list, number(row[i]))
	}
	return list
}

// d prints a whole number for a key.
func d(n int) string { return fmt.Sprint(n) }
