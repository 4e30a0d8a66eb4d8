package checker_test

import (
	"plumbrule/checker/facts"
	"plumbrule/checker/measure"
)

func plainLedgers() []plain {
	ledger := func(p put, l facts.Ledger) {
		l.At, l.Missing, l.PointLoads = p.at, []string{}, []facts.PointLoad{}
		l.Described, l.FastenersShown = true, true
		p.facts.Ledgers = append(p.facts.Ledgers, l)
	}
	devices := func(p put, d facts.LateralDevices) {
		d.At, d.Shown = p.at, true
		p.facts.LateralDevices = append(p.facts.LateralDevices, d)
	}
	two := func(p put, l facts.Ledger) {
		l.FastenerRows = shown(int64(2), p.at)
		ledger(p, l)
	}
	strong := func(p put) *facts.Force {
		force, _, _ := measure.ParseForce("5000 lb")
		return shown(force, p.at)
	}
	number := func(p put, n int64) *facts.Count { return shown(n, p.at) }
	const (
		veneers = "brick veneer, stone veneer"
		weak    = "cantilevered floor, truss ribbon, cladding, foam sheathing, chimney"
		guide   = "brick veneer, stone veneer, chimney, cantilevered floor, truss ribbon"
		walls   = "concrete wall, masonry wall"
	)
	return []plain{
		{figure: "ledger/size accepted", given: given{irc + " " + dca6: "2x8, 2x10, 2x12"}, past: -1, build: func(p put) {
			ledger(p, facts.Ledger{Size: p.words()})
		}},
		{figure: "ledger/cladding removed", given: given{irc: "true"}, build: func(p put) { ledger(p, facts.Ledger{CladdingRemoved: p.flag()}) }},
		{figure: "ledger/cladding bare", given: given{irc: walls}, past: -1, build: func(p put) {
			ledger(p, facts.Ledger{AttachedTo: p.said(p.word), CladdingRemoved: shown(false, p.place)})
		}},
		{figure: "ledger/substrate refused", given: given{irc: veneers, dca6 + " " + wisconsin: guide}, past: 1, build: func(p put) {
			ledger(p, facts.Ledger{AttachedTo: p.words()})
		}},
		{figure: "ledger/substrate weak", given: given{irc: weak}, past: 1, build: func(p put) { ledger(p, facts.Ledger{AttachedTo: p.words()}) }},
		{figure: "ledger/substrate walls", given: given{irc + " " + dca6 + " " + wisconsin: walls}, past: -1, build: func(p put) {
			ledger(p, facts.Ledger{AttachedTo: p.said(p.word), Floor: shown("open-web trusses", p.place)})
		}},
		{figure: "ledger/substrate refused_floors", given: given{irc + " " + dca6 + " " + wisconsin: "open-web trusses"}, past: 1, build: func(p put) {
			ledger(p, facts.Ledger{AttachedTo: p.said("house_rim"), Floor: p.words()})
		}},
		{figure: "ledger/substrate overhanging", given: given{irc + " " + dca6 + " " + wisconsin: "false"}, build: func(p put) {
			ledger(p, facts.Ledger{AttachedTo: p.said("house_rim"), CantileveredFloor: p.flag()})
		}},
		{figure: "ledger/fastener-type accepted", given: given{irc: "lag screw, bolt"}, past: -1, build: func(p put) {
			ledger(p, facts.Ledger{FastenerType: p.words(), FastenerDiameter: p.long(measure.Inch)})
		}},
		{figure: "ledger/fastener-type listed", given: given{irc: "structural screw, adhesive anchor, expansion anchor"}, past: -1, build: func(p put) {
			ledger(p, facts.Ledger{FastenerType: p.words()})
		}},
		{figure: "ledger/fastener-type min_diameter", given: given{irc: "1/2 in"}, past: -1, build: func(p put) {
			ledger(p, facts.Ledger{FastenerType: p.said("bolt"), FastenerDiameter: p.length()})
		}},
		{figure: "ledger/fastener-spacing washer_gap", given: given{irc + " " + dca6 + " " + wisconsin: "1/2 in"}, past: 1, build: func(p put) {
			// Sheathing and the washers make 1 in at the most; what the washers lack, the sheathing may have.
			k := keys{"load": "40 psf", "joist_span": "6 ft"}
			live, snow := k.loads(p.at)
			ledger(p, facts.Ledger{
				RimMaterial: p.said("solid sawn"), RimThickness: p.long(3 * measure.Inch / 2),
				FastenerType: p.said("bolt"), FastenerSpacing: shown(measure.Inch, p.place),
				Sheathing: shown(measure.Length(p.n), p.place), WashersBetween: p.true(true),
				JoistSpan: p.long(6 * measure.Foot), JoistClearSpan: p.long(6 * measure.Foot), LiveLoad: live, GroundSnowLoad: snow,
			})
		}},
		{figure: "ledger/fastener-placement top_min", given: given{irc: "2 in"}, past: -1, build: func(p put) { two(p, facts.Ledger{EdgeTop: p.length()}) }},
		{figure: "ledger/fastener-placement bottom_min", given: given{irc: "3/4 in"}, past: -1, build: func(p put) { two(p, facts.Ledger{EdgeBottom: p.length()}) }},
		{figure: "ledger/fastener-placement end_min", given: given{irc: "2 in"}, past: -1, build: func(p put) { two(p, facts.Ledger{EndDistance: p.length()}) }},
		{figure: "ledger/fastener-placement end_max", given: given{irc: "5 in"}, past: 1, build: func(p put) { two(p, facts.Ledger{EndDistance: p.length()}) }},
		{figure: "ledger/fastener-placement row_min", given: given{irc: "1-5/8 in"}, past: -1, build: func(p put) { two(p, facts.Ledger{RowSpacing: p.length()}) }},
		{figure: "ledger/fastener-placement row_max", given: given{irc: "5 in"}, past: 1, build: func(p put) { two(p, facts.Ledger{RowSpacing: p.length()}) }},
		{figure: "ledger/fastener-placement rim_min", given: given{irc: "2 in"}, past: -1, build: func(p put) { two(p, facts.Ledger{RimEdge: p.length()}) }},
		{figure: "ledger/fastener-placement staggered", given: given{irc: "true"}, build: func(p put) { two(p, facts.Ledger{Staggered: p.flag()}) }},
		{figure: "ledger/flashing required", given: given{irc: "true"}, build: func(p put) { ledger(p, facts.Ledger{FlashingPresent: p.flag()}) }},
		{figure: "ledger/flashing-metal refused", given: given{practice: "aluminum, aluminium, bare aluminum, plain steel, bare steel"}, past: 1, build: func(p put) {
			ledger(p, facts.Ledger{FlashingPresent: p.true(true), FlashingMaterial: p.words(), TreatedLumber: p.true(true)})
		}},
		{figure: "ledger/rim materials", given: given{irc: "solid sawn, laminated veneer lumber"}, past: -1, build: func(p put) {
			ledger(p, facts.Ledger{AttachedTo: p.said("house_rim"), RimMaterial: p.words(), RimThickness: p.long(3 * measure.Inch)})
		}},
		{figure: "ledger/rim engineered", given: given{irc: "laminated veneer lumber"}, past: -1, build: func(p put) {
			// An inch does for these materials and for no other.
			kind := p.word
			if kind != "laminated veneer lumber" {
				kind = "solid sawn"
			}
			ledger(p, facts.Ledger{AttachedTo: p.said("house_rim"), RimMaterial: p.said(kind), RimThickness: shown(measure.Inch, p.place)})
		}},
		{figure: "ledger/rim min_thickness", given: given{irc: "1-1/2 in"}, past: -1, build: func(p put) {
			ledger(p, facts.Ledger{AttachedTo: p.said("house_rim"), RimMaterial: p.said("solid sawn"), RimThickness: p.length()})
		}},
		{figure: "ledger/rim min_engineered", given: given{irc: "1 in"}, past: -1, build: func(p put) {
			ledger(p, facts.Ledger{AttachedTo: p.said("house_rim"), RimMaterial: p.said("laminated veneer lumber"), RimThickness: p.length()})
		}},
		{figure: "ledger/rim refused", given: given{irc: "decayed, split"}, past: 1, build: func(p put) {
			ledger(p, facts.Ledger{AttachedTo: p.said("house_rim"), RimCondition: p.words()})
		}},
		{figure: "ledger/point-load refused", given: given{irc: "beam, post, trimmer, stair, other"}, past: 1, build: func(p put) {
			ledger(p, facts.Ledger{})
			last := &p.facts.Ledgers[len(p.facts.Ledgers)-1]
			last.PointLoads = []facts.PointLoad{{At: p.place, What: p.word}}
		}},
		{figure: "ledger/lateral-devices few", given: given{irc + " " + wisconsin: "2"}, past: -1, build: func(p put) {
			devices(p, facts.LateralDevices{Count: p.count(), Capacity: strong(p), FromEnds: p.long(measure.Inch)})
		}},
		{figure: "ledger/lateral-devices few_capacity", given: given{irc + " " + wisconsin: "1500 lb"}, past: -1, build: func(p put) {
			devices(p, facts.LateralDevices{Count: number(p, 2), Capacity: p.force(), FromEnds: p.long(measure.Inch)})
		}},
		{figure: "ledger/lateral-devices many", given: given{irc + " " + wisconsin: "4"}, past: -1, build: func(p put) {
			force, _, _ := measure.ParseForce("1000 lb")
			devices(p, facts.LateralDevices{
				Count: number(p, p.n), Capacity: shown(force, p.place), FromEnds: p.long(measure.Inch), Penetration: p.long(measure.Foot),
			})
		}},
		{figure: "ledger/lateral-devices many_capacity", given: given{irc + " " + wisconsin: "750 lb"}, past: -1, build: func(p put) {
			devices(p, facts.LateralDevices{Count: number(p, 4), Capacity: p.force(), FromEnds: p.long(measure.Inch), Penetration: p.long(measure.Foot)})
		}},
		{figure: "ledger/lateral-devices many_penetration", given: given{irc + " " + wisconsin: "3 in"}, past: -1, build: func(p put) {
			force, _, _ := measure.ParseForce("1000 lb")
			devices(p, facts.LateralDevices{Count: number(p, 4), Capacity: shown(force, p.at), FromEnds: p.long(measure.Inch), Penetration: p.length()})
		}},
		{figure: "ledger/lateral-devices from_ends", given: given{irc + " " + wisconsin: "24 in"}, past: 1, build: func(p put) {
			devices(p, facts.LateralDevices{Count: number(p, 2), Capacity: strong(p), FromEnds: p.length()})
		}},
	}
}

// plainScope are the things that no table covers.
func plainScope() []plain {
	platform := func(p put) {
		p.facts.Platforms = append(p.facts.Platforms, facts.Platform{At: p.at})
		p.facts.Site.At = p.at
	}
	list := []plain{
		{figure: "scope/live-load min", given: given{irc + " " + dca6: "40 psf"}, past: -1, alone: true, build: func(p put) {
			platform(p)
			p.facts.Site.LiveLoad = p.pressure()
			// Between the least and the greatest there may be nothing.
			if forty, _, _ := measure.ParsePressure("40 psf"); measure.Pressure(p.n) > forty {
				p.facts.Site.LiveLoad = shown(forty, p.place)
			}
		}},
		{figure: "scope/live-load max", given: given{irc2018 + " " + dca6: "40 psf", ircLater: "60 psf"}, past: 1, alone: true, build: func(p put) {
			platform(p)
			p.facts.Site.LiveLoad = p.pressure()
			if forty, _, _ := measure.ParsePressure("40 psf"); measure.Pressure(p.n) < forty {
				p.facts.Site.LiveLoad = shown(forty, p.place)
			}
		}},
		{figure: "scope/snow max", given: given{irc2018 + " " + dca6: "40 psf", ircLater: "70 psf"}, past: 1, alone: true, build: func(p put) {
			platform(p)
			p.facts.Site.GroundSnowLoad = p.pressure()
		}},
		{figure: "scope/soil min", given: given{irc + " " + dca6: "1500 psf"}, past: -1, alone: true, build: func(p put) {
			p.facts.Footings = append(p.facts.Footings, facts.Footing{At: p.at, Missing: []string{}})
			p.facts.Site.At, p.facts.Site.SoilBearing = p.at, p.pressure()
		}},
		{figure: "scope/soil refused", given: given{irc: "organic, peat, muck, expansive, expansive clay, uncompacted fill"}, past: 1, alone: true, build: func(p put) {
			soil, _, _ := measure.ParsePressure("2000 psf")
			p.facts.Footings = append(p.facts.Footings, facts.Footing{At: p.at, Missing: []string{}})
			p.facts.Site.At, p.facts.Site.SoilBearing, p.facts.Site.SoilClass = p.at, shown(soil, p.at), p.words()
		}},
		{figure: "scope/stories max", given: given{irc: "3"}, past: 1, alone: true, build: func(p put) {
			platform(p)
			p.facts.House.At, p.facts.House.Stories = p.at, p.count()
		}},
	}
	for check, kind := range map[string]string{
		"scope/hot-tub": "hot tub", "scope/planter": "planter", "scope/heavy-load": "fireplace", "scope/stacked-platform": "upper deck",
		"scope/roof": "roof", "scope/stair-landing": "stair landing",
	} {
		in := irc + " " + dca6
		if kind == "roof" || kind == "stair landing" {
			in = irc
		}
		list = append(list, plain{figure: check + " covered", given: given{in: "false"}, build: func(p put) {
			// Where such a thing stands it is outside, where none does nothing is said.
			if p.yes {
				p.facts.Specials = append(p.facts.Specials, facts.Special{At: p.at, Kind: kind})
			}
		}})
	}
	return list
}

// plainLayout are the bands of what is laid out and measured.
func plainLayout() []plain {
	const (
		short = 119 * measure.Inch // under 10 ft
		far   = 240 * measure.Inch
	)
	walk := func(p put, length measure.Length, miss *facts.Length) {
		p.facts.Platforms = append(p.facts.Platforms, facts.Platform{At: p.at, Outline: "walk", Closure: miss, WalkLength: p.long(length)})
	}
	marks := func(p put, length measure.Length, worst *facts.Length) {
		p.facts.JoistMarks = append(p.facts.JoistMarks, facts.JoistMarks{At: p.at, On: "ledger", Worst: worst, WorstN: 2, Length: p.long(length)})
	}
	frame := func(p put, side measure.Length, f facts.Rectangle) {
		f.At, f.LongestSide, f.Possible = p.at, p.long(side), true
		p.facts.Rectangles = append(p.facts.Rectangles, f)
	}
	triangle := func(p put, square measure.Length, off *facts.Length) {
		p.facts.Triangles = append(p.facts.Triangles, facts.Triangle{
			At: p.at, Diagonal: shown(square+off.Value, p.place), Square: p.long(square), Deviation: off, Possible: true,
		})
	}
	// Between 1/8 in and 1/4 in only the band decides.
	between := func(p put) *facts.Length { return shown(3*measure.Inch/16, p.place) }
	diagonals := func(p put, diagonal measure.Length, difference *facts.Length) facts.Rectangle {
		return facts.Rectangle{DiagonalDifference: difference, Diagonal: p.long(diagonal)}
	}
	return []plain{
		{figure: "layout/closure short", given: given{practice: "1/8 in"}, past: 1, build: func(p put) { walk(p, short, p.length()) }},
		{figure: "layout/closure long", given: given{practice: "1/4 in"}, past: 1, build: func(p put) { walk(p, far, p.length()) }},
		{figure: "layout/closure short_under", given: given{practice: "10 ft"}, past: -1, build: func(p put) { walk(p, measure.Length(p.n), between(p)) }},
		{figure: "layout/joist-marks short", given: given{practice: "1/8 in"}, past: 1, build: func(p put) { marks(p, short, p.length()) }},
		{figure: "layout/joist-marks long", given: given{practice: "1/4 in"}, past: 1, build: func(p put) { marks(p, far, p.length()) }},
		{figure: "layout/joist-marks short_under", given: given{practice: "10 ft"}, past: -1, build: func(p put) { marks(p, measure.Length(p.n), between(p)) }},
		{figure: "layout/level max", given: given{practice: "3/4 in"}, past: 1, build: func(p put) {
			p.facts.Levels = append(p.facts.Levels, facts.Level{At: p.at, Difference: p.length(), Distance: p.long(20 * measure.Foot)})
		}},
		{figure: "layout/level over", given: given{practice: "20 ft"}, past: -1, build: func(p put) {
			p.facts.Levels = append(p.facts.Levels, facts.Level{At: p.at, Difference: shown(3*measure.Inch/4, p.place), Distance: p.long(measure.Length(p.n))})
		}},
		{figure: "layout/rectangle short", given: given{practice: "1/8 in"}, past: 1, build: func(p put) { frame(p, short, facts.Rectangle{SideDifference: p.length()}) }},
		{figure: "layout/rectangle long", given: given{practice: "1/4 in"}, past: 1, build: func(p put) { frame(p, far, facts.Rectangle{SideDifference: p.length()}) }},
		{figure: "layout/rectangle short_under", given: given{practice: "10 ft"}, past: -1, build: func(p put) {
			frame(p, measure.Length(p.n), facts.Rectangle{SideDifference: between(p)})
		}},
		{figure: "layout/rectangle miss", given: given{practice: "1/4 in"}, past: 1, build: func(p put) { frame(p, far, facts.Rectangle{Miss: p.length()}) }},
		{figure: "layout/rectangle target", given: given{practice: "3/4 in"}, past: 1, build: func(p put) {
			frame(p, far, diagonals(p, 100*measure.Foot, p.length()))
		}},
		{figure: "layout/rectangle target_over", given: given{practice: "100 ft"}, past: -1, build: func(p put) {
			frame(p, far, diagonals(p, measure.Length(p.n), shown(3*measure.Inch/4, p.place)))
		}},
		{figure: "layout/rectangle outer", given: given{practice: "1/2 in"}, past: 1, inner: true, build: func(p put) {
			frame(p, far, diagonals(p, 20*measure.Foot, p.length()))
		}},
		{figure: "layout/rectangle outer_over", given: given{practice: "20 ft"}, past: -1, inner: true, build: func(p put) {
			frame(p, far, diagonals(p, measure.Length(p.n), shown(measure.Inch/2, p.place)))
		}},
		{figure: "layout/right-angle outer", given: given{practice: "1/2 in"}, past: 1, inner: true, build: func(p put) { triangle(p, 20*measure.Foot, p.length()) }},
		{figure: "layout/right-angle outer_over", given: given{practice: "20 ft"}, past: -1, inner: true, build: func(p put) {
			triangle(p, measure.Length(p.n), shown(measure.Inch/2, p.place))
		}},
		{figure: "layout/right-angle target", given: given{practice: "3/4 in"}, past: 1, build: func(p put) { triangle(p, 100*measure.Foot, p.length()) }},
		{figure: "layout/right-angle target_over", given: given{practice: "100 ft"}, past: -1, build: func(p put) {
			triangle(p, measure.Length(p.n), shown(3*measure.Inch/4, p.place))
		}},
	}
}
