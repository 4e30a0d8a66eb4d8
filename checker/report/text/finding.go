package text

import (
	"fmt"
	"regexp"
	"slices"
	"strings"

	"plumbrule/checker/report/content"
	"plumbrule/checker/result"
	"plumbrule/checker/source"
)

// group prints the first lines of results that belong together, and once for
// all of them what is under these.
func (p *printer) group(d *result.Design, g content.Group) {
	for _, r := range g {
		p.firstLine(d, r)
	}
	if p.opts.Compact {
		return
	}
	if !aboutWholeFile(g[0]) {
		p.snippet(d.Document, g[0].Span, p.style.class(g[0].Consequence))
	}
	p.related(d, g)
	p.details(g)
	p.gap()
}

// aboutWholeFile tells what misses a section of the file: it has a place to jump
// to, but the line there says nothing.
func aboutWholeFile(r *result.Result) bool {
	return r.Outcome == result.NotShown && len(r.At) > 0 && r.At[0] == ""
}

// firstLine prints the line that programs read.
func (p *printer) firstLine(d *result.Design, r *result.Result) {
	tag := r.Set + " " + r.Check
	if basis := content.Basis(r); basis != "" {
		tag += " " + basis
	}
	p.line(p.place(d.File, r.Span.Start) + ": " +
		p.style.class(r.Consequence)(string(r.Consequence)) + ": " +
		printable(content.Headline(r)) + " " + p.style.faint("["+printable(tag)+"]"))
}

// place gives "path:line:column". What has no place of its own in the file is
// put at its start.
func (p *printer) place(file string, at source.Position) string {
	return p.style.path(fmt.Sprintf("%s:%d:%d", printable(file), max(at.Line, 1), max(at.Column, 1)))
}

// related prints the second places of a group, each once.
func (p *printer) related(d *result.Design, g content.Group) {
	var printed []string
	for _, r := range g {
		for i := range r.Related {
			place := &r.Related[i]
			if slices.Contains(printed, place.Pointer) {
				continue
			}
			printed = append(printed, place.Pointer)
			at := fmt.Sprintf("%s:%d:%d:", d.File, max(place.Span.Start.Line, 1), max(place.Span.Start.Column, 1))
			p.paragraph(detail, "note:", at+" "+content.PlaceName(d.Document, place))
		}
	}
}

// details prints values, remarks, ways to mend and where the element is drawn.
// What members of a group share is printed once.
func (p *printer) details(g content.Group) {
	var told []string
	tell := func(label, text string) {
		entry := label + "\n" + text
		if text == "" || slices.Contains(told, entry) {
			return
		}
		told = append(told, entry)
		p.paragraph(detail, label, text)
	}

	for _, r := range g {
		tell(p.setLabel(g, r), p.values(r))
	}
	for _, r := range g {
		tell("by engineering:", content.Engineered(r))
	}
	tell("to be shown:", needs(g))
	for _, r := range g {
		switch r.Outcome {
		case result.CouldNotRun:
			tell("reason:", r.Reason)
		case result.Excused:
			tell("excused:", r.Reason)
		}
	}
	for _, r := range g {
		tell("amended:", r.Amended)
	}
	for _, r := range g {
		tell("remark:", strings.Join(r.Notes, "; "))
	}
	if p.opts.Verbose {
		for _, r := range g {
			tell("why:", r.Why)
			tell("figure from:", r.Source)
			if r.Engineered != nil {
				for _, line := range r.Engineered.Working {
					tell("working:", line)
				}
			}
		}
	}
	for _, r := range g {
		for i := range r.Remedies {
			tell("tried:", p.whole(content.Tried(r, &r.Remedies[i])))
		}
	}
	for _, r := range g {
		for _, mend := range r.Mend {
			tell("to mend:", mend)
		}
	}
	for _, r := range g {
		tell("", content.Where(r.See, r.Mark))
	}
}

// needs lists the fields that a group waits for.
func needs(g content.Group) string {
	var fields []string
	for _, r := range g {
		if r.Needs != "" && !slices.Contains(fields, r.Needs) {
			fields = append(fields, r.Needs)
		}
	}
	return strings.Join(fields, ", ")
}

// values gives measured value, limit and margin on one line.
func (p *printer) values(r *result.Result) string {
	r = p.kept(r)
	return bars(content.Measured(r), content.Limit(r), content.Margin(r))
}

// lengthInParts is a length of which wrapping could leave half: 6'-8 1/2", 5 ft 3 in.
var lengthInParts = regexp.MustCompile(`[0-9]+(?:'-[0-9]+ [0-9/]+"| ft [0-9/-]+ in\b)`)

// whole keeps the lengths in a sentence from being broken.
func (p *printer) whole(text string) string {
	return lengthInParts.ReplaceAllStringFunc(text, p.cells.keep)
}

// kept gives r with values that wrapping does not break: half of 6'-8 1/2" at
// the end of a line reads as 6'-8.
func (p *printer) kept(r *result.Result) *result.Result {
	copied := *r
	for _, value := range []**result.Value{&copied.Have, &copied.Limit, &copied.Margin} {
		if *value != nil {
			v := **value
			v.Text, v.Standard = p.cells.keep(v.Text), p.cells.keep(v.Standard)
			*value = &v
		}
	}
	return &copied
}

// setLabel names the set of a line that not all sets of the group share.
func (p *printer) setLabel(g content.Group, r *result.Result) string {
	for _, other := range g {
		if other.Set != r.Set {
			return r.Set + ":"
		}
	}
	return ""
}
