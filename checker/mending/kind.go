package mending

import "slices"

// Kind is a kind of change, by the name that a check's METADATA gives it.
type Kind string

// Changes of the value that a finding points at.
const (
	Sixteenths   Kind = "sixteenths"
	Eighths      Kind = "eighths"
	Quarters     Kind = "quarters"
	Halves       Kind = "halves"
	WholeInches  Kind = "whole-inches"
	Load         Kind = "load"
	YesNo        Kind = "yes-no"
	AcceptedWord Kind = "accepted-word"
	OneMore      Kind = "one-more"
)

// Changes of stairs.
const (
	Risers          Kind = "risers"
	Treads          Kind = "treads"
	TreadCount      Kind = "tread-count"
	TreadSlope      Kind = "tread-slope"
	Nosing          Kind = "nosing"
	ClosedRisers    Kind = "closed-risers"
	LandingSlope    Kind = "landing-slope"
	StringerSize    Kind = "stringer-size"
	StringerKind    Kind = "stringer-kind"
	StringerSupport Kind = "stringer-support"
	StringerCount   Kind = "stringer-count"
	StringerSpacing Kind = "stringer-spacing"
)

// Changes of handrails and guards.
const (
	Handrail      Kind = "handrail"
	HandrailSides Kind = "handrail-sides"
	RoundRail     Kind = "round-rail"
	EdgeGuard     Kind = "edge-guard"
	StairGuard    Kind = "stair-guard"
	Balusters     Kind = "balusters"
	BalusterGap   Kind = "baluster-gap"
	GuardFixing   Kind = "guard-fixing"
)

// Changes of ledgers and footings.
const (
	LedgerSize      Kind = "ledger-size"
	LedgerScrews    Kind = "ledger-screws"
	FastenerSpacing Kind = "fastener-spacing"
	FlashingMetal   Kind = "flashing-metal"
	LateralDevices  Kind = "lateral-devices"
	FootingWidth    Kind = "footing-width"
	FootingSoil     Kind = "footing-soil"
)

// Changes of joists, beams, posts and boards.
const (
	JoistSize         Kind = "joist-size"
	JoistSpacing      Kind = "joist-spacing"
	EqualBays         Kind = "equal-bays"
	MidspanBlocking   Kind = "midspan-blocking"
	SkewedHangers     Kind = "skewed-hangers"
	LumberGrade       Kind = "lumber-grade"
	BeamPlace         Kind = "beam-place"
	BeamSize          Kind = "beam-size"
	BeamPlies         Kind = "beam-plies"
	BearingLength     Kind = "bearing-length"
	BearingAtJoint    Kind = "bearing-at-joint"
	JointOverPost     Kind = "joint-over-post"
	AnotherPost       Kind = "another-post"
	EndPost           Kind = "end-post"
	PostSize          Kind = "post-size"
	PostStandoff      Kind = "post-standoff"
	BothBraces        Kind = "both-braces"
	BoardAngle        Kind = "board-angle"
	BoardGap          Kind = "board-gap"
	CommonBoardGap    Kind = "common-board-gap"
	FastenersPerJoist Kind = "fasteners-per-joist"
)

// Described is a kind with what it does, to follow "tried is".
type Described struct {
	Kind  Kind
	About string // lower case, without a full stop
}

// Kinds lists all kinds, in the order in which they are described.
func Kinds() []Described {
	return slices.Concat(ofValue(), ofStairs(), ofRails(), ofSupports(), ofFrame())
}

// Names lists the names of all kinds in their order.
func Names() []string {
	var names []string
	for _, d := range Kinds() {
		names = append(names, string(d.Kind))
	}
	return names
}

// About says what a kind of change does; it is empty for a kind that there is
// not.
func (k Kind) About() string {
	for _, d := range Kinds() {
		if d.Kind == k {
			return d.About
		}
	}
	return ""
}

// Usual lists the kinds that are tried where a check names none: those that
// need to know nothing but the value that the finding points at.
func Usual() []Kind { return []Kind{YesNo, AcceptedWord, Halves} }
