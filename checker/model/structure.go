package model

// Beam carries joists. It lies along the house at from_house, or on a line.
type Beam struct {
	Member
	Mark           *Words    `deck:"mark"`
	Kind           *Words    `deck:"kind"`
	FromHouse      *Length   `deck:"from_house"`
	Line           []*Point  `deck:"line"`
	Start          *Length   `deck:"start"`
	End            *Length   `deck:"end"`
	PostsAt        []*Length `deck:"posts_at"`
	PlyJointsAt    []*Length `deck:"ply_joints_at"`
	BearingLength  *Length   `deck:"bearing_length"`
	BearingAtJoint *Length   `deck:"bearing_at_joint"`
	BearingOn      *Words    `deck:"bearing_on"`
	StartOn        *Words    `deck:"start_on"`
	EndOn          *Words    `deck:"end_on"`
}

// Posts are the posts under the beams of a platform: what they share, and
// those that differ.
type Posts struct {
	Member
	Material         *Words    `deck:"material"`
	Base             *PostBase `deck:"base"`
	Cap              *PostCap  `deck:"cap"`
	RestrainedAtBase *Flag     `deck:"restrained_at_base"`
	Braces           *Braces   `deck:"braces"`
	Each             []Post    `deck:"each"`
}

// Post is one post that differs from the others, or shows more.
type Post struct {
	Member
	Mark               *Words    `deck:"mark"`
	Beam               *Words    `deck:"beam"`
	Along              *Length   `deck:"at"`
	Place              *Point    `deck:"point"`
	HeightToBeam       *Length   `deck:"height_to_beam"`
	GroundBelowSurface *Length   `deck:"ground_below_surface"`
	FootingAboveGrade  *Length   `deck:"top_of_footing_above_grade" signed:"true"`
	Material           *Words    `deck:"material"`
	Base               *PostBase `deck:"base"`
	Cap                *PostCap  `deck:"cap"`
	RestrainedAtBase   *Flag     `deck:"restrained_at_base"`
	Braces             *Braces   `deck:"braces"`
	Footing            *Footing  `deck:"footing"`
}

// PostBase is the hardware or the setting at the foot of a post.
type PostBase struct {
	At               string
	Kind             *Words  `deck:"kind"`
	UpliftAndLateral *Flag   `deck:"uplift_and_lateral"`
	Embedment        *Length `deck:"embedment"`
	StandoffHeight   *Length `deck:"standoff_height"`
}

// PostCap is the connection of a post to its beam.
type PostCap struct {
	At           string
	Kind         *Words  `deck:"kind"`
	Bolts        *Count  `deck:"bolts"`
	BoltDiameter *Length `deck:"bolt_diameter"`
}

// Braces are knee braces at posts.
type Braces struct {
	Member
	Leg        *Length `deck:"leg"`
	Directions *Words  `deck:"directions"`
}

// Footing is the concrete or what stands for it below a post.
type Footing struct {
	At                     string
	Kind                   *Words  `deck:"kind"`
	Shape                  *Words  `deck:"shape"`
	Diameter               *Length `deck:"diameter"`
	Side                   *Length `deck:"side"`
	Along                  *Length `deck:"along"`
	Out                    *Length `deck:"out"`
	Thickness              *Length `deck:"thickness"`
	Depth                  *Length `deck:"depth"`
	DepthInUndisturbedSoil *Length `deck:"depth_in_undisturbed_soil"`
	NearHouseDepth         *Length `deck:"near_house_depth"`
	DistanceFromHouse      *Length `deck:"distance_from_house"`
	PierDiameter           *Length `deck:"pier_diameter"`
	TopAboveGrade          *Length `deck:"top_above_grade" signed:"true"`
	Soil                   *Words  `deck:"soil"`
	FrostProtected         *Flag   `deck:"frost_protected"`
}

// Ledger is the member fixed to the house that carries joist ends.
type Ledger struct {
	Member
	AttachedTo         *Words            `deck:"attached_to"`
	Start              *Length           `deck:"start"`
	End                *Length           `deck:"end"`
	Fasteners          *LedgerFasteners  `deck:"fasteners"`
	SheathingThickness *Length           `deck:"sheathing_thickness"`
	FoamThickness      *Length           `deck:"foam_thickness"`
	GapToHouse         *Length           `deck:"gap_to_house"`
	Flashing           *Flashing         `deck:"flashing"`
	PointLoads         []LedgerPointLoad `deck:"point_loads"`
}

// LedgerFasteners hold a ledger to the house.
type LedgerFasteners struct {
	At                   string
	Type                 *Words    `deck:"type"`
	Diameter             *Length   `deck:"diameter"`
	Length               *Length   `deck:"length"`
	Spacing              *Length   `deck:"spacing"`
	Rows                 *Count    `deck:"rows"`
	Staggered            *Flag     `deck:"staggered"`
	RowSpacing           *Length   `deck:"row_spacing"`
	EdgeDistanceTop      *Length   `deck:"edge_distance_top"`
	EdgeDistanceBottom   *Length   `deck:"edge_distance_bottom"`
	EndDistance          *Length   `deck:"end_distance"`
	HouseRimEdgeDistance *Length   `deck:"house_rim_edge_distance"`
	Positions            []*Length `deck:"positions"`
	Count                *Count    `deck:"count"`
	WashersBetween       *Flag     `deck:"washers_between"`
	Coating              *Words    `deck:"coating"`
	Listing              *Words    `deck:"listing"`
}

// Flashing keeps water out of the joint behind a ledger.
type Flashing struct {
	At       string
	Present  *Flag  `deck:"present"`
	Material *Words `deck:"material"`
}

// LedgerPointLoad is a single load that the design sets down on a ledger.
type LedgerPointLoad struct {
	At   string
	What *Words `deck:"what"`
}

// LateralDevices tie the floor of the deck to the floor of the house.
type LateralDevices struct {
	At               string
	Count            *Count    `deck:"count"`
	Capacity         *Force    `deck:"capacity"`
	DistanceFromEnds *Length   `deck:"distance_from_ends"`
	Positions        []*Length `deck:"positions"`
	Penetration      *Length   `deck:"penetration"`
}

// Load is something heavy on a platform.
type Load struct {
	At     string
	Kind   *Words `deck:"kind"`
	Weight *Force `deck:"weight"`
	Place  *Point `deck:"at"`
}

// Hangers are the metal seats of joists.
type Hangers struct {
	At           string
	AtLedger     *Flag    `deck:"at_ledger"`
	AtFlushBeams *Flag    `deck:"at_flush_beams"`
	SkewedAt     []*Words `deck:"skewed_at"`
	Depth        *Length  `deck:"depth"`
}

// HouseRim is the band of the house behind the ledger.
type HouseRim struct {
	Member
	Material  *Words  `deck:"material"`
	Thickness *Length `deck:"thickness"`
	Depth     *Length `deck:"depth"`
	Condition *Words  `deck:"condition"`
}
