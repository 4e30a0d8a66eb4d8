package mending

func ofValue() []Described {
	return []Described{
		{Sixteenths, "the length at the place of the finding, moved inside its limit to the next 1/16 in or 1 mm"},
		{Eighths, "the length at the place of the finding, moved inside its limit to the next 1/8 in or 1 mm"},
		{Quarters, "the length at the place of the finding, moved inside its limit to the next 1/4 in or 5 mm"},
		{Halves, "the length at the place of the finding, moved inside its limit to the next 1/2 in or 10 mm"},
		{WholeInches, "the length at the place of the finding, moved inside its limit to the next whole inch or 10 mm"},
		{Load, "the load at the place of the finding, as large as its limit asks"},
		{YesNo, "the other answer at the place of the finding, where that is yes or no"},
		{AcceptedWord, "a word that the rule set accepts, at the place of the finding"},
		{OneMore, "more of what is counted at the place of the finding, one at a time"},
	}
}

func ofStairs() []Described {
	return []Described{
		{Risers, "one riser more or one less, with the treads and the run that follow, and with treads of another depth"},
		{Treads, "deeper or shallower treads by 1/4 in or 5 mm, with the run that follows"},
		{TreadCount, "the number of treads that the limit gives"},
		{TreadSlope, "a smaller slope of the treads"},
		{Nosing, "another nosing, by 1/8 in or 1 mm"},
		{ClosedRisers, "closed risers"},
		{LandingSlope, "a smaller slope of the landing"},
		{StringerSize, "the next larger stringers in stock"},
		{StringerKind, "solid stringers instead of cut ones"},
		{StringerSupport, "a support in the middle of the stringers"},
		{StringerCount, "more stringers, one at a time"},
		{StringerSpacing, "stringers closer together, by whole inches or 10 mm"},
	}
}

func ofRails() []Described {
	return []Described{
		{Handrail, "a usual handrail along a stair that has none"},
		{HandrailSides, "a handrail on one side more"},
		{RoundRail, "a round handrail that a hand closes round"},
		{EdgeGuard, "a guard of the design, or a usual one where it has none, along an edge without"},
		{StairGuard, "a usual guard along a stair that has none"},
		{Balusters, "balusters in place of what can be climbed"},
		{BalusterGap, "balusters closer together, by 1/16 in or 1 mm"},
		{GuardFixing, "another fixing of the guard posts: a word that the set accepts, or hold-downs"},
	}
}

func ofSupports() []Described {
	return []Described{
		{LedgerSize, "a ledger of a size that the rule set accepts"},
		{LedgerScrews, "ledger fasteners that the rule set accepts, of the usual diameter"},
		{FastenerSpacing, "ledger fasteners closer together, by whole inches or 10 mm"},
		{FlashingMetal, "another material of the flashing"},
		{LateralDevices, "more lateral load devices, or of a larger capacity"},
		{FootingWidth, "the next larger form of the footings"},
		{FootingSoil, "footings on compacted fill"},
	}
}

func ofFrame() []Described {
	return []Described{
		{JoistSize, "the next larger joists in stock, with rim and ledger of the same size"},
		{JoistSpacing, "joists at the next closer standard spacing"},
		{EqualBays, "joists in equal bays of at most the same spacing"},
		{MidspanBlocking, "a row of blocking in the middle of the span"},
		{SkewedHangers, "skewed hangers where joists meet an edge on the skew"},
		{LumberGrade, "the next better grade of the same species"},
		{BeamPlace, "the beam nearer to the house or farther from it, by whole inches or 10 mm"},
		{BeamSize, "the next larger beam in stock"},
		{BeamPlies, "more plies of the beam, one at a time"},
		{BearingLength, "a longer bearing of the beam, by 1/2 in or 10 mm"},
		{BearingAtJoint, "a longer bearing at the joint of the plies, by 1/2 in or 10 mm"},
		{JointOverPost, "the joint of the plies over a post that has another on each side of it"},
		{AnotherPost, "one post more, or posts spaced evenly"},
		{EndPost, "the post at the end of the beam farther out, by whole inches or 10 mm"},
		{PostSize, "the next larger posts in stock"},
		{PostStandoff, "post bases that stand off and hold down"},
		{BothBraces, "braces in both directions"},
		{BoardAngle, "deck boards square across the joists"},
		{BoardGap, "a wider or narrower gap between boards, by 1/16 in or 1 mm"},
		{CommonBoardGap, "one of the usual gaps between boards"},
		{FastenersPerJoist, "more fasteners at each joist, one at a time"},
	}
}
