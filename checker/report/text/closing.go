package text

import (
	"fmt"
	"strings"

	"plumbrule/checker/report/content"
	"plumbrule/checker/result"
)

// closing prints what holds for all designs of the run.
func (p *printer) closing(report *result.Report) {
	if len(report.Designs) > 1 {
		p.files(report.Designs)
	}
	if nothingChecked(report) {
		p.gap()
		p.paragraph(0, "", content.NothingChecked())
		return
	}
	p.sets(report.Sets)
	p.heading("cautions")
	for _, caution := range content.Cautions(report.Sets) {
		p.paragraph(2, "-", caution)
	}
}

// sets prints whose figures were used and what these leave out.
func (p *printer) sets(sets []result.Set) {
	p.heading("rule sets in use")
	if len(sets) == 0 {
		p.line("  none")
	}
	for i := range sets {
		set := &sets[i]
		p.paragraph(2, set.ID+":", content.Edition(set))
		if set.Scope != "" {
			p.paragraph(4, "covers:", set.Scope)
		}
		if len(set.NotCovered) > 0 {
			p.paragraph(4, "does not cover:", strings.Join(set.NotCovered, "; "))
		}
		p.paragraph(4, "figures:", bars(
			p.cells.keep(fmt.Sprintf("%d published", set.Figures.Published)),
			p.cells.keep(fmt.Sprintf("%d common practice", set.Figures.CommonPractice)),
			p.cells.keep(fmt.Sprintf("%d recalled", set.Figures.Recalled))))
	}
}

// compactClosing says in two lines what no report may leave out.
func (p *printer) compactClosing(report *result.Report) {
	if nothingChecked(report) {
		p.paragraph(0, "", content.NothingChecked())
		return
	}
	p.paragraph(0, "rule sets in use:", content.SetNames(report.Sets))
	p.paragraph(0, "caution:", content.Caution(report.Sets))
}

// nothingChecked reports whether not one of the files could be read.
func nothingChecked(report *result.Report) bool {
	for i := range report.Designs {
		if len(report.Designs[i].Problems) == 0 {
			return false
		}
	}
	return len(report.Designs) > 0
}
