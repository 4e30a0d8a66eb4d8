package facts

import (
	"plumbrule/checker/geometry"
	"plumbrule/checker/measure"
	"plumbrule/checker/model"
)

// addPosts works out the posts below a beam and their footings.
func (f *Facts) addPosts(g *girder) {
	n := int64(0)
	for i := range g.supports {
		s := &g.supports[i]
		if !s.post {
			continue
		}
		n++
		own := g.own(s.along)
		post := g.post(s, i, n, own)
		footing := g.p.Footings
		if own != nil && own.Footing != nil {
			footing = own.Footing
		}
		post.HasFooting = footing != nil
		f.Posts = append(f.Posts, post)
		if footing != nil {
			f.Footings = append(f.Footings, g.footing(&post, footing))
		}
	}
	if n == 0 && g.c.beam.PostsAt == nil && (g.p.Posts != nil || g.p.Footings != nil) && (g.c.beam.StartOn == nil || g.c.beam.EndOn == nil) {
		f.addPostNotPlaced(g)
	}
}

// notPlaced stands for the number of a support that has no place.
const notPlaced = -1

// addPostNotPlaced tells what is described of the posts below a beam, and of
// their footings, where it does not show where they stand.
func (f *Facts) addPostNotPlaced(g *girder) {
	post := g.post(&support{post: true, at: g.c.beam.At, width: g.postWidth()}, notPlaced, 1, nil)
	post.HasFooting = g.p.Footings != nil
	f.Posts = append(f.Posts, post)
	if g.p.Footings != nil {
		f.Footings = append(f.Footings, g.footing(&post, g.p.Footings))
	}
}

// own is the entry of a post that is described by itself.
func (g *girder) own(along measure.Length) *model.Post {
	if g.p.Posts == nil {
		return nil
	}
	for i := range g.p.Posts.Each {
		p := &g.p.Posts.Each[i]
		if words(p.Beam) == g.c.name && p.Along != nil && p.Along.V == along {
			return p
		}
	}
	return nil
}

func (g *girder) post(s *support, i int, n int64, own *model.Post) Post {
	b := g.c.beam
	place := g.c.base.At(s.along)
	fact := Post{
		At: []string{s.at}, Platform: g.label, Beam: g.c.name, N: n, Corner: i == 0 || i == len(g.supports)-1 && i != notPlaced,
		BeamPlies:    shown(b.Plies),
		Freestanding: words(g.p.Support) == "freestanding",
	}
	unplaced := g.c.unplaced
	if i == notPlaced {
		unplaced = "platforms[].beams[].posts_at"
	}
	if unplaced == "" {
		fact.X, fact.Y = of(place.X, s.at), of(place.Y, g.c.at)
	}
	fact.BeamSpan, fact.JoistSpan = g.beside(i)
	fact.LiveLoad, fact.GroundSnowLoad = g.loads()
	if g.c.missing == "" {
		fact.BeamWidth = of(g.c.width, b.Dimensions().At)
	}
	for _, j := range b.PlyJointsAt {
		fact.JointAbove = fact.JointAbove || apart(j.V, s.along) <= s.width/2
	}
	fact.Lumber = lumberNamed(g.deck, nil, "platforms[].posts")
	if posts := g.p.Posts; posts != nil {
		g.describe(&fact, &posts.Member, posts.Material, posts.Base, posts.Cap, posts.RestrainedAtBase, posts.Braces)
	}
	if own != nil {
		fact.At = []string{own.At}
		g.describe(&fact, &own.Member, own.Material, own.Base, own.Cap, own.RestrainedAtBase, own.Braces)
	}
	g.height(&fact, place, unplaced, own)
	g.area(&fact, i)
	fact.Engineered = g.engineer.postHeight(g.stick(own), fact.TributaryArea)
	return fact
}

// stick is the lumber of a post: its own where that is shown, else that of all.
func (g *girder) stick(own *model.Post) *model.Member {
	if own != nil && own.Dimensions() != nil && own.Lumber != nil {
		return &own.Member
	}
	if g.p.Posts == nil {
		return nil
	}
	return &g.p.Posts.Member
}

// describe takes over what a description of posts shows; the one of a single
// post comes after the one of all and takes its place field by field.
func (g *girder) describe(fact *Post, m *model.Member, material *model.Words, base *model.PostBase, top *model.PostCap, restrained *model.Flag, braces *model.Braces) {
	if d := m.Dimensions(); d != nil {
		fact.Size, fact.LeastSide = g.size(m), of(min(d.V.Thickness, d.V.Depth), d.At)
	}
	if m.Lumber != nil {
		fact.Lumber = lumber(g.deck, m, "platforms[].posts")
	}
	if material != nil {
		fact.Material = shown(material)
	}
	if base != nil {
		fact.BaseKind, fact.BaseHolds, fact.Embedment = shown(base.Kind), shown(base.UpliftAndLateral), shown(base.Embedment)
	}
	if top != nil {
		fact.CapKind, fact.CapBolts, fact.CapBoltDiameter = shown(top.Kind), shown(top.Bolts), shown(top.BoltDiameter)
	}
	if restrained != nil {
		fact.Restrained = shown(restrained)
	}
	if braces != nil {
		fact.BraceLeg = shown(braces.Leg)
		if d := braces.Directions; d != nil {
			fact.BracesAlong = of(d.V != "across beam", d.At)
			fact.BracesAcross = of(d.V != "along beam", d.At)
		}
	}
}

// height works out how tall the post is by the ground where it stands: down
// from the walking surface, less the boards, the joists and the beam. It runs to
// the top of the footing, or to the ground where that top is not shown.
func (g *girder) height(fact *Post, place geometry.Point, unplaced string, own *model.Post) {
	var ground *Length
	if unplaced == "" || len(g.p.GradeAt) == 0 {
		ground = g.groundBelow(place)
	}
	if own != nil && own.GroundBelowSurface != nil {
		ground = shown(own.GroundBelowSurface)
	}
	fact.HeightAboveGrade = ground
	if own != nil && own.HeightToBeam != nil {
		fact.Height = shown(own.HeightToBeam)
		fact.CutLength = fact.Height
		return
	}
	above, missing := g.aboveBeam()
	switch {
	case ground == nil && len(g.p.GradeAt) > 0 && unplaced != "":
		missing = unplaced
	case ground == nil:
		missing = "platforms[].grade_at"
	case missing == "":
		height := of(ground.Value-above, append([]string{fact.At[0]}, ground.At...)...)
		if top := g.footingTop(own); top != nil {
			height = of(height.Value-top.Value, append(height.At, top.At...)...)
		}
		fact.Height = height
		fact.CutLength = height
		if base := g.baseOf(own); base != nil && base.StandoffHeight != nil {
			fact.CutLength = of(height.Value-base.StandoffHeight.V, append(height.At, base.StandoffHeight.At)...)
		}
		return
	}
	fact.Missing = append(fact.Missing, missing)
}

// aboveBeam is the build-up from the underside of the beam to the walking
// surface, or the field that it waits for.
func (g *girder) aboveBeam() (measure.Length, string) {
	b, joist := g.c.beam, g.joistSize()
	switch {
	case g.p.Decking == nil || g.p.Decking.Thickness == nil:
		return 0, "platforms[].decking.thickness"
	case b.Kind == nil:
		return 0, "platforms[].beams[].kind"
	case b.Dimensions() == nil:
		return 0, "platforms[].beams[].size"
	case joist == nil:
		return 0, "platforms[].joists.size"
	}
	boards, depth := g.p.Decking.Thickness.V, b.Dimensions().V.Depth
	if g.c.flush {
		return boards + max(depth, joist.V.Depth), ""
	}
	return boards + joist.V.Depth + depth, ""
}

func (g *girder) footingTop(own *model.Post) *Length {
	switch {
	case own != nil && own.FootingAboveGrade != nil:
		return shown(own.FootingAboveGrade)
	case own != nil && own.Footing != nil && own.Footing.TopAboveGrade != nil:
		return shown(own.Footing.TopAboveGrade)
	case g.p.Footings != nil:
		return shown(g.p.Footings.TopAboveGrade)
	}
	return nil
}

func (g *girder) baseOf(own *model.Post) *model.PostBase {
	if own != nil && own.Base != nil {
		return own.Base
	}
	if g.p.Posts != nil {
		return g.p.Posts.Base
	}
	return nil
}

// area sets what the post carries, and the force of it where all loads are shown.
func (g *girder) area(fact *Post, i int) {
	missing := g.waits()
	switch {
	case i == notPlaced:
		missing = "platforms[].beams[].posts_at"
	case missing == "":
		missing = g.frameMissing
	}
	if missing != "" {
		fact.Missing = append(fact.Missing, missing)
		return
	}
	fact.TributaryArea = of(Tributary[int64]{Builder: rounded(g.builder[i]), Statics: rounded(g.statics[i])}, g.supports[i].at, g.p.Joists.At)
	site := g.deck.Site
	if site == nil || site.LiveLoad == nil || site.GroundSnowLoad == nil || site.DeadLoad == nil {
		return
	}
	// Micropascals on square millimetres are millionths of a micronewton.
	const perMicronewton = 1e6
	pressure := float64(max(site.LiveLoad.V, site.GroundSnowLoad.V) + site.DeadLoad.V)
	fact.Load = of(Tributary[int64]{Builder: rounded(g.builder[i] * pressure / perMicronewton), Statics: rounded(g.statics[i] * pressure / perMicronewton)},
		append(fact.TributaryArea.At, site.LiveLoad.At, site.GroundSnowLoad.At, site.DeadLoad.At)...)
}
