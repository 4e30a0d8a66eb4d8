package packet

import (
	"cmp"
	"path"
	"slices"

	"plumbrule/checker/draw/paper"
	"plumbrule/checker/report/content"
	"plumbrule/checker/report/items"
	"plumbrule/checker/result"
)

// standardInput is the name of a design that came through a pipe.
const standardInput = "-"

// Build assembles the packet of the first design of a report, which must have
// been read without problems. The sheets are its drawings, with the same
// findings marked; previous is what an earlier report numbered.
func Build(report *result.Report, sheets []*paper.Sheet, previous items.Previous) *Packet {
	d := &report.Designs[0]
	b := &builder{report: report, design: d, sheets: sheets, list: items.Number(report, 0, previous)}
	b.numbers = b.list.Numbers()
	b.sets = content.SetsOf(report, d)
	b.results = slices.Concat(pointers(d.Findings), pointers(d.Readings))
	b.sources = sourcesOf(b.results)

	file := path.Base(d.File)
	if d.File == standardInput {
		file = "standard input"
	}
	p := &Packet{
		Title: cmp.Or(d.Title, file), Revision: d.Revision, File: file, System: d.System,
		Disposition: content.Disposition(d), Counts: d.Counts,
	}
	p.Block = b.block(p)
	for _, section := range []Section{
		b.summary(), b.values(), b.drawings(), b.findings(), b.notShown(), b.earlier(),
		b.schedule(), b.assumed(), b.unread(), b.covered(), b.figures(), b.waivers(), b.cautions(),
	} {
		if len(section.Notes)+len(section.Parts) > 0 {
			p.Sections = append(p.Sections, section)
		}
	}
	p.clean()
	return p
}

// builder holds what the sections are made from.
type builder struct {
	report  *result.Report
	design  *result.Design
	sheets  []*paper.Sheet
	list    items.List
	numbers map[*result.Result]int
	sets    []result.Set
	results []*result.Result // findings and readings
	sources []string
}

func pointers(list []result.Result) []*result.Result {
	out := make([]*result.Result, len(list))
	for i := range list {
		out[i] = &list[i]
	}
	return out
}

// sourcesOf lists the sources of figures, each once, in the order of the
// alphabet.
func sourcesOf(results []*result.Result) []string {
	var list []string
	for _, r := range results {
		if r.Source != "" {
			list = append(list, r.Source)
		}
	}
	slices.Sort(list)
	return slices.Compact(list)
}
