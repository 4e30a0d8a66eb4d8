package markdown

import (
	"fmt"
	"io"
	"strconv"
	"strings"

	"plumbrule/checker/compare"
	"plumbrule/checker/compare/words"
	"plumbrule/checker/report/content"
	"plumbrule/checker/report/markdown"
	"plumbrule/checker/result"
)

// Revisions writes what lies between two revisions. The error is that of the
// underlying writer.
func Revisions(to io.Writer, r *compare.Revisions) error {
	p := markdown.NewPage(to)
	p.Heading(2, "Revisions compared: "+markdown.Plain(words.Drawing(&r.Is)))
	before, after := words.Disposition(r)
	rows := []string{
		markdown.Row("", "Old", "New"),
		markdown.Row("---", "---", "---"),
		markdown.Row("File", markdown.Code(r.Was.File), markdown.Code(r.Is.File)),
		markdown.Row("Drawings", markdown.Plain(words.Drawing(&r.Was)), markdown.Plain(words.Drawing(&r.Is))),
		markdown.Row("Disposition", before, after),
	}
	was, is := content.Tallies(r.Was.Counts), content.Tallies(r.Is.Counts)
	for i := range was {
		rows = append(rows, markdown.Row(markdown.Title(string(was[i].Outcome)), strconv.Itoa(was[i].N), strconv.Itoa(is[i].N)))
	}
	p.Block(rows...)
	if summary := words.Summary(r); len(summary) > 0 {
		p.Block("What became of findings: " + strings.Join(summary, ", ") + ".")
	}
	for _, s := range compare.States() {
		state(p, r, s)
	}
	changes(p, r)
	closing(p, r.Sets, r.Waivers)
	return p.Flush()
}

// state lists the findings of a state. What asks nobody to do anything new is
// folded away.
func state(p *markdown.Page, r *compare.Revisions, s compare.State) {
	list := r.Of(s)
	if len(list) == 0 {
		return
	}
	fold := s == compare.StillAsked || s == compare.Dropped || s == compare.RanAgain
	title := fmt.Sprintf("%s (%d)", markdown.Title(words.Heading(s)), len(list))
	if fold {
		p.Block("<details><summary>" + title + "</summary>")
	} else {
		p.Heading(3, title)
	}
	var lines []string
	for _, group := range words.Groups(list) {
		lines = append(lines, item(r, group)...)
	}
	p.Block(lines...)
	if fold {
		p.Block("</details>")
	}
}

func item(r *compare.Revisions, group []*compare.Matter) []string {
	m := group[0]
	found := m.Result()
	file := r.Is.File
	if found == m.Was {
		file = r.Was.File
	}
	line := fmt.Sprintf("- **%s** %s", found.Consequence, markdown.Plain(content.Sentence(words.Message(m))))
	if way := words.Way(m); way != "" {
		line += " " + markdown.Plain(content.Sentence(way))
	}
	if found.Outcome == result.Excused && found.Reason != "" {
		line += " " + markdown.Plain(content.Sentence(found.Reason))
	}
	where := place(file, found.Span.Start.Line)
	for _, m := range group {
		one := m.Result()
		where += ", " + markdown.Code(strings.TrimSpace(one.Set+" "+one.Check+" "+content.Basis(one)))
	}
	if at := content.Where(found.See, found.Mark); at != "" {
		where = markdown.Plain(at) + ", " + where
	}
	return []string{line, "  " + where}
}

func changes(p *markdown.Page, r *compare.Revisions) {
	p.Heading(3, fmt.Sprintf("Changes of the design (%d)", len(r.Changes)))
	if len(r.Changes) == 0 {
		p.Block(words.Nothing)
		return
	}
	rows := []string{markdown.Row("What", "Change", "Lines, old and new"), markdown.Row("---", "---", "---")}
	for i := range r.Changes {
		c := &r.Changes[i]
		rows = append(rows, markdown.Row(markdown.Plain(c.Name), markdown.Plain(words.Change(c)),
			fmt.Sprintf("%d, %d", max(c.Was.Span.Start.Line, 1), max(c.Is.Span.Start.Line, 1))))
	}
	p.Block(rows...)
}

func place(file string, line int) string {
	return fmt.Sprintf("%s line %d", markdown.Code(file), max(line, 1))
}

// closing names the rule sets and prints the cautions.
func closing(p *markdown.Page, sets []result.Set, waivers []result.Design) {
	var lines []string
	for i := range waivers {
		for k := range waivers[i].Findings {
			f := &waivers[i].Findings[k]
			lines = append(lines, "- "+place(waivers[i].File, f.Span.Start.Line)+": "+markdown.Plain(content.Sentence(content.Headline(f))))
		}
	}
	if lines != nil {
		p.Heading(3, "Waivers")
		p.Block(lines...)
	}
	p.Heading(3, "Rule sets")
	lines = nil
	for i := range sets {
		line := "- **" + markdown.Plain(sets[i].ID) + "**"
		if about := content.Edition(&sets[i]); about != "" {
			line += ": " + markdown.Plain(about)
		}
		lines = append(lines, line)
		if len(sets[i].NotCovered) > 0 {
			lines = append(lines, "  - Does not cover: "+markdown.Plain(strings.Join(sets[i].NotCovered, "; ")))
		}
	}
	p.Block(lines...)
	p.Heading(3, "Cautions")
	lines = nil
	for _, caution := range content.Cautions(sets) {
		lines = append(lines, "- "+markdown.Plain(caution))
	}
	p.Block(lines...)
}
