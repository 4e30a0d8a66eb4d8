package pages

import (
	"slices"
	"strings"

	"plumbrule/checker/catalog"
	md "plumbrule/checker/markdown"
	"plumbrule/checker/mending"
)

// kindsOfChange writes the page of the kinds of change that may mend a finding.
func (p *Pages) kindsOfChange() string {
	var page md.Page
	page.Comment(remark)
	page.Heading(1, "Changes that are tried")
	page.Paragraph("A check names in its METADATA, under "+md.Code("tries")+", which kinds of change may mend what it finds outside.",
		"Each is typed into a copy of the design, step by step, and the copy is checked again;",
		"it is printed where its findings are inside, and nothing else is worse.",
		link("Using plumbrule", changesPage, "usage.md")+" says when that is done, "+
			link("Writing a check", changesPage, "writing-checks.md")+" how a check of your own names them.",
		"Stock sizes, spacings and steps are common practice; limits are those of the rule sets alone.")
	var rows [][]string
	for _, d := range mending.Kinds() {
		var checks []string
		for _, c := range p.checks.Checks() {
			if slices.Contains(c.Tries, d.Kind) {
				checks = append(checks, link(md.Code(c.ID), changesPage, checkPage(c.ID)))
			}
		}
		rows = append(rows, []string{md.Code(string(d.Kind)), md.Text(d.About), strings.Join(checks, ", ")})
	}
	page.Table([]string{"kind", "what is tried", "checks"}, rows)
	return page.String()
}

// tried lists the kinds of change that are tried on a finding of a check.
func tried(page *md.Page, c *catalog.Check) {
	changes := link("changes", checkPage(c.ID), changesPage)
	if len(c.Tries) == 0 {
		page.Paragraph("No " + changes + " are tried on a finding.")
		return
	}
	page.Paragraph("These " + changes + " are tried on a finding:")
	var kinds []string
	for _, kind := range c.Tries {
		kinds = append(kinds, md.Code(string(kind))+": "+md.Text(kind.About()))
	}
	page.List(kinds...)
}
