package text

import (
	"fmt"
	"strings"

	"plumbrule/checker/report/content"
	"plumbrule/checker/result"
)

// design prints one file: its title block, what was found, and the stamp.
func (p *printer) design(d *result.Design) {
	p.titleBlock(d)
	if len(d.Problems) > 0 {
		p.problems(d)
	} else {
		p.findings(d)
	}
	p.stamp(d)
	if len(d.Problems) > 0 {
		return
	}
	p.unread(d)
	p.margins(d)
	if p.opts.Verbose {
		p.readings(d)
	}
}

// titleBlock names the design as the corner of a drawing does.
func (p *printer) titleBlock(d *result.Design) {
	rule := strings.Repeat("-", p.ruleWidth())
	p.line(rule)
	for _, row := range [][2]string{{"file", d.File}, {"title", d.Title}, {"revision", d.Revision}, {"sets", p.ownSets(d)}} {
		if row[1] != "" {
			p.paragraph(0, fmt.Sprintf("%-9s", row[0]), row[1])
		}
	}
	p.line(rule)
}

// ownSets names the sets of a design that not all sets of the run are for.
func (p *printer) ownSets(d *result.Design) string {
	if len(d.Sets) == p.inRun {
		return ""
	}
	return strings.Join(d.Sets, ", ")
}

// ruleWidth is the length of the lines round a title block.
func (p *printer) ruleWidth() int {
	const usual = 72
	if p.opts.Width > 0 {
		return min(p.opts.Width, usual)
	}
	return usual
}

// findings prints the sections of what was found.
func (p *printer) findings(d *result.Design) {
	layout := content.Arrange(d.Findings)
	for _, class := range layout.Outside {
		p.section(d, "outside the limits, "+string(class.Consequence), class.Groups)
	}
	p.notShown(d, layout.NotShown)
	p.section(d, "could not run", layout.CouldNotRun)
	p.section(d, "excused", layout.Excused)
}

func (p *printer) section(d *result.Design, title string, groups []content.Group) {
	if len(groups) == 0 {
		return
	}
	p.heading(fmt.Sprintf("%s (%d)", title, content.Count(groups)))
	p.gap()
	p.groups(d, groups)
}

func (p *printer) groups(d *result.Design, groups []content.Group) {
	for _, g := range groups {
		p.group(d, g)
	}
}

// notShown prints what the description leaves open, sheet by sheet, so that
// each sheet can be completed in one go.
func (p *printer) notShown(d *result.Design, sheets []content.Sheet) {
	if len(sheets) == 0 {
		return
	}
	n := 0
	for _, sheet := range sheets {
		n += content.Count(sheet.Groups)
	}
	p.heading(fmt.Sprintf("not shown (%d)", n))
	p.gap()
	for _, sheet := range sheets {
		p.line(p.style.heading(printable(fmt.Sprintf("%s (%d)", sheet.Title(), content.Count(sheet.Groups)))))
		p.groups(d, sheet.Groups)
	}
}

// problems prints why a file could not be read.
func (p *printer) problems(d *result.Design) {
	p.heading(fmt.Sprintf("cannot read (%d)", len(d.Problems)))
	p.gap()
	for i := range d.Problems {
		problem := &d.Problems[i]
		p.problemLine(d, problem)
		p.snippet(d.Document, problem.Span, p.style.refused)
		if problem.Hint != "" {
			p.paragraph(detail, "hint:", problem.Hint)
		}
		p.gap()
	}
}

func (p *printer) problemLine(d *result.Design, problem *result.Problem) {
	p.line(p.place(d.File, problem.Span.Start) + ": " + p.style.refused("cannot read") + ": " + printable(problem.Message))
}

// stamp prints counts and disposition.
func (p *printer) stamp(d *result.Design) {
	p.gap()
	if len(d.Problems) == 0 {
		var counts []string
		for _, tally := range content.Tallies(d.Counts) {
			counts = append(counts, p.cells.keep(fmt.Sprintf("%s %d", tally.Outcome, tally.N)))
		}
		p.paragraph(0, "counts:", bars(counts...))
	}
	p.paragraph(0, "disposition:", content.Disposition(d))
}

// margins prints what came closest to its limit without being outside.
func (p *printer) margins(d *result.Design) {
	const shown = 5
	closest := content.Closest(d.Readings, shown)
	if len(closest) == 0 {
		return
	}
	p.heading("closest margins")
	for _, r := range closest {
		r = p.kept(r)
		spare := "nothing to spare"
		if r.Margin.Number != 0 {
			spare = content.MarginSize(r) + " to spare"
		}
		p.paragraph(2, spare+":", p.reading(r, content.Measured(r), content.Limit(r)))
	}
}

// readings prints what is within its limits or has none that apply.
func (p *printer) readings(d *result.Design) {
	for _, outcome := range []result.Outcome{result.Within, result.DoesNotApply} {
		var lines []string
		for i := range d.Readings {
			r := &d.Readings[i]
			switch {
			case r.Outcome != outcome:
			case outcome == result.Within:
				lines = append(lines, p.reading(r, p.values(r)))
			default:
				lines = append(lines, p.reading(r, r.Reason))
			}
		}
		if len(lines) == 0 {
			continue
		}
		p.heading(fmt.Sprintf("%s (%d)", outcome, len(lines)))
		for _, line := range lines {
			p.paragraph(2, "", line)
		}
	}
}

// reading gives one line for a result without a place of its own in the report.
func (p *printer) reading(r *result.Result, pieces ...string) string {
	title := content.Title(r)
	if r.Mark != "" {
		title += ", " + r.Mark
	}
	if body := bars(pieces...); body != "" {
		title += ": " + body
	}
	return title + " [" + r.Set + " " + r.Check + "]"
}

// unread lists what was typed in and no check reads, so that nobody takes it
// for checked.
func (p *printer) unread(d *result.Design) {
	if len(d.Unread) == 0 || p.opts.Compact {
		return
	}
	p.heading(fmt.Sprintf("typed in, read by no check of any set (%d)", len(d.Unread)))
	for i := range d.Unread {
		place := &d.Unread[i]
		p.paragraph(detail, "", printable(fmt.Sprintf("%s:%d:%d: %s", d.File, place.Span.Start.Line, place.Span.Start.Column, content.PlaceName(d.Document, place))))
	}
}
