package facts

import (
	"math"
	"slices"

	"plumbrule/checker/geometry"
	"plumbrule/checker/measure"
	"plumbrule/checker/model"
)

// support is what carries a beam at one place: a post, the ledger, another beam.
type support struct {
	along measure.Length
	post  bool
	at    string
	width measure.Length // of the post, along the beam; 0 where it is not shown
}

// girder is a beam with its supports and what bears on it.
type girder struct {
	*frame
	c         *carrier
	reach     geometry.Interval
	supports  []support
	hung      int // further supports, whose places are not shown
	crossings []crossing
	builder   []float64 // square millimetres for each support
	statics   []float64
}

// addBeams works out the beams of a platform and the posts below them.
func (f *Facts) addBeams(fr *frame) {
	for i := range fr.p.Beams {
		c := fr.carrierOf(i)
		g := &girder{frame: fr, c: c, crossings: fr.crossings(c)}
		if len(c.reach) > 0 {
			g.reach = geometry.Interval{From: c.reach[0].From, To: c.reach[len(c.reach)-1].To}
		}
		g.findSupports()
		places := make([]measure.Length, len(g.supports))
		for k, s := range g.supports {
			places[k] = s.along
		}
		if len(places) > 0 {
			g.builder, g.statics = shareOut(g.crossings, places, g.reach)
		}
		f.Beams = append(f.Beams, g.beam())
		f.BeamSpans = append(f.BeamSpans, g.spans()...)
		f.BeamCantilevers = append(f.BeamCantilevers, g.cantilevers()...)
		f.PlyJoints = append(f.PlyJoints, g.joints()...)
		f.addPosts(g)
	}
}

// carrierOf is a beam of the platform, on the plan where its place is shown.
func (fr *frame) carrierOf(i int) *carrier {
	b := &fr.p.Beams[i]
	for k := range fr.beams {
		if fr.beams[k].beam == b {
			return &fr.beams[k]
		}
	}
	return fr.unplaced(b, i)
}

// waits is the field without which it is not known which joists bear on the
// beam, "" where all of that is shown.
func (g *girder) waits() string {
	switch {
	case g.p.Joists == nil:
		return "platforms[].joists"
	case g.c.unplaced != "":
		return g.c.unplaced
	case g.layout.missing != "":
		return g.layout.missing
	case len(g.crossings) == 0:
		return "platforms[].joists.direction" // as described, they run past it
	}
	return ""
}

// findSupports lists posts and the end supports that the beam names.
func (g *girder) findSupports() {
	b := g.c.beam
	end := func(on *model.Words, along measure.Length) {
		switch {
		case on == nil:
		case g.c.unplaced != "":
			g.hung++
		default:
			g.supports = append(g.supports, support{along: along, at: on.At})
		}
	}
	end(b.StartOn, g.reach.From)
	width := g.postWidth()
	for _, p := range b.PostsAt {
		g.supports = append(g.supports, support{along: p.V, post: true, at: p.At, width: width})
	}
	end(b.EndOn, g.reach.To)
	slices.SortStableFunc(g.supports, func(a, b support) int { return int(sign(a.along - b.along)) })
}

// postWidth is the lesser side of the platform's posts, which is the careful
// one for what they span and what bears on them; 0 where it is not shown.
func (g *girder) postWidth() measure.Length {
	if g.p.Posts == nil || g.p.Posts.Dimensions() == nil {
		return 0
	}
	d := g.p.Posts.Dimensions().V
	return min(d.Thickness, d.Depth)
}

func (g *girder) beam() Beam {
	b := g.c.beam
	fact := Beam{
		At: []string{b.At}, Platform: g.label, Mark: g.c.name, Kind: shown(b.Kind), Size: g.size(&b.Member), Plies: shown(b.Plies),
		BearingLength: shown(b.BearingLength), BearingOn: shown(b.BearingOn), Supported: len(g.supports)+g.hung >= 2,
	}
	if len(g.c.reach) > 0 {
		fact.Length = of(g.reach.Length(), g.c.at)
	}
	if b.PostsAt != nil {
		fact.Posts = of(int64(len(b.PostsAt)), b.At+"/posts_at")
	}
	if g.c.missing == "" {
		fact.BeamWidth = of(g.c.width, b.Dimensions().At)
	}
	if d := b.Dimensions(); d != nil {
		fact.Depth = of(d.V.Depth, d.At)
	}
	if d := g.joistSize(); d != nil {
		fact.JoistDepth = of(d.V.Depth, d.At)
	}
	if w := g.postWidth(); w > 0 {
		fact.PostWidth = of(w, g.p.Posts.Dimensions().At)
	}
	for _, on := range []*model.Words{b.StartOn, b.EndOn} {
		switch words(on) {
		case "":
		case "ledger":
			fact.OnLedger = true
		default:
			fact.OnBeam = on.V
		}
	}
	return fact
}

// joistSize is the size of the joists, nil where it is not shown.
func (s *surface) joistSize() *model.Size {
	if s.p.Joists == nil {
		return nil
	}
	return s.p.Joists.Dimensions()
}

// spans lists the bays between supports with the joists that bear on each.
func (g *girder) spans() []BeamSpan {
	var list []BeamSpan
	for i := 1; i < len(g.supports); i++ {
		a, b := &g.supports[i-1], &g.supports[i]
		if a.along >= b.along {
			continue
		}
		span := g.span(int64(len(list) + 1))
		span.SpanToCenter = of(b.along-a.along, b.at, a.at)
		if (!a.post || a.width > 0) && (!b.post || b.width > 0) {
			span.ClearSpan = of(b.along-a.along-(a.width+b.width)/2, b.at, a.at)
		} else {
			span.Missing = append(span.Missing, "platforms[].posts.size")
		}
		g.carry(&span, a.along, b.along, i == 1, i == len(g.supports)-1)
		list = append(list, span)
	}
	if len(list) == 0 || g.hung > 0 {
		span := g.span(int64(len(list) + 1))
		span.Missing = []string{"platforms[].beams[].posts_at"}
		if g.hung > 0 {
			span.Missing = []string{g.c.unplaced}
		}
		list = append(list, span)
	}
	return list
}

func (g *girder) span(bay int64) BeamSpan {
	b := g.c.beam
	s := BeamSpan{
		At: []string{b.At}, Platform: g.label, Beam: g.c.name, Bay: bay, Size: g.size(&b.Member), Plies: shown(b.Plies),
		Kind: shown(b.Kind), Lumber: lumber(g.deck, &b.Member, "platforms[].beams[]"),
	}
	s.LiveLoad, s.GroundSnowLoad = g.loads()
	return s
}

// carry sets what bears on the bay from one support to the next; an outer bay
// also answers for what bears past it.
func (g *girder) carry(span *BeamSpan, from, to measure.Length, first, last bool) {
	if waits := g.waits(); waits != "" {
		span.Missing = append(span.Missing, waits)
		return
	}
	at := g.p.Joists.At
	var worst *crossing
	for i := range g.crossings {
		x := &g.crossings[i]
		if x.along < from && !first || x.along > to && !last {
			continue
		}
		span.BothSides = span.BothSides || x.sides > 1
		if x.center > 0 && longer(of(x.center), span.JoistSpan) {
			span.JoistSpan, span.JoistClearSpan = of(x.center, at), nil
			if x.clear != nil {
				span.JoistClearSpan = of(x.clear.Value, at)
			}
		}
		if g.frameMissing == "" && longer(of(x.past), span.JoistCantilever) {
			span.JoistCantilever = of(x.past, at)
		}
		if worst == nil || x.statics > worst.statics {
			worst = x
		}
	}
	if span.JoistSpan != nil && span.JoistClearSpan == nil && g.c.missing != "" {
		span.Missing = append(span.Missing, g.c.missing)
	}
	switch {
	case worst == nil:
		span.Missing = append(span.Missing, "platforms[].joists")
	case g.frameMissing != "":
		span.Missing = append(span.Missing, g.frameMissing)
	default:
		span.Tributary = of(Tributary[int64]{Builder: rounded(worst.builder), Statics: rounded(worst.statics)}, at)
		span.Engineered = g.engineer.beamSpan(g.c.beam, span.Tributary)
	}
}

// tributary is the greatest length of joist that the beam carries anywhere, by
// statics.
func (g *girder) tributary() measure.Length {
	most := 0.0
	for i := range g.crossings {
		most = max(most, g.crossings[i].statics)
	}
	return measure.Length(rounded(most))
}

func rounded(v float64) int64 { return int64(math.Round(v)) }

// cantilevers lists the ends of the beam past its outer supports.
func (g *girder) cantilevers() []BeamCantilever {
	n := len(g.supports)
	switch {
	case g.c.unplaced != "":
		return g.endsNotShown(g.c.unplaced)
	case n == 0 && g.c.beam.PostsAt == nil:
		return g.endsNotShown("platforms[].beams[].posts_at")
	case n == 0 || len(g.c.reach) == 0:
		return nil
	}
	var list []BeamCantilever
	add := func(end string, last, behind *support, past measure.Length) {
		if past <= last.width/2 || !last.post {
			return // the post stands under the end
		}
		b := g.c.beam
		c := BeamCantilever{
			At: []string{b.At}, Platform: g.label, Beam: g.c.name, End: end, Size: g.size(&b.Member), Plies: shown(b.Plies),
			Lumber: lumber(g.deck, &b.Member, "platforms[].beams[]"), Cantilever: of(past, last.at, b.At),
		}
		if g.frameMissing != "" && len(b.Line) == 0 && (end == "start" && b.Start == nil || end == "end" && b.End == nil) {
			if g.frameMissing != outlineField {
				c.AtMost = c.Cantilever
			}
			c.Cantilever, c.Missing = nil, []string{g.frameMissing}
		}
		if behind != nil {
			c.BackSpan = of(apart(behind.along, last.along), last.at, behind.at)
		} else {
			c.Missing = append(c.Missing, "platforms[].beams[].posts_at")
		}
		c.Engineered = g.engineer.beamCantilever(b, g.tributary(), c.BackSpan)
		list = append(list, c)
	}
	neighbor := func(i int) *support {
		if i < 0 || i >= n {
			return nil
		}
		return &g.supports[i]
	}
	add("start", &g.supports[0], neighbor(1), g.supports[0].along-g.reach.From)
	add("end", &g.supports[n-1], neighbor(n-2), g.reach.To-g.supports[n-1].along)
	return list
}

// endsNotShown are the ends of a beam that hang on nothing, where a field that
// is not shown would tell how far they reach.
func (g *girder) endsNotShown(field string) []BeamCantilever {
	b := g.c.beam
	var list []BeamCantilever
	for _, end := range []struct {
		name string
		on   *model.Words
	}{{"start", b.StartOn}, {"end", b.EndOn}} {
		if end.on == nil {
			list = append(list, BeamCantilever{
				At: []string{b.At}, Platform: g.label, Beam: g.c.name, End: end.name, Size: g.size(&b.Member), Plies: shown(b.Plies),
				Lumber: lumber(g.deck, &b.Member, "platforms[].beams[]"), Missing: []string{field},
			})
		}
	}
	return list
}

// joints compares the ply joints with the posts.
func (g *girder) joints() []PlyJoint {
	b := g.c.beam
	var list []PlyJoint
	for _, j := range b.PlyJointsAt {
		fact := PlyJoint{At: []string{j.At}, Beam: g.c.name, Bearing: shown(b.BearingAtJoint)}
		for i := range g.supports {
			s := &g.supports[i]
			if off := apart(s.along, j.V); s.post && (fact.OffPost == nil || off < fact.OffPost.Value) {
				fact.OffPost = of(off, j.At, s.at)
				fact.HalfPost = nil
				if s.width > 0 {
					fact.HalfPost = of(s.width/2, g.p.Posts.Dimensions().At)
				}
			}
		}
		list = append(list, fact)
	}
	return list
}
