package pages

import (
	"fmt"
	"strings"

	md "plumbrule/checker/markdown"
	"plumbrule/checker/result"
	"plumbrule/checker/ruleset"
)

// checksIndex lists the checks by topic.
func (p *Pages) checksIndex() string {
	var page md.Page
	page.Comment(remark)
	page.Heading(1, "Checks")
	topics := p.topics()
	var links []string
	for _, topic := range topics {
		links = append(links, md.Link(md.Text(topic), "#"+md.Anchor(topic)))
	}
	all := p.checks.Checks()
	page.Paragraph(fmt.Sprintf("%d checks in %d topics: ", len(all), len(topics)) + strings.Join(links, ", ") + ".")
	page.Paragraph("Each page says what is compared and why, which figure every set gives with its clause and how far it can be trusted, and shows a design that is outside, what the program prints, and the same design mended.",
		md.Code("plumbrule explain CHECK")+" prints the gist in a terminal. The consequence orders a report and decides what fails a run:",
		"gravest first, "+consequences()+".")
	for _, topic := range topics {
		page.Heading(2, topic)
		var rows [][]string
		for _, c := range all {
			if c.Topic == topic {
				rows = append(rows, []string{link(md.Code(c.ID), checksIndex, checkPage(c.ID)), string(c.Consequence), md.Text(c.Title), md.Text(c.Description)})
			}
		}
		page.Table([]string{"check", "consequence", "title", "compares"}, rows)
	}
	return page.String()
}

func consequences() string {
	var names []string
	for _, c := range result.Consequences() {
		names = append(names, string(c))
	}
	return strings.Join(names, ", ")
}

// setsIndex lists the sets and what each covers.
func (p *Pages) setsIndex() string {
	var page md.Page
	page.Comment(remark)
	page.Heading(1, "Rule sets")
	page.Paragraph("A set gives the figures of one standard; "+md.Code("plumbrule check --set ID")+" names it, several can run side by side.",
		"Every cell of a table counts as a figure. *Published* means read in print, *common practice* that the trade does it so, *recalled* that it is from memory:",
		"look it up before anything is built on it.")
	page.Heading(2, "Standards")
	page.Table([]string{"set", "edition", "title", "checks", "published", "common practice", "recalled"}, p.setRows(func(s *ruleset.Set) bool { return s.Extends == "" }))
	page.Heading(2, "Checks by topic")
	p.coverage(&page)
	page.Heading(2, "Amendments")
	page.Paragraph("Each changes some figures of the set that it extends, and holds only what was found of its place.")
	page.Table([]string{"set", "place", "extends", "changes"}, p.amendmentRows())
	page.Paragraph("Sets of your own: " + link("Writing a rule set", setsIndex, "writing-sets.md") + ", " + link("A town's amendment", setsIndex, "configuration.md#a-towns-amendment") + ".")
	return page.String()
}

func (p *Pages) setRows(wanted func(*ruleset.Set) bool) [][]string {
	var rows [][]string
	for _, set := range p.sets {
		if !wanted(set) {
			continue
		}
		n := set.Summary().Figures
		rows = append(rows, []string{
			link(md.Code(set.ID), setsIndex, setPage(set.ID)), md.Text(set.Edition), md.Text(set.Title), fmt.Sprint(len(set.Checks)),
			fmt.Sprint(n.Published), fmt.Sprint(n.CommonPractice), fmt.Sprint(n.Recalled),
		})
	}
	return rows
}

// coverage counts the checks of each topic in which a standard takes part.
func (p *Pages) coverage(page *md.Page) {
	topics := p.topics()
	head, all := []string{"set"}, []string{"all checks"}
	for _, topic := range topics {
		head = append(head, link(md.Text(topic), setsIndex, checksIndex+"#"+md.Anchor(topic)))
		all = append(all, dash(inTopic(p.checks.IDs(), topic)))
	}
	rows := [][]string{all}
	for _, set := range p.sets {
		if set.Extends != "" {
			continue
		}
		var ids []string
		for i := range set.Checks {
			ids = append(ids, set.Checks[i].ID)
		}
		row := []string{link(md.Code(set.ID), setsIndex, setPage(set.ID))}
		for _, topic := range topics {
			row = append(row, dash(inTopic(ids, topic)))
		}
		rows = append(rows, row)
	}
	page.Table(head, rows)
}

// dash prints a number, and a dash for none, which is easier to see.
func dash(n int) string {
	if n == 0 {
		return "–"
	}
	return fmt.Sprint(n)
}

func inTopic(ids []string, topic string) int {
	n := 0
	for _, id := range ids {
		if strings.HasPrefix(id, topic+"/") {
			n++
		}
	}
	return n
}

func (p *Pages) amendmentRows() [][]string {
	var rows [][]string
	for _, set := range p.sets {
		if set.Extends == "" {
			continue
		}
		extends := md.Code(set.Extends)
		if p.setOf(set.Extends) != nil {
			extends = link(extends, setsIndex, setPage(set.Extends))
		}
		rows = append(rows, []string{link(md.Code(set.ID), setsIndex, setPage(set.ID)), md.Text(set.Place), extends, p.changed(set)})
	}
	return rows
}

// changed names the checks of which a set changes something itself.
func (p *Pages) changed(set *ruleset.Set) string {
	var names []string
	for i := range set.Checks {
		c := &set.Checks[i]
		if c.Off != nil || gives(set, c.ID) {
			names = append(names, link(md.Code(c.ID), setsIndex, checkPage(c.ID)))
		}
	}
	return strings.Join(names, ", ")
}
