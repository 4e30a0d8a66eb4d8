package facts

import (
	"math"
	"strings"

	"plumbrule/checker/measure"
	"plumbrule/checker/model"
	"plumbrule/checker/wood"
)

// engineer asks package wood for an answer of its own on each member whose
// material and loads the design shows. What the design leaves open is taken on
// the careful side, and the working says so.
type engineer struct {
	deck    *model.Deck
	assumed []string
	loads   []wood.Load // each imposed load with the dead load
}

// usualDead is the dead load that deck tables are made for, 10 psf, taken and
// said where the design shows none.
const usualDead measure.Pressure = 478_802_590 // micropascals

// newEngineer is nil where the site shows no live load.
func newEngineer(deck *model.Deck) *engineer {
	site := deck.Site
	if site == nil || site.LiveLoad == nil {
		return nil
	}
	e := &engineer{deck: deck}
	dead := usualDead
	if site.DeadLoad != nil {
		dead = site.DeadLoad.V
	} else {
		e.assumed = append(e.assumed, "dead load not shown: 10 psf taken, as deck tables do")
	}
	e.loads = append(e.loads, wood.Load{Dead: dead, Imposed: site.LiveLoad.V, Duration: wood.TenYears})
	if site.GroundSnowLoad != nil {
		e.loads = append(e.loads, wood.Load{Dead: dead, Imposed: site.GroundSnowLoad.V, Duration: wood.TwoMonths})
	} else {
		e.assumed = append(e.assumed, "ground snow load not shown: live load only")
	}
	return e
}

// lumber reads the material of a member; ok is false where species, grade or
// size is not shown or not known to the wood values.
func (e *engineer) lumber(m *model.Member) (l wood.Lumber, assumed []string, ok bool) {
	d := m.Dimensions()
	if d == nil || m.Lumber == nil {
		return l, nil, false
	}
	material, _ := e.deck.Lumber.Get(m.Lumber.V)
	if material.Species == nil || material.Grade == nil {
		return l, nil, false
	}
	species, known := wood.ParseSpecies(material.Species.V)
	if !known {
		return l, nil, false
	}
	grade, known := wood.ParseGrade(material.Grade.V)
	if !known {
		return l, nil, false
	}
	l = wood.Lumber{Species: species, Grade: grade, Size: d.V, Wet: true}
	if m.Plies != nil {
		l.Plies = int(m.Plies.V)
	}
	switch {
	case material.WetService != nil:
		l.Wet = material.WetService.V
	default:
		assumed = append(assumed, "moisture in service not shown: wet")
	}
	switch treated := material.Treated == nil || material.Treated.V; {
	case material.Incised != nil:
		l.Incised = material.Incised.V
	case treated && species != wood.SouthernPine:
		l.Incised = true
		assumed = append(assumed, "incising not shown: incised")
	}
	return l, assumed, true
}

// least asks for the answer under each load and keeps the least.
func (e *engineer) least(assumed []string, ask func(wood.Load) (wood.Span, error)) *Engineered {
	var answer *wood.Span
	for _, load := range e.loads {
		span, err := ask(load)
		if err != nil {
			return nil
		}
		if answer == nil || span.Length < answer.Length {
			answer = &span
		}
	}
	return e.written(assumed, answer.Length, string(answer.Governs), answer.Report)
}

// written puts an answer down with what it rests on.
func (e *engineer) written(assumed []string, limit measure.Length, governs string, report wood.Report) *Engineered {
	out := &Engineered{Limit: of(limit), Governs: governs}
	out.Working = append(out.Working, e.assumed...)
	out.Working = append(out.Working, assumed...)
	for _, line := range report.Lines() {
		if line = strings.TrimSpace(line); line != "" {
			out.Working = append(out.Working, line)
		}
	}
	return out
}

func (e *engineer) joist(j *model.Joists, spacing *Length, ask func(wood.Joist) (wood.Span, error)) *Engineered {
	if e == nil || spacing == nil {
		return nil
	}
	l, assumed, ok := e.lumber(&j.Member)
	if !ok {
		return nil
	}
	return e.least(assumed, func(load wood.Load) (wood.Span, error) {
		return ask(wood.Joist{Lumber: l, Spacing: spacing.Value, Load: load, Limits: wood.CodeLimits()})
	})
}

// joistSpan is the longest simple span of the joists, center to center.
func (e *engineer) joistSpan(j *model.Joists, spacing *Length) *Engineered {
	return e.joist(j, spacing, func(m wood.Joist) (wood.Span, error) { return m.MaxSpan(wood.Strict()) })
}

// joistCantilever is the longest cantilever beyond a back span.
func (e *engineer) joistCantilever(j *model.Joists, spacing, back *Length) *Engineered {
	if back == nil {
		return nil
	}
	return e.joist(j, spacing, func(m wood.Joist) (wood.Span, error) { return m.MaxCantilever(back.Value, wood.Strict()) })
}

func (e *engineer) beam(b *model.Beam, tributary measure.Length, ask func(wood.Beam) (wood.Span, error)) *Engineered {
	if e == nil || tributary <= 0 || b.Plies == nil && b.Actual == nil {
		return nil
	}
	l, assumed, ok := e.lumber(&b.Member)
	if !ok {
		return nil
	}
	return e.least(assumed, func(load wood.Load) (wood.Span, error) {
		return ask(wood.Beam{Lumber: l, Tributary: tributary, Load: load, Limits: wood.CodeLimits()})
	})
}

// beamSpan is the longest simple span of a beam under what it carries by statics.
func (e *engineer) beamSpan(b *model.Beam, carries *TributaryLength) *Engineered {
	if carries == nil {
		return nil
	}
	return e.beam(b, measure.Length(carries.Value.Statics), func(m wood.Beam) (wood.Span, error) { return m.MaxSpan(wood.Strict()) })
}

// beamCantilever is the longest end of a beam beyond its last post.
func (e *engineer) beamCantilever(b *model.Beam, tributary measure.Length, back *Length) *Engineered {
	if back == nil {
		return nil
	}
	return e.beam(b, tributary, func(m wood.Beam) (wood.Span, error) { return m.MaxCantilever(back.Value, wood.Strict()) })
}

// force is what an area in square millimetres carries under a load.
func force(area int64, load wood.Load) measure.Force {
	const perMicronewton = 1e6 // micropascals on square millimetres
	return measure.Force(math.Round(float64(area) * float64(load.Imposed+load.Dead) / perMicronewton))
}

// postHeight is the greatest height of a post under the area that it carries
// by statics, the load at its middle, its ends pinned.
func (e *engineer) postHeight(m *model.Member, area *TributaryArea) *Engineered {
	if e == nil || m == nil || area == nil {
		return nil
	}
	l, assumed, ok := e.lumber(m)
	if !ok {
		return nil
	}
	answer := e.least(assumed, func(load wood.Load) (wood.Span, error) {
		return wood.Post{Lumber: l, Load: force(area.Value.Statics, load), Duration: load.Duration}.MaxHeight(wood.Strict())
	})
	if answer != nil && answer.Governs == string(wood.ByLongest) {
		answer.Governs = "slenderness" // 50 times the depth, as far as the NDS goes
	}
	return answer
}

// footingSize is the least side or diameter of a footing under the area that
// it carries by statics, its own weight taken off what the soil bears.
func (e *engineer) footingSize(shape string, post measure.Length, area *TributaryArea) *Engineered {
	if e == nil || area == nil || e.deck.Site.SoilBearing == nil || post == 0 {
		return nil
	}
	plan := wood.Square
	if shape == "round" {
		plan = wood.Round
	}
	var most *wood.FootingSize
	for _, load := range e.loads {
		pad := wood.Footing{Load: force(area.Value.Statics, load), Soil: e.deck.Site.SoilBearing.V, Shape: plan, Post: post, Weighed: true}
		size, err := pad.Size()
		if err != nil {
			return nil
		}
		if most == nil || size.Side > most.Side {
			most = &size
		}
	}
	return e.written(nil, most.Side, "soil bearing", most.Report)
}

// ledgerSpacing is how far apart fasteners may be by the capacity that they
// were tested to, for the details that tests exist for.
func (e *engineer) ledgerSpacing(l *model.Ledger, joistSpan *Length) *Engineered {
	if e == nil || l == nil || l.Fasteners == nil || joistSpan == nil || l.Fasteners.Diameter == nil || l.Fasteners.Diameter.V != measure.Inch/2 {
		return nil
	}
	var fastener wood.LedgerFastener
	switch words(l.Fasteners.Type) {
	case "lag screw":
		fastener = wood.LedgerLag
	case "bolt":
		fastener = wood.LedgerBolt
		if l.Fasteners.WashersBetween != nil && l.Fasteners.WashersBetween.V {
			fastener = wood.LedgerBoltWashers
		}
	default:
		return nil
	}
	return e.least(nil, func(load wood.Load) (wood.Span, error) {
		return wood.LedgerSpacing(fastener.Tested(), joistSpan.Value, load)
	})
}

// stringerSpan is the longest horizontal span of a stringer.
func (e *engineer) stringerSpan(k *model.Stringers, throat, width *Length) *Engineered {
	if e == nil || k == nil || width == nil {
		return nil
	}
	l, assumed, ok := e.lumber(&k.Member)
	if !ok {
		return nil
	}
	stringer := wood.Stringer{Lumber: l, Width: width.Value, Limits: wood.Limits{Imposed: wood.CodeLimits().Imposed}}
	switch words(k.Kind) {
	case "cut":
		if throat == nil {
			return nil
		}
		stringer.Throat = throat.Value
	case "solid":
	default:
		return nil
	}
	return e.least(assumed, func(load wood.Load) (wood.Span, error) {
		stringer.Load = load
		return stringer.MaxSpan(wood.Strict())
	})
}
