package compare

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"plumbrule/checker/result"
)

// under gives a result of a set.
func under(set string, r result.Result, limit float64, unit string) result.Result {
	r.Set = set
	if unit != "" {
		r.Limit = &result.Value{Number: limit, Unit: unit, Text: fmt.Sprint(limit), Relation: result.AtMost}
	}
	return r
}

func beside(t *testing.T, given [][]Given, results ...result.Result) *Sets {
	t.Helper()
	var sets []result.Set
	for i := range given {
		sets = append(sets, result.Set{ID: string(rune('A' + i))})
	}
	return Beside(report(t, "is.yaml", after, results), sets, given)
}

// table writes rows as "outcome /stairs/0/risers: outside | within".
func table(s *Sets) string {
	var lines []string
	for _, row := range s.Rows {
		var cells []string
		for _, cell := range row.Cells {
			switch {
			case !cell.Has:
				cells = append(cells, "-")
			case cell.Result == nil:
				cells = append(cells, "?")
			default:
				cells = append(cells, string(cell.Result.Outcome))
			}
		}
		lines = append(lines, fmt.Sprintf("%s %s x%d: %s", row.Difference, row.Pointer, row.Count, strings.Join(cells, " | ")))
	}
	return strings.Join(append(lines, fmt.Sprintf("same %d", s.Same)), "\n")
}

func TestBeside(t *testing.T) {
	const risers = "/stairs/2/risers"
	one := []Given{{Check: "x/y", Title: "Y"}}
	within, outside := reading(result.Within, risers, 1), reading(result.Outside, risers, -1)
	elsewhere := reading(result.Outside, "/site/live_load", -1)
	cases := []struct {
		name    string
		given   [][]Given
		results []result.Result
		want    []string
	}{
		{"alike", [][]Given{one, one}, []result.Result{under("A", within, 8, "in"), under("B", within, 8, "in")}, []string{"same 1"}},
		{"another outcome", [][]Given{one, one}, []result.Result{under("A", outside, 7, "in"), under("B", within, 8, "in")},
			[]string{"outcome " + risers + " x1: outside | within", "same 0"}},
		{"another limit", [][]Given{one, one}, []result.Result{under("A", within, 7, "in"), under("B", within, 8, "in")},
			[]string{"limit " + risers + " x1: within | within", "same 0"}},
		{"only one has it", [][]Given{one, nil}, []result.Result{under("A", within, 7, "in")},
			[]string{"check " + risers + " x1: within | -", "same 0"}},
		{"three sets", [][]Given{one, nil, one}, []result.Result{under("A", within, 7, "in"), under("C", outside, 6, "in")},
			[]string{"outcome " + risers + " x1: within | - | outside", "same 0"}},
		{"as a whole", [][]Given{one, one}, []result.Result{
			under("A", outside, 7, "in"), under("A", reading(result.Within, "/stairs/0/risers", 1), 7, "in"), under("B", reading(result.DoesNotApply, "", 0), 0, ""),
		}, []string{"outcome /stairs/0/risers x1: within | does not apply", "outcome " + risers + " x1: outside | does not apply", "same 0"}},
		{"by something else", [][]Given{one, one}, []result.Result{
			under("A", outside, 7, "in"), under("A", reading(result.Within, "/stairs/0/risers", 1), 7, "in"), under("B", elsewhere, 5, "psf"),
		}, []string{"limit " + risers + " x1: outside | outside", "outcome /stairs/0/risers x1: within | outside", "same 0"}},
		{"each by something else", [][]Given{one, one}, []result.Result{under("A", outside, 7, "in"), under("B", elsewhere, 5, "psf")},
			[]string{"limit " + risers + " x1: outside | outside", "same 0"}},
		{"what one lacks beside a value", [][]Given{one, one}, []result.Result{under("A", outside, 7, "in"), under("B", lacking("/stairs/2", "stairs[].width"), 0, "")},
			[]string{"outcome " + risers + " x1: outside | not shown", "same 0"}},
		{"alike at one place", [][]Given{one, one}, []result.Result{under("A", within, 7, "in"), under("A", within, 7, "in"), under("B", outside, 5, "in"), under("B", outside, 5, "in")},
			[]string{"outcome " + risers + " x2: within | outside", "same 0"}},
	}
	for _, c := range cases {
		t.Run(c.name, func(t *testing.T) {
			got := strings.Split(table(beside(t, c.given, c.results...)), "\n")
			slices.Sort(got)
			slices.Sort(c.want)
			if !slices.Equal(got, c.want) {
				t.Errorf("got\n%s\nwant\n%s", strings.Join(got, "\n"), strings.Join(c.want, "\n"))
			}
		})
	}
}

// TestFiguresOfWhatIsNotShown tells sets apart by what they would hold a value
// against.
func TestFiguresOfWhatIsNotShown(t *testing.T) {
	given := func(value, text string) []Given {
		return []Given{{Check: "x/y", Figures: []Figure{{Name: "max", Value: value, Text: text}, {Name: "basis", Value: "clear", Text: "clear"}}}}
	}
	missing := lacking("/stairs/2", "stairs[].width")
	for _, c := range []struct {
		b    []Given
		want string
	}{
		{given("914400000", "914.4 mm"), "same 1"}, // 36 in by another name
		{given("900000000", "900 mm"), "limit /stairs/2 x1: not shown | not shown\nsame 0"},
	} {
		s := beside(t, [][]Given{given("914400000", "36 in"), c.b}, under("A", missing, 0, ""), under("B", missing, 0, ""))
		if got := table(s); got != c.want {
			t.Errorf("got\n%s\nwant\n%s", got, c.want)
		}
		for _, row := range s.Rows {
			for _, cell := range row.Cells {
				if len(cell.Figures) != 1 || cell.Figures[0].Name != "max" {
					t.Errorf("figures that are the same are kept: %+v", cell.Figures)
				}
			}
		}
	}
}

func TestGaps(t *testing.T) {
	s := beside(t, [][]Given{{{Check: "a/a"}, {Check: "b/b"}}, {{Check: "b/b"}, {Check: "c/c", Title: "C"}}})
	if len(s.Gaps) != 2 || len(s.Gaps[0]) != 1 || s.Gaps[0][0].Title != "C" || len(s.Gaps[1]) != 1 || s.Gaps[1][0].Check != "a/a" {
		t.Errorf("%+v", s.Gaps)
	}
}

func TestWorseSet(t *testing.T) {
	const risers = "/stairs/2/risers"
	one := []Given{{Check: "x/y"}}
	within, outside := under("A", reading(result.Within, risers, 1), 8, "in"), under("B", reading(result.Outside, risers, -1), 7, "in")
	if s := beside(t, [][]Given{one, one}, within, outside); !s.Worse(result.Structure, false) || s.Worse(result.LifeSafety, false) {
		t.Error("the stricter set behind the first is not told")
	}
	within.Set, outside.Set = "B", "A"
	if s := beside(t, [][]Given{one, one}, outside, within); s.Worse(result.Structure, true) {
		t.Error("the laxer set behind the first counts as worse")
	}
}

// Sets may take a check for more or less grave: the row is of the gravest class.
func TestRowIsOfTheGravestClass(t *testing.T) {
	given := []Given{{Check: "x/y", Title: "Y"}}
	classes := []result.Consequence{result.Workmanship, result.LifeSafety, result.Durability}
	for _, order := range [][]int{{0, 1, 2}, {1, 2, 0}, {2, 0, 1}} {
		var results []result.Result
		for i, k := range order {
			r := under(string(rune('A'+i)), reading(result.Outside, "/stairs/2/risers", -1), float64(i), "in")
			r.Consequence = classes[k]
			results = append(results, r)
		}
		rows := beside(t, [][]Given{given, given, given}, results...).Rows
		if len(rows) != 1 || rows[0].Consequence != result.LifeSafety {
			t.Errorf("%v: %+v", order, rows)
		}
	}
}
