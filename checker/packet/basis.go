package packet

import (
	"fmt"
	"slices"
	"strings"

	"plumbrule/checker/report/content"
	"plumbrule/checker/result"
)

// remarks gathers texts, and for each what it belongs to.
type remarks struct {
	texts []string
	of    [][]string
}

func (m *remarks) add(text, of string) {
	i := slices.Index(m.texts, text)
	if i < 0 {
		i = len(m.texts)
		m.texts, m.of = append(m.texts, text), append(m.of, nil)
	}
	m.of[i] = appendNew(m.of[i], of)
}

// table lists the texts in the order in which they came.
func (m *remarks) table(caption, what, of string) *Table {
	t := &Table{Caption: caption, Columns: []Column{{what, 3}, {of, 2}}}
	for i, s := range m.texts {
		t.Rows = append(t.Rows, Row{Cells: []Cell{text(capital(s)), text(strings.Join(m.of[i], ", "))}})
	}
	return t
}

// assumed says what was taken that the description does not show, and which
// remarks the figures come with.
func (b *builder) assumed() Section {
	s := Section{
		ID: "assumed", Title: "What was assumed",
		Notes: []string{"A check that lacks a value answers with not shown and takes nothing in its place. Wood engineering, which stands beside the tables as a second answer, takes what is open on the careful side, as listed here; its working, step by step, is printed by the check command when asked to be verbose."},
	}
	var engineered, noted remarks
	for _, r := range b.results {
		if r.Engineered != nil {
			of := strings.TrimSpace(r.Check + " " + r.Mark)
			for _, line := range assumptions(r.Engineered.Working) {
				engineered.add(line, of)
			}
		}
		for _, note := range r.Notes {
			noted.add(note, r.Set+" "+r.Check)
		}
	}
	if len(engineered.texts) > 0 {
		s.Parts = append(s.Parts, Part{Table: engineered.table("Assumptions of wood engineering", "Assumed", "For")})
	} else {
		s.Parts = append(s.Parts, Part{Notes: []string{"Wood engineering had no answer for any member of this design, so nothing was assumed for it."}})
	}
	if len(noted.texts) > 0 {
		s.Parts = append(s.Parts, Part{Table: noted.table("Remarks that figures come with", "Remark", "Belongs to")})
	}
	return s
}

// assumptions gives the lines of a working in which something is taken that was
// not given: those that say so, in front of the steps, which are equations.
func assumptions(working []string) []string {
	const mark = "assumed: "
	var list []string
	for _, line := range working {
		switch {
		case strings.Contains(line, " = "):
			return list
		case strings.HasPrefix(line, mark):
			list = append(list, strings.TrimPrefix(line, mark))
		case strings.Contains(line, notGiven):
			list = append(list, line)
		}
	}
	return list
}

// unread lists the values of the description that no check reads.
func (b *builder) unread() Section {
	s := Section{ID: "unread", Title: "Typed in and read by no check of any set"}
	t := &Table{Caption: "Values that no check reads", Columns: []Column{{"Where", 2}, {"As typed", 2}, {"Line of the description", 1}}}
	for i := range b.design.Unread {
		u := &b.design.Unread[i]
		words := u.Text
		if words == "" && b.design.Document != nil {
			if n := b.design.Document.Find(u.Pointer); n != nil {
				words = spelled(n)
			}
		}
		t.Rows = append(t.Rows, Row{Cells: []Cell{text(place(u.Pointer)), text(words), text(fmt.Sprint(max(u.Span.Start.Line, 1)))}})
	}
	if len(t.Rows) == 0 {
		s.Notes = []string{"Every value of the description is read by something."}
		return s
	}
	s.Notes = []string{"Nothing was compared with these values. They wait for the reader's own judgement."}
	s.Parts = []Part{{Table: t}}
	return s
}

// covered names the rule sets, what they are about and what they leave out.
func (b *builder) covered() Section {
	s := Section{ID: "sets", Title: "Rule sets, and what they do not cover"}
	for i := range b.sets {
		set := &b.sets[i]
		p := Part{Title: set.ID, Notes: []string{content.Sentence(content.Edition(set))}}
		if set.Place != "" {
			p.Notes = append(p.Notes, content.Sentence("rules of "+set.Place))
		}
		if set.Scope != "" {
			p.Notes = append(p.Notes, "Covers: "+content.Sentence(set.Scope))
		}
		p.Notes = append(p.Notes, fmt.Sprintf("Figures: %d published, %d common practice, %d recalled.",
			set.Figures.Published, set.Figures.CommonPractice, set.Figures.Recalled))
		if len(set.NotCovered) > 0 {
			p.Notes = append(p.Notes, "Does not cover:")
			p.List = set.NotCovered
		}
		s.Parts = append(s.Parts, p)
	}
	return s
}

// figures explains the statuses of figures and lists the sources.
func (b *builder) figures() Section {
	s := Section{ID: "figures", Title: "How far the figures can be trusted"}
	t := &Table{Caption: "Statuses of figures", Columns: []Column{{"Status", 1}, {"What it means", 4}, {"Answers in this packet", 1}}}
	for _, status := range []struct{ name, means string }{
		{"published", "Read in print; the source is named. That may be a secondary publication of the code, so the code's own text goes before it."},
		{"common practice", "What the trade usually does; no code says so."},
		{"recalled", "Written down from memory and not yet found in print. Look it up in the clause before relying on it."},
		{result.StatedInDesign, "No figure of a rule set: the description says that a product is listed for it. Nobody compared it with the listing itself."},
	} {
		n := 0
		for _, r := range b.results {
			if r.Status == status.name && r.Outcome != result.DoesNotApply {
				n++
			}
		}
		t.Rows = append(t.Rows, Row{Cells: []Cell{text(status.name), text(status.means), text(fmt.Sprint(n))}})
	}
	s.Parts = []Part{{Table: t}}
	if len(b.sources) > 0 {
		sources := &Table{Caption: "Sources of published figures", Columns: []Column{{"Source", 0.6}, {"What was read", 5}}}
		for i, name := range b.sources {
			sources.Rows = append(sources.Rows, Row{Cells: []Cell{text(fmt.Sprint(i + 1)), text(name)}})
		}
		s.Parts = append(s.Parts, Part{Table: sources})
	}
	return s
}

// waivers lists the findings on files of waivers, which are for those who keep
// them; empty where there are none.
func (b *builder) waivers() Section {
	s := Section{ID: "waivers", Title: "Waivers that excuse nothing or have run out"}
	var lines []string
	for i := range b.report.Designs {
		d := &b.report.Designs[i]
		if d.Kind != result.KindWaivers {
			continue
		}
		for k := range d.Findings {
			r := &d.Findings[k]
			lines = append(lines, fmt.Sprintf("%s, line %d: %s", d.File, max(r.Span.Start.Line, 1), content.Sentence(content.Headline(r))))
		}
	}
	if lines != nil {
		s.Parts = []Part{{List: lines}}
	}
	return s
}

func (b *builder) cautions() Section {
	return Section{ID: "cautions", Title: "Before relying on this packet", Parts: []Part{{List: content.Cautions(b.sets)}}}
}
