package pages

import (
	"fmt"
	"strings"

	"github.com/rogpeppe/go-internal/diff"

	"plumbrule/checker/catalog"
	md "plumbrule/checker/markdown"
	"plumbrule/checker/result"
)

// waiver writes the entry that would excuse the finding of the example.
func waiver(page *md.Page, c *catalog.Check, e *example) error {
	found := e.outside.of(c.ID, result.Outside)
	if len(found) == 0 {
		return fmt.Errorf("nothing in %s is outside", e.outside.file)
	}
	page.Heading(2, headWaiver)
	which := "the finding above"
	if len(found) > 1 {
		which = "the first of the findings above"
	}
	page.Paragraph("Where whoever has the say lets it stay, a waiver says so, and the finding stays in the report as *excused*.",
		"This entry, in a file beside the design that is named with "+md.Code("--waivers")+", is for "+which+":")
	page.Code("yaml", entry(c.ID, e.outside.file, &found[0]))
	page.Paragraph("The fingerprint is that of the JSON report; in its place " + md.Code("place") + " can name a mark. All keys: " +
		link("Waivers", checkPage(c.ID), "configuration.md#waivers") + ".")
	return nil
}

func entry(check, design string, r *result.Result) string {
	return strings.Join([]string{
		"waivers:",
		"  - check: " + check,
		"    design: " + design,
		"    fingerprint: " + r.Fingerprint,
		"    by: the building official",
		"    reason: why it may stay as it is",
		"    document: where that is written, and of which day",
	}, "\n")
}

// changed gives what differs between two designs, line by line.
func changed(a, b *shot) string {
	_, text, _ := strings.Cut(string(diff.Diff(a.file, a.text, b.file, b.text)), "\n")
	return text
}
