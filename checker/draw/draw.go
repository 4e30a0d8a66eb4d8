package draw

import (
	"errors"
	"fmt"
	"strings"

	"plumbrule/checker/draw/paper"
	"plumbrule/checker/facts"
	"plumbrule/checker/measure"
	"plumbrule/checker/model"
	"plumbrule/checker/report/content"
	"plumbrule/checker/report/items"
	"plumbrule/checker/result"
)

// View is what is looked at.
type View string

// The views.
const (
	Plan      View = "plan"      // the walking surface from above
	Framing   View = "framing"   // the frame from above
	Elevation View = "elevation" // from the front, and cut out from the house
	Stairs    View = "stairs"    // cut through each stair
)

// Views lists all views, in the order of their sheets.
func Views() []View { return []View{Plan, Framing, Elevation, Stairs} }

// Options say what is drawn and on what paper. The zero value draws all views,
// without findings, on the paper that goes with the design's units.
type Options struct {
	Views []View
	Paper string // a name of Papers; "" for the one that goes with the units
	// Source names the file that the design came from, for the title block.
	Source string
	// Report is a run over this one design, first in it, whose findings are numbered on the
	// drawings; nil for drawings without findings.
	Report *result.Report
	// Previous is what an earlier report numbered; its items keep their numbers.
	Previous items.Previous
}

// drafter holds what all figures are drawn from.
type drafter struct {
	deck  *model.Deck
	facts *facts.Facts
	out   *facts.SettingOut
	fonts *paper.Fonts
	say   func(term string) string // in the words of the rule sets
}

func newDrafter(design *facts.Derived, fonts *paper.Fonts, report *result.Report) *drafter {
	var sets []result.Set
	if report != nil {
		sets = report.Sets
	}
	return &drafter{deck: design.Deck, facts: design.Facts, out: &design.SettingOut, fonts: fonts, say: content.Agreed(sets)}
}

// Sheets draws a design. The error says that an option is unknown, or that the
// letters cannot be read.
func Sheets(design *facts.Derived, options Options) ([]*paper.Sheet, error) {
	format, err := paperFormat(options.Paper, design.Deck.System)
	if err != nil {
		return nil, err
	}
	if len(options.Views) == 0 {
		options.Views = Views()
	}
	fonts, err := paper.OpenFonts()
	if err != nil {
		return nil, err
	}
	if options.Report != nil && !ofOneDesign(options.Report) {
		return nil, errors.New("findings can be drawn of one design at a time")
	}
	d := newDrafter(design, fonts, options.Report)
	set := newSheetSet(d, format, options)
	for _, view := range options.Views {
		drawings, err := d.drawings(view)
		if err != nil {
			return nil, err
		}
		for _, drawing := range drawings {
			set.add(drawing)
		}
	}
	return set.finish(), nil
}

// ofOneDesign reports whether a run was over one design. Files of waivers may
// stand behind it.
func ofOneDesign(report *result.Report) bool {
	for i := range report.Designs {
		if (report.Designs[i].Kind == "") != (i == 0) {
			return false
		}
	}
	return len(report.Designs) > 0
}

// pencil says how a figure is built: at a scale, whether only roughly, and which
// findings are marked on it.
type pencil struct {
	scale    scale
	draft    bool
	findings []finding
	// most is the size that notes may bring the figure to, nil for any.
	most *paper.Extent
}

// build draws one figure.
type build func(pencil) *figure

// drawing is what goes onto one sheet: one figure or several at one scale.
type drawing struct {
	view    View
	name    string
	about   string
	figures []build
}

// drawings lists the sheets of a view, without those for which the design shows
// too little.
func (d *drafter) drawings(view View) ([]drawing, error) {
	var list []drawing
	for i := range d.out.Platforms {
		p := &d.out.Platforms[i]
		if p.Outline == nil {
			continue
		}
		name := d.platformName(i)
		switch view {
		case Plan:
			list = append(list, drawing{view, "Plan of " + name, "Plan of " + name + d.say(" from above, the house at the top: outline, edges with drops and guards, stairs, doors and windows, boards."),
				[]build{func(s pencil) *figure { return d.surfacePlan(s, i) }}})
		case Framing:
			list = append(list, drawing{view, "Framing of " + name, "Frame of " + name + d.say(" from above, the house at the top: ledger, joists, beams, posts and footings."),
				[]build{func(s pencil) *figure { return d.framingPlan(s, i) }}})
		case Elevation:
			list = append(list, drawing{view, "Elevation of " + name, "Elevation of " + name + " from the front, and a section through it out from the house, with the ground as far as the design shows it.",
				[]build{
					func(s pencil) *figure { return d.frontElevation(s, i) },
					func(s pencil) *figure { return d.section(s, i) },
				}})
		case Stairs:
		default:
			return nil, fmt.Errorf("unknown view %q; views: %s", view, viewList())
		}
	}
	if view == Stairs {
		for k := range d.out.Stairs {
			label := "stair " + d.out.Stairs[k].Label
			list = append(list, drawing{view, "Section of " + label, "Section through " + label + d.say(": risers, treads, stringer, handrail, landing and ground."),
				[]build{func(s pencil) *figure { return d.stairSection(s, k) }}})
		}
	}
	return list, nil
}

func viewList() string {
	var names []string
	for _, v := range Views() {
		names = append(names, string(v))
	}
	return strings.Join(names, ", ")
}

func (d *drafter) figure(s pencil, title string) *figure {
	return &figure{fonts: d.fonts, say: d.say, system: d.deck.System, scale: s.scale, draft: s.draft, findings: s.findings, most: s.most, title: title, weight: 1}
}

// platformName is what a platform is called.
func (d *drafter) platformName(i int) string {
	if len(d.out.Platforms) == 1 && d.deck.Platforms[i].Mark == nil {
		return "the deck"
	}
	return "platform " + d.out.Platforms[i].Label
}

// units says how dimensions are to be read.
func (d *drafter) units() string {
	if d.deck.System == measure.Metric {
		return "Dimensions are in millimetres, rounded to the millimetre from the exact value. Do not scale the drawing."
	}
	return "Dimensions are in feet and inches, rounded to 1/16 in from the exact value. Do not scale the drawing."
}
