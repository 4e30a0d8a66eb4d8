package checker_test

import (
	"plumbrule/checker/facts"
	"plumbrule/checker/measure"
)

func plainBeams() []plain {
	beam := func(p put, b facts.Beam) {
		b.At, b.Mark = p.at, "B1"
		p.facts.Beams = append(p.facts.Beams, b)
	}
	posts := func(p put) *facts.Count { return shown(int64(3), p.at) }
	return []plain{
		{figure: "beams/bearing min_wood", given: given{irc: "1-1/2 in"}, past: -1, build: func(p put) {
			beam(p, facts.Beam{Posts: posts(p), BearingOn: p.said("wood"), BearingLength: p.length()})
		}},
		{figure: "beams/bearing min_concrete", given: given{irc: "3 in"}, past: -1, build: func(p put) {
			beam(p, facts.Beam{Posts: posts(p), BearingOn: p.said("concrete"), BearingLength: p.length()})
		}},
		{figure: "beams/bearing hard", given: given{irc: "concrete"}, past: 1, build: func(p put) {
			beam(p, facts.Beam{Posts: posts(p), BearingOn: p.words(), BearingLength: shown(2*measure.Inch, p.place)})
		}},
		{figure: "beams/bearing full_width", given: given{irc: "true"}, build: func(p put) {
			post := 5 * measure.Inch
			if !p.yes {
				post = 3 * measure.Inch
			}
			beam(p, facts.Beam{Posts: posts(p), BeamWidth: shown(9*measure.Inch/2, p.place), PostWidth: p.long(post)})
		}},
		{figure: "beams/cantilever max_ratio", given: given{irc + " " + dca6 + " " + wisconsin: "1/4"}, past: 1, build: func(p put) {
			p.facts.BeamCantilevers = append(p.facts.BeamCantilevers, facts.BeamCantilever{
				At: p.at, Beam: "B1", End: "end", Missing: []string{}, Cantilever: p.length(), BackSpan: p.long(tenFeet),
			})
		}},
		{figure: "beams/ply-joint past_face", given: given{irc: "0 in"}, past: 1, build: func(p put) {
			half := 11 * measure.Inch / 4
			p.facts.PlyJoints = append(p.facts.PlyJoints, facts.PlyJoint{
				At: p.at, Beam: "B1", OffPost: shown(half+measure.Length(p.n), p.place), HalfPost: p.long(half),
			})
		}},
		{figure: "beams/joint-bearing min", given: given{irc: "1-1/2 in"}, past: -1, build: func(p put) {
			p.facts.PlyJoints = append(p.facts.PlyJoints, facts.PlyJoint{At: p.at, Beam: "B1", Bearing: p.length()})
		}},
		{figure: "beams/depth below_joists", given: given{irc + " " + wisconsin: "0 in"}, past: 1, build: func(p put) {
			// What is asked for is a depth past the joists', so that less of it is outside.
			deep := 37 * measure.Inch / 4
			beam(p, facts.Beam{Kind: p.said("flush"), Depth: shown(deep-measure.Length(p.n), p.place), JoistDepth: p.long(deep)})
		}},
		{figure: "beams/support two", given: given{irc: "true"}, build: func(p put) {
			beam(p, facts.Beam{Posts: shown(int64(1), p.at), Supported: p.yes})
		}},
		{figure: "beams/span both_sides", given: given{everywhere: "false"}, build: func(p put) { shortBay(p, "2x12", "southern pine") }},
		{figure: "beams/span both_sides", given: given{canadianBeams: "false"}, build: func(p put) { shortBay(p, "2x8", "spruce-pine-fir") }},
	}
}

// shortBay is a bay of a beam of three plies that every table with that size
// and group allows.
func shortBay(p put, size, group string) {
	live, snow := keys{"load": "1.9 kPa"}.loads(p.at)
	p.facts.BeamSpans = append(p.facts.BeamSpans, facts.BeamSpan{
		At: p.at, Beam: "B1", Bay: 1, Missing: []string{}, BothSides: p.yes,
		ClearSpan: shown(measure.Foot, p.place), SpanToCenter: shown(measure.Foot, p.place),
		Size: p.said(size), Plies: shown(int64(3), p.at), Lumber: lumber(keys{"group": group}, p.at),
		JoistSpan: p.long(6 * measure.Foot), JoistClearSpan: p.long(6 * measure.Foot), JoistCantilever: p.long(0),
		LiveLoad: live, GroundSnowLoad: snow,
	})
}

func plainPosts() []plain {
	post := func(p put, one facts.Post) {
		one.At, one.Beam, one.N, one.Missing = p.at, "B1", 1, []string{}
		p.facts.Posts = append(p.facts.Posts, one)
	}
	const atLeast6x6 = "6x6, 6x8, 8x8"
	return []plain{
		{figure: "posts/size min", given: given{irc: "3-1/2 in", dca6: "5-1/2 in"}, past: -1, build: func(p put) {
			post(p, facts.Post{LeastSide: p.length(), Size: p.said("4x4")})
		}},
		{figure: "posts/joint-post accepted", given: given{wisconsin: atLeast6x6}, past: -1, build: func(p put) {
			post(p, facts.Post{Size: p.words(), JointAbove: true})
		}},
		{figure: "posts/base hardware", given: given{irc: "standoff, flat plate"}, past: -1, build: func(p put) {
			post(p, facts.Post{BaseKind: p.words(), BaseHolds: shown(true, p.at)})
		}},
		{figure: "posts/base embedded", given: given{irc: "embedded in concrete, embedded in soil"}, past: -1, build: func(p put) {
			post(p, facts.Post{BaseKind: p.words(), Embedment: shown(tenFeet, p.at)})
		}},
		{figure: "posts/base min_embedment", given: given{irc: "12 in"}, past: -1, build: func(p put) {
			post(p, facts.Post{BaseKind: p.said("embedded in soil"), Embedment: p.length()})
		}},
		{figure: "posts/base held", given: given{irc: "true"}, build: func(p put) {
			post(p, facts.Post{BaseKind: p.said("standoff"), BaseHolds: p.flag()})
		}},
		{figure: "posts/cap accepted", given: given{irc: "post cap, bolted notch"}, past: -1, build: func(p put) {
			post(p, facts.Post{CapKind: p.words(), CapBolts: shown(int64(4), p.at), CapBoltDiameter: p.long(measure.Inch)})
		}},
		{figure: "posts/cap bolted", given: given{irc: "bolted notch"}, past: 1, build: func(p put) {
			kind := p.word
			if kind != "bolted notch" {
				kind = "post cap"
			}
			post(p, facts.Post{CapKind: p.said(kind), CapBolts: shown(int64(1), p.place), CapBoltDiameter: p.long(measure.Inch)})
		}},
		{figure: "posts/cap min_bolts", given: given{irc: "2"}, past: -1, build: func(p put) {
			post(p, facts.Post{CapKind: p.said("bolted notch"), CapBolts: p.count(), CapBoltDiameter: p.long(measure.Inch)})
		}},
		{figure: "posts/cap min_diameter", given: given{irc: "1/2 in"}, past: -1, build: func(p put) {
			post(p, facts.Post{CapKind: p.said("bolted notch"), CapBolts: shown(int64(4), p.at), CapBoltDiameter: p.length()})
		}},
		{figure: "posts/footing required", given: given{irc: "true"}, build: func(p put) {
			post(p, facts.Post{HasFooting: p.yes, BaseKind: shown("embedded in soil", p.place)})
		}},
		{figure: "posts/bracing above", given: given{dca6: "24 in"}, past: 1, build: func(p put) {
			post(p, facts.Post{Corner: true, HeightAboveGrade: p.length(), BracesAlong: shown(false, p.place)})
		}},
		{figure: "posts/bracing along", given: given{dca6: "true"}, build: func(p put) {
			post(p, facts.Post{Corner: true, HeightAboveGrade: p.long(tenFeet), BracesAlong: p.flag()})
		}},
		{figure: "posts/bracing across", given: given{dca6: "true"}, build: func(p put) {
			post(p, facts.Post{Corner: true, Freestanding: true, HeightAboveGrade: p.long(tenFeet), BracesAlong: p.true(true), BracesAcross: p.flag()})
		}},
		{figure: "posts/bracing corners_only", given: given{dca6: "true"}, build: func(p put) {
			// A post between those at the ends is left alone, one at an end is not.
			post(p, facts.Post{Corner: !p.yes, HeightAboveGrade: p.long(tenFeet), BracesAlong: shown(false, p.place)})
		}},
		{figure: "posts/bracing diagonal_decking", given: given{dca6: "45"}, past: -1, alone: true, build: func(p put) {
			post(p, facts.Post{Platform: "A", Corner: true, HeightAboveGrade: p.long(tenFeet), BracesAlong: shown(false, p.place)})
			p.facts.Decking = append(p.facts.Decking, facts.Decking{At: p.at, Platform: "A", BoardAngle: shown(measure.Angle(p.n), p.at)})
		}},
		{figure: "scope/tall-post max", given: given{irc: "14 ft"}, past: 1, build: func(p put) { post(p, facts.Post{Height: p.length()}) }},
		{figure: "scope/post-material accepted", given: given{irc: "wood"}, past: -1, build: func(p put) { post(p, facts.Post{Material: p.words()}) }},
	}
}

func plainFootings() []plain {
	footing := func(p put, f facts.Footing) {
		f.At, f.Beam, f.N, f.Missing = p.at, "B1", 1, []string{}
		p.facts.Footings = append(p.facts.Footings, f)
	}
	return []plain{
		{figure: "footings/depth min", given: given{irc: "12 in"}, past: -1, build: func(p put) {
			footing(p, facts.Footing{Depth: p.length(), FrostProtected: p.true(true)})
		}},
		{figure: "footings/depth below_frost", given: given{irc: "0 in"}, past: 1, build: func(p put) {
			// What is asked for is a depth past the frost's, so that less of it is outside.
			frost := 36 * measure.Inch
			footing(p, facts.Footing{Depth: shown(frost-measure.Length(p.n), p.place), FrostDepth: p.long(frost)})
		}},
		{figure: "footings/depth freestanding", given: given{irc: "false"}, build: func(p put) {
			// A freestanding deck may stay above the frost, one on a ledger may not.
			footing(p, facts.Footing{Depth: shown(2*measure.Foot, p.place), FrostDepth: p.long(3 * measure.Foot), Freestanding: !p.yes})
		}},
		{figure: "footings/depth solid", given: given{irc: "rock"}, past: -1, build: func(p put) {
			footing(p, facts.Footing{Depth: shown(measure.Inch, p.place), FrostDepth: p.long(3 * measure.Foot), Soil: p.said(p.word)})
		}},
		{figure: "footings/near-house near", given: given{irc: "5 ft"}, past: -1, build: func(p put) {
			p.facts.House.At = p.at
			footing(p, facts.Footing{Depth: shown(measure.Foot, p.place), FoundationDepth: p.long(4 * measure.Foot), ToHouse: p.length()})
		}},
		{figure: "footings/near-house below_house", given: given{irc: "0 in"}, past: 1, build: func(p put) {
			house := 48 * measure.Inch
			p.facts.House.At = p.at
			footing(p, facts.Footing{Depth: shown(house-measure.Length(p.n), p.place), FoundationDepth: p.long(house), ToHouse: p.long(measure.Foot)})
		}},
		{figure: "footings/soil refused", given: given{irc: "frozen"}, past: 1, build: func(p put) { footing(p, facts.Footing{Soil: p.words()}) }},
		{figure: "footings/soil loose", given: given{irc: "loose fill"}, past: 1, build: func(p put) { footing(p, facts.Footing{Soil: p.words()}) }},
		{figure: "footings/thickness min", given: given{irc: "6 in", dca6: "7 in"}, past: -1, build: func(p put) {
			footing(p, facts.Footing{Thickness: p.length()})
		}},
		{figure: "footings/thickness kinds", given: given{irc + " " + dca6: "cast concrete"}, past: 1, build: func(p put) {
			footing(p, facts.Footing{Kind: p.said(p.word), Thickness: shown(measure.Inch, p.place)})
		}},
		{figure: "footings/area kinds", given: given{irc + " " + dca6: "cast concrete"}, past: -1, build: func(p put) {
			k := smallFooting(p)
			k.Kind, k.Side = p.words(), p.long(tenFeet)
			footing(p, k)
		}},
		{figure: "footings/area corner_share", given: given{dca6: "9/10"}, past: -1, build: func(p put) {
			// A beam of 6 ft below joists of 10 ft has 16 in, of which nine tenths do at its ends.
			k := smallFooting(p)
			k.Corner, k.Side = true, shown(measure.Length(p.n)*16/120, p.place)
			footing(p, k)
		}},
		{figure: "footings/pressure max_share", given: given{practice: "1/1"}, past: 1, step: 1000, alone: true, build: func(p put) {
			// 50 psf on 30 square feet make 1500 psf on one.
			footing(p, pressed(p, 30*(p.n/1000), int64(tenFeet)/1000))
		}},
		{figure: "footings/pressure dead_load", given: given{practice: "10 psf"}, past: 1, alone: true, build: func(p put) {
			// Where nothing is said of it the dead load is ten pounds; soil that bears
			// half a pound too little for that shows one that is taken for less, and
			// soil that bears half a pound too much one that is taken for more.
			ten, _, _ := measure.ParsePressure("10 psf")
			f := pressed(p, 30, 1)
			f.SoilBearing.Value += 30 * (ten - measure.Pressure(p.n))
			footing(p, f)
		}},
	}
}

// plainEngineering is how far a length may pass what engineering allows.
func plainEngineering() []plain {
	return []plain{{figure: "engineering/agreement past", given: given{practice: "6 in"}, past: 1, alone: true, build: func(p put) {
		live, snow := keys{"load": "40 psf"}.loads(p.at)
		p.facts.Site.At, p.facts.Site.LiveLoad = p.at, live
		p.facts.JoistSpans = append(p.facts.JoistSpans, facts.JoistSpan{
			At: p.at, Joists: p.at, Missing: []string{}, SpanToCenter: shown(tenFeet+measure.Length(p.n), p.place), LiveLoad: live, GroundSnowLoad: snow,
			Engineered: &facts.Engineered{Limit: p.long(tenFeet), Governs: "bending", Working: []string{}},
		})
	}}}
}

// smallFooting carries little, on soil and below spans that every table has.
func smallFooting(p put) facts.Footing {
	live, snow := keys{"load": "40 psf"}.loads(p.at)
	soil, _, _ := measure.ParsePressure("1500 psf")
	return facts.Footing{
		Shape: p.said("square"), SoilBearing: shown(soil, p.at), LiveLoad: live, GroundSnowLoad: snow,
		TributaryArea: keys{"area": "5"}.area(p.at), BeamSpan: p.long(6 * measure.Foot), JoistSpan: p.long(10 * measure.Foot),
	}
}

// pressed carries one area on another under 40 psf, on soil that just bears
// thirty times that and 10 psf of dead load.
func pressed(p put, carried, below int64) facts.Footing {
	live, snow := keys{"load": "40 psf"}.loads(p.at)
	dead, _, _ := measure.ParsePressure("10 psf")
	return facts.Footing{
		PlanArea: shown(below, p.place), SoilBearing: shown(30*(live.Value+dead), p.at), LiveLoad: live, GroundSnowLoad: snow,
		TributaryArea: shown(facts.Tributary[int64]{Builder: carried, Statics: carried}, p.at),
	}
}
