package fieldsheet

import (
	"plumbrule/checker/facts"
	"plumbrule/checker/measure"
	"plumbrule/checker/model"
	"plumbrule/checker/report/content"
)

// Build lays out the sheet of a design. The facts are those of the deck, which
// must have been read and derived without problems; file is the name to print.
func Build(file string, deck *model.Deck, f *facts.Facts) *Sheet {
	b := &builder{deck: deck, facts: f, sys: deck.System, sheet: &Sheet{File: file, System: deck.System}}
	if job := deck.Job; job != nil {
		b.sheet.Title, b.sheet.Revision = word(job.Title), word(job.Revision)
	}
	b.sheet.Basis = []string{
		"Left and right are those of the plan with the house at the top: yours as you stand outside and face the house.",
		"Each length was rounded by itself from its exact value, to 1/16 in, 0.001 in and 0.1 mm. Pull every mark from the same end: never step off a rounded one.",
		"Rule sets run for this sheet: none. It holds measures and counts, no findings.",
	}
	plans := facts.Plans(deck)
	for i := range plans {
		b.platform(&plans[i], len(plans) > 1)
	}
	b.stairs()
	b.guards()
	b.measured()
	b.counts()
	b.sheet.Cautions = content.Cautions()
	b.sheet.clean()
	return b.sheet
}

// builder gathers sections, what is not shown, and counts.
type builder struct {
	deck  *model.Deck
	facts *facts.Facts
	sys   measure.System
	sheet *Sheet
	tally tally
}

// section adds a section that has something to say.
func (b *builder) section(s Section) {
	if len(s.Tables)+len(s.Notes) > 0 {
		b.sheet.Sections = append(b.sheet.Sections, s)
	}
}

// missing notes a number that the design does not show enough for, once.
func (b *builder) missing(what, needs string) {
	m := Missing{What: what, Needs: needs}
	for _, known := range b.sheet.NotShown {
		if known == m {
			return
		}
	}
	b.sheet.NotShown = append(b.sheet.NotShown, m)
}

// platform adds the sections of one platform.
func (b *builder) platform(plan *facts.Plan, named bool) {
	p := &platform{builder: b, plan: plan, m: plan.Platform}
	if named {
		p.of = ", platform " + plan.Label
	}
	if plan.Frame == nil {
		p.missing("sides, diagonals, tapes, marks", "platforms[].outline")
		return
	}
	p.base = p.findBase()
	p.findSticks()
	p.setOut()
	p.strings()
	p.footings()
	p.posts()
	p.ledger()
	p.marks()
	p.cuts()
	p.corners()
	p.boards()
	p.hardware()
}

// platform is one platform while its sections are laid out.
type platform struct {
	*builder
	plan *facts.Plan
	m    *model.Platform
	of   string // ", platform A" where there are several
	base base
	// joists are the lines of joists, numbered from the left or the house.
	joists []joist
}

// missing names the platform where there are several.
func (p *platform) missing(what, needs string) { p.builder.missing(what+p.of, needs) }

// framed reports whether the edge of the frame is known.
func (p *platform) framed() bool { return p.plan.FrameMissing == "" }

// word gives a text of the design; "" where it is not shown.
func word(w *model.Words) string {
	if w == nil {
		return ""
	}
	return w.V
}

// size names the size of a member, "" where it is not shown.
func (b *builder) size(m *model.Member) string {
	d := m.Dimensions()
	if d == nil {
		return ""
	}
	return d.V.Text(b.sys)
}

// named puts a size, or another word, behind what it belongs to.
func named(what, size string) string {
	if size == "" {
		return what
	}
	return what + ", " + size
}
