package facts

import (
	"plumbrule/checker/geometry"
	"plumbrule/checker/measure"
	"plumbrule/checker/model"
)

// SettingOut is where on the plan everything lies: the shapes that the facts
// were worked out from. What the design does not place is not in it.
type SettingOut struct {
	Platforms []PlatformPlan // in the order of the description
	Stairs    []StairPlan    // likewise
}

// PlatformPlan is one walking surface with its frame.
type PlatformPlan struct {
	Platform *model.Platform
	Label    string // its mark, or its number
	// Outline is the plan as described, nil where it is not shown.
	Outline geometry.Ring
	// Edges describe the edges of the outline, in walking order.
	Edges   []EdgePlan
	Closure *geometry.Closure // set for a walked outline
	// Frame is the outline of the frame, nil where it does not follow from what
	// the outline was measured to; FrameMissing then names the field that would
	// tell.
	Frame        geometry.Ring
	FrameMissing string
	// FrameEdges describe the edges of the frame by those of the outline that
	// they lie behind; a step between two has no name.
	FrameEdges []EdgePlan
	Ledger     *LedgerPlan // nil where no joist hangs on one
	Joists     *JoistPlan  // nil where none are described
	Beams      []BeamPlan
	// Unplaced are the beams that show no place, by their marks.
	Unplaced []string
	Holes    []HolePlan
	Openings []OpeningPlan // of the house, in front of which it lies
	// Past is how far the decking reaches past the outline, Decked the depth that
	// rows of boards cover on a rectangle, edge to edge of the decking; nil where
	// it does not follow from what is shown.
	Past, Decked *measure.Length

	surface *surface
}

// EdgePlan is one edge of an outline.
type EdgePlan struct {
	At, Name string
	House    bool // against the house
}

// LedgerPlan is where the ledger runs.
type LedgerPlan struct {
	At string
	// Lines are its stretches along the face of the house.
	Lines []geometry.Segment
	// Thickness is 0 where the size of the ledger is not shown.
	Thickness measure.Length
}

// JoistPlan is the joists of a platform, each stick by itself.
type JoistPlan struct {
	At string
	// AlongHouse is true where they run along the house and not out from it.
	AlongHouse bool
	Thickness  measure.Length
	// Bays is the even division of the layout; its zero value where the layout
	// is another one.
	Bays geometry.Pitch
	// Missing is the field without which they cannot be placed; there are no
	// sticks then.
	Missing string
	Sticks  []StickPlan
}

// StickPlan is one piece of joist.
type StickPlan struct {
	// Line runs from cut to cut, or from edge to edge of the frame where the
	// member that closes it is not shown. IsCut is true where both ends are cuts,
	// so that its length is the cut length.
	Line  geometry.Segment
	IsCut bool
	// Reach is the whole stretch of its center line: ledger, rim and headers
	// still lie on it. It runs from the house, or from the left end.
	Reach    geometry.Segment
	From, To string // what it ends on: ledger, rim, header or the mark of a flush beam
	// Supports are what carries it, in the order of Line.
	Supports []SupportPlan
}

// SupportPlan is one thing that a joist bears or hangs on.
type SupportPlan struct {
	Name, At string
	Center   geometry.Point
	Ends     bool // joists end at it and do not run over it
	// Half is half its width along the joist, 0 where that is not shown.
	Half measure.Length
}

// BeamPlan is one beam with its posts.
type BeamPlan struct {
	Beam  *model.Beam
	Mark  string // its mark, or its number
	Flush bool
	// Base is the line that its posts and joints are measured along, from A.
	Base geometry.Segment
	// Lines are its stretches along its center.
	Lines []geometry.Segment
	// OpenStart and OpenEnd are true where it runs to the edge of a frame that
	// is not known, so that its end is not known either.
	OpenStart, OpenEnd bool
	Width              measure.Length // over all plies, 0 where it is not shown
	Posts              []SpotPlan
	Joints             []SpotPlan
}

// SpotPlan is a place along a beam. At leads to it in the design.
type SpotPlan struct {
	At    string
	N     int            // which one along the beam, counted from 1
	Along measure.Length // from where the beam is measured
	Place geometry.Point
}

// HolePlan is an opening in the frame, as for a tree. The widths of headers
// and trimmers are 0 where they are not shown.
type HolePlan struct {
	At       string
	Ring     geometry.Ring
	Headers  measure.Length
	Trimmers measure.Length
}

// OpeningPlan is a door or window of the house, seen on the plan.
type OpeningPlan struct {
	At, Kind, Mark string
	// Line lies on the face of the house, from its left side to its right. Its
	// ends are one point where the width is not shown.
	Line geometry.Segment
}

// StairPlan is where a stair leaves its platform.
type StairPlan struct {
	At, Label string
	Platform  int // index of the platform, -1 where it is not shown
	Edge      int // index of the edge, -1 where it is not shown
	// Top is the stretch of the edge that the stair takes up, from its near side
	// to its far one; nil where its place or its width is not shown, and Missing
	// then names the field.
	Top     *geometry.Segment
	Missing string
}
