package pages

import (
	"slices"
	"strings"

	"plumbrule/checker/catalog"
	md "plumbrule/checker/markdown"
	"plumbrule/checker/result"
	"plumbrule/schema"
)

// check writes the page of a check.
func (p *Pages) check(c *catalog.Check) (string, error) {
	var page md.Page
	page.Comment(remark)
	page.Heading(1, c.Title)
	from := checkPage(c.ID)
	head := []string{
		md.Code(c.ID), md.Strong(string(c.Consequence)),
		link("all checks of "+md.Text(c.Topic), from, checksIndex+"#"+md.Anchor(c.Topic)),
	}
	if len(c.Aliases) > 0 {
		head = append(head, "also known as "+codes(c.Aliases))
	}
	page.Paragraph(strings.Join(head, " · "))
	page.Paragraph(md.Text(c.Description))
	page.Paragraph(md.Strong("Why."), md.Text(c.Why))
	page.Paragraph(md.Strong("When."), "Applies where "+md.Text(c.AppliesWhen)+".")
	contents(&page, p.examples.byCheck[c.ID] != nil)
	p.figures(&page, c)
	if err := p.examplesOf(&page, c); err != nil {
		return "", err
	}
	leftAlone(&page, c)
	p.seeAlso(&page, c)
	return page.String(), nil
}

// Headings of a check's page.
const (
	headFigures  = "Figures"
	headExample  = "Example"
	headMend     = "To mend"
	headNotShown = "When it is not shown"
	headWaiver   = "To keep it as it is"
	headSays     = "What it says"
	headExempt   = "What it leaves alone"
	headSee      = "See also"
)

// contents points to the parts of the page that people come for.
func contents(page *md.Page, example bool) {
	heads := []string{headFigures}
	if example {
		heads = append(heads, headExample, headMend, headNotShown, headWaiver)
	}
	var links []string
	for _, head := range append(heads, headSee) {
		links = append(links, md.Link(head, "#"+md.Anchor(head)))
	}
	page.Paragraph(strings.Join(links, " · "))
}

// leftAlone lists what the check says, and the subjects that it leaves alone.
func leftAlone(page *md.Page, c *catalog.Check) {
	if said := lines(c.Messages); len(said) > 1 {
		page.Heading(2, headSays)
		page.Paragraph("Values of the design take the place of the words in italics:")
		page.List(said...)
	}
	if len(c.Exempt) > 0 {
		page.Heading(2, headExempt)
		page.Paragraph("The answer is *does not apply*, with one of these reasons:")
		page.List(lines(c.Exempt)...)
	}
}

// lines gives lines of a check in the order of their keys, each once, with the
// names of values in place of these.
func lines(templates map[string]catalog.Template) []string {
	var keys, list []string
	for key := range templates {
		keys = append(keys, key)
	}
	slices.Sort(keys)
	for _, key := range keys {
		line := md.Text(templates[key].String())
		for _, name := range templates[key].Names() {
			line = strings.ReplaceAll(line, "{"+name+"}", "*"+strings.ReplaceAll(name, "_", " ")+"*")
		}
		if !slices.Contains(list, line) {
			list = append(list, line)
		}
	}
	return list
}

func codes(names []string) string {
	var list []string
	for _, name := range names {
		list = append(list, md.Code(name))
	}
	return strings.Join(list, ", ")
}

// examplesOf writes what the check asks for where it is not shown, a design that
// it finds outside with the mended one, and how else a finding may be dealt
// with.
func (p *Pages) examplesOf(page *md.Page, c *catalog.Check) error {
	e := p.examples.byCheck[c.ID]
	if e == nil {
		return nil
	}
	page.Heading(2, headExample)
	page.Paragraph(p.heldAgainst(c, e), "Only what concerns this check is shown.")
	page.Code("yaml", string(e.outside.text))
	said, err := printed(&e.outside, c.ID, result.Outside)
	if err != nil {
		return err
	}
	page.Code("text", said)
	page.Paragraph("Mended:")
	page.Code("diff", changed(&e.outside, &e.within))
	if said, err = inside(&e.within, c.ID); err != nil {
		return err
	}
	page.Paragraph("With " + md.Code("--verbose") + " the report then lists:")
	page.Code("text", said)
	page.Heading(2, headMend)
	var ways []string
	for _, way := range c.Mend {
		ways = append(ways, md.Text(way))
	}
	page.List(ways...)
	tried(page, c)
	if err := p.notShown(page, c, e); err != nil {
		return err
	}
	return waiver(page, c, e)
}

// heldAgainst says what the designs of the example are held against.
func (p *Pages) heldAgainst(c *catalog.Check, e *example) string {
	dir := "../" + fixturesDir(c.ID)
	from := checkPage(c.ID)
	if e.brought() {
		return "Held against figures made up for it, " + link(md.Code(e.set), from, dir+"/"+e.set) + "."
	}
	return "Held against " + link(md.Code(e.set), from, setPage(e.set)) + ", as " +
		md.Code("plumbrule check --set "+e.set+" "+e.outside.file) + " does it in " + link("the folder of its designs", from, dir) + "."
}

// notShown lists the fields that the check has been seen to ask for, and shows
// how it asks.
func (p *Pages) notShown(page *md.Page, c *catalog.Check, e *example) error {
	page.Heading(2, headNotShown)
	page.Paragraph("A design that leaves out what would decide gets no default: the check asks for it.",
		"In the designs that these pages are made with it asked for:")
	var rows [][]string
	for _, field := range p.examples.needs[c.ID] {
		shown, _ := schema.FieldAt("design", field)
		rows = append(rows, []string{md.Code(field), md.Text(shown.Description)})
	}
	page.Table([]string{"field", "what to show"}, rows)
	said, err := printed(&e.notShown, c.ID, result.NotShown)
	if err != nil {
		return err
	}
	page.Paragraph("It says so of " + link(md.Code(e.notShown.file), checkPage(c.ID), "../"+fixturesDir(c.ID)+"/"+e.notShown.file) + ":")
	page.Code("text", said)
	return nil
}

// seeAlso points to what is behind the page.
func (p *Pages) seeAlso(page *md.Page, c *catalog.Check) {
	from := checkPage(c.ID)
	var entries []string
	for _, id := range c.Reads {
		entries = append(entries, "reads figures of "+p.linkCheck(from, id))
	}
	for _, other := range p.checks.Checks() {
		if slices.Contains(other.Reads, c.ID) {
			entries = append(entries, "its figures are read by "+p.linkCheck(from, other.ID))
		}
	}
	entries = append(entries,
		"how it compares: "+link(md.Code(c.File), from, "../rules/"+c.File),
		"what a design can say: "+link("Using plumbrule", from, "usage.md"),
		"other figures in place of these: "+link("A town's amendment", from, "configuration.md#a-towns-amendment"))
	page.Heading(2, headSee)
	page.List(entries...)
}

func (p *Pages) linkCheck(from, id string) string {
	text := link(md.Code(id), from, checkPage(id))
	if c := p.checks.Find(id); c != nil {
		text += ", " + md.Text(c.Title)
	}
	return text
}
