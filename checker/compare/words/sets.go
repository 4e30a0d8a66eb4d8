package words

import (
	"cmp"
	"fmt"
	"slices"
	"strconv"
	"strings"

	"plumbrule/checker/compare"
	"plumbrule/checker/report/content"
	"plumbrule/checker/result"
)

// Difference names the section of a difference.
func Difference(d compare.Difference) string {
	switch d {
	case compare.InOutcome:
		return "another outcome"
	case compare.InLimit:
		return "the same outcome, another limit"
	case compare.InCheck:
		return "not in all of the sets"
	case compare.None:
	}
	return "the same"
}

// Differences lists the sections, what weighs most first.
func Differences() []compare.Difference {
	return []compare.Difference{compare.InOutcome, compare.InLimit, compare.InCheck}
}

// Subject names what a row is about: the element and the place in it, and the
// sheet that shows it.
func Subject(r *compare.Row) string {
	words := cmp.Or(r.Name, "the whole design")
	if where := content.Where(r.See, ""); where != "" {
		words += " (" + where + ")"
	}
	if r.Count > 1 {
		words += fmt.Sprintf(", %d alike", r.Count)
	}
	return words
}

// Aspect is one line of what sets say of a subject.
type Aspect struct {
	Name  string
	Words []string // in the order of the sets; "" where a set says nothing
}

// Aspects gives what the sets say of a subject: outcome, what was found, limit,
// margin, clause, status, and who amended the figure. What none of them says is
// left out.
func Aspects(r *compare.Row) []Aspect {
	list := []Aspect{
		{Name: "outcome"}, {Name: "found"}, {Name: "limit"}, {Name: "margin"}, {Name: "clause"}, {Name: "figure is"}, {Name: "remark"},
	}
	for i := range r.Cells {
		for k, words := range aspects(&r.Cells[i]) {
			list[k].Words = append(list[k].Words, words)
		}
	}
	kept := list[:0]
	for _, a := range list {
		if strings.Join(a.Words, "") != "" {
			kept = append(kept, a)
		}
	}
	return kept
}

// aspects gives outcome, value, limit, margin, clause, status and remark.
func aspects(c *compare.Cell) [7]string {
	r := c.Result
	switch {
	case !c.Has:
		return [7]string{"no such check"}
	case r == nil:
		return [7]string{elsewhere(c)}
	}
	words := [7]string{string(r.Outcome), "", "", content.Margin(r), content.Basis(r), r.Status, cmp.Or(r.Amended, r.Reason)}
	if r.Have != nil {
		words[1] = r.Have.Text
	}
	if r.Limit != nil {
		words[2] = limit(r.Limit)
	}
	if r.Limit == nil {
		words[6] = cmp.Or(words[6], r.Message)
	}
	if r.Outcome == result.NotShown && len(c.Figures) > 0 {
		words[2], words[5] = figures(c.Figures), status(c.Figures)
	}
	return words
}

// elsewhere points to what a set says of other places instead.
func elsewhere(c *compare.Cell) string {
	var lines []string
	for _, at := range c.Elsewhere {
		if line := strconv.Itoa(max(at.Line, 1)); !slices.Contains(lines, line) {
			lines = append(lines, line)
		}
	}
	switch len(lines) {
	case 0:
		return "says nothing of it"
	case 1:
		return "see line " + lines[0]
	}
	return "see lines " + strings.Join(lines, ", ")
}

// limit gives a limit in the design's system, with that of the standard beside.
func limit(v *result.Value) string {
	text := v.Text
	if v.Relation != "" && v.Relation != result.Exactly {
		text = string(v.Relation) + " " + text
	}
	if v.Standard != "" && v.Standard != v.Text {
		text += " (" + v.Standard + ")"
	}
	return text
}

// figures lists what a value would be held against, once it is shown.
func figures(list []compare.Figure) string {
	var words []string
	for _, f := range list {
		label := string(f.Relation)
		if label == "" || len(list) > 1 {
			label = strings.TrimSpace(strings.ReplaceAll(f.Name, "_", " ") + " " + label)
		}
		words = append(words, label+" "+f.Text)
	}
	return strings.Join(words, "; ")
}

// status gives the weakest status among figures.
func status(list []compare.Figure) string {
	weakest := ""
	for _, f := range list {
		if rank(f.Status) > rank(weakest) {
			weakest = f.Status
		}
	}
	return weakest
}

func rank(status string) int {
	return map[string]int{"published": 1, "common practice": 2, "recalled": 3}[status]
}

// Listed gives the rows of a difference that concern the design, and counts the
// subjects that no set has anything to say of.
func Listed(s *compare.Sets, d compare.Difference) (list []*compare.Row, left int) {
	for _, row := range s.Of(d) {
		if silent(row) {
			left += row.Count
			continue
		}
		list = append(list, row)
	}
	return list, left
}

// silent reports whether a check applies under none of the sets.
func silent(row *compare.Row) bool {
	for i := range row.Cells {
		if r := row.Cells[i].Result; r != nil && r.Outcome != result.DoesNotApply {
			return false
		}
	}
	return true
}

// Left says how many subjects are not listed; "" for none.
func Left(n int) string {
	switch n {
	case 0:
		return ""
	case 1:
		return "1 more does not apply to this design"
	}
	return fmt.Sprintf("%d more do not apply to this design", n)
}

// Stacked says of each set what it makes of a subject in one line, and joins the
// names of sets that say the same.
func Stacked(row *compare.Row, sets []result.Set, keep func(string) string) (names, lines []string) {
	aspects := Aspects(row)
	for i := range sets {
		var parts []string
		for _, a := range aspects {
			if a.Words[i] != "" {
				parts = append(parts, label(a.Name)+keep(a.Words[i]))
			}
		}
		line := strings.Join(parts, " | ")
		if k := slices.Index(lines, line); k >= 0 {
			names[k] += ", " + sets[i].ID
			continue
		}
		names, lines = append(names, sets[i].ID), append(lines, line)
	}
	return names, lines
}

// label names an aspect where it stands in a line with others.
func label(name string) string {
	switch name {
	case "outcome", "margin", "remark":
		return "" // says itself what it is
	}
	return name + " "
}

// Gap says which checks a set lacks and others have.
func Gap(list []compare.Given) string {
	var words []string
	for _, g := range list {
		words = append(words, g.Check)
	}
	return strings.Join(words, ", ")
}

// SetSummary counts the subjects by difference: "another outcome 3, ...".
func SetSummary(s *compare.Sets) []string {
	var parts []string
	for _, d := range Differences() {
		parts = append(parts, fmt.Sprintf("%s %d", Difference(d), s.Count(d)))
	}
	return append(parts, fmt.Sprintf("%s %d", Difference(compare.None), s.Same))
}
