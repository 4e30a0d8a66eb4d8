package checker_test

import (
	"plumbrule/checker/facts"
	"plumbrule/checker/measure"
)

func plainFrames() []plain {
	flight := func(p put, f facts.Flight) {
		f.At, f.N, f.Of = p.at, 1, 1
		p.facts.Flights = append(p.facts.Flights, f)
	}
	handrail := func(p put, h facts.Handrail) {
		h.At, h.Present = p.at, true
		if h.Risers == nil {
			h.Risers = shown(int64(9), p.at)
		}
		p.facts.Handrails = append(p.facts.Handrails, h)
	}
	guard := func(p put, g facts.Guard) {
		g.At, g.Drops = p.at, []facts.DropOut{{Field: "drop", Drop: p.long(8 * measure.Foot)}}
		p.facts.Guards = append(p.facts.Guards, g)
	}
	stair := func(p put, st facts.Stair) {
		st.At = p.at
		p.facts.Stairs = append(p.facts.Stairs, st)
	}
	joined := func(p put, j facts.Joined) {
		j.At = p.at
		if j.Skewed == nil {
			j.Skewed = []string{}
		}
		if j.SkewedHangers == nil {
			j.SkewedHangers = []string{}
		}
		p.facts.Joined = append(p.facts.Joined, j)
	}
	return []plain{
		// The fixtures hold a handrail's profile by its limits; the perimeter from which it needs a recess, too.
		{figure: "handrail/required from", given: given{irc + " " + wisconsin: "4"}, past: 1, build: func(p put) {
			// At the limit a handrail is asked for already, so the limit itself is where the outside begins.
			p.facts.Handrails = append(p.facts.Handrails, facts.Handrail{At: p.at, Risers: shown(p.n-1, p.at), Present: false})
		}},
		{figure: "handrail/required sides", given: given{irc + " " + wisconsin: "1"}, past: -1, build: func(p put) {
			p.facts.Handrails = append(p.facts.Handrails, facts.Handrail{
				At: p.at, Risers: shown(int64(9), p.at), Present: true, Sides: p.count(),
			})
		}},
		{figure: "handrail/height min", given: given{wisconsin: "30 in"}, past: -1, build: func(p put) {
			handrail(p, facts.Handrail{Height: p.length()})
		}},
		{figure: "handrail/height max", given: given{wisconsin: "38 in"}, past: 1, build: func(p put) {
			handrail(p, facts.Handrail{Height: p.length()})
		}},
		{figure: "handrail/grip perimeter_max", given: given{irc: "6-1/4 in"}, past: 1, quiet: true, build: func(p put) {
			// A larger one needs a recess, which is not shown here.
			handrail(p, facts.Handrail{Profile: p.said("shaped"), Perimeter: p.length(), SectionWidth: p.long(2 * measure.Inch)})
		}},
		{figure: "stairs/stringer-span cut", given: given{dca6: "6 ft"}, past: 1, build: func(p put) {
			flight(p, facts.Flight{StringerKind: p.said("cut"), StringerRun: p.length()})
		}},
		{figure: "stairs/stringer-span solid", given: given{dca6: "13 ft 3 in"}, past: 1, build: func(p put) {
			flight(p, facts.Flight{StringerKind: p.said("solid"), StringerRun: p.length()})
		}},
		{figure: "stairs/stringer-spacing wood", given: given{dca6: "18 in"}, past: 1, build: func(p put) {
			stair(p, facts.Stair{TreadMaterial: p.said("wood"), StringerSpacing: p.length()})
		}},
		{figure: "stairs/stringer-spacing cap", given: given{dca6 + " " + practice: "36 in"}, past: 1, build: func(p put) {
			stair(p, facts.Stair{TreadMaterial: p.said("composite"), TreadListed: p.long(9 * measure.Foot), StringerSpacing: p.length()})
		}},
		{figure: "stairs/nosing not_from", given: given{irc: "11 in"}, past: -1, build: func(p put) {
			flight(p, facts.Flight{TreadMin: p.length(), RisersClosed: p.true(true), Nosing: shown(measure.Length(0), p.place)})
		}},
		{figure: "stairs/open-riser trigger", given: given{irc: "30 in"}, past: 1, build: func(p put) {
			flight(p, facts.Flight{OpeningAbove: p.length(), RiserOpening: shown(8*measure.Inch, p.place)})
		}},
		{figure: "stairs/landing-slope max", given: given{irc: "1/48"}, past: 1, build: func(p put) {
			p.facts.Landings = append(p.facts.Landings, facts.Landing{
				At: p.at, Where: "top", SlopeAlong: shown(facts.Ratio{Rise: p.n, Run: int64(tenFeet)}, p.place),
			})
		}},
		{figure: "guards/required trigger", given: given{dca6: "30 in", wisconsin: "24 in"}, past: 1, build: func(p put) {
			p.facts.Edges = append(p.facts.Edges, facts.Edge{At: p.at, Name: "front", Drops: []facts.DropOut{
				{Field: "drop", Drop: p.long(measure.Foot)},
				{Out: 36 * measure.Inch, Field: "drop_within_36_in", Drop: p.length()},
			}})
		}},
		{figure: "guards/post-spacing max", given: given{dca6: "6 ft"}, past: 1, build: func(p put) {
			guard(p, facts.Guard{PostSpacing: p.length()})
		}},
		{figure: "guards/post-fixing refused", given: given{
			ircLater:  "end grain, screws or nails",
			dca6:      "bolts to rim joist only, lag screws to rim joist, screws or nails, end grain",
			wisconsin: "end grain, screws or nails",
		}, past: 1, build: func(p put) { guard(p, facts.Guard{PostFixing: p.words()}) }},
		{figure: "guards/post-fixing loose", given: given{ircLater: "bolts to rim joist only, lag screws to rim joist"}, past: 1, build: func(p put) {
			guard(p, facts.Guard{PostFixing: p.words()})
		}},
		{figure: "guards/post-fixing notched", given: given{irc2021 + " " + irc2024 + " " + dca6 + " " + wisconsin: "false"}, build: func(p put) {
			guard(p, facts.Guard{PostNotched: p.flag(), PostSize: p.said("4x4")})
		}},
		{figure: "joists/cantilever max_ratio", given: given{irc + " " + dca6: "1/4"}, past: 1, build: func(p put) {
			// On 9 ft the row of 10 ft gives more than a quarter.
			live, snow := keys{"load": "40 psf"}.loads(p.at)
			p.facts.JoistCantilevers = append(p.facts.JoistCantilevers, facts.JoistCantilever{
				At: p.at, Joists: p.at, Missing: []string{}, Cantilever: shown(measure.Length((p.n*9+9)/10), p.place), BackSpan: p.long(9 * measure.Foot),
				Spacing: p.long(16 * measure.Inch), Size: p.said("2x12"), Lumber: lumber(keys{"group": "southern pine"}, p.at),
				LiveLoad: live, GroundSnowLoad: snow,
			})
		}},
		{figure: "joists/bearing min_wood", given: given{irc: "1-1/2 in"}, past: -1, build: func(p put) {
			joined(p, facts.Joined{OnDropped: true, BearingAtBeams: p.length(), BearingOn: p.said("wood")})
		}},
		{figure: "joists/bearing min_concrete", given: given{irc: "3 in"}, past: -1, build: func(p put) {
			joined(p, facts.Joined{OnDropped: true, BearingAtBeams: p.length(), BearingOn: p.said("concrete")})
		}},
		{figure: "joists/bearing hard", given: given{irc: "concrete"}, past: 1, build: func(p put) {
			joined(p, facts.Joined{OnDropped: true, BearingAtBeams: shown(2*measure.Inch, p.place), BearingOn: p.words()})
		}},
		{figure: "joists/hangers required", given: given{irc: "true"}, build: func(p put) {
			joined(p, facts.Joined{OnLedger: true, HangersAtLedger: p.flag()})
		}},
		{figure: "joists/skewed-hangers required", given: given{practice: "true"}, quiet: true, build: func(p put) {
			hung := []string{}
			if p.yes {
				hung = []string{"front"}
			}
			joined(p, facts.Joined{Skewed: []string{"front"}, SkewedHangers: hung})
		}},
		{figure: "joists/support single", given: given{practice: "false"}, build: func(p put) {
			p.facts.Joists = append(p.facts.Joists, facts.Joists{At: p.at, Platform: "A", Marks: []measure.Length{}, Missing: []string{}, Count: shown(int64(9), p.at)})
			p.facts.Beams = append(p.facts.Beams, facts.Beam{At: p.at, Platform: "A", Mark: "B1"})
			if p.yes {
				p.facts.Unsupported = append(p.facts.Unsupported, facts.Unsupported{At: p.at, Platform: "A", Count: 1, Supports: 1, First: p.long(0)})
			}
		}},
		{figure: "joists/ties required", given: given{practice: "true"}, build: func(p put) {
			joined(p, facts.Joined{OnDropped: true, BeamTies: p.flag()})
		}},
		{figure: "joists/lateral-restraint ends", given: given{irc: "rim joist, full-depth blocking, hangers"}, past: -1, build: func(p put) {
			p.facts.Joists = append(p.facts.Joists, facts.Joists{At: p.at, Marks: []measure.Length{}, RestraintAtEnds: p.words(), BeamsCrossed: shown(int64(0), p.at)})
		}},
		{figure: "joists/lateral-restraint at_beams", given: given{irc: "full-depth blocking, hangers"}, past: -1, build: func(p put) {
			p.facts.Joists = append(p.facts.Joists, facts.Joists{At: p.at, Marks: []measure.Length{}, RestraintAtBeams: p.words(), BeamsCrossed: shown(int64(1), p.at)})
		}},
		{figure: "decking/joist-spacing cap", given: given{irc: "24 in"}, past: 1, build: func(p put) {
			p.facts.Decking = append(p.facts.Decking, facts.Decking{
				At: p.at, Material: p.said("composite"), BoardAngle: shown(measure.Angle(0), p.at),
				ListedStraight: p.long(9 * measure.Foot), JoistSpacing: p.length(),
			})
		}},
		{figure: "decking/joist-spacing multiple_from", given: given{ircLater: "3"}, past: -1, build: func(p put) {
			p.facts.Decking = append(p.facts.Decking, facts.Decking{
				At: p.at, Material: p.said("wood"), Thickness: p.long(measure.Inch), BoardAngle: shown(measure.Angle(0), p.at),
				JoistSpacing: shown(16*measure.Inch, p.place), JoistCount: shown(p.n, p.at), JoistsPerBoard: shown(p.n, p.at),
			})
		}},
	}
}
