package model

// Platform is one walking surface at one elevation.
type Platform struct {
	At                string
	Mark              *Words          `deck:"mark"`
	Support           *Words          `deck:"support"`
	HungFrom          *Words          `deck:"hung_from"`
	MeasuredTo        *Words          `deck:"measured_to"`
	Fascia            *Fascia         `deck:"fascia"`
	Outline           *Outline        `deck:"outline"`
	SurfaceAboveGrade *Length         `deck:"surface_above_grade"`
	GradeAt           []GradePoint    `deck:"grade_at"`
	Edges             Map[Edge]       `deck:"edges"`
	Ledger            *Ledger         `deck:"ledger"`
	Joists            *Joists         `deck:"joists"`
	RimJoist          *Member         `deck:"rim_joist"`
	Beams             []Beam          `deck:"beams"`
	LateralDevices    *LateralDevices `deck:"lateral_devices"`
	Posts             *Posts          `deck:"posts"`
	Footings          *Footing        `deck:"footings"`
	Loads             []Load          `deck:"loads"`
	Decking           *Decking        `deck:"decking"`
}

// Fascia is the board that covers the rim.
type Fascia struct {
	At        string
	Thickness *Length `deck:"thickness"`
}

// Outline is the plan shape in one of three spellings.
type Outline struct {
	At           string
	AlongHouse   *Length  `deck:"along_house"`
	OutFromHouse *Length  `deck:"out_from_house"`
	Corners      []*Point `deck:"corners"`
	EdgeNames    []*Words `deck:"edges"`
	Walk         []Leg    `deck:"walk"`
}

// Leg is one side of an outline as walked.
type Leg struct {
	At   string
	Edge *Words  `deck:"edge"`
	Go   *Length `deck:"go"`
	Turn *Angle  `deck:"turn"`
}

// GradePoint is the ground below one point of the surface.
type GradePoint struct {
	At           string
	Place        *Point  `deck:"at"`
	FromEdge     *Length `deck:"from_edge"`
	BelowSurface *Length `deck:"below_surface"`
}

// Edge is what an edge of the outline has: a drop, a guard, a bench.
type Edge struct {
	At              string
	Drop            *Length `deck:"drop"`
	DropWithin36    *Length `deck:"drop_within_36_in"`
	DropWithin1200  *Length `deck:"drop_within_1200_mm"`
	SlopeWithin1200 *Slope  `deck:"slope_within_1200_mm"`
	Guard           *Words  `deck:"guard"`
	GuardFrom       *Length `deck:"guard_from"`
	GuardTo         *Length `deck:"guard_to"`
	Bench           *Bench  `deck:"bench"`
}

// Bench is a seat along an edge.
type Bench struct {
	At         string
	SeatHeight *Length `deck:"seat_height"`
	Fixed      *Flag   `deck:"fixed"`
}

// Member is a stick of lumber: its size and what it is made of.
type Member struct {
	At     string
	Size   *Size  `deck:"size"`
	Actual *Size  `deck:"actual"`
	Plies  *Count `deck:"plies"`
	Lumber *Words `deck:"lumber"`
}

// Dimensions gives the size of one ply, nominal or actual, whichever is shown.
func (m *Member) Dimensions() *Size {
	if m == nil {
		return nil
	}
	if m.Size != nil {
		return m.Size
	}
	return m.Actual
}

// Joists is the joist layout of a platform.
type Joists struct {
	Member
	Direction        *Words            `deck:"direction"`
	Layout           *Words            `deck:"layout"`
	Spacing          *Length           `deck:"spacing"`
	MaxSpacing       *Length           `deck:"max_spacing"`
	Positions        []*Length         `deck:"positions"`
	DoubledAt        []*Length         `deck:"doubled_at"`
	FirstMark        *Words            `deck:"first_mark"`
	Start            *Words            `deck:"start"`
	StatedClearSpan  *Length           `deck:"stated_clear_span"`
	StatedCenterSpan *Length           `deck:"stated_span_to_center"`
	StatedBackSpan   *Length           `deck:"stated_back_span"`
	StatedCantilever *Length           `deck:"stated_cantilever"`
	LateralRestraint *LateralRestraint `deck:"lateral_restraint"`
	Blocking         *Blocking         `deck:"blocking"`
	Hangers          *Hangers          `deck:"hangers"`
	BeamTies         *Flag             `deck:"beam_ties"`
	BearingAtBeams   *Length           `deck:"bearing_at_beams"`
	BearingAtLedger  *Length           `deck:"bearing_at_ledger"`
	BearingOn        *Words            `deck:"bearing_on"`
	Openings         []FrameOpening    `deck:"openings"`
}

// Blocking is solid pieces between the joists, in rows.
type Blocking struct {
	Member
	RowsAt     []*Length `deck:"rows_at"`
	MaxSpacing *Length   `deck:"max_spacing"`
}

// LateralRestraint is what keeps joists from rolling over.
type LateralRestraint struct {
	At      string
	Ends    *Words  `deck:"ends"`
	AtBeams *Words  `deck:"at_beams"`
	Depth   *Length `deck:"depth"`
}

// FrameOpening is a hole in the frame: a tree, a hatch.
type FrameOpening struct {
	At       string
	What     *Words   `deck:"what"`
	Corners  []*Point `deck:"corners"`
	Drop     *Length  `deck:"drop"`
	Guard    *Words   `deck:"guard"`
	Covered  *Flag    `deck:"covered"`
	Headers  *Member  `deck:"headers"`
	Trimmers *Member  `deck:"trimmers"`
}

// Decking is the boards of a platform.
type Decking struct {
	At                string
	Lumber            *Words         `deck:"lumber"`
	Material          *Words         `deck:"material"`
	Nominal           *Words         `deck:"nominal"`
	Thickness         *Length        `deck:"thickness"`
	BoardWidth        *Length        `deck:"board_width"`
	Product           *Words         `deck:"product"`
	Gap               *Length        `deck:"gap"`
	BoardAngle        *Angle         `deck:"board_angle"`
	FastenersPerJoist *Count         `deck:"fasteners_per_joist"`
	Overhang          *Length        `deck:"overhang"`
	ListedStraight    *Length        `deck:"listed_max_spacing"`
	ListedDiagonal    *Length        `deck:"listed_max_spacing_diagonal"`
	JoistsPerBoard    *Count         `deck:"joists_per_board"`
	LastRip           *Length        `deck:"last_rip"`
	PictureFrame      *PictureFrame  `deck:"picture_frame"`
	BreakerBoards     []BreakerBoard `deck:"breaker_boards"`
	ButtJoints        *ButtJoints    `deck:"butt_joints"`
}

// PictureFrame is a border of boards.
type PictureFrame struct {
	At              string
	Boards          *Count  `deck:"boards"`
	Blocking        *Flag   `deck:"blocking"`
	Miters          *Flag   `deck:"miters"`
	BoardWidth      *Length `deck:"board_width"`
	FrontBoardWidth *Length `deck:"front_board_width"`
}

// BreakerBoard is a board across the deck that others end against.
type BreakerBoard struct {
	At          string
	From        *Point  `deck:"from"`
	To          *Point  `deck:"to"`
	DoubleJoist *Flag   `deck:"double_joist"`
	Width       *Length `deck:"width"`
}

// ButtJoints say where boards meet end to end.
type ButtJoints struct {
	At        string
	OnJoists  *Flag     `deck:"on_joists"`
	Staggered *Flag     `deck:"staggered"`
	Positions []*Length `deck:"positions"`
}
