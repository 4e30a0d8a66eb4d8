package fieldsheet

import (
	"fmt"
	"strconv"
	"strings"

	"plumbrule/checker/geometry"
	"plumbrule/checker/measure"
	"plumbrule/checker/model"
)

// ledger lists the fasteners of the ledger and the ties to the house.
func (p *platform) ledger() {
	if word(p.m.Support) != "ledger" && p.m.Ledger == nil {
		return
	}
	s := Section{Title: "Ledger fasteners" + p.of}
	switch {
	case p.m.Ledger == nil:
		p.missing("ledger and its fasteners", "platforms[].ledger")
		p.tally.fasteners.unknown = true
	case p.m.Ledger.Fasteners == nil:
		p.missing("ledger fasteners", "platforms[].ledger.fasteners")
		p.tally.fasteners.unknown = true
	case !p.fasteners(&s, p.m.Ledger.Fasteners):
		p.countDrawn(p.m.Ledger.Fasteners)
	}
	p.lateral(&s)
	p.section(s)
}

// clearance is how far a fastener is kept from the side of a joist: the flange
// of a hanger, and the head or washer beside it (common practice, no source).
func (p *platform) clearance() measure.Length {
	if p.sys == measure.Metric {
		return 50 * measure.Millimetre
	}
	return 2 * measure.Inch
}

// fasteners lays the fasteners out at the spacing of the design; false where
// that cannot be done.
func (p *platform) fasteners(s *Section, d *model.LedgerFasteners) bool {
	p.needFasteners(d)
	if !p.framed() {
		p.missing("ledger fastener positions", p.plan.FrameMissing)
		return false
	}
	run := fastenerRun{length: p.base.Length(), taken: p.taken()}
	if d.Spacing != nil {
		run.spacing = d.Spacing.V
	}
	var spots []spot
	var found bool
	switch {
	case len(d.Positions) > 0:
		for _, at := range d.Positions {
			run.drawn = append(run.drawn, at.V)
		}
		spots, found = run.asDrawn()
	case d.Spacing == nil || d.EndDistance == nil:
		return false
	default:
		run.end = d.EndDistance.V
		spots, found = run.even()
	}
	if !found {
		s.Notes = append(s.Notes, "No layout keeps this spacing and stays clear of joists and hangers: it has to be drawn.")
		return false
	}
	p.writeFasteners(s, d, run, spots)
	return true
}

// fastenerName is what a fastener is asked for by.
func (p *platform) fastenerName(d *model.LedgerFasteners) string {
	if d.Diameter == nil {
		return word(d.Type)
	}
	return strings.TrimSpace(d.Diameter.V.Text(p.sys) + " " + word(d.Type))
}

// countDrawn takes the number that the design states where the fasteners could
// not be laid out.
func (p *platform) countDrawn(d *model.LedgerFasteners) {
	if d.Count == nil {
		p.tally.fasteners.unknown = true
		return
	}
	p.tally.fasteners.add(p.fastenerName(d), d.Count.V)
}

// needFasteners notes what the description of the fasteners leaves out.
func (p *platform) needFasteners(d *model.LedgerFasteners) {
	const field = "platforms[].ledger.fasteners."
	if len(d.Positions) == 0 {
		if d.Spacing == nil {
			p.missing("ledger fastener positions", field+"spacing")
		}
		if d.EndDistance == nil {
			p.missing("ledger fastener positions", field+"end_distance")
		}
	}
	if d.Rows == nil {
		p.missing("rows of ledger fasteners", field+"rows")
	}
	if d.EdgeDistanceTop == nil {
		p.missing("upper row below the top of the ledger", field+"edge_distance_top")
	}
	if d.EdgeDistanceBottom == nil {
		p.missing("lower row above the bottom of the ledger", field+"edge_distance_bottom")
	}
}

// taken are the stretches of the ledger behind joists and their hangers.
func (p *platform) taken() []geometry.Interval {
	var list []geometry.Interval
	beside := p.clearance()
	for _, j := range p.joists {
		if p.endsOn(&j, p.base.edge) {
			near := p.along(p.base.Segment, j.near)
			list = append(list, geometry.Interval{From: near - beside, To: near + p.plan.Joists.Thickness + beside})
		}
	}
	return list
}

// writeFasteners writes the final list, and what was checked once more.
func (p *platform) writeFasteners(s *Section, d *model.LedgerFasteners, run fastenerRun, spots []spot) {
	rows := int64(0)
	if d.Rows != nil {
		rows = d.Rows.V
	}
	if rows == 2 && d.Staggered == nil {
		p.missing("whether the two rows are staggered", "platforms[].ledger.fasteners.staggered")
	}
	staggered := rows == 2 && d.Staggered != nil && d.Staggered.V
	t := Table{Columns: []Column{{"No.", Words}, {"Row", Words}, {"From left end", Length}, {"From right end", Length}}}
	for i, at := range spots {
		row := ""
		switch {
		case staggered && i%2 == 0:
			row = "upper"
		case staggered:
			row = "lower"
		case rows > 1 && d.Staggered != nil:
			row = "all"
		}
		number := strconv.Itoa(i + 1)
		if at.moved {
			number += " *"
		}
		t.row(text(number), text(row), length(at.at), length(run.length-at.at))
	}
	t.Notes = append(t.Notes, fmt.Sprintf("* moved: every fastener is kept %s from the sides of joists, for hanger flange and washer (common practice: look at the hangers on hand).", p.clearance().Text(p.sys)))
	total := unknown()
	switch {
	case staggered || rows == 1:
		total = count(len(spots))
	case rows > 1 && d.Staggered != nil:
		total = count(len(spots) * int(rows))
	}
	if total.Kind == Count {
		p.tally.fasteners.add(p.fastenerName(d), total.Count)
	} else {
		p.tally.fasteners.unknown = true
	}
	s.add(p.fastenerSums(d, run.spacing, spots, total))
	s.add(t)
}

// fastenerSums lists how many fasteners there are, how far apart they have
// come, and where their rows lie.
func (p *platform) fastenerSums(d *model.LedgerFasteners, spacing measure.Length, spots []spot, total Cell) Table {
	t := list("")
	t.row(text(named("fasteners", p.fastenerName(d))), total)
	if spacing > 0 {
		t.row(text("spacing drawn"), length(spacing))
	}
	t.row(text("widest spacing after moving"), length(widest(spots)))
	if at := d.EdgeDistanceTop; at != nil {
		t.row(text("upper row below top edge"), length(at.V))
	}
	if at := d.EdgeDistanceBottom; at != nil {
		t.row(text("lower row above bottom edge"), length(at.V))
	}
	return t
}

// lateral lists the tension ties to the house.
func (p *platform) lateral(s *Section) {
	d := p.m.LateralDevices
	if d == nil {
		p.missing("ties to the house", "platforms[].lateral_devices")
		p.tally.lateral.unknown = true
		return
	}
	t := list("Ties to the house")
	switch {
	case d.Count != nil:
		t.row(text("how many"), count(d.Count.V))
		p.tally.lateral.add("", d.Count.V)
	case len(d.Positions) > 0:
		p.tally.lateral.add("", int64(len(d.Positions)))
	default:
		p.tally.lateral.unknown = true
	}
	for i, at := range d.Positions {
		t.row(text(fmt.Sprintf("tie %d, from left end", i+1)), length(at.V))
	}
	if d.DistanceFromEnds != nil && len(d.Positions) == 0 {
		t.row(text("outer ties, from either end"), length(d.DistanceFromEnds.V))
	}
	s.add(t)
}
