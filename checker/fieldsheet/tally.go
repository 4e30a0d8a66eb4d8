package fieldsheet

import "plumbrule/checker/measure"

// tally is what is counted over the whole deck.
type tally struct {
	stock      lengths // joists
	hangers    counts
	ties       counts
	headerEnds counts // how they are held there is not told
	posts      counts
	bases      counts
	caps       counts
	fasteners  counts
	lateral    counts
	boards     lengths
	balusters  counts
	stringers  counts
	treads     counts
	others     counts // footings that are not cast
	remarks    []string
	concrete   float64
}

// counts are numbers of things by kind, in the order in which they were met.
type counts struct {
	list    []counted
	unknown bool // some of them are not shown
}

type counted struct {
	kind string
	n    int64
}

func (c *counts) add(kind string, n int64) {
	for i := range c.list {
		if c.list[i].kind == kind {
			c.list[i].n += n
			return
		}
	}
	c.list = append(c.list, counted{kind, n})
}

// lengths are numbers of pieces by size and stock length, ascending by length
// within a size.
type lengths struct {
	list    []pieces
	unknown bool
}

type pieces struct {
	size  string
	stock measure.Length // 0 for longer than any, or of unknown length
	n     int64
}

func (l *lengths) add(size string, stock measure.Length, n int64) {
	at := len(l.list)
	for i, have := range l.list {
		if have.size == size && have.stock == stock {
			l.list[i].n += n
			return
		}
		if have.size == size && have.stock > stock && at == len(l.list) {
			at = i
		}
	}
	l.list = append(l.list, pieces{})
	copy(l.list[at+1:], l.list[at:])
	l.list[at] = pieces{size, stock, n}
}

// hardware counts what joists and posts are held with.
func (p *platform) hardware() {
	p.joistHardware()
	if p.postsMissing() != "" {
		p.tally.posts.unknown = true
	}
	for _, post := range p.postPlaces() {
		if base := p.postBase(post.own); base != nil && base.Kind != nil {
			p.tally.bases.add(named(word(base.Kind), p.postSize(&post)), 1)
		} else {
			p.missing("post bases", "platforms[].posts.base.kind")
			p.tally.bases.unknown = true
		}
		if top := p.postCap(post.own); top != nil && top.Kind != nil {
			p.tally.caps.add(named(word(top.Kind), p.postSize(&post)), 1)
		} else {
			p.missing("post caps", "platforms[].posts.cap.kind")
			p.tally.caps.unknown = true
		}
	}
}

// joistHardware counts hangers by where they hang and ties by crossings.
func (p *platform) joistHardware() {
	if p.joistsMissing() != "" {
		p.tally.stock.unknown, p.tally.hangers.unknown, p.tally.ties.unknown = true, true, true
		return
	}
	size := p.joistSize()
	for _, j := range p.joists {
		for _, stick := range j.sticks {
			for _, end := range []string{stick.From, stick.To} {
				p.hang(end, size, j.doubled)
			}
			for k := range stick.Supports {
				if stick.Supports[k].Ends {
					continue // it hangs there and is not tied down
				}
				switch ties := p.m.Joists.BeamTies; {
				case ties == nil:
					p.missing("ties of joists to beams", "platforms[].joists.beam_ties")
					p.tally.ties.unknown = true
				case ties.V:
					p.tally.ties.add(size, 1)
				}
			}
		}
	}
}

// hang counts a hanger where the end of a joist hangs.
func (p *platform) hang(end, size string, doubled bool) {
	kind := size
	if doubled {
		kind = "doubled " + kind
	}
	hangers := p.m.Joists.Hangers
	switch end {
	case "rim":
	case "ledger":
		switch {
		case hangers == nil || hangers.AtLedger == nil:
			p.missing("hangers at the ledger", "platforms[].joists.hangers.at_ledger")
			p.tally.hangers.unknown = true
		case hangers.AtLedger.V:
			p.tally.hangers.add(kind+" at ledger", 1)
		}
	case "header":
		p.tally.headerEnds.add(kind, 1)
	default:
		switch {
		case hangers == nil || hangers.AtFlushBeams == nil:
			p.missing("hangers at flush beams", "platforms[].joists.hangers.at_flush_beams")
			p.tally.hangers.unknown = true
		case hangers.AtFlushBeams.V && p.skewedBeam(end):
			p.tally.hangers.add(kind+" skewed at "+end, 1)
		case hangers.AtFlushBeams.V:
			p.tally.hangers.add(kind+" at "+end, 1)
		}
	}
}

// skewedBeam reports whether joists meet a beam other than square.
func (p *platform) skewedBeam(mark string) bool {
	for i := range p.plan.Beams {
		b := &p.plan.Beams[i]
		if b.Mark == mark && len(b.Lines) > 0 {
			line := b.Lines[0]
			return line.A.X != line.B.X && line.A.Y != line.B.Y
		}
	}
	return false
}
