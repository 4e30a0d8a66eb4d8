package facts

// Tributary is a measure of what a member carries, figured in two ways that
// trade and engineer each know: halves of the spans beside it with the whole
// cantilever (builder), and by statics, where a cantilever also lifts the far
// end and loads the near one more.
type Tributary[T any] struct {
	Builder T `json:"builder" doc:"half of each span beside it and the whole cantilever"`
	Statics T `json:"statics" doc:"by statics: simple spans, a cantilever turning about its support"`
}

// TributaryLength is such a length, as of the joists that a beam carries.
type TributaryLength = Of[Tributary[int64]] // nanometres

// TributaryArea is such an area, as of the deck that a post carries.
type TributaryArea = Of[Tributary[int64]] // square millimetres

// Carried is a force figured in both ways.
type Carried = Of[Tributary[int64]] // micronewtons

// BeamSpan is one bay of a beam between two posts.
type BeamSpan struct {
	At              []string         `json:"at" doc:"the beam"`
	Platform        string           `json:"platform" doc:"mark of the platform, or its number"`
	Beam            string           `json:"beam" doc:"mark of the beam, or its number"`
	Bay             int64            `json:"bay" doc:"which bay from the start of the beam, counted from 1"`
	Missing         []string         `json:"missing" doc:"fields that would complete the spans"`
	SpanToCenter    *Length          `json:"span_to_center,omitempty" doc:"post center to post center"`
	ClearSpan       *Length          `json:"clear_span,omitempty" doc:"face of post to face of post"`
	Size            *Words           `json:"size,omitempty" doc:"nominal size of one ply, as 2x10"`
	Plies           *Count           `json:"plies,omitempty" doc:"pieces side by side"`
	Kind            *Words           `json:"kind,omitempty" doc:"dropped or flush"`
	Lumber          Lumber           `json:"lumber" doc:"the material"`
	JoistSpan       *Length          `json:"joist_span,omitempty" doc:"longest span, center to center, of the joists that bear on this bay"`
	JoistClearSpan  *Length          `json:"joist_clear_span,omitempty" doc:"the same, face to face"`
	JoistCantilever *Length          `json:"joist_cantilever,omitempty" doc:"longest cantilever of those joists past the beam; zero where none passes"`
	BothSides       bool             `json:"both_sides" doc:"true where joists span to it from both sides"`
	Tributary       *TributaryLength `json:"tributary,omitempty" doc:"length of joist that the beam carries, the greatest in the bay"`
	LiveLoad        *Pressure        `json:"live_load,omitempty" doc:"design live load of the site"`
	GroundSnowLoad  *Pressure        `json:"ground_snow_load,omitempty" doc:"ground snow load of the site"`
	Engineered      *Engineered      `json:"engineered,omitempty" doc:"what wood engineering allows, where the material and the loads are shown"`
}

// BeamCantilever is an end of a beam past its last post.
type BeamCantilever struct {
	At         []string    `json:"at" doc:"the beam"`
	Platform   string      `json:"platform" doc:"mark of the platform, or its number"`
	Beam       string      `json:"beam" doc:"mark of the beam, or its number"`
	End        string      `json:"end" doc:"start or end of the beam"`
	Missing    []string    `json:"missing" doc:"fields that would complete it"`
	Cantilever *Length     `json:"cantilever,omitempty" doc:"center of the last post to the end of the beam"`
	AtMost     *Length     `json:"cantilever_at_most,omitempty" doc:"the same to the edge of the outline, where it is not shown how far behind that the frame ends"`
	BackSpan   *Length     `json:"back_span,omitempty" doc:"the bay behind it, center to center"`
	Size       *Words      `json:"size,omitempty" doc:"nominal size of one ply"`
	Plies      *Count      `json:"plies,omitempty" doc:"pieces side by side"`
	Lumber     Lumber      `json:"lumber" doc:"the material"`
	Engineered *Engineered `json:"engineered,omitempty" doc:"what wood engineering allows, where the material and the loads are shown"`
}

// Beam is a beam as a whole.
type Beam struct {
	At            []string `json:"at" doc:"the beam"`
	Platform      string   `json:"platform" doc:"mark of the platform, or its number"`
	Mark          string   `json:"mark" doc:"its mark, or its number"`
	Kind          *Words   `json:"kind,omitempty" doc:"dropped or flush"`
	Size          *Words   `json:"size,omitempty" doc:"nominal size of one ply"`
	Plies         *Count   `json:"plies,omitempty" doc:"pieces side by side"`
	Length        *Length  `json:"length,omitempty" doc:"end to end"`
	Posts         *Count   `json:"posts,omitempty" doc:"posts that it stands on"`
	BearingLength *Length  `json:"bearing_length,omitempty" doc:"length that rests on each post or cap"`
	BearingOn     *Words   `json:"bearing_on,omitempty" doc:"wood, metal or concrete"`
	PostWidth     *Length  `json:"post_width,omitempty" doc:"width of the posts below, across the beam"`
	BeamWidth     *Length  `json:"beam_width,omitempty" doc:"width of all plies"`
	Depth         *Length  `json:"depth,omitempty" doc:"actual depth"`
	JoistDepth    *Length  `json:"joist_depth,omitempty" doc:"actual depth of the joists that it carries"`
	OnLedger      bool     `json:"on_ledger" doc:"true where one of its ends is carried by the ledger"`
	OnBeam        string   `json:"on_beam,omitempty" doc:"mark of the beam that carries one of its ends"`
	Supported     bool     `json:"supported" doc:"true where two posts or end supports carry it"`
}

// PlyJoint is a joint in the plies of a beam.
type PlyJoint struct {
	At       []string `json:"at" doc:"the joint"`
	Beam     string   `json:"beam" doc:"mark of the beam, or its number"`
	OffPost  *Length  `json:"off_post,omitempty" doc:"from the joint to the center of the nearest post"`
	HalfPost *Length  `json:"half_post,omitempty" doc:"half the width of that post along the beam"`
	Bearing  *Length  `json:"bearing,omitempty" doc:"length on which each piece rests, as stated"`
}

// Post is one post under a beam.
type Post struct {
	At               []string       `json:"at" doc:"the post's own entry, or its place along the beam"`
	Platform         string         `json:"platform" doc:"mark of the platform, or its number"`
	Beam             string         `json:"beam,omitempty" doc:"mark of the beam that it carries"`
	N                int64          `json:"n" doc:"which post along the beam, counted from 1"`
	Corner           bool           `json:"corner" doc:"true at either end of the beam"`
	X                *Length        `json:"x,omitempty" doc:"along the house, from its left end"`
	Y                *Length        `json:"y,omitempty" doc:"out from the house"`
	Size             *Words         `json:"size,omitempty" doc:"nominal size, as 6x6"`
	LeastSide        *Length        `json:"least_side,omitempty" doc:"actual lesser side of the cross-section"`
	Material         *Words         `json:"material,omitempty" doc:"wood, steel and so on"`
	Lumber           Lumber         `json:"lumber" doc:"the material"`
	Height           *Length        `json:"height,omitempty" doc:"top of footing to underside of beam, by its own grade"`
	CutLength        *Length        `json:"cut_length,omitempty" doc:"length of the stick"`
	HeightAboveGrade *Length        `json:"height_above_grade,omitempty" doc:"walking surface above the ground at the post"`
	TributaryArea    *TributaryArea `json:"tributary_area,omitempty" doc:"area of deck that it carries"`
	Load             *Carried       `json:"load,omitempty" doc:"force on the footing under the greater of live and snow load and the dead load shown; absent where one is not shown"`
	BeamPlies        *Count         `json:"beam_plies,omitempty" doc:"plies of the beam above"`
	BeamWidth        *Length        `json:"beam_width,omitempty" doc:"width of the beam above"`
	JointAbove       bool           `json:"joint_above" doc:"true where a ply joint stands over it"`
	BaseKind         *Words         `json:"base_kind,omitempty" doc:"hardware at the foot"`
	BaseHolds        *Flag          `json:"base_holds,omitempty" doc:"true where its listing covers uplift and sideways loads"`
	Restrained       *Flag          `json:"restrained,omitempty" doc:"true where the foot is held against moving sideways"`
	Embedment        *Length        `json:"embedment,omitempty" doc:"depth of the post in soil or concrete"`
	CapKind          *Words         `json:"cap_kind,omitempty" doc:"connection to the beam"`
	CapBolts         *Count         `json:"cap_bolts,omitempty" doc:"bolts through post and beam"`
	CapBoltDiameter  *Length        `json:"cap_bolt_diameter,omitempty" doc:"their diameter"`
	BracesAlong      *Flag          `json:"braces_along,omitempty" doc:"true where braces stand in line with the beam"`
	BracesAcross     *Flag          `json:"braces_across,omitempty" doc:"true where braces stand square to the beam"`
	BraceLeg         *Length        `json:"brace_leg,omitempty" doc:"from the post along the beam to the end of the brace"`
	HasFooting       bool           `json:"has_footing" doc:"true where a footing is described for it"`
	Freestanding     bool           `json:"freestanding" doc:"true where the platform does not hang on the house"`
	BeamSpan         *Length        `json:"beam_span,omitempty" doc:"longest bay of the beam beside the post, center to center"`
	JoistSpan        *Length        `json:"joist_span,omitempty" doc:"longest span of the joists that bear there, center to center"`
	LiveLoad         *Pressure      `json:"live_load,omitempty" doc:"design live load of the site"`
	GroundSnowLoad   *Pressure      `json:"ground_snow_load,omitempty" doc:"ground snow load of the site"`
	Missing          []string       `json:"missing" doc:"fields that would complete height and area"`
	Engineered       *Engineered    `json:"engineered,omitempty" doc:"what wood engineering allows, where the material and the loads are shown"`
}

// Footing is the footing of one post.
type Footing struct {
	At              []string       `json:"at" doc:"the footing"`
	Platform        string         `json:"platform" doc:"mark of the platform, or its number"`
	Beam            string         `json:"beam,omitempty" doc:"mark of the beam above"`
	N               int64          `json:"n" doc:"which post along the beam, counted from 1"`
	Corner          bool           `json:"corner" doc:"true at either end of the beam"`
	Freestanding    bool           `json:"freestanding" doc:"true where the platform does not hang on the house"`
	Kind            *Words         `json:"kind,omitempty" doc:"cast concrete, precast block and so on"`
	Shape           *Words         `json:"shape,omitempty" doc:"round, square or rectangular"`
	Diameter        *Length        `json:"diameter,omitempty" doc:"round: diameter"`
	Side            *Length        `json:"side,omitempty" doc:"square: side; rectangular: the lesser side"`
	PlanArea        *Area          `json:"plan_area,omitempty" doc:"area at the bottom"`
	Thickness       *Length        `json:"thickness,omitempty" doc:"thickness of the part that spreads the load"`
	Projection      *Length        `json:"projection,omitempty" doc:"from the face of the post or pier to the edge"`
	Depth           *Length        `json:"depth,omitempty" doc:"finished grade to its underside"`
	DepthInSoil     *Length        `json:"depth_in_soil,omitempty" doc:"top of undisturbed soil to its underside, where stated"`
	NearHouseDepth  *Length        `json:"near_house_depth,omitempty" doc:"depth as stated for footings close to the house"`
	ToHouse         *Length        `json:"to_house,omitempty" doc:"house face to the near side of the footing"`
	FoundationDepth *Length        `json:"foundation_depth,omitempty" doc:"underside of the house footing below grade"`
	FrostDepth      *Length        `json:"frost_depth,omitempty" doc:"frost depth of the site"`
	FrostProtected  *Flag          `json:"frost_protected,omitempty" doc:"true where frost is dealt with in another way"`
	Soil            *Words         `json:"soil,omitempty" doc:"what it stands on"`
	SoilBearing     *Pressure      `json:"soil_bearing,omitempty" doc:"allowable bearing pressure of the site"`
	Volume          *Area          `json:"volume,omitempty" doc:"concrete, in cubic centimetres"`
	TributaryArea   *TributaryArea `json:"tributary_area,omitempty" doc:"area of deck that it carries"`
	Pressure        *Pressure      `json:"pressure,omitempty" doc:"load by statics over its area, without its own weight"`
	LiveLoad        *Pressure      `json:"live_load,omitempty" doc:"design live load of the site"`
	GroundSnowLoad  *Pressure      `json:"ground_snow_load,omitempty" doc:"ground snow load of the site"`
	BeamSpan        *Length        `json:"beam_span,omitempty" doc:"longest bay of the beam beside the post, center to center"`
	JoistSpan       *Length        `json:"joist_span,omitempty" doc:"longest span of the joists that bear there, center to center"`
	Missing         []string       `json:"missing" doc:"fields that would complete the area carried"`
	Engineered      *Engineered    `json:"engineered,omitempty" doc:"what wood engineering allows, where the material and the loads are shown"`
}

// Ledger is the ledger of one platform with its fasteners.
type Ledger struct {
	At                []string         `json:"at" doc:"the ledger, or the platform that is said to hang on one"`
	Platform          string           `json:"platform" doc:"mark of the platform, or its number"`
	Described         bool             `json:"described" doc:"false where the platform hangs on a ledger that is not described"`
	Size              *Words           `json:"size,omitempty" doc:"nominal size, as 2x10"`
	Depth             *Length          `json:"depth,omitempty" doc:"actual depth"`
	JoistDepth        *Length          `json:"joist_depth,omitempty" doc:"actual depth of the joists that hang on it"`
	Lumber            Lumber           `json:"lumber" doc:"the material"`
	AttachedTo        *Words           `json:"attached_to,omitempty" doc:"what it is fastened to"`
	Veneer            *Words           `json:"veneer,omitempty" doc:"masonry veneer of the house at the deck"`
	CantileveredFloor *Flag            `json:"cantilevered_floor,omitempty" doc:"true where the floor of the house overhangs its foundation"`
	Floor             *Words           `json:"floor,omitempty" doc:"what the floor of the house is framed with"`
	CladdingRemoved   *Flag            `json:"cladding_removed,omitempty" doc:"true where the cladding is taken off behind the ledger"`
	RimMaterial       *Words           `json:"rim_material,omitempty" doc:"material of the house rim"`
	RimThickness      *Length          `json:"rim_thickness,omitempty" doc:"thickness of the house rim"`
	RimDepth          *Length          `json:"rim_depth,omitempty" doc:"depth of the house rim"`
	RimCondition      *Words           `json:"rim_condition,omitempty" doc:"condition of the house rim"`
	Sheathing         *Length          `json:"sheathing,omitempty" doc:"sheathing left between ledger and rim"`
	Foam              *Length          `json:"foam,omitempty" doc:"foam left between ledger and rim"`
	GapToHouse        *Length          `json:"gap_to_house,omitempty" doc:"drainage gap kept between the ledger and the wall"`
	JoistSpan         *Length          `json:"joist_span,omitempty" doc:"longest span, center to center, of the joists that hang on it"`
	JoistClearSpan    *Length          `json:"joist_clear_span,omitempty" doc:"the same, face to face"`
	Missing           []string         `json:"missing" doc:"fields that would complete the joist span"`
	Tributary         *TributaryLength `json:"tributary,omitempty" doc:"length of joist that it carries"`
	LiveLoad          *Pressure        `json:"live_load,omitempty" doc:"design live load of the site"`
	GroundSnowLoad    *Pressure        `json:"ground_snow_load,omitempty" doc:"ground snow load of the site"`
	FastenersShown    bool             `json:"fasteners_shown" doc:"true where fasteners are described"`
	FastenerType      *Words           `json:"fastener_type,omitempty" doc:"lag screw, bolt and so on"`
	FastenerListing   *Words           `json:"fastener_listing,omitempty" doc:"product and listing, as described"`
	FastenerDiameter  *Length          `json:"fastener_diameter,omitempty" doc:"diameter of the shank"`
	FastenerLength    *Length          `json:"fastener_length,omitempty" doc:"length under the head"`
	FastenerSpacing   *Length          `json:"fastener_spacing,omitempty" doc:"along the ledger from one to the next, the widest where they are drawn one by one"`
	FastenerRows      *Count           `json:"fastener_rows,omitempty" doc:"rows one above the other"`
	Staggered         *Flag            `json:"staggered,omitempty" doc:"true where fasteners alternate between rows"`
	WashersBetween    *Flag            `json:"washers_between,omitempty" doc:"true where stacked washers hold the ledger off the wall"`
	Coating           *Words           `json:"coating,omitempty" doc:"coating or metal of the fasteners"`
	EdgeTop           *Length          `json:"edge_top,omitempty" doc:"top edge of the ledger to the upper row"`
	EdgeBottom        *Length          `json:"edge_bottom,omitempty" doc:"bottom edge of the ledger to the lower row"`
	EndDistance       *Length          `json:"end_distance,omitempty" doc:"end of the ledger to the first fastener"`
	RowSpacing        *Length          `json:"row_spacing,omitempty" doc:"between rows"`
	RimEdge           *Length          `json:"rim_edge,omitempty" doc:"edge of the house rim to the nearest row"`
	BottomRowToTop    *Length          `json:"bottom_row_to_top,omitempty" doc:"top edge of the ledger to the lower row"`
	FlashingPresent   *Flag            `json:"flashing_present,omitempty" doc:"true where flashing is shown"`
	FlashingMaterial  *Words           `json:"flashing_material,omitempty" doc:"what it is made of"`
	TreatedLumber     *Flag            `json:"treated_lumber,omitempty" doc:"true where the ledger is treated with preservative"`
	HangersAtLedger   *Flag            `json:"hangers_at_ledger,omitempty" doc:"true where joists hang in hangers there"`
	PointLoads        []PointLoad      `json:"point_loads" doc:"single loads set down on it"`
	Engineered        *Engineered      `json:"engineered,omitempty" doc:"what wood engineering allows, where the material and the loads are shown"`
}

// PointLoad is a single load on a ledger.
type PointLoad struct {
	At   []string `json:"at" doc:"the load, or what sets it down"`
	What string   `json:"what" doc:"beam, stair, trimmer or another word of the description"`
}

// LateralDevices are the tension ties of one platform to the house.
type LateralDevices struct {
	At          []string `json:"at" doc:"the devices, or the platform where none are shown"`
	Platform    string   `json:"platform" doc:"mark of the platform, or its number"`
	Shown       bool     `json:"shown" doc:"true where devices are described"`
	Count       *Count   `json:"count,omitempty" doc:"how many"`
	Capacity    *Force   `json:"capacity,omitempty" doc:"allowable load of each"`
	FromEnds    *Length  `json:"from_ends,omitempty" doc:"from each end of the deck to the nearest one"`
	Penetration *Length  `json:"penetration,omitempty" doc:"how deep their screws go into the house framing"`
}

// Special is a thing that prescriptive tables do not cover.
type Special struct {
	At     []string `json:"at" doc:"the thing"`
	Kind   string   `json:"kind" doc:"hot tub, roof, planter, upper deck and so on, as described; stacked platform; cantilevered floor; steel post"`
	Weight *Force   `json:"weight,omitempty" doc:"its weight in use"`
}

// Joined is how joists are held on their supports.
type Joined struct {
	At              []string `json:"at" doc:"the joists"`
	Platform        string   `json:"platform" doc:"mark of the platform, or its number"`
	OnLedger        bool     `json:"on_ledger" doc:"true where joists hang on a ledger"`
	OnFlush         bool     `json:"on_flush" doc:"true where joists hang on a flush beam"`
	OnDropped       bool     `json:"on_dropped" doc:"true where joists lie on a dropped beam"`
	HangersAtLedger *Flag    `json:"hangers_at_ledger,omitempty" doc:"true where hangers are shown there"`
	HangersAtFlush  *Flag    `json:"hangers_at_flush,omitempty" doc:"true where hangers are shown there"`
	BeamTies        *Flag    `json:"beam_ties,omitempty" doc:"true where joists are tied down to beams"`
	Skewed          []string `json:"skewed" doc:"edges that joists meet on the skew"`
	SkewedHangers   []string `json:"skewed_hangers" doc:"edges where skewed hangers are shown"`
	BearingAtBeams  *Length  `json:"bearing_at_beams,omitempty" doc:"length on which joists bear on beams"`
	BearingAtLedger *Length  `json:"bearing_at_ledger,omitempty" doc:"length on which joists bear at the ledger"`
	BearingOn       *Words   `json:"bearing_on,omitempty" doc:"wood, metal or concrete"`
	HangerDepth     *Length  `json:"hanger_depth,omitempty" doc:"depth of the hanger"`
	JoistDepth      *Length  `json:"joist_depth,omitempty" doc:"actual depth of the joists"`
	BeamWidth       *Length  `json:"beam_width,omitempty" doc:"width of the narrowest dropped beam below"`
}

// Engineered is what wood engineering by first principles allows, as an
// answer of its own beside a table's.
type Engineered struct {
	Limit   *Length  `json:"limit,omitempty" doc:"the greatest length that it allows, or for a footing the least"`
	Governs string   `json:"governs" doc:"what allows no more"`
	Working []string `json:"working" doc:"assumptions and steps, each to be redone by hand"`
}
