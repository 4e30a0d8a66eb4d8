package fieldsheet

import (
	"fmt"
	"math"
	"slices"
	"strconv"
	"strings"

	"plumbrule/checker/facts"
	"plumbrule/checker/geometry"
	"plumbrule/checker/measure"
	"plumbrule/checker/model"
)

// joist is a line of joist: all sticks on it, at one place across the layout.
type joist struct {
	number  int
	near    measure.Length // the edge that is marked: left, or toward the house
	center  measure.Length
	doubled bool
	sticks  []facts.StickPlan
}

// across is where a point lies across the joists.
func (p *platform) across(q geometry.Point) measure.Length {
	if p.turned() {
		return q.Y
	}
	return q.X
}

// findSticks numbers the joist lines.
func (p *platform) findSticks() {
	if p.joistsMissing() != "" {
		return
	}
	for _, stick := range p.plan.Joists.Sticks {
		u := p.across(stick.Reach.A)
		n := len(p.joists)
		if n > 0 && p.joists[n-1].center == u {
			p.joists[n-1].sticks = append(p.joists[n-1].sticks, stick)
			continue
		}
		near := u - p.plan.Joists.Thickness/2
		p.joists = append(p.joists, joist{number: n + 1, near: near, center: u, doubled: p.doubled(near), sticks: []facts.StickPlan{stick}})
	}
}

// doubled reports whether the description doubles the joist at a mark.
func (p *platform) doubled(near measure.Length) bool {
	box := p.frame.Bounds()
	low, high := p.across(box.Min), p.across(box.Max)
	fromFar := p.m.Joists.Start != nil && (p.m.Joists.Start.V == "right" || p.m.Joists.Start.V == "front")
	return slices.ContainsFunc(p.m.Joists.DoubledAt, func(at *model.Length) bool {
		place := near - low
		if fromFar {
			place = high - near - p.plan.Joists.Thickness
		}
		off := place - at.V
		return max(off, -off) < p.plan.Joists.Thickness
	})
}

// markLine is a line across the joists that gets marks: ledger or rim.
type markLine struct {
	name   string
	rows   []markRow
	size   measure.Length // its whole length
	skewed bool           // does not run square across the joists
}

type markRow struct {
	joist      int
	near, back measure.Length // from the near end and from the far one
}

// marks lists the joist marks on ledger and rims.
func (p *platform) marks() {
	s := Section{Title: "Joist marks" + p.of}
	if needs := p.joistsMissing(); needs != "" {
		p.missing("joist marks", needs)
		return
	}
	near, far, edge := "left", "right", "left edge"
	if p.turned() {
		near, far, edge = "house", "front", "edge toward the house"
	}
	s.Notes = append(s.Notes, fmt.Sprintf("A mark is the %s of a joist, on ledger and rim alike; the X goes on the side away from the %s end. Both columns find the same line.", edge, near))
	s.add(p.layout())
	past := false
	for _, line := range merge(p.markLines()) {
		t := Table{
			Title:   capital(line.name),
			Columns: []Column{{"Joist", Words}, {"From " + near + " end", Length}, {"From " + far + " end", Length}},
		}
		for _, m := range line.rows {
			t.row(text(strconv.Itoa(m.joist)), length(m.near), length(m.back))
			past = past || m.near < 0 || m.back < 0
		}
		if line.skewed {
			t.Notes = append(t.Notes, "Along the outer face; carry each mark in with the joist, not square to the edge.")
		}
		s.add(t)
	}
	if past {
		s.Notes = append(s.Notes, "A mark below zero lies that far past the end.")
	}
	p.section(s)
}

// layout gives what the marks come to: spacing, odd bays, blocking.
func (p *platform) layout() Table {
	t := list("Layout")
	n := len(p.plan.Joists.Sticks)
	fact := p.joistFact()
	if n == 0 || fact == nil {
		return t
	}
	t.row(text("joist lines"), count(len(p.joists)))
	if b := p.plan.Joists.Bays; b.Parts > 0 {
		t.row(text("equal bays"), count(b.Parts))
		t.row(text("bay, edge to edge"), length(b.Length()))
		// The same division less one thickness a bay, rounded once.
		between := geometry.Pitch{Over: b.Over - measure.Length(b.Parts)*p.plan.Joists.Thickness, Parts: b.Parts}
		t.row(text("clear between joists (blocking)"), length(between.Length()))
		return t
	}
	if fact.Spacing != nil {
		t.row(text("spacing"), length(fact.Spacing.Value))
		t.row(text("clear between joists (blocking)"), length(fact.Spacing.Value-p.plan.Joists.Thickness))
	}
	if fact.FirstBay != nil && fact.LastBay != nil {
		t.row(text("first bay, edge to edge"), length(fact.FirstBay.Value))
		t.row(text("last bay, edge to edge"), length(fact.LastBay.Value))
	}
	return t
}

func (p *platform) joistFact() *facts.Joists {
	for i := range p.facts.Joists {
		if p.facts.Joists[i].Platform == p.plan.Label {
			return &p.facts.Joists[i]
		}
	}
	return nil
}

// markLines gives the marks on every edge of the frame that joists end at.
func (p *platform) markLines() []markLine {
	var lines []markLine
	for i := range p.frame {
		line := markLine{name: p.edgeName(i)}
		e := p.frame.Edge(i)
		if p.across(e.A) > p.across(e.B) {
			e = e.Reverse()
		}
		if i == p.base.edge && p.base.name == "ledger" {
			line.name, e = "ledger", p.base.Segment
		}
		line.size = e.Length()
		line.skewed = e.A.X != e.B.X && e.A.Y != e.B.Y
		for _, j := range p.joists {
			if end := p.endsOn(&j, i); end {
				near := p.along(e, j.near)
				line.rows = append(line.rows, markRow{j.number, near, line.size - near})
			}
		}
		if len(line.rows) > 0 {
			lines = append(lines, line)
		}
	}
	return lines
}

// endsOn reports whether a stick of the joist ends at an edge of the frame.
func (p *platform) endsOn(j *joist, edge int) bool {
	return slices.ContainsFunc(j.sticks, func(s facts.StickPlan) bool {
		return p.meets(s.Reach.A, edge) || p.meets(s.Reach.B, edge)
	})
}

// meets reports whether the end of a stick lies on an edge that runs across.
func (p *platform) meets(end geometry.Point, edge int) bool {
	e := p.frame.Edge(edge)
	if p.across(e.A) == p.across(e.B) {
		return false // runs with the joists
	}
	const rounding = 2 // nanometres: the crossing was rounded
	return e.Distance(end) <= rounding
}

// along is how far along an edge, from its near end, the line across the joists
// at u meets it.
func (p *platform) along(e geometry.Segment, u measure.Length) measure.Length {
	from, run := u-p.across(e.A), p.across(e.B)-p.across(e.A)
	whole := e.Length()
	if run == whole {
		return from
	}
	return measure.Length(math.Round(float64(from) / float64(run) * float64(whole)))
}

// merge puts lines that carry the same marks under one heading.
func merge(lines []markLine) []markLine {
	var merged []markLine
	for _, line := range lines {
		same := slices.IndexFunc(merged, func(m markLine) bool { return slices.Equal(m.rows, line.rows) })
		if same < 0 {
			merged = append(merged, line)
			continue
		}
		merged[same].name += " and " + line.name
	}
	return merged
}

// ranges writes joist numbers as 1-4, 7.
func ranges(numbers []int) string {
	var parts []string
	for i := 0; i < len(numbers); {
		k := i
		for k+1 < len(numbers) && numbers[k+1] == numbers[k]+1 {
			k++
		}
		part := strconv.Itoa(numbers[i])
		if k > i {
			part += "-" + strconv.Itoa(numbers[k])
		}
		parts = append(parts, part)
		i = k + 1
	}
	return strings.Join(parts, ", ")
}
