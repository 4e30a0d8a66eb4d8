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
	rows = append(rows, row("Typed in as", code(d.File)), row("Reviewed against", plain(content.SetNames(report.Sets))))
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
