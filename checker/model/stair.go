package model

// Stair leads from a platform to grade or to another platform.
type Stair struct {
	At             string
	Mark           *Words        `deck:"mark"`
	From           *StairFrom    `deck:"from"`
	To             *Words        `deck:"to"`
	Use            *Words        `deck:"use"`
	Width          *Length       `deck:"width"`
	ClearWidth     *Length       `deck:"clear_width"`
	WidthAtRails   *Length       `deck:"clear_width_at_handrail"`
	TotalRun       *Length       `deck:"total_run"`
	TotalRise      *Length       `deck:"total_rise"`
	Risers         *Count        `deck:"risers"`
	Treads         *Count        `deck:"treads"`
	FlushTopTread  *Flag         `deck:"flush_top_tread"`
	TreadDepth     *Length       `deck:"tread_depth"`
	FirstRiser     *Length       `deck:"first_riser"`
	LastRiser      *Length       `deck:"last_riser"`
	MeasuredRisers []*Length     `deck:"measured_risers"`
	MeasuredTreads []*Length     `deck:"measured_treads"`
	Flights        []StairFlight `deck:"flights"`
	Tread          *Tread        `deck:"tread"`
	Nosing         *Length       `deck:"nosing"`
	NosingRadius   *Length       `deck:"nosing_radius"`
	RiserOpening   *LengthOrWord `deck:"riser_opening"`
	RisersCarry    *Flag         `deck:"risers_carry_treads"`
	Winders        *Winders      `deck:"winders"`
	Stringers      *Stringers    `deck:"stringers"`
	Handrail       *Handrail     `deck:"handrail"`
	Guard          *StairGuard   `deck:"guard"`
	GradeAtFoot    *GradePoint   `deck:"grade_at_foot"`
	LandingTop     *Landing      `deck:"landing_top"`
	LandingBetween *Landing      `deck:"landing_between"`
	LandingBottom  *Landing      `deck:"landing_bottom"`
	Headroom       *LengthOrWord `deck:"headroom"`
	Lighting       *Lighting     `deck:"lighting"`
}

// StairFrom says where a stair leaves its platform.
type StairFrom struct {
	At       string
	Platform *Words  `deck:"platform"`
	Edge     *Words  `deck:"edge"`
	Along    *Length `deck:"at"`
}

// StairFlight is one of several flights.
type StairFlight struct {
	At             string
	Risers         *Count    `deck:"risers"`
	Treads         *Count    `deck:"treads"`
	TotalRun       *Length   `deck:"total_run"`
	TotalRise      *Length   `deck:"total_rise"`
	FlushTopTread  *Flag     `deck:"flush_top_tread"`
	TreadDepth     *Length   `deck:"tread_depth"`
	FirstRiser     *Length   `deck:"first_riser"`
	LastRiser      *Length   `deck:"last_riser"`
	LandingBelow   *Landing  `deck:"landing_below"`
	MeasuredRisers []*Length `deck:"measured_risers"`
	MeasuredTreads []*Length `deck:"measured_treads"`
}

// Tread is what a step is made of.
type Tread struct {
	At               string
	Material         *Words  `deck:"material"`
	Thickness        *Length `deck:"thickness"`
	Product          *Words  `deck:"product"`
	ListedMaxSpacing *Length `deck:"listed_max_stringer_spacing"`
	Slope            *Slope  `deck:"slope"`
	SlipClass        *Words  `deck:"slip_class"`
}

// Stringers carry the treads.
type Stringers struct {
	Member
	Kind           *Words    `deck:"kind"`
	Count          *Count    `deck:"count"`
	Spacing        *Length   `deck:"spacing"`
	SupportsAt     []*Length `deck:"supports_at"`
	SupportedAlong *Flag     `deck:"supported_along"`
	StatedSpan     *Length   `deck:"stated_horizontal_span"`
	Throat         *Length   `deck:"throat"`
}

// Handrail is the graspable rail of a stair. One that the design says to be
// none has 0 sides.
type Handrail struct {
	At              string
	MeasuredHeights []*Length `deck:"measured_heights"`
	StartRiser      *Count    `deck:"start_riser"`
	EndRiser        *Count    `deck:"end_riser"`
	Sides           *Count    `deck:"sides"`
	Height          *Length   `deck:"height"`
	Profile         *Profile  `deck:"profile"`
	Clearance       *Length   `deck:"clearance"`
	Projection      *Length   `deck:"projection"`
	Continuous      *Flag     `deck:"continuous"`
	Returns         *Flag     `deck:"returns"`
	Ends            *Words    `deck:"ends"`
}

// Profile is the cross-section of a handrail.
type Profile struct {
	At               string
	Type             *Words  `deck:"type"`
	Diameter         *Length `deck:"diameter"`
	Width            *Length `deck:"width"`
	Perimeter        *Length `deck:"perimeter"`
	WidthAboveRecess *Length `deck:"width_above_recess"`
	FingerRecess     *Recess `deck:"finger_recess"`
}

// Recess is the groove of a broad handrail that fingers hold.
type Recess struct {
	At             string
	Depth          *Length `deck:"depth"`
	DepthReachedAt *Length `deck:"depth_reached_below_widest"`
	StartBelowTop  *Length `deck:"start_below_top"`
}

// StairGuard is the barrier on the open side of a stair.
type StairGuard struct {
	At              string
	None            bool    // the design says that there is none
	Like            *Words  `deck:"like"`
	Height          *Length `deck:"height"`
	Opening         *Length `deck:"opening"`
	TriangleOpening *Length `deck:"triangle_opening"`
	Infill          *Infill `deck:"infill"`
}

// Landing is a level place of a stair.
type Landing struct {
	At             string
	Along          *Length `deck:"along"`
	Out            *Length `deck:"out"`
	SlopeAlong     *Slope  `deck:"slope_along"`
	SlopeOut       *Slope  `deck:"slope_out"`
	FinishToCome   *Length `deck:"finish_to_come"`
	Turn           *Angle  `deck:"turn"`
	DoorSwingsOver *Flag   `deck:"door_swings_over"`
	ClearOfDoor    *Length `deck:"clear_of_door"`
}

// Lighting is the light on a stair; the design says true, false or more.
type Lighting struct {
	At      string
	Present *Flag  `deck:"present"`
	Where   *Words `deck:"at"`
}

// Winders are treads that narrow to one side; the design says "none" or more.
type Winders struct {
	At              string
	Count           *Count  `deck:"count"`
	DepthAtWalkline *Length `deck:"tread_depth_at_walkline"`
	Narrowest       *Length `deck:"narrowest_tread_depth"`
	Turn            *Angle  `deck:"turn"`
}
