package fieldsheet

import "plumbrule/checker/measure"

// counts adds the section of quantities. Nothing has a price.
func (b *builder) counts() {
	t := Table{Columns: []Column{{"Item", Words}, {"Kind", Words}, {"Number", Count}}}
	c := &b.tally
	b.pieces(&t, "joists", &c.stock)
	add := func(item string, c *counts) { writeCounts(&t, item, c) }
	add("hangers", &c.hangers)
	add("joist ends at headers", &c.headerEnds)
	add("joist to beam ties", &c.ties)
	add("posts", &c.posts)
	add("post bases", &c.bases)
	add("post caps", &c.caps)
	add("ledger fasteners", &c.fasteners)
	add("ties to the house", &c.lateral)
	b.pieces(&t, "boards", &c.boards)
	add("balusters", &c.balusters)
	add("stringers", &c.stringers)
	add("treads", &c.treads)
	s := Section{Title: "Counts", Notes: c.remarks}
	for _, other := range c.others.list {
		t.row(text("footings"), text(other.kind), count(other.n))
	}
	s.add(t)
	if c.concrete > 0 {
		concrete := Table{Columns: []Column{{"Item", Words}, {"Together", Volume}}}
		concrete.row(text("concrete for footings"), volume(c.concrete))
		s.add(concrete)
	}
	s.Notes = append(s.Notes, "As drawn, nothing added for waste. Stock is the next length sold: "+b.stockWords()+" (common practice).")
	b.section(s)
}

func (b *builder) stockWords() string {
	if b.sys == measure.Metric {
		return "steps of 300 mm from 2.4 m to 6 m"
	}
	return "even feet from 8 to 24"
}

// writeCounts lists the kinds of an item; an item of which some are not shown
// says so in a row of its own.
func writeCounts(t *Table, item string, c *counts) {
	for _, k := range c.list {
		t.row(text(item), text(k.kind), count(k.n))
	}
	if c.unknown {
		kind := ""
		if len(c.list) > 0 {
			kind = "and others"
		}
		t.row(text(item), text(kind), unknown())
	}
}

// pieces lists an item by size and stock length.
func (b *builder) pieces(t *Table, item string, l *lengths) {
	for _, p := range l.list {
		kind := p.size
		switch {
		case p.stock > 0:
			kind = named(kind, b.stockText(p.stock))
		default:
			kind = named(kind, "length not known or over stock")
		}
		t.row(text(item), text(kind), count(p.n))
	}
	if l.unknown {
		kind := ""
		if len(l.list) > 0 {
			kind = "and others"
		}
		t.row(text(item), text(kind), unknown())
	}
}
