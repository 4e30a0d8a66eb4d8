package fieldsheet

import (
	"plumbrule/checker/facts"
	"plumbrule/checker/geometry"
	"plumbrule/checker/measure"
	"plumbrule/checker/model"
	"plumbrule/checker/report/content"
)

// Build lays out the sheet of a design; file is the name to print.
func Build(file string, design *facts.Derived) *Sheet {
	deck := design.Deck
	b := &builder{deck: deck, facts: design.Facts, sys: deck.System, sheet: &Sheet{File: file, System: deck.System}}
	if job := deck.Job; job != nil {
		b.sheet.Title, b.sheet.Revision = word(job.Title), word(job.Revision)
	}
	b.sheet.Basis = []string{
		"Left and right are those of the plan with the house at the top: yours as you stand outside and face the house.",
		"Each length was rounded by itself from its exact value, to 1/16 in, 0.001 in and 0.1 mm. Pull every mark from the same end: never step off a rounded one.",
		"Rule sets run for this sheet: none. It holds measures and counts, no findings.",
	}
	plans := design.SettingOut.Platforms
	for i := range plans {
		b.platform(&plans[i], len(plans) > 1)
	}
	b.stairs()
	b.guards()
	b.measured()
	b.counts()
	b.sheet.Cautions = content.Cautions(nil)
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
func (b *builder) platform(plan *facts.PlatformPlan, named bool) {
	p := newPlatform(b, plan)
	if named {
		p.of = ", platform " + plan.Label
	}
	if plan.Outline == nil {
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
	plan *facts.PlatformPlan
	m    *model.Platform
	of   string // ", platform A" where there are several
	// frame and edges are those of the frame, or where it is not known those of
	// the outline as drawn.
	frame geometry.Ring
	edges []facts.EdgePlan
	base  base
	// joists are the lines of joists, numbered from the left or the house.
	joists []joist
}

func newPlatform(b *builder, plan *facts.PlatformPlan) *platform {
	p := &platform{builder: b, plan: plan, m: plan.Platform, frame: plan.Frame, edges: plan.FrameEdges}
	if !p.framed() {
		p.frame, p.edges = plan.Outline, plan.Edges
	}
	return p
}

// missing names the platform where there are several.
func (p *platform) missing(what, needs string) { p.builder.missing(what+p.of, needs) }

// framed reports whether the edge of the frame is known.
func (p *platform) framed() bool { return p.plan.FrameMissing == "" }

// turned reports whether the joists run along the house.
func (p *platform) turned() bool { return p.plan.Joists != nil && p.plan.Joists.AlongHouse }

// joistsMissing is the field without which no joist can be placed.
func (p *platform) joistsMissing() string {
	if p.plan.Joists == nil {
		return "platforms[].joists"
	}
	return p.plan.Joists.Missing
}

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
