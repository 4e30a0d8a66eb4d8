package facts

import (
	"slices"

	"plumbrule/checker/geometry"
	"plumbrule/checker/measure"
)

// addJoists works out the joists of a platform: layout, spans, cantilevers,
// cut lengths and the spans stated by hand.
func (f *Facts) addJoists(fr *frame) {
	if fr.p.Joists == nil {
		return
	}
	joists, g := fr.joists(), gathering{s: fr.surface, l: &fr.layout}
	if fr.placed() {
		joists.BeamsCrossed = crossed(fr.beams, fr.layout.centers, fr.p.Joists.At)
		joists.SupportOpen = fr.supportOpen()
		for i := range fr.pieces {
			g.take(&fr.pieces[i])
		}
	} else {
		g.add(JoistSpan{Missing: fr.joistsWait()}) // stands for all joists: none can be placed
	}
	g.engineer()
	f.Joists = append(f.Joists, joists)
	f.JoistSpans = append(f.JoistSpans, g.spans...)
	f.JoistCantilevers = append(f.JoistCantilevers, g.cantilevers...)
	f.JoistRuns = append(f.JoistRuns, g.runs...)
	f.StatedSpans = append(f.StatedSpans, g.stated()...)
	if g.lost != nil {
		f.Unsupported = append(f.Unsupported, *g.lost)
	}
}

// joistsWait lists what joists wait for that cannot be placed. Without anything
// to carry them they would have no span either.
func (fr *frame) joistsWait() []string {
	missing := []string{fr.layout.missing}
	if words(fr.p.Support) != "ledger" && fr.p.Ledger == nil && len(fr.p.Beams) == 0 {
		missing = append(missing, "platforms[].beams")
	}
	return missing
}

// crossed counts the dropped beams that any joist line meets.
func crossed(beams []carrier, lines []measure.Length, at string) *Count {
	n := int64(0)
	for i := range beams {
		meets := func(x measure.Length) bool { _, ok := beams[i].cross(x); return ok }
		if !beams[i].flush && slices.ContainsFunc(lines, meets) {
			n++
		}
	}
	return of(n, at)
}

// joists is the fact of the layout.
func (fr *frame) joists() Joists {
	j, l := fr.p.Joists, &fr.layout
	f := Joists{
		At: []string{j.At}, Platform: fr.label,
		Layout: shown(j.Layout), Spacing: l.spacing, Size: fr.size(&j.Member),
		Marks: l.marks,
	}
	if d := j.Dimensions(); d != nil {
		f.Depth, f.Thickness = of(d.V.Depth, d.At), of(d.V.Thickness, d.At)
	}
	if r := j.LateralRestraint; r != nil {
		f.RestraintAtEnds, f.RestraintAtBeams, f.RestraintDepth = shown(r.Ends), shown(r.AtBeams), shown(r.Depth)
	}
	for _, missing := range []string{l.missing, fr.frameMissing} {
		if missing != "" && !slices.Contains(f.Missing, missing) {
			f.Missing = append(f.Missing, missing)
		}
	}
	if len(f.Missing) > 0 {
		f.Marks = nil
		return f
	}
	f.Count = of(int64(len(l.marks)), j.At)
	if first, last, ok := l.bays(); ok {
		f.FirstBay, f.LastBay = of(first, j.At), of(last, j.At)
	}
	return f
}

// gathering collects like pieces into runs.
type gathering struct {
	lost        *Unsupported // nil while every joist has two supports
	s           *surface
	l           *layout
	spans       []JoistSpan
	cantilevers []JoistCantilever
	runs        []JoistRun
}

// take adds one piece to the runs that it belongs to.
func (g *gathering) take(p *piece) {
	if p.unsupported() {
		if len(g.s.p.Beams) > 0 {
			g.unsupported(p)
			return
		}
		name := "edge"
		if len(p.bearings) == 1 {
			name = p.bearings[0].name
		}
		g.span(JoistSpan{From: name, To: "edge", Missing: []string{"platforms[].beams"}})
		return
	}
	for i := 1; i < len(p.bearings); i++ {
		g.bay(&p.bearings[i-1], &p.bearings[i])
	}
	last := len(p.bearings) - 1
	first, final := &p.bearings[0], &p.bearings[last]
	g.overhang(first, &p.bearings[1], first.center-p.reach.From, first.near() <= p.reach.From, g.s.edgeMissing(g.l, p.x, p.reach.From))
	g.overhang(final, &p.bearings[last-1], p.reach.To-final.center, final.far() >= p.reach.To, g.s.edgeMissing(g.l, p.x, p.reach.To))
	g.cut(p)
}

// unsupported counts a piece that too few supports carry.
func (g *gathering) unsupported(p *piece) {
	if g.lost == nil {
		j := g.s.p.Joists
		g.lost = &Unsupported{At: []string{j.At}, Platform: g.s.label, Supports: int64(len(p.bearings)), First: of(p.x, j.At)}
	}
	g.lost.Count++
	g.lost.Supports = min(g.lost.Supports, int64(len(p.bearings)))
}

// bay adds the span between two bearings.
func (g *gathering) bay(a, b *bearing) {
	span := JoistSpan{From: a.name, To: b.name}
	for _, missing := range []string{a.missing, b.missing} {
		if missing != "" && !slices.Contains(span.Missing, missing) {
			span.Missing = append(span.Missing, missing)
		}
	}
	if gap := b.near() - a.far(); len(span.Missing) == 0 {
		if gap <= 0 {
			return // two beams side by side: nothing spans between them
		}
		span.ClearSpan = of(gap, g.places(a.at, b.at)...)
	}
	if a.name != "ledger" || a.missing == "" {
		span.SpanToCenter = of(b.center-a.center, g.places(a.at, b.at)...)
		span.Blocked = g.blocked(a.center, b.center)
	}
	g.span(span)
}

// blocked tells whether a row of blocking lies between two supports.
func (g *gathering) blocked(from, to measure.Length) *Flag {
	blocking := g.s.p.Joists.Blocking
	if blocking == nil {
		return nil
	}
	for _, row := range blocking.RowsAt {
		if row.V > from && row.V < to {
			return of(true, row.At)
		}
	}
	if most := blocking.MaxSpacing; most != nil {
		return of(most.V < to-from, most.At)
	}
	if len(blocking.RowsAt) == 0 {
		return nil
	}
	return of(false, blocking.At)
}

// places lists where a length along the joists comes from.
func (g *gathering) places(more ...string) []string {
	first := g.s.p.Joists.At
	if d := g.s.p.Joists.Dimensions(); d != nil {
		first = d.At
	}
	return append([]string{first}, slices.Compact(more)...)
}

// span adds a span to its run; the longest governs.
func (g *gathering) span(span JoistSpan) {
	for i := range g.spans {
		run := &g.spans[i]
		if run.From != span.From || run.To != span.To {
			continue
		}
		run.Count++
		if longer(span.ClearSpan, run.ClearSpan) {
			run.ClearSpan = span.ClearSpan
		}
		if longer(span.SpanToCenter, run.SpanToCenter) {
			run.SpanToCenter = span.SpanToCenter
		}
		if span.Blocked != nil && !span.Blocked.Value {
			run.Blocked = span.Blocked
		}
		return
	}
	span.Count = 1
	g.add(span)
}

// add starts a run.
func (g *gathering) add(span JoistSpan) {
	s, j := g.s, g.s.p.Joists
	span.At, span.Joists, span.Platform = []string{j.At}, []string{j.At}, s.label
	span.SpacingField = s.spacingField(g.l)
	span.Spacing, span.Size, span.Lumber = g.l.spacing, s.size(&j.Member), lumber(s.deck, &j.Member, "platforms[].joists")
	if d := j.Dimensions(); d != nil {
		span.Depth, span.Thickness = of(d.V.Depth, d.At), of(d.V.Thickness, d.At)
	}
	span.LiveLoad, span.GroundSnowLoad = s.loads()
	g.spans = append(g.spans, span)
}

func longer(a, b *Length) bool { return a != nil && (b == nil || a.Value > b.Value) }

// overhang adds what passes the last bearing, missing being the field without
// which the edge of the frame is not known there. A joist that ends over its
// bearing, or hangs on it, passes nothing; one that does so where the outline
// ends does so where the frame does.
func (g *gathering) overhang(past, behind *bearing, length measure.Length, covered bool, missing string) {
	if past.ends || covered && missing != outlineField {
		return
	}
	c := JoistCantilever{Past: past.name}
	if reach := of(length, append([]string{past.at}, g.places()...)...); missing == "" {
		c.Cantilever = reach
	} else {
		c.Missing = []string{missing}
		if missing != outlineField {
			c.AtMost = reach
		}
	}
	if behind.name != "ledger" || behind.missing == "" {
		c.BackSpan = of(apart(past.center, behind.center), g.places(past.at, behind.at)...)
	} else {
		c.Missing = append(c.Missing, behind.missing)
	}
	g.cantilever(c)
}

// cantilever adds to its run. Joists with one back span have one limit, so the
// longest of them governs; another back span may have another.
func (g *gathering) cantilever(c JoistCantilever) {
	for i := range g.cantilevers {
		run := &g.cantilevers[i]
		if run.Past != c.Past || !alike(run.BackSpan, c.BackSpan) || !slices.Equal(run.Missing, c.Missing) {
			continue
		}
		run.Count++
		if longer(c.Cantilever, run.Cantilever) {
			run.Cantilever = c.Cantilever
		}
		if longer(c.AtMost, run.AtMost) {
			run.AtMost = c.AtMost
		}
		return
	}
	s, j := g.s, g.s.p.Joists
	c.At, c.Joists, c.Platform, c.Count = []string{j.At}, []string{j.At}, s.label, 1
	c.SpacingField = s.spacingField(g.l)
	c.Spacing, c.Size, c.Lumber = g.l.spacing, s.size(&j.Member), lumber(s.deck, &j.Member, "platforms[].joists")
	c.LiveLoad, c.GroundSnowLoad = s.loads()
	g.cantilevers = append(g.cantilevers, c)
}

// engineer sets the answers of wood engineering; all spans of a layout have
// the same.
func (g *gathering) engineer() {
	j, e := g.s.p.Joists, g.s.engineer
	longest := e.joistSpan(j, g.l.spacing)
	for i := range g.spans {
		g.spans[i].Engineered = longest
	}
	for i := range g.cantilevers {
		c := &g.cantilevers[i]
		c.Engineered = e.joistCantilever(j, g.l.spacing, c.BackSpan)
	}
}

func alike(a, b *Length) bool {
	if a == nil || b == nil {
		return a == b
	}
	return a.Value == b.Value
}

// loads are the loads of the site.
func (s *surface) loads() (live, snow *Pressure) {
	if site := s.deck.Site; site != nil {
		return shown(site.LiveLoad), shown(site.GroundSnowLoad)
	}
	return nil, nil
}

// cut adds the piece to the joists of its cut length.
func (g *gathering) cut(p *piece) {
	length := p.stick.Length()
	for i := range g.runs {
		run := &g.runs[i]
		if same := run.Length != nil && p.isCut && run.Length.Value == length || run.Length == nil && !p.isCut; same {
			run.Count++
			return
		}
	}
	run := JoistRun{At: []string{g.s.p.Joists.At}, Platform: g.s.label, Count: 1}
	if p.isCut {
		run.Length = of(length, g.places()...)
	}
	g.runs = append(g.runs, run)
}

// stated compares spans written by hand with the ones derived.
func (g *gathering) stated() []StatedSpan {
	j := g.s.p.Joists
	var list []StatedSpan
	add := func(what string, written *Length, derived []*Length) {
		if written == nil {
			return
		}
		entry := StatedSpan{At: written.At, What: what, Stated: *written, Derived: nearest(written.Value, derived)}
		if entry.Derived != nil {
			entry.Difference = of(apart(entry.Derived.Value, written.Value), written.At...)
		}
		list = append(list, entry)
	}
	var faces, center, back, cantilever []*Length
	for i := range g.spans {
		faces, center = append(faces, g.spans[i].ClearSpan), append(center, g.spans[i].SpanToCenter)
	}
	for i := range g.cantilevers {
		back, cantilever = append(back, g.cantilevers[i].BackSpan), append(cantilever, g.cantilevers[i].Cantilever)
	}
	add("clear span", shown(j.StatedClearSpan), faces)
	add("span to center", shown(j.StatedCenterSpan), center)
	add("back span", shown(j.StatedBackSpan), back)
	add("cantilever", shown(j.StatedCantilever), cantilever)
	return list
}

// depthOf is how far a ring reaches out from the house.
func depthOf(ring geometry.Ring) measure.Length {
	box := ring.Bounds()
	return box.Max.Y - box.Min.Y
}
