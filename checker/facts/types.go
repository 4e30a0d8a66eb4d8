package facts

import "plumbrule/checker/measure"

// Of is a value together with the places in the design that it came from, as
// JSON pointers, the most telling one first.
type Of[T any] struct {
	Value T        `json:"value" doc:"the value, in whole units of its kind"`
	At    []string `json:"at" doc:"JSON pointers of the places it came from, the most telling first"`
}

// The kinds of value. All are used through pointers: nil means not shown.
type (
	// Length is in nanometres.
	Length = Of[measure.Length]
	// Pressure is in micropascals.
	Pressure = Of[measure.Pressure]
	// Force is in micronewtons.
	Force = Of[measure.Force]
	// Angle is in micro-degrees.
	Angle = Of[measure.Angle]
	// Slope is a rise over a run.
	Slope = Of[Ratio]
	// Area is in square millimetres.
	Area = Of[int64]
	// Count is a whole number.
	Count = Of[int64]
	// Words is a word or text of the description.
	Words = Of[string]
	// Flag is yes or no.
	Flag = Of[bool]
)

// Ratio is a slope or another fraction, compared by cross-multiplying.
type Ratio struct {
	Rise int64 `json:"rise" doc:"numerator"`
	Run  int64 `json:"run" doc:"denominator, above zero"`
}

// Facts is the whole document that checks read, members grouped by kind.
type Facts struct {
	Units            string            `json:"units" doc:"imperial or metric: the system most lengths were typed in"`
	Site             Site              `json:"site" doc:"loads and ground of the place"`
	House            House             `json:"house" doc:"the wall that the deck stands against"`
	Platforms        []Platform        `json:"platforms" doc:"walking surfaces, each at one elevation"`
	Edges            []Edge            `json:"edges" doc:"every edge of every platform"`
	PlatformOpenings []PlatformOpening `json:"platform_openings" doc:"openings framed in platforms"`
	Corners          []Corner          `json:"corners" doc:"every corner of every outline"`
	Joists           []Joists          `json:"joists" doc:"the joist layout of every platform that has one"`
	JoistSpans       []JoistSpan       `json:"joist_spans" doc:"one entry per bay and run of like joists, the longest of the run governing"`
	JoistCantilevers []JoistCantilever `json:"joist_cantilevers" doc:"one entry per support that joists pass and back span behind it, the longest governing"`
	JoistRuns        []JoistRun        `json:"joist_runs" doc:"joists of one cut length"`
	Unsupported      []Unsupported     `json:"unsupported" doc:"joists that fewer than two supports carry, one entry per platform"`
	StatedSpans      []StatedSpan      `json:"stated_spans" doc:"spans written down by hand beside the ones derived"`
	StatedRuns       []StatedRun       `json:"stated_runs" doc:"total runs of stairs and flights written down by hand beside those that the steps give"`
	StatedStringers  []StatedRun       `json:"stated_stringers" doc:"spans of stringers written down by hand beside those that steps and supports give"`
	StatedHeights    []StatedHeight    `json:"stated_heights" doc:"heights of surfaces above grade written down beside the ground shown, where that bounds them"`
	JoistMarks       []JoistMarks      `json:"joist_marks" doc:"marks read off the ledger or rim, against the layout"`
	Joined           []Joined          `json:"joined" doc:"how the joists of every platform are held on their supports"`
	Beams            []Beam            `json:"beams" doc:"beams"`
	BeamSpans        []BeamSpan        `json:"beam_spans" doc:"bays of beams between posts"`
	BeamCantilevers  []BeamCantilever  `json:"beam_cantilevers" doc:"ends of beams past their last post"`
	PlyJoints        []PlyJoint        `json:"ply_joints" doc:"joints in the plies of beams"`
	Posts            []Post            `json:"posts" doc:"posts under beams"`
	Footings         []Footing         `json:"footings" doc:"footings, one entry per post"`
	Ledgers          []Ledger          `json:"ledgers" doc:"ledgers, one entry per platform that hangs on one"`
	LateralDevices   []LateralDevices  `json:"lateral_devices" doc:"tension ties to the house, one entry per platform that hangs on a ledger"`
	Specials         []Special         `json:"specials" doc:"things that prescriptive tables do not cover"`
	OutdoorLumber    []OutdoorLumber   `json:"outdoor_lumber" doc:"kinds of lumber that frames, wood boards and stringers are cut from, each once"`
	Decking          []Decking         `json:"decking" doc:"decking of every platform that has it"`
	Guards           []Guard           `json:"guards" doc:"guards along edges"`
	Stairs           []Stair           `json:"stairs" doc:"stairs, each with one or more flights"`
	Flights          []Flight          `json:"flights" doc:"flights of all stairs"`
	Handrails        []Handrail        `json:"handrails" doc:"one entry per stair, present or not"`
	StairGuards      []StairGuard      `json:"stair_guards" doc:"one entry per stair: the barrier along its open side"`
	Landings         []Landing         `json:"landings" doc:"landings at the top, between flights and at the bottom"`
	Doors            []Door            `json:"doors" doc:"doors that open on a platform"`
	Windows          []Window          `json:"windows" doc:"windows under or beside a platform"`
	Rectangles       []Rectangle       `json:"rectangles" doc:"rectangles measured on site"`
	Triangles        []Triangle        `json:"triangles" doc:"corner triangles measured on site"`
	Levels           []Level           `json:"levels" doc:"level readings of a surface"`
}

// Site is the place: loads and ground.
type Site struct {
	At             []string  `json:"at" doc:"where it stands in the design; empty if the design has no site"`
	LiveLoad       *Pressure `json:"live_load,omitempty" doc:"design live load"`
	DeadLoad       *Pressure `json:"dead_load,omitempty" doc:"design dead load"`
	GroundSnowLoad *Pressure `json:"ground_snow_load,omitempty" doc:"ground snow load"`
	RoofSnowLoad   *Pressure `json:"roof_snow_load,omitempty" doc:"snow load specified for roofs"`
	SoilBearing    *Pressure `json:"soil_bearing,omitempty" doc:"allowable soil bearing pressure"`
	FrostDepth     *Length   `json:"frost_depth,omitempty" doc:"depth of frost below grade"`
	SoilClass      *Words    `json:"soil_class,omitempty" doc:"kind of soil found, as described"`
}

// House is what is known of the wall behind the deck.
type House struct {
	At      []string `json:"at" doc:"where it stands in the design; empty if the design has no house"`
	Stories *Count   `json:"stories,omitempty" doc:"stories above the ground at the deck"`
}

// Platform is one walking surface.
type Platform struct {
	At                []string `json:"at" doc:"the platform"`
	Mark              string   `json:"mark,omitempty" doc:"its mark on the drawing"`
	Support           string   `json:"support,omitempty" doc:"ledger or freestanding, as described"`
	Outline           string   `json:"outline,omitempty" doc:"rectangle, corners or walk: how the outline is described"`
	Area              *Area    `json:"area,omitempty" doc:"area of the outline as described"`
	Perimeter         *Length  `json:"perimeter,omitempty" doc:"perimeter of the outline as described"`
	Closure           *Length  `json:"closure,omitempty" doc:"how far a walked outline misses its start"`
	WalkLength        *Length  `json:"walk_length,omitempty" doc:"total length walked"`
	SurfaceAboveGrade *Length  `json:"surface_above_grade,omitempty" doc:"height of the walking surface above grade as stated"`
	GreatestHeight    *Length  `json:"greatest_height,omitempty" doc:"greatest height of the walking surface above the ground below it, as stated or as an edge, a point or a post shows it"`
	MeasuredTo        *Words   `json:"measured_to,omitempty" doc:"frame, fascia or decking: what the outline is"`
}

// Edge is one side of a platform's outline.
type Edge struct {
	At          []string  `json:"at" doc:"the edge's own entry, or the outline when it has none"`
	Platform    string    `json:"platform" doc:"mark of the platform, or its number"`
	Name        string    `json:"name" doc:"name of the edge"`
	House       bool      `json:"house" doc:"true where the edge lies against the house"`
	Length      *Length   `json:"length,omitempty" doc:"length of the edge"`
	Drops       []DropOut `json:"drops" doc:"greatest drop at the edge and within each distance out from it that can be shown, the nearest first"`
	GroundSlope *Slope    `json:"ground_slope,omitempty" doc:"steepest slope of the ground within 1200 mm out from the edge"`
	Guarded     bool      `json:"guarded" doc:"true where a guard is named for the edge and closes all of it but its stairs"`
	Unguarded   *Length   `json:"unguarded,omitempty" doc:"length of the edge that neither its guard nor a stair closes, where the guard stops short"`
	Guard       string    `json:"guard,omitempty" doc:"mark of the guard named"`
	BenchSeat   *Length   `json:"bench_seat,omitempty" doc:"height of a fixed bench seat along the edge"`
}

// DropOut is the greatest drop within a distance out from an edge.
type DropOut struct {
	Out     measure.Length `json:"out" doc:"the distance; 0 is straight below the edge"`
	Field   string         `json:"field" doc:"the edge's member that shows it"`
	Drop    *Length        `json:"drop,omitempty" doc:"walking surface to the ground, where it is greatest"`
	Level   bool           `json:"level" doc:"true where it is the height stated for the whole surface, no ground being shown for the edge itself"`
	Partial bool           `json:"partial" doc:"true for a guard of several edges where one of them does not show it, so that a greater one may be there"`
}

// Joists is the joist layout of one platform.
type Joists struct {
	At               []string         `json:"at" doc:"the joists"`
	Platform         string           `json:"platform" doc:"mark of the platform, or its number"`
	Missing          []string         `json:"missing" doc:"fields that would complete the layout"`
	Layout           *Words           `json:"layout,omitempty" doc:"equal or on_center"`
	Spacing          *Length          `json:"spacing,omitempty" doc:"center to center, as it comes out"`
	Size             *Words           `json:"size,omitempty" doc:"nominal size, as 2x10"`
	Depth            *Length          `json:"depth,omitempty" doc:"actual depth"`
	Thickness        *Length          `json:"thickness,omitempty" doc:"actual thickness"`
	Count            *Count           `json:"count,omitempty" doc:"joists between and including the outside ones"`
	LastBay          *Length          `json:"last_bay,omitempty" doc:"the bay left over at the far end, center to center"`
	FirstBay         *Length          `json:"first_bay,omitempty" doc:"the bay at the end where the layout starts, center to center"`
	Marks            []measure.Length `json:"marks" doc:"near edges of all joists from the left or from the house, each rounded once from its exact place"`
	BeamsCrossed     *Count           `json:"beams_crossed,omitempty" doc:"dropped beams that the joists bear on"`
	SupportOpen      bool             `json:"support_open" doc:"true where it is not known how far behind the outline the frame ends, and a joist might end short of a support there"`
	RestraintAtEnds  *Words           `json:"restraint_at_ends,omitempty" doc:"what keeps the free ends from rolling over, as described"`
	RestraintAtBeams *Words           `json:"restraint_at_beams,omitempty" doc:"what keeps the joists from rolling over on the beams, as described"`
	RestraintDepth   *Length          `json:"restraint_depth,omitempty" doc:"depth of the blocking or hangers that restrain"`
}

// Lumber is the material of a member, as described.
type Lumber struct {
	Species *Words `json:"species,omitempty" doc:"species, lower case"`
	Grade   *Words `json:"grade,omitempty" doc:"grade as described"`
	// Missing asks for the name of the material where the member has none.
	Missing []string `json:"missing" doc:"fields that would show species and grade"`
}

// OutdoorLumber is a kind of lumber that stands in the weather.
type OutdoorLumber struct {
	At               []string `json:"at" doc:"its entry under lumber"`
	Name             string   `json:"name" doc:"the name that members refer to"`
	Species          *Words   `json:"species,omitempty" doc:"species"`
	Treated          *Flag    `json:"treated,omitempty" doc:"true where it is treated with preservative"`
	NaturallyDurable *Flag    `json:"naturally_durable,omitempty" doc:"true where it is heartwood of a species that is durable without treatment"`
}

// JoistSpan is a run of like joists between two supports.
type JoistSpan struct {
	At             []string    `json:"at" doc:"the joists, then what carries them"`
	Joists         []string    `json:"joists" doc:"the joist layout that it belongs to"`
	Platform       string      `json:"platform" doc:"mark of the platform, or its number"`
	From           string      `json:"from" doc:"the support nearer the start: ledger, a beam's mark, header"`
	To             string      `json:"to" doc:"the support further on"`
	Count          int64       `json:"count" doc:"how many joists run over this bay"`
	Missing        []string    `json:"missing" doc:"fields that would complete the spans"`
	ClearSpan      *Length     `json:"clear_span,omitempty" doc:"face of bearing to face of bearing"`
	SpanToCenter   *Length     `json:"span_to_center,omitempty" doc:"center of bearing to center of bearing"`
	Spacing        *Length     `json:"spacing,omitempty" doc:"center to center"`
	SpacingField   string      `json:"spacing_field,omitempty" doc:"field that would give the spacing, where it is not shown"`
	Size           *Words      `json:"size,omitempty" doc:"nominal size, as 2x10"`
	Depth          *Length     `json:"depth,omitempty" doc:"actual depth"`
	Thickness      *Length     `json:"thickness,omitempty" doc:"actual thickness"`
	Blocked        *Flag       `json:"blocked,omitempty" doc:"true where a row of blocking lies between the supports; absent where no blocking is described"`
	Lumber         Lumber      `json:"lumber" doc:"the material"`
	LiveLoad       *Pressure   `json:"live_load,omitempty" doc:"design live load of the site"`
	GroundSnowLoad *Pressure   `json:"ground_snow_load,omitempty" doc:"ground snow load of the site"`
	Engineered     *Engineered `json:"engineered,omitempty" doc:"what wood engineering allows, where the material and the loads are shown"`
}

// JoistCantilever is a run of like joists past their last support.
type JoistCantilever struct {
	At             []string    `json:"at" doc:"the joists, then the support they pass"`
	Joists         []string    `json:"joists" doc:"the joist layout that it belongs to"`
	Platform       string      `json:"platform" doc:"mark of the platform, or its number"`
	Past           string      `json:"past" doc:"the last support"`
	Count          int64       `json:"count" doc:"how many joists"`
	Missing        []string    `json:"missing" doc:"fields that would complete the lengths"`
	Cantilever     *Length     `json:"cantilever,omitempty" doc:"center of the last support to the joist's end"`
	AtMost         *Length     `json:"cantilever_at_most,omitempty" doc:"the same to the edge of the outline, where it is not shown how far behind that the frame ends"`
	BackSpan       *Length     `json:"back_span,omitempty" doc:"span behind it, center to center"`
	Spacing        *Length     `json:"spacing,omitempty" doc:"center to center"`
	SpacingField   string      `json:"spacing_field,omitempty" doc:"field that would give the spacing, where it is not shown"`
	Size           *Words      `json:"size,omitempty" doc:"nominal size, as 2x10"`
	Lumber         Lumber      `json:"lumber" doc:"the material"`
	LiveLoad       *Pressure   `json:"live_load,omitempty" doc:"design live load of the site"`
	GroundSnowLoad *Pressure   `json:"ground_snow_load,omitempty" doc:"ground snow load of the site"`
	Engineered     *Engineered `json:"engineered,omitempty" doc:"what wood engineering allows, where the material and the loads are shown"`
}

// JoistRun is a number of joists that are cut to one length.
type JoistRun struct {
	At       []string `json:"at" doc:"the joists"`
	Platform string   `json:"platform" doc:"mark of the platform, or its number"`
	Count    int64    `json:"count" doc:"how many"`
	Length   *Length  `json:"length,omitempty" doc:"cut length, between ledger or rim and rim"`
}

// Corner is a corner of an outline.
type Corner struct {
	At       []string `json:"at" doc:"the outline, or the corner where it is typed"`
	Platform string   `json:"platform" doc:"mark of the platform, or its number"`
	Between  string   `json:"between" doc:"names of the two edges that meet"`
	Interior *Angle   `json:"interior,omitempty" doc:"angle inside the platform"`
	Miter    *Angle   `json:"miter,omitempty" doc:"saw setting off a square cut for two boards of one width"`
}

// Unsupported is joists that fewer than two supports carry, although the
// platform's beams are described.
type Unsupported struct {
	At       []string `json:"at" doc:"the joists"`
	Platform string   `json:"platform" doc:"mark of the platform, or its number"`
	Count    int64    `json:"count" doc:"how many joists"`
	Supports int64    `json:"supports" doc:"the fewest supports that one of them has"`
	First    *Length  `json:"first,omitempty" doc:"center of the first of them, along the house from its left end, or out from it for joists along the house"`
}

// StatedSpan is a span or cantilever written down by hand, with the derived one.
type StatedSpan struct {
	At         []string `json:"at" doc:"the stated value"`
	What       string   `json:"what" doc:"clear span, span to center or cantilever"`
	Stated     Length   `json:"stated" doc:"as written"`
	Derived    *Length  `json:"derived,omitempty" doc:"as derived, the one nearest to what is written; absent where the plan gives none"`
	Difference *Length  `json:"difference,omitempty" doc:"how far they are apart, never negative"`
}

// JoistMarks compares marks read on site with the layout.
type JoistMarks struct {
	At      []string `json:"at" doc:"the list of marks"`
	On      string   `json:"on" doc:"ledger or rim"`
	Worst   *Length  `json:"worst,omitempty" doc:"greatest distance of a mark from its place"`
	WorstN  int64    `json:"worst_n" doc:"which mark, counted from 1; 0 if none"`
	Length  *Length  `json:"length,omitempty" doc:"length laid out"`
	Missing int64    `json:"missing" doc:"marks of the layout less marks read; negative if too many were read"`
}
