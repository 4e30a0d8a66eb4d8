package fieldsheet

import (
	"fmt"
	"strconv"

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
	case p.m.Ledger.Fasteners == nil:
		p.missing("ledger fasteners", "platforms[].ledger.fasteners")
	default:
		p.fasteners(&s, p.m.Ledger.Fasteners)
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

// fasteners lays the fasteners out at the spacing of the design.
func (p *platform) fasteners(s *Section, d *model.LedgerFasteners) {
	p.needFasteners(d)
	if !p.framed() {
		p.missing("ledger fastener positions", p.plan.FrameMissing)
		return
	}
	if d.Spacing == nil && len(d.Positions) == 0 || d.EndDistance == nil && len(d.Positions) == 0 {
		return
	}
	run := fastenerRun{length: p.base.Length(), taken: p.taken()}
	if d.Spacing != nil {
		run.spacing = d.Spacing.V
	}
	var spots []spot
	found := true
	if len(d.Positions) > 0 {
		for _, at := range d.Positions {
			run.drawn = append(run.drawn, at.V)
		}
		spots, found = run.asDrawn()
	} else {
		run.end = d.EndDistance.V
		spots, found = run.even()
	}
	if !found {
		s.Notes = append(s.Notes, "No layout keeps this spacing and stays clear of joists and hangers: it has to be drawn.")
		return
	}
	p.writeFasteners(s, d, run, spots)
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
	clear := p.clearance()
	for _, j := range p.joists {
		if p.endsOn(&j, p.base.edge) {
			near := p.along(p.base.Segment, j.near)
			list = append(list, geometry.Interval{From: near - clear, To: near + p.plan.JoistThickness + clear})
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
	staggered := rows == 2 && d.Staggered != nil && d.Staggered.V
	if rows == 2 && d.Staggered == nil {
		p.missing("whether the two rows are staggered", "platforms[].ledger.fasteners.staggered")
	}
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
	what := word(d.Type)
	if d.Diameter != nil {
		what = d.Diameter.V.Text(p.sys) + " " + what
	}
	total := int64(len(spots))
	sum := list("")
	sum.row(text("fasteners, "+what), count(total))
	switch {
	case staggered || rows == 1:
		p.tally.fasteners.add(what, total)
	case rows > 1 && d.Staggered != nil:
		total *= rows
		sum.Rows[0][1] = count(total)
		p.tally.fasteners.add(what, total)
	default:
		sum.Rows[0][1] = unknown()
		p.tally.fasteners.unknown = true
	}
	if run.spacing > 0 {
		sum.row(text("spacing drawn"), length(run.spacing))
	}
	sum.row(text("widest spacing after moving"), length(widest(spots)))
	if at := d.EdgeDistanceTop; at != nil {
		sum.row(text("upper row below top edge"), length(at.V))
	}
	if at := d.EdgeDistanceBottom; at != nil {
		sum.row(text("lower row above bottom edge"), length(at.V))
	}
	s.add(sum)
	s.add(t)
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
