package remedy

import "plumbrule/checker/mending"

// moves gives the ways in which a kind of change is made. It says where to look
// and how to step; whether a change mends anything, the check says. It is nil
// for a kind that there is not.
func moves(kind mending.Kind) []move {
	for _, of := range []func(mending.Kind) []move{ofValue, ofStairs, ofRails, ofSupports, ofFrame} {
		if list := of(kind); list != nil {
			return list
		}
	}
	return nil
}

func ofValue(kind mending.Kind) []move {
	switch kind {
	case mending.Sixteenths:
		return []move{toward("", "", least())}
	case mending.Eighths:
		return []move{toward("", "", finer())}
	case mending.Quarters:
		return []move{toward("", "", fine())}
	case mending.Halves:
		return []move{toward("", "", half())}
	case mending.WholeInches:
		return []move{toward("", "", whole())}
	case mending.Load:
		return []move{load}
	case mending.YesNo:
		return []move{flip}
	case mending.AcceptedWord:
		return []move{accept("")}
	case mending.OneMore:
		return []move{count("", "")}
	}
	return nil
}

func ofStairs(kind mending.Kind) []move {
	switch kind {
	case mending.Risers:
		return []move{risers(1), risers(-1)}
	case mending.Treads:
		return []move{treads(1), treads(-1)}
	case mending.TreadCount:
		return []move{limit("treads")}
	case mending.TreadSlope:
		return []move{choose("slope", "", "2%", "1%")}
	case mending.Nosing:
		return []move{toward("nosing", "", finer())}
	case mending.ClosedRisers:
		return []move{closedRisers}
	case mending.LandingSlope:
		return []move{choose("slope_along", "", "2%", "1%", "0.5%", "0%"), choose("slope_out", "", "2%", "1%", "0.5%", "0%")}
	case mending.StringerSize:
		return []move{larger("stringers", "stringers")}
	case mending.StringerKind:
		return []move{choose("stringers/kind", "stringers", "solid")}
	case mending.StringerSupport:
		return []move{supported}
	case mending.StringerCount:
		return []move{count("stringers/count", "stringers")}
	case mending.StringerSpacing:
		return []move{toward("stringers/spacing", "stringer spacing", whole())}
	}
	return nil
}

func ofRails(kind mending.Kind) []move {
	switch kind {
	case mending.Handrail:
		return []move{handrailed}
	case mending.HandrailSides:
		return []move{count("handrail/sides", "sides with a handrail")}
	case mending.RoundRail:
		return []move{roundRail}
	case mending.EdgeGuard:
		return []move{guarded}
	case mending.StairGuard:
		return []move{stairGuarded}
	case mending.Balusters:
		return []move{choose("kind", "infill", "balusters")}
	case mending.BalusterGap:
		return []move{shrink("infill/opening", "", least())}
	case mending.GuardFixing:
		return []move{accept("", "hold-down to joist", "hold-down to blocking", "listed bracket")}
	}
	return nil
}

func ofSupports(kind mending.Kind) []move {
	switch kind {
	case mending.LedgerSize:
		return []move{accept("ledger")}
	case mending.LedgerScrews:
		return []move{screwed}
	case mending.FastenerSpacing:
		return []move{toward("", "fastener spacing", whole())}
	case mending.FlashingMetal:
		return []move{accept("", "stainless steel", "copper", "vinyl")}
	case mending.LateralDevices:
		return []move{
			count("lateral_devices/count", "lateral devices"),
			choose("lateral_devices/capacity", "capacity of lateral devices", "1500 lb"),
		}
	case mending.FootingWidth:
		return []move{form("diameter"), form("side")}
	case mending.FootingSoil:
		return []move{choose("soil", "soil below footings", "compacted fill")}
	}
	return nil
}

func ofFrame(kind mending.Kind) []move {
	switch kind {
	case mending.JoistSize:
		return []move{larger("joists", "joists", "rim_joist", "ledger", "outside_joist")}
	case mending.JoistSpacing:
		return []move{closer("joists/spacing", "joists/max_spacing")}
	case mending.EqualBays:
		return []move{equalBays}
	case mending.MidspanBlocking:
		return []move{blocked}
	case mending.SkewedHangers:
		return []move{skewed}
	case mending.LumberGrade:
		return []move{graded}
	case mending.BoardAngle:
		return []move{choose("board_angle", "board angle", "0")}
	case mending.BoardGap:
		return []move{toward("gap", "gap between boards", least())}
	case mending.CommonBoardGap:
		return []move{gaps}
	case mending.FastenersPerJoist:
		return []move{count("", "fasteners per joist")}
	}
	return ofBeams(kind)
}

func ofBeams(kind mending.Kind) []move {
	switch kind {
	case mending.BeamPlace:
		return []move{fromHouse(-1), fromHouse(1)}
	case mending.BeamSize:
		return []move{larger("beam", "beam")}
	case mending.BeamPlies:
		return []move{count("plies", "plies")}
	case mending.BearingLength:
		return []move{toward("bearing_length", "", half())}
	case mending.BearingAtJoint:
		return []move{toward("bearing_at_joint", "", half())}
	case mending.JointOverPost:
		return []move{overPost}
	case mending.AnotherPost:
		return []move{post, pair}
	case mending.EndPost:
		return []move{endPost}
	case mending.PostSize:
		return []move{larger("posts", "posts")}
	case mending.PostStandoff:
		return []move{standoff}
	case mending.BothBraces:
		return []move{choose("braces/directions", "", "both")}
	}
	return nil
}
