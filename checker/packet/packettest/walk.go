package packettest

import "plumbrule/checker/packet"

// Walk hands over every text of a packet's title block and sections, in order.
// Numbers of items that stand beside a text are left out, as formats set them in
// their own way.
func Walk(p *packet.Packet, say func(string)) {
	say(p.Title)
	for _, l := range p.Block {
		say(l.Term)
		say(l.Text)
	}
	say(p.Disposition)
	for i := range p.Sections {
		s := &p.Sections[i]
		say(s.Title)
		each(say, s.Notes)
		for k := range s.Parts {
			part(&s.Parts[k], say)
		}
	}
}

func each(say func(string), list []string) {
	for _, text := range list {
		say(text)
	}
}

func part(p *packet.Part, say func(string)) {
	say(p.Title)
	each(say, p.Notes)
	each(say, p.List)
	if p.Table != nil {
		for _, c := range p.Table.Columns {
			say(c.Head)
		}
		for _, r := range p.Table.Rows {
			for _, c := range r.Cells {
				say(c.Text)
				say(c.More)
			}
		}
	}
	for _, item := range p.Items {
		say(item.Head)
		last := ""
		for _, l := range item.Lines {
			if l.Term != last { // else it may stand once for both
				say(l.Term)
			}
			last = l.Term
			say(l.Text)
		}
	}
	if p.Drawing != nil {
		say(p.Drawing.Title)
		say(p.Drawing.Alt)
	}
}
