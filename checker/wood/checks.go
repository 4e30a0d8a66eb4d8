package wood

import (
	"fmt"
	"math"
	"slices"

	"plumbrule/checker/measure"
)

// Demand is what a member meets and what it can take.
type Demand struct {
	Criterion   Criterion
	At          measure.Length // along the member; the support or the start of the span
	Have, Limit float64
	Unit        string
}

// Ratio is the demand over what is allowed; above 1 it is more.
func (d Demand) Ratio() float64 {
	if d.Limit <= 0 {
		return math.Inf(1)
	}
	return d.Have / d.Limit
}

// Reaction is what a support carries over the load patterns, up above zero. A least one below zero lifts off.
type Reaction struct {
	At          measure.Length
	Least, Most measure.Force
}

// Checks is a member held against its limits.
type Checks struct {
	Demands   []Demand
	Reactions []Reaction
	Report    Report
}

// Worst is the demand with the greatest ratio, the zero value if there are none.
func (c Checks) Worst() Demand {
	var worst Demand
	for i, d := range c.Demands {
		if i == 0 || d.Ratio() > worst.Ratio() {
			worst = d
		}
	}
	return worst
}

// join takes the demands of another piece, and adds its reactions to those at the same support.
func (c Checks) join(o Checks) Checks {
	c.Demands = append(c.Demands, o.Demands...)
	for _, r := range o.Reactions {
		i := slices.IndexFunc(c.Reactions, func(have Reaction) bool { return have.At >= r.At })
		switch {
		case i < 0:
			c.Reactions = append(c.Reactions, r)
		case c.Reactions[i].At == r.At:
			// Patterns that are worst for two pieces may differ; both worsts are taken.
			c.Reactions[i].Least += r.Least
			c.Reactions[i].Most += r.Most
		default:
			c.Reactions = slices.Insert(c.Reactions, i, r)
		}
	}
	if c.Report.Title == "" || o.Worst().Ratio() >= c.Worst().Ratio() {
		c.Report = o.Report
	}
	return c
}

// evenly is a load all along a girder; plf may be zero.
func (g girder) evenly(plf float64) loading {
	if plf == 0 {
		return loading{}
	}
	return loading{patches: []patch{{g.from, g.to, plf / 12}}}
}

// check solves the layout and lists its demands.
func (f *flexure) check(l Layout) (Checks, error) {
	g, err := l.girder()
	if err != nil {
		return Checks{}, err
	}
	f.assume("spans between centers of bearing; supports do not settle; moments by the theorem of three moments")
	f.assume("imposed load on any spans and overhangs, whatever is worse; dead load everywhere")
	if l.From < l.Supports[0] || l.To > l.Supports[len(l.Supports)-1] || len(l.Supports) > 2 {
		f.assume("the lower edge is held where the member hogs")
	}
	dead := g.evenly(f.dead)
	strength := g.envelope(dead, g.evenly(f.imposed))
	var c Checks
	for i, r := range strength.reactions {
		c.Reactions = append(c.Reactions, Reaction{l.Supports[i], forceOf(r.least), forceOf(r.most)})
	}
	f.strength(&c, strength)
	f.bearings(&c, l, g, strength)
	f.spanDeflections(&c, l, g, strength)
	f.tips(&c, l, g, dead)
	c.Report = f.report()
	return c, nil
}

func (f *flexure) strength(c *Checks, e envelope) {
	f.moment(c, e.sagging, 1, ByBending, "M", "greatest sagging moment")
	if e.hogging.value < 0 {
		f.moment(c, e.hogging, -1, ByBendingAtSupport, "M_h", "greatest hogging moment")
	}
	v := f.put("V", math.Abs(e.shear.value), "lb", Computed, "greatest shear, at "+lengthOf(e.shear.at).Sixteenths())
	if f.limits.ShearAtDepth {
		f.assume("even load within a depth of a support left out of the shear, NDS 3.4.3.1")
		v = f.find("V", "max(0, V - w / 12 · d)", max(0, v-f.total()/12*f.section.Depth), "lb")
	}
	fv := f.find("fv", "3 / 2 · V / A", 1.5*v/f.section.Area(), "psi")
	c.Demands = append(c.Demands, Demand{ByShear, lengthOf(e.shear.at), fv, f.fv, "psi"})
}

func (f *flexure) moment(c *Checks, m peak, sign float64, criterion Criterion, name, note string) {
	at := lengthOf(m.at)
	v := f.put(name, sign*m.value, "lb·in", Computed, note+", at "+at.Sixteenths())
	fb := f.find("fb", name+" / S", v/f.section.Modulus(), "psi")
	c.Demands = append(c.Demands, Demand{criterion, at, fb, f.fb, "psi"})
}

// bearings holds each support against Fc⊥′, raised by the bearing area factor Cb of NDS 3.10.4 away from the ends.
func (f *flexure) bearings(c *Checks, l Layout, g girder, e envelope) {
	if f.limits.Bearing <= 0 {
		return
	}
	lb := f.given("lb", inches(f.limits.Bearing), "in", "length of bearing")
	for i, r := range e.reactions {
		allowed := f.fcPerp
		at := g.supports[i]
		const fromEnd = 3.0
		if lb < 6 && at-lb/2-g.from >= fromEnd && g.to-at-lb/2 >= fromEnd {
			allowed *= f.find("Cb", "(lb + 0.375) / lb", (lb+0.375)/lb, "")
		}
		most := f.put("R", r.most, "lb", Computed, "greatest reaction at "+l.Supports[i].Sixteenths())
		fc := f.find("fc⊥", "R / (b · lb)", most/(f.section.Width()*lb), "psi")
		c.Demands = append(c.Demands, Demand{ByBearing, l.Supports[i], fc, allowed, "psi"})
	}
}

func (f *flexure) spanDeflections(c *Checks, l Layout, g girder, strength envelope) {
	if f.limits.Imposed > 0 && f.bent > 0 {
		e := g.envelope(loading{}, g.evenly(f.bent))
		f.deflections(c, l, e, ByImposedDeflection, f.limits.Imposed, "Δ")
	}
	if f.limits.Total > 0 {
		f.deflections(c, l, strength, ByTotalDeflection, f.limits.Total, "Δ_T")
	}
}

func (f *flexure) deflections(c *Checks, l Layout, e envelope, criterion Criterion, n int, symbol string) {
	for i := range len(l.Supports) - 1 {
		d := e.drops[i+1]
		span := l.Supports[i+1] - l.Supports[i]
		have := f.put(symbol, max(d.most, -d.least)/f.stiffness, "in", Computed,
			fmt.Sprintf("greatest deflection of span %d, %s", i+1, span.Sixteenths()))
		c.Demands = append(c.Demands, Demand{criterion, l.Supports[i], have, inches(span) / float64(n), "in"})
	}
}

// tips holds the overhangs against a force at the tip and against imposed load, which also lifts them.
func (f *flexure) tips(c *Checks, l Layout, g girder, dead loading) {
	last := len(l.Supports) - 1
	for _, end := range [...]struct {
		at, support measure.Length
		drop        int
	}{{l.From, l.Supports[0], 0}, {l.To, l.Supports[last], last + 1}} {
		length := max(end.at-end.support, end.support-end.at)
		if length == 0 {
			continue
		}
		tip := point{inches(end.at), pounds(f.limits.TipLoad)}
		if f.limits.Tip > 0 {
			limit := inches(length) / float64(f.limits.Tip)
			if f.bent > 0 {
				d := g.envelope(loading{}, g.evenly(f.bent)).drops[end.drop]
				down := f.put("Δ_a", d.most/f.stiffness, "in", Computed, "tip of the overhang of "+length.Sixteenths()+" under imposed load")
				up := f.put("Δ_u", -d.least/f.stiffness, "in", Computed, "rise of that tip with imposed load on spans alone")
				c.Demands = append(c.Demands, Demand{ByTipUnderLoad, end.support, down, limit, "in"})
				if f.limits.TipRise {
					c.Demands = append(c.Demands, Demand{ByTipRise, end.support, up, limit, "in"})
				}
			}
			if tip.load > 0 {
				d := g.envelope(loading{}, loading{points: []point{tip}}).drops[end.drop]
				down := f.put("Δ_P", d.most/f.stiffness, "in", Computed, fmt.Sprintf("that tip under %s lb", number(tip.load)))
				c.Demands = append(c.Demands, Demand{ByTipDeflection, end.support, down, limit, "in"})
			}
		}
		if tip.load > 0 {
			e := g.envelope(dead, loading{points: []point{tip}})
			m := f.put("M_P", max(-e.hogging.value, e.sagging.value), "lb·in", Computed, "greatest moment under dead load and the force at the tip")
			fb := f.find("fb_P", "M_P / S", m/f.section.Modulus(), "psi")
			c.Demands = append(c.Demands, Demand{ByBendingAtSupport, end.support, fb, f.forPeople("Fb′_P", "Fb′", f.fb, "psi"), "psi"})
			r := e.reactions
			for i := range r {
				c.Reactions[i].Least = min(c.Reactions[i].Least, forceOf(r[i].least))
				c.Reactions[i].Most = max(c.Reactions[i].Most, forceOf(r[i].most))
			}
		}
	}
}
