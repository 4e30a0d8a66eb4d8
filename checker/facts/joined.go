package facts

import (
	"slices"

	"plumbrule/checker/measure"
	"plumbrule/checker/model"
)

// addJoined works out how the joists of a platform are held on their supports.
func (f *Facts) addJoined(fr *frame) {
	j := fr.p.Joists
	if j == nil {
		return
	}
	fact := Joined{
		At: []string{j.At}, Platform: fr.label, BeamTies: shown(j.BeamTies),
		BearingAtBeams: shown(j.BearingAtBeams), BearingAtLedger: shown(j.BearingAtLedger), BearingOn: shown(j.BearingOn),
	}
	if d := j.Dimensions(); d != nil {
		fact.JoistDepth = of(d.V.Depth, d.At)
	}
	if h := j.Hangers; h != nil {
		fact.HangersAtLedger, fact.HangersAtFlush, fact.HangerDepth = shown(h.AtLedger), shown(h.AtFlushBeams), shown(h.Depth)
		for _, edge := range h.SkewedAt {
			fact.SkewedHangers = append(fact.SkewedHangers, edge.V)
		}
	}
	for i := range fr.pieces {
		for k := range fr.pieces[i].bearings {
			b := &fr.pieces[i].bearings[k]
			switch {
			case b.name == "ledger":
				fact.OnLedger = true
			case b.beam == nil:
			case b.beam.flush:
				fact.OnFlush = true
				fr.skew(&fact, b.beam)
			default:
				fact.OnDropped = true
				if w := of(b.beam.width, b.at); b.missing == "" && (fact.BeamWidth == nil || w.Value < fact.BeamWidth.Value) {
					fact.BeamWidth = w
				}
			}
		}
	}
	f.Joined = append(f.Joined, fact)
}

// skew notes the edge along which a flush beam meets the joists on the skew.
func (fr *frame) skew(fact *Joined, c *carrier) {
	line := c.lines[0]
	if line.A.Y == line.B.Y {
		return
	}
	name := c.name
	for i, edge := range fr.names {
		e := fr.ring.Edge(i)
		if e.Distance(c.base.A) <= measure.Foot && e.Distance(c.base.B) <= measure.Foot {
			name = edge
		}
	}
	if !slices.Contains(fact.Skewed, name) {
		fact.Skewed = append(fact.Skewed, name)
	}
}

// addSpecials lists what prescriptive tables do not cover.
func (f *Facts) addSpecials(deck *model.Deck) {
	for i := range deck.Platforms {
		if from := deck.Platforms[i].HungFrom; from != nil {
			f.Specials = append(f.Specials, Special{At: []string{from.At}, Kind: "stacked platform"})
		}
		for k := range deck.Platforms[i].Loads {
			l := &deck.Platforms[i].Loads[k]
			f.Specials = append(f.Specials, Special{At: []string{l.At}, Kind: words(l.Kind), Weight: shown(l.Weight)})
		}
	}
	for i := range deck.Stairs {
		if to := deck.Stairs[i].To; to != nil && to.V != model.ToGrade {
			f.Specials = append(f.Specials, Special{At: []string{to.At}, Kind: "stair on a platform"})
		}
	}
}
