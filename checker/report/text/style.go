package text

import (
	"github.com/fatih/color"

	"plumbrule/checker/report/lines"
	"plumbrule/checker/result"
)

type paint = lines.Paint

// style is the colours of one report. Colour repeats what the words say.
type style struct {
	path, label, faint, heading paint
	classes                     map[result.Consequence]paint
	refused                     paint
}

func newStyle(colour bool) style {
	brush := func(attributes ...color.Attribute) paint { return lines.Brush(colour, attributes...) }
	return style{
		path:    brush(color.Bold),
		label:   brush(color.FgGreen),
		faint:   brush(color.Faint),
		heading: brush(color.Bold, color.Underline),
		refused: brush(color.FgRed, color.Bold),
		classes: map[result.Consequence]paint{
			result.LifeSafety:  brush(color.FgRed, color.Bold),
			result.Structure:   brush(color.FgYellow, color.Bold),
			result.Durability:  brush(color.FgCyan),
			result.Workmanship: brush(color.FgBlue),
		},
	}
}

// class gives the colour of a consequence; an unknown one stays plain.
func (s style) class(c result.Consequence) paint {
	if p, ok := s.classes[c]; ok {
		return p
	}
	return func(s string) string { return s }
}
