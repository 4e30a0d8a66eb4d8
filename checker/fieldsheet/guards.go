package fieldsheet

import (
	"fmt"
	"strconv"

	"plumbrule/checker/geometry"
	"plumbrule/checker/measure"
	"plumbrule/checker/model"
)

// guards adds the baluster marks of every guard that has balusters.
func (b *builder) guards() {
	for i := range b.deck.Guards {
		g := &b.deck.Guards[i]
		name := "guard " + strconv.Itoa(i+1)
		if g.Mark != nil {
			name = "guard " + word(g.Mark)
		}
		in := g.Infill
		switch {
		case in == nil || in.Kind == nil:
			b.missing("balusters, "+name, "guards[].infill.kind")
			b.tally.balusters.unknown = true
		case in.Kind.V != "balusters":
			b.tally.remarks = append(b.tally.remarks, fmt.Sprintf("%s has %s: no balusters to mark.", capital(name), word(in.Kind)))
		case in.BalusterWidth == nil:
			b.missing("baluster marks, "+name, "guards[].infill.baluster_width")
			b.tally.balusters.unknown = true
		case in.Opening == nil:
			b.missing("baluster marks, "+name, "guards[].infill.opening")
			b.tally.balusters.unknown = true
		default:
			b.balusters(g, name)
		}
	}
}

// bay is a number of bays of one clear length.
type bay struct {
	clear measure.Length
	n     int64
}

// balusters lays balusters out in every bay that is drawn, or in the widest bay
// that the spacing of posts allows.
func (b *builder) balusters(g *model.Guard, name string) {
	var bays []bay
	for _, drawn := range g.Bays {
		bays = takeBay(bays, drawn.V)
	}
	s := Section{Title: "Balusters, " + name}
	if len(bays) == 0 {
		b.missing("baluster count, "+name, "guards[].bays")
		b.tally.balusters.unknown = true
		widest, ok := b.widestBay(g, name)
		if !ok {
			return
		}
		bays = append(bays, bay{clear: widest})
		s.Notes = append(s.Notes, "The bays are not shown. This is the widest that the post spacing allows; lay each bay out by its own clear length.")
	}
	for _, like := range bays {
		even, err := geometry.EqualBalusters(like.clear, g.Infill.BalusterWidth.V, g.Infill.Opening.V)
		if err != nil {
			s.Notes = append(s.Notes, "A bay of "+like.clear.Text(b.sys)+" cannot be laid out: "+err.Error()+".")
			continue
		}
		if like.n > 0 {
			b.tally.balusters.add("", like.n*int64(even.Count))
		}
		b.bay(&s, like, &even, g.Infill)
	}
	b.section(s)
}

func takeBay(bays []bay, open measure.Length) []bay {
	for i := range bays {
		if bays[i].clear == open {
			bays[i].n++
			return bays
		}
	}
	return append(bays, bay{open, 1})
}

// widestBay is the clear distance of posts at their greatest spacing.
func (b *builder) widestBay(g *model.Guard, name string) (measure.Length, bool) {
	if g.Posts == nil || g.Posts.MaxSpacing == nil || g.Posts.Dimensions() == nil {
		b.missing("baluster marks, "+name, "guards[].bays, or guards[].posts.size and max_spacing")
		return 0, false
	}
	open := g.Posts.MaxSpacing.V - g.Posts.Dimensions().V.Thickness
	return open, open > 0
}

// bay adds the tables of one clear length.
func (b *builder) bay(s *Section, like bay, even *geometry.Balusters, in *model.Infill) {
	open := like.clear.Text(b.sys)
	t := list("Bay of " + open)
	t.row(text("clear between posts"), length(like.clear))
	if like.n > 0 {
		t.row(text("bays alike"), count(like.n))
	}
	t.row(text("balusters"), count(even.Count))
	t.row(text("gap, every one"), length(even.Gap.Length()))
	// What a layout stepped off from one post leaves at the other one.
	pitch := in.Opening.V + in.BalusterWidth.V
	t.row(text("gap left last if stepped off at "+in.Opening.V.Text(b.sys)), length(like.clear%pitch))
	s.add(t)
	marks := Table{
		Title:   "Marks in a bay of " + open,
		Columns: []Column{{"Baluster", Words}, {"Near edge from first post", Length}, {"Near edge from last post", Length}},
	}
	for i, at := range even.Marks() {
		marks.row(text(strconv.Itoa(i+1)), length(at), length(like.clear-at))
	}
	s.add(marks)
}
