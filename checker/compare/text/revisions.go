package text

import (
	"fmt"
	"io"
	"slices"
	"strconv"

	"plumbrule/checker/compare"
	"plumbrule/checker/compare/words"
	"plumbrule/checker/report/content"
	"plumbrule/checker/report/lines"
	"plumbrule/checker/result"
)

// Revisions writes what lies between two revisions. The error is that of the
// underlying writer.
func Revisions(to io.Writer, r *compare.Revisions, opts Options) error {
	p := newPrinter(to, opts)
	p.block([][2]string{
		{"old", lines.Bars(r.Was.File, words.Drawing(&r.Was))},
		{"new", lines.Bars(r.Is.File, words.Drawing(&r.Is))},
		{"sets", content.SetNames(r.Sets)},
	})
	p.changes(r)
	for _, s := range compare.States() {
		p.state(r, s)
	}
	p.stamps(r)
	p.closing(r.Sets, r.Waivers)
	return p.Flush()
}

func (p *printer) changes(r *compare.Revisions) {
	p.Heading(fmt.Sprintf("changes of the design (%d)", len(r.Changes)))
	if len(r.Changes) == 0 {
		p.Paragraph(2, "", words.Nothing)
	}
	for i := range r.Changes {
		c := &r.Changes[i]
		p.Paragraph(2, c.Name+":", words.Change(c))
		p.Line("      " + p.faint(place(r.Was.File, c.Was.Span.Start)+" -> "+place(r.Is.File, c.Is.Span.Start)))
	}
}

// quiet tells the states that ask nobody to do anything new; they are counted,
// and listed on demand.
func quiet(s compare.State) bool {
	return s == compare.StillAsked || s == compare.Dropped || s == compare.RanAgain
}

func (p *printer) state(r *compare.Revisions, s compare.State) {
	list := r.Of(s)
	if len(list) == 0 || quiet(s) && !p.opts.Verbose {
		return
	}
	p.Heading(fmt.Sprintf("%s (%d)", words.Heading(s), len(list)))
	p.Gap()
	var said []string
	for _, group := range words.Groups(list) {
		// What holds for several in a row is said once, behind the last of them.
		if about := about(group[0]); !slices.Equal(about, said) {
			p.say(said)
			said = about
		}
		for _, m := range group {
			p.firstLine(r, m)
		}
	}
	p.say(said)
}

// firstLine prints place, state, class and message of a matter.
func (p *printer) firstLine(r *compare.Revisions, m *compare.Matter) {
	found := m.Result()
	file := r.Is.File
	if found == m.Was {
		file = r.Was.File
	}
	tag := found.Set + " " + found.Check
	if basis := content.Basis(found); basis != "" {
		tag += " " + basis
	}
	state := string(m.State)
	if m.State == compare.New || m.State == compare.Revealed || m.State == compare.Hidden || m.State == compare.CouldNot {
		state = p.alarm(state)
	}
	p.Line(p.path(place(file, found.Span.Start)) + ": " + state + ": " + string(found.Consequence) + ": " +
		content.Printable(words.Message(m)) + " " + p.faint("["+content.Printable(tag)+"]"))
}

// about says what became of a matter, by whom it is excused, and where it is
// drawn.
func about(m *compare.Matter) []string {
	found := m.Result()
	var list []string
	if way := words.Way(m); way != "" {
		list = append(list, way)
	}
	if found.Outcome == result.Excused && found.Reason != "" {
		list = append(list, "excused: "+found.Reason)
	}
	if where := content.Where(found.See, found.Mark); where != "" {
		list = append(list, where)
	}
	return list
}

func (p *printer) say(lines []string) {
	for _, line := range lines {
		p.Paragraph(4, "", line)
	}
}

// stamps prints counts and dispositions of both revisions.
func (p *printer) stamps(r *compare.Revisions) {
	p.Heading("counts")
	rows := [][]string{{"", "old", "new"}}
	was, is := content.Tallies(r.Was.Counts), content.Tallies(r.Is.Counts)
	for i := range was {
		rows = append(rows, []string{string(was[i].Outcome), strconv.Itoa(was[i].N), strconv.Itoa(is[i].N)})
	}
	table, _ := p.Cells.Columns(rows)
	for _, line := range table {
		p.Line(line)
	}
	p.Gap()
	before, after := words.Disposition(r)
	p.Paragraph(0, "became of findings:", lines.Bars(words.Summary(r)...))
	p.Paragraph(0, "disposition, old:", before)
	p.Paragraph(0, "disposition, new:", after)
}
