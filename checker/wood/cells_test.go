package wood_test

import (
	"encoding/csv"
	"math"
	"os"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"plumbrule/checker/measure"
	"plumbrule/checker/wood"
)

// cell is one number of a printed table, with what it stands for. testdata/us-cells.csv names for each cell the document
// it was read in; a status that begins with memory marks one that nobody has read again.
type cell struct {
	table, edition, group, item, condition, value, status string
}

func cells(t *testing.T, keep func(cell) bool) []cell {
	t.Helper()
	file, err := os.Open("testdata/us-cells.csv")
	if err != nil {
		t.Fatal(err)
	}
	defer func() { _ = file.Close() }()
	rows, err := csv.NewReader(file).ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	var found []cell
	for _, r := range rows[1:] {
		c := cell{r[0], r[1], r[2], r[3], r[4], r[6], r[7]}
		if keep(c) {
			found = append(found, c)
		}
	}
	return found
}

func published(c cell) bool { return strings.HasPrefix(c.status, "published") }

var digits = regexp.MustCompile(`[0-9]+(\.[0-9]+)?`)

// numbers lists the numbers in a condition.
func (c cell) numbers(t *testing.T) []float64 {
	t.Helper()
	var found []float64
	for _, text := range digits.FindAllString(c.condition, -1) {
		v, err := strconv.ParseFloat(text, 64)
		if err != nil {
			t.Fatalf("%q: %v", c.condition, err)
		}
		found = append(found, v)
	}
	return found
}

func (c cell) number(t *testing.T) float64 {
	t.Helper()
	v, err := strconv.ParseFloat(c.value, 64)
	if err != nil {
		t.Fatalf("%v: %v", c, err)
	}
	return v
}

// score counts how many cells come out exactly, and how many within a tolerance.
type score struct{ of, exact, within int }

// hold computes each cell and asserts the score. of, exact and within are what is expected; an improvement fails as well,
// so that the figure in this file stays true.
func hold(t *testing.T, source string, found []cell, tolerance float64, want score, compute func(cell) float64) {
	t.Helper()
	var got score
	var worst float64
	for _, c := range found {
		off := compute(c) - c.number(t)
		got.of++
		if off == 0 {
			got.exact++
		} else {
			t.Logf("%s, %s, %s, %s: printed %s, computed %+g off", c.table, c.group, c.item, c.condition, c.value, off)
		}
		if math.Abs(off) <= tolerance {
			got.within++
		}
		if math.Abs(off) > math.Abs(worst) {
			worst = off
		}
	}
	t.Logf("%s: %d of %d exact, %d within %g, furthest %+g", source, got.exact, got.of, got.within, tolerance, worst)
	if got != want {
		t.Errorf("%s: got %+v, want %+v", source, got, want)
	}
}

func in(l measure.Length) float64 { return float64(l) / float64(measure.Inch) }

func feet(v float64) measure.Length { return measure.Length(math.Round(v * float64(measure.Foot))) }

func size(t testing.TB, nominal string) measure.Size {
	t.Helper()
	s, err := measure.ParseNominal(nominal)
	if err != nil {
		t.Fatal(err)
	}
	return s
}

func pressure(t testing.TB, text string) measure.Pressure {
	t.Helper()
	p, _, err := measure.ParsePressure(text)
	if err != nil {
		t.Fatal(err)
	}
	return p
}

func force(t testing.TB, text string) measure.Force {
	t.Helper()
	f, _, err := measure.ParseForce(text)
	if err != nil {
		t.Fatal(err)
	}
	return f
}

func psfOf(t testing.TB, v float64) measure.Pressure {
	t.Helper()
	return pressure(t, strconv.FormatFloat(v, 'f', -1, 64)+" psf")
}

// live40 is 40 psf live and 10 psf dead, the loads of most tables.
func live40(t testing.TB) wood.Load {
	t.Helper()
	return wood.Load{Dead: pressure(t, "10 psf"), Imposed: pressure(t, "40 psf")}
}

func group(t testing.TB, name string) wood.Group {
	t.Helper()
	switch {
	case name == "SP":
		return wood.GroupSouthernPine
	case strings.HasPrefix(name, "DF"):
		return wood.GroupFirs
	case name == "RW", name == "other species":
		return wood.GroupCedars
	}
	t.Fatalf("group %q", name)
	return 0
}
