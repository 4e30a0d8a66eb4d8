package packet

import (
	"regexp"
	"slices"

	"plumbrule/checker/report/content"
)

// clean makes every text of the packet fit to print: words come from the design,
// and must neither turn the direction of writing nor part a number from its unit
// or fraction.
func (p *Packet) clean() {
	tidy(&p.Title, &p.Revision, &p.File, &p.Disposition)
	tidyLines(p.Block)
	for i := range p.Sections {
		s := &p.Sections[i]
		tidy(&s.Title)
		tidyAll(&s.Notes)
		for k := range s.Parts {
			s.Parts[k].clean()
		}
	}
}

func (p *Part) clean() {
	tidy(&p.Title)
	tidyAll(&p.Notes)
	tidyAll(&p.List)
	if p.Table != nil {
		tidy(&p.Table.Caption)
		for i := range p.Table.Rows {
			cells := p.Table.Rows[i].Cells
			for k := range cells {
				tidy(&cells[k].Text, &cells[k].More)
			}
		}
	}
	for i := range p.Items {
		tidy(&p.Items[i].Head)
		tidyLines(p.Items[i].Lines)
	}
	if p.Drawing != nil {
		tidy(&p.Drawing.Title, &p.Drawing.Scale, &p.Drawing.Alt)
	}
}

func tidyLines(lines []Line) {
	for i := range lines {
		tidy(&lines[i].Term, &lines[i].Text)
	}
}

// tidyAll leaves the list as it was to others who hold it.
func tidyAll(list *[]string) {
	*list = slices.Clone(*list)
	for i := range *list {
		tidy(&(*list)[i])
	}
}

func tidy(texts ...*string) {
	for _, t := range texts {
		*t = joined(content.Printable(*t))
	}
}

// joints are the blanks inside of a length, 6'-8 13/16", and between a number
// and its unit.
var joints = regexp.MustCompile(`(\d) (\d+/\d+["”]|(?:ft|mm|cm|psf|psi|kPa|lb|kip|kN|deg)\b)`)

// noBreak is a blank at which no line ends.
const noBreak = "\u00a0"

func joined(s string) string { return joints.ReplaceAllString(s, "${1}"+noBreak+"${2}") }
