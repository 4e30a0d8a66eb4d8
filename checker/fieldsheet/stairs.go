package fieldsheet

import (
	"fmt"
	"slices"
	"strconv"

	"plumbrule/checker/facts"
	"plumbrule/checker/geometry"
	"plumbrule/checker/measure"
	"plumbrule/checker/model"
)

// flight is one flight with the stair that it belongs to.
type flight struct {
	stair *model.Stair
	whole *facts.Stair
	fact  *facts.Flight
	m     *model.StairFlight // nil where the stair is one flight
	// rise divides a rise by risers, exactly; its zero value where that is not
	// known.
	rise geometry.Pitch
}

// stairs adds one section for every flight.
func (b *builder) stairs() {
	next := 0
	for i := range b.deck.Stairs {
		var above *flight
		whole := &b.facts.Stairs[i]
		for k := range max(len(b.deck.Stairs[i].Flights), 1) {
			f := flight{stair: &b.deck.Stairs[i], whole: whole, fact: &b.facts.Flights[next]}
			if len(f.stair.Flights) > 0 {
				f.m = &f.stair.Flights[k]
			}
			f.rise = f.exactRise()
			b.flight(&f, above, stairName(f.stair, i))
			above = &f
			next++
		}
	}
}

func stairName(s *model.Stair, i int) string {
	if s.Mark != nil {
		return "stair " + word(s.Mark)
	}
	return fmt.Sprintf("stair %d", i+1)
}

// exactRise is the division that the risers come from: the flight's own rise, or
// that of the stair over all its flights.
func (f *flight) exactRise() geometry.Pitch {
	switch {
	case f.fact.UnitRise == nil || f.fact.Risers == nil:
		return geometry.Pitch{}
	case f.m != nil && f.m.TotalRise != nil:
		return geometry.Pitch{Over: f.m.TotalRise.V, Parts: f.fact.Risers.Value}
	case f.whole.TotalRise != nil && f.whole.Risers != nil:
		return geometry.Pitch{Over: f.whole.TotalRise.Value, Parts: f.whole.Risers.Value}
	}
	return geometry.Pitch{}
}

// even reports whether all risers are drawn alike.
func (f *flight) even() bool {
	return f.fact.RiserSpread != nil && f.fact.RiserSpread.Value == 0
}

// treads is the number of treads, and whether the risers ask for that many.
func (f *flight) treads() (n int64, agree bool) {
	asked, shown := f.fact.TreadsExpected, f.fact.Treads
	switch {
	case asked == nil:
		return 0, false
	case shown == nil:
		return asked.Value, true
	}
	return shown.Value, shown.Value == asked.Value
}

// like reports whether a flight has the rise, run and steps of another one.
func (f *flight) like(g *flight) bool {
	if g == nil || f.fact.Rise == nil || g.fact.Rise == nil || !slices.Equal(f.fact.RiserHeights, g.fact.RiserHeights) {
		return false
	}
	n, agree := f.treads()
	m, agrees := g.treads()
	same := func(a, b *facts.Length) bool {
		return a == nil && b == nil || a != nil && b != nil && a.Value == b.Value
	}
	return n == m && agree && agrees && f.rise == g.rise &&
		same(f.fact.TreadDepth, g.fact.TreadDepth) && same(f.fact.Run, g.fact.Run)
}

// flight adds the section of one flight; one like the flight above it points
// there for rise, run and steps.
func (b *builder) flight(f, above *flight, name string) {
	title := capital(name)
	if f.fact.Of > 1 {
		title += fmt.Sprintf(", flight %d of %d from the top", f.fact.N, f.fact.Of)
	}
	b.needFlight(f, name)
	s := Section{Title: title}
	alike := f.like(above)
	if alike {
		s.Notes = append(s.Notes, fmt.Sprintf("Rise, run and steps are those of flight %d.", above.fact.N))
	} else {
		s.add(b.flightMeasures(f))
	}
	s.add(b.stringerMeasures(f))
	n, agree := f.treads()
	if !agree && f.fact.TreadsExpected != nil {
		s.Notes = append(s.Notes, fmt.Sprintf("%d treads are drawn where %d risers ask for %d: settle that before cutting; step marks are left out.", n, f.fact.Risers.Value, f.fact.TreadsExpected.Value))
	}
	if agree && !alike {
		s.add(stepMarks(f))
	}
	b.tallyFlight(f, n)
	b.section(s)
}

// needFlight notes what the flight does not show.
func (b *builder) needFlight(f *flight, name string) {
	field := "stairs[]."
	if f.m != nil {
		field = "stairs[].flights[]."
	}
	if f.fact.Risers == nil {
		b.missing(name+": steps", field+"risers")
	}
	if f.fact.TreadDepth == nil && f.fact.TreadMin == nil {
		b.missing(name+": run and pitch", field+"tread_depth")
	}
	if f.whole.TotalRise == nil && f.fact.Rise == nil {
		b.missing(name+": rise", "stairs[].total_rise, or the grade where it lands")
	}
	if f.fact.UnitRise != nil && f.fact.BottomCut == nil {
		b.missing(name+": first drop and bottom cut", "stairs[].tread.thickness")
	}
	switch k := f.stair.Stringers; {
	case k == nil:
		b.missing(name+": stringers", "stairs[].stringers")
	case k.Dimensions() == nil:
		b.missing(name+": throat", "stairs[].stringers.size")
	case k.Count == nil:
		b.missing(name+": stringers", "stairs[].stringers.count")
	}
}

// value adds a row for a fact that is known.
func (t *Table) value(what string, l *facts.Length) {
	if l != nil {
		t.row(text(what), length(l.Value))
	}
}

// flightMeasures lists rise and run.
func (b *builder) flightMeasures(f *flight) Table {
	t := list("Rise and run")
	fact := f.fact
	if fact.Of > 1 {
		t.value("total rise of the stair", f.whole.TotalRise)
	}
	t.value("rise, finish to finish", fact.Rise)
	if drawn := f.whole.TotalRise; fact.Of == 1 && drawn != nil && fact.Rise != nil && drawn.Value != fact.Rise.Value {
		t.value("rise as drawn", drawn)
	}
	if fact.Risers != nil {
		t.row(text("risers"), count(fact.Risers.Value))
	}
	if n, _ := f.treads(); n > 0 {
		t.row(text("treads"), count(n))
	}
	t.value("unit rise", fact.UnitRise)
	if n := len(fact.RiserHeights); n > 0 {
		t.row(text("first step (lowest), finished"), length(fact.RiserHeights[0]))
		t.row(text("last step (topmost), finished"), length(fact.RiserHeights[n-1]))
	}
	t.value("run of one tread", fact.TreadDepth)
	t.value("total run", fact.Run)
	if fact.Pitch != nil {
		t.row(text("pitch"), angle(fact.Pitch.Value))
	}
	if !f.even() && fact.RiserSpread != nil {
		t.Notes = append(t.Notes, "Risers differ. Unit rise and cuts are those of equal risers over the rise as drawn.")
	}
	return t
}

// stringerMeasures lists what is marked and cut on a stringer.
func (b *builder) stringerMeasures(f *flight) Table {
	k := f.stair.Stringers
	size := ""
	if k != nil {
		size = b.size(&k.Member)
	}
	t := list(named("Stringer", size))
	fact := f.fact
	n, _ := f.treads()
	if f.rise.Parts > 0 && fact.TreadDepth != nil && n > 0 {
		// Along the slope over all treads, from the exact rise of as many steps.
		line := geometry.Diagonal(fact.TreadDepth.Value*measure.Length(n), f.rise.Times(n))
		t.row(text("stringer line, over the treads"), length(line))
	}
	t.value("throat, square to the edge", fact.Throat)
	t.value("first drop: surface above to first level cut", fact.FirstDrop)
	t.value("bottom cut: lowest riser on the stringer", fact.BottomCut)
	if k == nil {
		return t
	}
	if k.Count != nil {
		t.row(text("stringers drawn"), count(k.Count.V))
	}
	t.value("stringers, center to center", f.whole.StringerSpacing)
	b.listedStringers(f, &t)
	return t
}

// listedStringers is the number of stringers that the listing of the treads
// asks for.
func (b *builder) listedStringers(f *flight, t *Table) {
	d := f.stair.Stringers.Dimensions()
	listed := f.whole.TreadListed
	if listed == nil || d == nil || f.stair.Width == nil {
		return
	}
	n, err := geometry.StringerCount(f.stair.Width.V, d.V.Thickness, listed.Value)
	if err == nil {
		t.row(text("stringers by the listing of the treads, "+listed.Value.Text(b.sys)), count(n))
	}
}

// stepMarks lists every step from the landing up and from the lowest riser in.
func stepMarks(f *flight) Table {
	fact := f.fact
	t := Table{
		Title:   "Steps, finished",
		Columns: []Column{{"Step", Words}, {"Up from the landing", Length}, {"In from the lowest riser", Length}},
	}
	if fact.TreadDepth == nil || fact.RiserHeights == nil || len(fact.RiserHeights) == 0 {
		return t
	}
	up := measure.Length(0)
	for i, height := range fact.RiserHeights {
		up += height // as drawn one by one
		at := up
		if f.even() && f.rise.Parts > 0 {
			at = f.rise.Times(int64(i + 1)) // rounded once, not added up
		}
		in := fact.TreadDepth.Value * measure.Length(i)
		t.row(text(strconv.Itoa(i+1)), length(at), length(in))
	}
	t.Notes = append(t.Notes, "On the stringer every level cut lies one tread thickness lower.")
	return t
}

// tallyFlight counts stringers and treads.
func (b *builder) tallyFlight(f *flight, treads int64) {
	if k := f.stair.Stringers; k != nil && k.Count != nil {
		b.tally.stringers.add(b.size(&k.Member), k.Count.V)
	} else {
		b.tally.stringers.unknown = true
	}
	if f.fact.Risers == nil && f.fact.Treads == nil {
		b.tally.treads.unknown = true
		return
	}
	b.tally.treads.add("", treads)
}
