package junit

import (
	"cmp"
	"fmt"
	"strings"

	"plumbrule/checker/report/content"
	"plumbrule/checker/result"
	"plumbrule/checker/source"
)

func convert(report *result.Report) suites {
	all := suites{Name: "plumbrule"}
	for i := range report.Designs {
		s := convertDesign(report, &report.Designs[i])
		all.add(s.totals)
		all.Suites = append(all.Suites, s)
	}
	return all
}

func convertDesign(report *result.Report, d *result.Design) suite {
	sets := content.SetsOf(report, d)
	s := suite{
		Name:       content.Printable(d.File),
		Properties: &properties{about(report, d)},
		Out:        "rule sets in use: " + content.SetNames(sets) + "\n" + strings.Join(content.Cautions(sets), "\n") + "\n",
	}
	for i := range d.Problems {
		s.Cases = append(s.Cases, problemCase(d, &d.Problems[i]))
	}
	for _, list := range [][]result.Result{d.Findings, d.Readings} {
		for i := range list {
			s.Cases = append(s.Cases, resultCase(d, &list[i]))
		}
	}
	distinguish(s.Cases)
	for i := range s.Cases {
		s.add(countOf(&s.Cases[i]))
	}
	return s
}

func about(report *result.Report, d *result.Design) []property {
	list := []property{{"disposition", content.Disposition(d)}}
	for _, p := range []property{{"title", d.Title}, {"revision", d.Revision}} {
		if p.Value != "" {
			list = append(list, property{p.Name, content.Printable(p.Value)})
		}
	}
	sets := content.SetsOf(report, d)
	for i := range sets {
		set := &sets[i]
		list = append(list, property{"set." + set.ID, content.Edition(set)})
		if len(set.NotCovered) > 0 {
			list = append(list, property{"set." + set.ID + ".does-not-cover", strings.Join(set.NotCovered, "; ")})
		}
	}
	return list
}

func problemCase(d *result.Design, p *result.Problem) testCase {
	text := place(d, p.Span.Start) + ": " + content.Printable(p.Message) + "\n"
	if p.Hint != "" {
		text += "hint: " + content.Printable(p.Hint) + "\n"
	}
	return testCase{
		ClassName: "design",
		Name:      content.Printable("reading " + cmp.Or(p.Pointer, "the file")),
		Error:     &complaint{Message: content.Printable(p.Message), Type: "cannot read", Text: text},
	}
}

// resultCase names the set and the check as class, as readers split it at the
// full stop, and the element with its place as name.
func resultCase(d *result.Design, r *result.Result) testCase {
	c := testCase{ClassName: r.Set + "." + r.Check, Name: content.Printable(caseName(r))}
	message := content.Printable(content.Headline(r))
	switch r.Outcome {
	case result.Outside:
		c.Failure = &complaint{message, string(r.Consequence), details(d, r)}
	case result.CouldNotRun:
		c.Error = &complaint{message, string(r.Outcome), details(d, r)}
	case result.Excused:
		c.Skipped = &skipped{content.Printable(join(": ", message, r.Reason))}
	case result.NotShown:
		c.Skipped = &skipped{content.Printable(join(", to be shown: ", message, r.Needs))}
	case result.DoesNotApply:
		c.Skipped = &skipped{content.Printable(join(": ", string(r.Outcome), r.Reason))}
	case result.Within:
	}
	return c
}

func caseName(r *result.Result) string {
	name := join(", ", content.Title(r), r.Mark)
	if len(r.At) > 0 && r.At[0] != "" {
		name += " " + r.At[0]
	}
	return name
}

// details is what a reader unfolds below the message.
func details(d *result.Design, r *result.Result) string {
	lines := append([]string{place(d, r.Span.Start) + ": " + string(r.Consequence) + ": " + content.Headline(r)}, content.Details(r)...)
	var text strings.Builder
	for _, line := range lines {
		text.WriteString(content.Printable(line) + "\n")
	}
	return text.String()
}

func place(d *result.Design, at source.Position) string {
	return fmt.Sprintf("%s:%d:%d", content.Printable(d.File), max(at.Line, 1), max(at.Column, 1))
}

// join puts between between two texts, if both are there.
func join(between, a, b string) string {
	if a == "" || b == "" {
		return a + b
	}
	return a + between + b
}

// distinguish numbers cases that would have the same name, which readers take
// for one.
func distinguish(cases []testCase) {
	seen := map[[2]string]int{}
	for i := range cases {
		c := &cases[i]
		key := [2]string{c.ClassName, c.Name}
		if seen[key]++; seen[key] > 1 {
			c.Name += fmt.Sprintf(" (%d)", seen[key])
		}
	}
}

func countOf(c *testCase) totals {
	t := totals{Tests: 1}
	switch {
	case c.Failure != nil:
		t.Failures = 1
	case c.Error != nil:
		t.Errors = 1
	case c.Skipped != nil:
		t.Skipped = 1
	}
	return t
}
