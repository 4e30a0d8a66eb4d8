package letter

import (
	"cmp"
	"fmt"
	"strings"

	"plumbrule/checker/report/content"
	"plumbrule/checker/result"
)

// notGiven stands in the header for what the title block does not say.
const notGiven = "not shown"

// header names the drawings and what they were held against.
func (p *printer) header(report *result.Report, d *result.Design) {
	p.heading(1, "Review: "+plain(cmp.Or(d.Title, d.File)))
	rows := []string{row("Drawings", plain(cmp.Or(d.Title, notGiven))), row("---", "---")}
	if len(d.Problems) == 0 {
		rows = append(rows,
			row("Revision", plain(cmp.Or(d.Revision, notGiven))),
			row("Sheets", plain(cmp.Or(d.Sheets, notGiven))))
	} else {
		rows[0] = row("Drawings", "not read")
	}
	rows = append(rows, row("Typed in as", code(d.File)), row("Reviewed against", plain(content.SetNames(content.SetsOf(report, d)))))
	if d.ReviewedAgainst != "" {
		rows = append(rows, row("Also to be held against", plain(d.ReviewedAgainst)+", which this letter has not seen"))
	}
	p.block(rows...)
	p.block("**Disposition: " + content.Disposition(d) + "**")
	if len(d.Problems) > 0 {
		return
	}
	var counts []string
	for _, tally := range content.Tallies(d.Counts) {
		counts = append(counts, fmt.Sprintf("%s %d", tally.Outcome, tally.N))
	}
	p.block("Results: " + strings.Join(counts, ", ") + ".")
}

// waivers lists the findings on the files of waivers. They are for those who
// keep these, so nobody is asked to answer them and they have no numbers.
func (p *printer) waivers(designs []result.Design) {
	var lines []string
	for i := range designs {
		d := &designs[i]
		if d.Kind != result.KindWaivers {
			continue
		}
		for j := range d.Findings {
			r := &d.Findings[j]
			lines = append(lines, fmt.Sprintf("- %s line %d: %s", code(d.File), max(r.Span.Start.Line, 1), plain(content.Sentence(content.Headline(r)))))
		}
	}
	if lines != nil {
		p.heading(2, "Waivers")
		p.block(lines...)
	}
}

// problems says why a design could not be read.
func (p *printer) problems(d *result.Design) {
	p.heading(2, "Cannot be read")
	var lines []string
	for i := range d.Problems {
		problem := &d.Problems[i]
		line := fmt.Sprintf("- Line %d: %s", max(problem.Span.Start.Line, 1), plain(content.Sentence(problem.Message)))
		if problem.Hint != "" {
			line += " Hint: " + plain(problem.Hint)
		}
		lines = append(lines, line)
	}
	p.block(lines...)
}
