package draw

import (
	"fmt"
	"strconv"

	"plumbrule/checker/facts"
	"plumbrule/checker/measure"
)

// stub is how long the extension lines beside a stair are: the chains stand
// outside of the section, and lines all the way to the steps would run through
// handrail and guard.
const stub = 11.0

// riser is one riser of a stair with its number, counted from the bottom of its
// flight.
type riser struct {
	n, flight, of int
	step
}

// risersOf lists the risers of all flights that can be drawn, from the top.
func (c *climber) risersOf() []riser {
	var list []riser
	across, down := measure.Length(0), measure.Length(0)
	flights := c.flightsOf(c.label)
	for i, flight := range flights {
		steps, ok := c.steps(i, flight, across, down)
		if !ok {
			break
		}
		for k, s := range steps {
			list = append(list, riser{n: len(steps) - k, flight: i + 1, of: len(flights), step: s})
		}
		across, down = steps[len(steps)-1].across, steps[len(steps)-1].foot
		if l := c.landing(c.k, flight); l != nil && l.Depth != nil {
			across += l.Depth.Value
		}
	}
	return list
}

// name is "riser 3", with its flight where there are several.
func (r *riser) name() string {
	if r.of > 1 {
		return fmt.Sprintf("riser %d of flight %d", r.n, r.flight)
	}
	return "riser " + strconv.Itoa(r.n)
}

// riseChain dimensions the risers, one by one where they differ, and outside of
// them the whole.
func (c *climber) riseChain(across, down measure.Length) {
	f := c.f
	risers := c.risersOf()
	if down == 0 || len(risers) == 0 {
		return
	}
	whole := stretch{from: c.at(0, 0), to: c.at(across, down), value: c.totalRise(down), stub: stub}
	heights := make([]measure.Length, len(risers))
	for i := range risers {
		heights[i] = risers[i].foot - risers[i].top
	}
	if even(heights) {
		whole.after = fmt.Sprintf("= %s at %s", counted(int64(len(heights)), "riser"), f.exact(heights[0]))
		f.chain(atRight, []stretch{whole})
		return
	}
	whole.after = "= " + counted(int64(len(heights)), "riser")
	f.chain(atRight, c.eachRiser(risers))
	f.chain(atRight, []stretch{whole})
}

// eachRiser dimensions every riser with its number beside it; where they are too
// low on paper for a line of words, they are listed beside the drawing.
func (c *climber) eachRiser(risers []riser) []stretch {
	f := c.f
	var list []stretch
	for _, r := range risers {
		height := r.foot - r.top
		if f.on(height) < 1.1*normal {
			heights := make([]numbered, len(risers))
			for i, r := range risers {
				heights[i] = numbered{r.n, r.flight, r.of, r.foot - r.top}
			}
			f.remark(c.table("riser", heights))
			return nil
		}
		list = append(list, stretch{from: c.at(r.across, r.top), to: c.at(r.across, r.foot), value: height, after: r.name(), stub: stub, flat: true})
	}
	return list
}

// numbered is the size of one riser or tread, counted from the bottom of its
// flight.
type numbered struct {
	n, flight, of int
	size          measure.Length
}

// table lists risers or treads in words, from the top, those alike together.
func (c *climber) table(what string, list []numbered) string {
	var parts []string
	for i := 0; i < len(list); {
		k := i
		for k+1 < len(list) && list[k+1].flight == list[i].flight && list[k+1].size == list[i].size {
			k++
		}
		part := what + " " + strconv.Itoa(list[i].n)
		if k > i {
			part = what + "s " + strconv.Itoa(list[i].n) + " to " + strconv.Itoa(list[k].n)
		}
		if list[i].of > 1 {
			part += fmt.Sprintf(" of flight %d", list[i].flight)
		}
		parts = append(parts, part+": "+c.f.length(list[i].size))
		i = k + 1
	}
	return capital(what) + "s of stair " + c.label + " from the top. " + capital(joined(parts)) + "."
}

// totalRise is the stated rise where it is that of the risers, which were
// rounded; else their sum, which is then remarked on.
func (c *climber) totalRise(sum measure.Length) measure.Length {
	f := c.f
	for i := range c.facts.Stairs {
		s := &c.facts.Stairs[i]
		switch {
		case s.At[0] != c.s.At || s.TotalRise == nil:
		case near(s.TotalRise.Value, sum):
			return s.TotalRise.Value
		default:
			f.remark("The risers of stair " + c.label + " add up to " + f.value(sum) + ", the total rise is given as " + f.value(s.TotalRise.Value) + ".")
		}
	}
	return sum
}

// treadChain dimensions the treads of a flight one by one where they differ, or
// lists them beside the drawing where they are too narrow on paper; one of them
// where their number is in doubt.
func (c *climber) treadChain(steps []step, flight *facts.Flight) []stretch {
	var list []stretch
	alike := true
	for _, s := range steps {
		if s.tread == 0 {
			continue
		}
		alike = alike && s.tread == steps[0].tread
		list = append(list, stretch{from: c.at(s.across, s.foot), to: c.at(s.across+s.tread, s.foot), value: s.tread, stub: stub})
	}
	switch {
	case !alike && len(list) > 3 && c.narrow(list):
		depths := make([]numbered, len(list))
		for i, d := range list {
			depths[i] = numbered{len(list) - i, int(flight.N), int(flight.Of), d.value}
		}
		c.f.remark(c.table("tread", depths))
		return nil
	case !alike:
		return list
	case len(list) > 0 && (!consistent(flight) || len(list) == 1 && c.treadWords(steps, flight) == ""):
		last := list[len(list)-1]
		last.after = "tread"
		return []stretch{last}
	}
	return nil
}

// narrow reports whether a tread has no room on its line for its figure.
func (c *climber) narrow(treads []stretch) bool {
	f := c.f
	for _, d := range treads {
		if f.fonts.Width(f.length(d.value), normal, false) > f.on(d.value)-3 {
			return true
		}
	}
	return false
}

// treadWords says how the run of a flight divides.
func (c *climber) treadWords(steps []step, flight *facts.Flight) string {
	n := int64(0)
	first := measure.Length(0)
	for _, s := range steps {
		if s.tread == 0 {
			continue
		}
		if n > 0 && s.tread != first {
			return ""
		}
		first = s.tread
		n++
	}
	if flight.TreadsExpected != nil && flight.Risers != nil && flight.TreadsExpected.Value == flight.Risers.Value && n > 0 {
		n++ // the top one, level with the decking
	}
	if n < 2 {
		return ""
	}
	return "= " + counted(n, "tread") + " at " + c.f.exact(first)
}
