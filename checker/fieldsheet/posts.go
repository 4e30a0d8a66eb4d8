package fieldsheet

import (
	"fmt"
	"slices"
	"strings"

	"plumbrule/checker/facts"
	"plumbrule/checker/geometry"
	"plumbrule/checker/measure"
	"plumbrule/checker/model"
)

// postPlace is a post on the plan.
type postPlace struct {
	name string
	at   geometry.Point
	beam string
	fact *facts.Post // nil for a post under no beam
	own  *model.Post // nil unless it is described by itself
}

// postPlaces lists the posts of the platform, those under no beam last.
func (p *platform) postPlaces() []postPlace {
	var places []postPlace
	for i := range p.facts.Posts {
		f := &p.facts.Posts[i]
		if f.Platform != p.plan.Label || f.X == nil || f.Y == nil {
			continue
		}
		place := postPlace{
			name: fmt.Sprintf("%s post %d", f.Beam, f.N), beam: f.Beam, fact: f, own: p.own(f.At[0]),
			at: geometry.Point{X: f.X.Value, Y: f.Y.Value},
		}
		if place.own != nil && place.own.Mark != nil {
			place.name = "post " + word(place.own.Mark)
		}
		places = append(places, place)
	}
	if p.m.Posts == nil {
		return places
	}
	for i := range p.m.Posts.Each {
		own := &p.m.Posts.Each[i]
		if own.Place == nil {
			continue
		}
		name := "post " + word(own.Mark)
		if own.Mark == nil {
			name = fmt.Sprintf("single post %d", i+1)
		}
		places = append(places, postPlace{name: name, at: geometry.Point{X: own.Place.X, Y: own.Place.Y}, own: own})
	}
	return places
}

// own finds the entry of a post that is described by itself.
func (p *platform) own(at string) *model.Post {
	if p.m.Posts == nil {
		return nil
	}
	for i := range p.m.Posts.Each {
		if p.m.Posts.Each[i].At == at {
			return &p.m.Posts.Each[i]
		}
	}
	return nil
}

// strings locates beam lines and post centers by offsets from the house.
func (p *platform) strings() {
	t := Table{Columns: []Column{{"Center of", Words}, {"Along, from left end", Length}, {"Out from the house", Length}}}
	posts := p.postPlaces()
	at := func(name string, q geometry.Point) {
		along, out := p.base.place(q)
		t.row(text(name), length(along), length(out))
	}
	for i := range p.plan.Beams {
		b := &p.plan.Beams[i]
		ends := b.Lines
		if !p.framed() && len(b.Beam.Line) == 0 {
			// Its ends lie on a frame that cannot be told.
			_, out := p.base.place(b.Base.A)
			t.row(text(b.Mark+" string"), Cell{Kind: Words, Text: "whole line"}, length(out))
			ends = nil
		}
		for k, line := range ends {
			at(b.Mark+" start"+nth(k, len(ends)), line.A)
			at(b.Mark+" end"+nth(k, len(ends)), line.B)
		}
		for _, post := range posts {
			if post.beam == b.Mark {
				at(post.name, post.at)
			}
		}
	}
	for _, post := range posts {
		if post.beam == "" {
			at(post.name, post.at)
		}
	}
	switch {
	case len(p.plan.Beams) == 0:
		p.missing("beam strings, posts and footings", "platforms[].beams")
	case p.postsMissing() != "":
		p.missing("posts and footings", p.postsMissing())
	}
	s := Section{Title: "Strings" + p.of}
	s.add(t)
	p.section(s)
}

// postsMissing is the field without which not all posts have a place.
func (p *platform) postsMissing() string {
	switch {
	case len(p.m.Beams) == 0:
		return "platforms[].beams"
	case len(p.plan.Unplaced) > 0:
		return "platforms[].beams[].from_house"
	case slices.ContainsFunc(p.facts.Posts, func(f facts.Post) bool { return f.Platform == p.plan.Label && f.X == nil }):
		return "platforms[].beams[].posts_at"
	}
	return ""
}

// nth numbers the parts of a beam that the outline interrupts.
func nth(i, n int) string {
	if n < 2 {
		return ""
	}
	return fmt.Sprintf(", part %d", i+1)
}

// posts lists how tall every post is, neighbors of one height together.
func (p *platform) posts() {
	t := Table{Columns: []Column{{"Post", Words}, {"Ground to beam", Length}, {"Cut length", Length}}}
	var run []postPlace
	ground := false
	for _, post := range p.postPlaces() {
		size := p.postSize(&post)
		p.tally.posts.add(size, 1)
		if size == "" {
			p.missing("post size", "platforms[].posts.size")
		}
		if post.fact == nil {
			continue
		}
		height, cut := p.postHeights(&post)
		ground = ground || height.Kind == Length
		n := len(t.Rows)
		if n > 0 && run[0].beam == post.beam && run[0].own == nil && post.own == nil &&
			t.Rows[n-1][1] == height && t.Rows[n-1][2] == cut {
			run = append(run, post)
			t.Rows = t.Rows[:n-1]
		} else {
			run = []postPlace{post}
		}
		t.row(text(named(runName(run), size)), height, cut)
	}
	if ground {
		t.Notes = append(t.Notes, "Ground as the design shows it: the nearest point given, else the greatest drop. Level each post from its own footing before cutting.")
	}
	s := Section{Title: "Post heights" + p.of}
	s.add(t)
	p.section(s)
}

// runName names neighboring posts.
func runName(run []postPlace) string {
	if len(run) == 1 {
		return run[0].name
	}
	return fmt.Sprintf("%s posts %d-%d", run[0].beam, run[0].fact.N, run[len(run)-1].fact.N)
}

func (p *platform) postSize(post *postPlace) string {
	if post.own != nil && post.own.Dimensions() != nil {
		return p.size(&post.own.Member)
	}
	if p.m.Posts == nil {
		return ""
	}
	return p.size(&p.m.Posts.Member)
}

// postHeights gives what stands between the ground and the beam, and the length
// of the stick where footing top and base are shown as well.
func (p *platform) postHeights(post *postPlace) (ground, cut Cell) {
	ground, cut = unknown(), unknown()
	f := post.fact
	if f.Height == nil {
		for _, field := range f.Missing {
			p.missing("height of posts", field)
		}
		return ground, cut
	}
	stated := post.own != nil && post.own.HeightToBeam != nil
	top := p.footingTop(post.own)
	switch {
	case top != nil:
		ground = length(f.Height.Value + top.V)
	case !stated:
		ground = length(f.Height.Value)
	}
	if stated {
		return ground, length(f.Height.Value)
	}
	return ground, p.postCut(post.own, ground.Length, top)
}

// postCut is the length of the stick from the height of the beam above the
// ground, by what it stands on or in.
func (p *platform) postCut(own *model.Post, ground measure.Length, top *model.Length) Cell {
	base := p.postBase(own)
	kind := ""
	if base != nil {
		kind = word(base.Kind)
	}
	switch {
	case kind == "":
		p.missing("cut length of posts: what they stand on", "platforms[].posts.base.kind")
	case strings.HasPrefix(kind, "embedded") && base.Embedment == nil:
		p.missing("cut length of posts: how deep they are set", "platforms[].posts.base.embedment")
	case kind == "embedded in soil":
		return length(ground + base.Embedment.V)
	case top == nil:
		p.missing("cut length of posts: top of footing above grade", "platforms[].footings.top_above_grade")
	case kind == "embedded in concrete":
		return length(ground - top.V + base.Embedment.V)
	case kind == "standoff" && base.StandoffHeight == nil:
		p.missing("cut length of posts: height of the standoff", "platforms[].posts.base.standoff_height")
	case base.StandoffHeight != nil:
		return length(ground - top.V - base.StandoffHeight.V)
	default:
		return length(ground - top.V)
	}
	return unknown()
}

// footingTop is how far the footing below a post stands out of the ground.
func (p *platform) footingTop(own *model.Post) *model.Length {
	switch {
	case own != nil && own.FootingAboveGrade != nil:
		return own.FootingAboveGrade
	case own != nil && own.Footing != nil && own.Footing.TopAboveGrade != nil:
		return own.Footing.TopAboveGrade
	case p.m.Footings != nil:
		return p.m.Footings.TopAboveGrade
	}
	return nil
}

func (p *platform) postBase(own *model.Post) *model.PostBase {
	if own != nil && own.Base != nil {
		return own.Base
	}
	if p.m.Posts != nil {
		return p.m.Posts.Base
	}
	return nil
}

func (p *platform) postCap(own *model.Post) *model.PostCap {
	if own != nil && own.Cap != nil {
		return own.Cap
	}
	if p.m.Posts != nil {
		return p.m.Posts.Cap
	}
	return nil
}
