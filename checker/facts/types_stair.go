package facts

import "plumbrule/checker/measure"

// Stair is a stair from a platform to grade or to another platform.
type Stair struct {
	At               []string `json:"at" doc:"the stair"`
	Mark             string   `json:"mark,omitempty" doc:"its mark"`
	Width            *Length  `json:"width,omitempty" doc:"clear width above the handrails"`
	WidthAtRails     *Length  `json:"width_at_rails,omitempty" doc:"clear width at and below the handrails, where it is stated or projections are"`
	RailSides        *Count   `json:"rail_sides,omitempty" doc:"sides that have a handrail: 0, 1 or 2"`
	Headroom         *Length  `json:"headroom,omitempty" doc:"from the nosing line up"`
	OpenToSky        bool     `json:"open_to_sky" doc:"true where nothing is above the stair"`
	Lighting         *Flag    `json:"lighting,omitempty" doc:"artificial light at the top landing"`
	TotalRise        *Length  `json:"total_rise,omitempty" doc:"finished decking to finished landing where the stair lands, as stated or else as derived"`
	DerivedRise      *Length  `json:"derived_rise,omitempty" doc:"the same from the grade or added up over the flights, where it is stated besides; the one further off"`
	RiseDifference   *Length  `json:"rise_difference,omitempty" doc:"stated against derived, never negative"`
	MeasuredSum      *Length  `json:"measured_sum,omitempty" doc:"sum of the risers as measured"`
	SumDifference    *Length  `json:"sum_difference,omitempty" doc:"that sum against the total rise, never negative"`
	StringerKind     *Words   `json:"stringer_kind,omitempty" doc:"cut or solid"`
	StringerCount    *Count   `json:"stringer_count,omitempty" doc:"stringers as described"`
	StringerSpacing  *Length  `json:"stringer_spacing,omitempty" doc:"center to center, as the count and width give it"`
	StringerDepth    *Length  `json:"stringer_depth,omitempty" doc:"actual depth of the stock of the stringers"`
	StringerThick    *Length  `json:"stringer_thickness,omitempty" doc:"actual thickness of the stock of the stringers"`
	StringersHeld    *Flag    `json:"stringers_supported_along,omitempty" doc:"true where a wall or framing carries them along their whole length"`
	TreadMaterial    *Words   `json:"tread_material,omitempty" doc:"wood, composite or another word of the description"`
	TreadThickness   *Length  `json:"tread_thickness,omitempty" doc:"thickness of a tread"`
	TreadListed      *Length  `json:"tread_listed,omitempty" doc:"greatest stringer spacing in the tread's listing"`
	TreadSlope       *Slope   `json:"tread_slope,omitempty" doc:"slope of the treads to shed water"`
	SlipClass        *Words   `json:"slip_class,omitempty" doc:"slip class of the treads when wet"`
	NosingRadius     *Length  `json:"nosing_radius,omitempty" doc:"radius of the rounded front edge of the treads"`
	RisersClosed     *Flag    `json:"risers_closed,omitempty" doc:"true where risers are solid"`
	RisersCarry      *Flag    `json:"risers_carry_treads,omitempty" doc:"true where riser boards carry the front of the treads"`
	DropAtTop        *Length  `json:"drop_at_top,omitempty" doc:"greatest height of the stair above the ground below it"`
	Risers           *Count   `json:"risers,omitempty" doc:"risers of all flights"`
	Flights          int64    `json:"flights" doc:"how many flights the stair has"`
	Winders          bool     `json:"winders" doc:"true where treads narrow to one side"`
	WinderCount      *Count   `json:"winder_count,omitempty" doc:"treads that narrow to one side"`
	WinderTurn       *Angle   `json:"winder_turn,omitempty" doc:"angle that the stair turns over them"`
	WinderAtWalkline *Length  `json:"winder_at_walkline,omitempty" doc:"depth of the winders at the walkline"`
	WinderNarrowest  *Length  `json:"winder_narrowest,omitempty" doc:"depth of the winders where they are narrowest"`
}

// Flight is a run of steps between two landings.
type Flight struct {
	At                []string         `json:"at" doc:"the flight, or the stair where it has but one"`
	Stair             string           `json:"stair" doc:"mark of the stair, or its number"`
	N                 int64            `json:"n" doc:"which flight from the top, counted from 1"`
	Of                int64            `json:"of" doc:"how many flights the stair has"`
	Use               *Words           `json:"use,omitempty" doc:"what the stair serves: main, secondary, service or accessible"`
	Attached          *Flag            `json:"attached,omitempty" doc:"true where the stair leaves a platform that hangs on the house, false where that stands free"`
	AttachedField     string           `json:"attached_field,omitempty" doc:"field that would show it, where it is not shown"`
	Risers            *Count           `json:"risers,omitempty" doc:"risers of the flight"`
	Treads            *Count           `json:"treads,omitempty" doc:"treads of the flight as described"`
	TreadsExpected    *Count           `json:"treads_expected,omitempty" doc:"treads that the risers ask for"`
	Rise              *Length          `json:"rise,omitempty" doc:"landing to landing"`
	RiseField         string           `json:"rise_field,omitempty" doc:"field that would give the rise, where it is not shown"`
	Run               *Length          `json:"run,omitempty" doc:"total run"`
	UnitRise          *Length          `json:"unit_rise,omitempty" doc:"rise divided by risers"`
	RiserHeights      []measure.Length `json:"riser_heights" doc:"every riser from the bottom; empty where they are not known"`
	FirstDrop         *Length          `json:"first_drop,omitempty" doc:"decking or landing down to the framing cut of the first tread"`
	BottomCut         *Length          `json:"bottom_cut,omitempty" doc:"height of the lowest riser cut on the stringer, tread thickness taken off and finish to come added"`
	RiserMax          *Length          `json:"riser_max,omitempty" doc:"greatest riser, as built where it was measured"`
	RiserMaxN         int64            `json:"riser_max_n" doc:"which one from the bottom, from 1; 0 where all are alike"`
	RiserMin          *Length          `json:"riser_min,omitempty" doc:"smallest riser"`
	RiserMinN         int64            `json:"riser_min_n" doc:"which one from the bottom, from 1; 0 where all are alike"`
	RiserSpread       *Length          `json:"riser_spread,omitempty" doc:"greatest less smallest"`
	RiserStep         *Length          `json:"riser_step,omitempty" doc:"greatest difference between two risers that follow each other"`
	UpperStep         *Length          `json:"upper_riser_step,omitempty" doc:"the same with the lowest riser left out; absent where there are fewer than three"`
	UpperOff          *Length          `json:"upper_riser_off,omitempty" doc:"greatest difference of a riser above the lowest from the unit rise"`
	BottomOff         *Length          `json:"bottom_riser_off,omitempty" doc:"difference of the lowest riser from the unit rise, never negative"`
	BottomLower       *Length          `json:"bottom_riser_lower,omitempty" doc:"how much lower the lowest riser is than the smallest above it; negative where it is higher, absent where it is the only one"`
	CrossFall         *Length          `json:"cross_fall,omitempty" doc:"how much the last riser differs from one side of the stair to the other, by the slope of the landing"`
	CrossSlope        *Slope           `json:"cross_slope,omitempty" doc:"slope of the ground or landing across the stair, at the last riser"`
	CrossFallLesser   *Length          `json:"cross_fall_lesser,omitempty" doc:"where it is not known which slope lies across: the lesser of what the two make"`
	CrossFallGreater  *Length          `json:"cross_fall_greater,omitempty" doc:"the greater of the two"`
	CrossSlopeLesser  *Slope           `json:"cross_slope_lesser,omitempty" doc:"where it is not known which slope lies across: the gentler of the two"`
	CrossSlopeGreater *Slope           `json:"cross_slope_greater,omitempty" doc:"the steeper of the two"`
	WayMissing        string           `json:"way_missing,omitempty" doc:"field that would show which slope lies across"`
	TreadDepth        *Length          `json:"tread_depth,omitempty" doc:"tread depth as described, nosing to nosing"`
	TreadMin          *Length          `json:"tread_min,omitempty" doc:"smallest tread depth, nosing to nosing"`
	TreadMinN         int64            `json:"tread_min_n" doc:"which one from the bottom, from 1; 0 where all are alike"`
	TreadMax          *Length          `json:"tread_max,omitempty" doc:"greatest tread depth"`
	TreadMaxN         int64            `json:"tread_max_n" doc:"which one from the bottom, from 1; 0 where all are alike"`
	TreadSpread       *Length          `json:"tread_spread,omitempty" doc:"greatest less smallest"`
	TreadStep         *Length          `json:"tread_step,omitempty" doc:"greatest difference between two treads that follow each other"`
	Nosing            *Length          `json:"nosing,omitempty" doc:"nosing projection"`
	RisersClosed      *Flag            `json:"risers_closed,omitempty" doc:"true where risers are solid"`
	RiserOpening      *Length          `json:"riser_opening,omitempty" doc:"clear opening between treads; absent where risers are closed"`
	OpeningAbove      *Length          `json:"opening_above,omitempty" doc:"height above grade of the highest opening between treads"`
	Pitch             *Angle           `json:"pitch,omitempty" doc:"angle of the nosing line"`
	StringerLine      *Length          `json:"stringer_line,omitempty" doc:"length along the line of the nosings, over the total run"`
	StringerRun       *Length          `json:"stringer_run,omitempty" doc:"horizontal length that the stringer spans"`
	Throat            *Length          `json:"throat,omitempty" doc:"wood left under the notch of a cut stringer"`
	StringerKind      *Words           `json:"stringer_kind,omitempty" doc:"cut or solid"`
	StringerSize      *Words           `json:"stringer_size,omitempty" doc:"nominal size, as 2x12"`
	ComfortLeast      *Length          `json:"comfort_least,omitempty" doc:"least sum of two risers and one tread, as built where they were measured"`
	ComfortLeastRiser int64            `json:"comfort_least_riser" doc:"riser of that sum, from 1 at the bottom; 0 where all are alike"`
	ComfortLeastTread int64            `json:"comfort_least_tread" doc:"tread of that sum, from 1 at the bottom; 0 where all are alike"`
	ComfortMost       *Length          `json:"comfort_most,omitempty" doc:"greatest sum of two risers and one tread"`
	ComfortMostRiser  int64            `json:"comfort_most_riser" doc:"riser of that sum; 0 where all are alike"`
	ComfortMostTread  int64            `json:"comfort_most_tread" doc:"tread of that sum; 0 where all are alike"`
	Engineered        *Engineered      `json:"engineered,omitempty" doc:"what wood engineering allows, where the material and the loads are shown"`
}

// Handrail is the graspable rail of one stair; an entry stands for every stair.
type Handrail struct {
	At           []string `json:"at" doc:"the handrail, or the stair where none is shown"`
	Stair        string   `json:"stair" doc:"mark of the stair, or its number"`
	Present      bool     `json:"present" doc:"true where a handrail is shown"`
	Risers       *Count   `json:"risers,omitempty" doc:"risers of the longest flight"`
	Rise         *Length  `json:"rise,omitempty" doc:"rise of the stair, as built where its risers were measured"`
	Width        *Length  `json:"width,omitempty" doc:"clear width of the stair above the handrails"`
	Sides        *Count   `json:"sides,omitempty" doc:"sides that have one"`
	Height       *Length  `json:"height,omitempty" doc:"above the nosing line"`
	HeightMax    *Length  `json:"height_max,omitempty" doc:"greatest height as measured; absent where one height is shown"`
	Profile      *Words   `json:"profile,omitempty" doc:"round, shaped, flat board and so on"`
	Diameter     *Length  `json:"diameter,omitempty" doc:"of a round profile"`
	SectionWidth *Length  `json:"section_width,omitempty" doc:"greatest width of the cross-section"`
	Perimeter    *Length  `json:"perimeter,omitempty" doc:"of the cross-section"`
	AboveRecess  *Length  `json:"width_above_recess,omitempty" doc:"width of the cross-section above the finger recess"`
	RecessStart  *Length  `json:"recess_start,omitempty" doc:"finger recess: below the tallest part"`
	RecessDepth  *Length  `json:"recess_depth,omitempty" doc:"finger recess: depth"`
	RecessReach  *Length  `json:"recess_reach,omitempty" doc:"finger recess: how far below the widest part its depth is reached"`
	Clearance    *Length  `json:"clearance,omitempty" doc:"clear space behind it"`
	Projection   *Length  `json:"projection,omitempty" doc:"into the width of the stair"`
	Continuous   *Flag    `json:"continuous,omitempty" doc:"true where it runs the whole flight"`
	Returns      *Flag    `json:"returns,omitempty" doc:"true where ends return or end at a newel"`
}

// StairGuard is the barrier on the open side of one stair; an entry stands for every stair.
type StairGuard struct {
	At              []string `json:"at" doc:"the stair's guard, or the stair where none is shown"`
	Stair           string   `json:"stair" doc:"mark of the stair, or its number"`
	Present         bool     `json:"present" doc:"true where a guard on the stair is shown"`
	Drop            *Length  `json:"drop,omitempty" doc:"greatest height of the stair above the ground below it"`
	Height          *Length  `json:"height,omitempty" doc:"above the nosing line"`
	Opening         *Length  `json:"opening,omitempty" doc:"widest opening of the infill"`
	TriangleOpening *Length  `json:"triangle_opening,omitempty" doc:"opening between tread, riser and bottom rail"`
}

// Landing is a level place of a stair.
type Landing struct {
	At          []string `json:"at" doc:"the landing, or the stair where none is shown"`
	Stair       string   `json:"stair" doc:"mark of the stair, or its number"`
	Where       string   `json:"where" doc:"top, between or bottom"`
	Depth       *Length  `json:"depth,omitempty" doc:"in the direction of travel"`
	Width       *Length  `json:"width,omitempty" doc:"across the direction of travel"`
	DepthField  string   `json:"depth_field,omitempty" doc:"field that would give the depth, where it is not shown"`
	WidthField  string   `json:"width_field,omitempty" doc:"field that would give the width, where it is not shown"`
	LesserSide  *Length  `json:"lesser_side,omitempty" doc:"where the direction of travel is not known: the lesser of depth and width"`
	GreaterSide *Length  `json:"greater_side,omitempty" doc:"the greater of the two"`
	WayMissing  string   `json:"way_missing,omitempty" doc:"field that would show which of them is the depth"`
	StairWidth  *Length  `json:"stair_width,omitempty" doc:"width of the stair served"`
	SlopeAlong  *Slope   `json:"slope_along,omitempty" doc:"slope along the house"`
	SlopeOut    *Slope   `json:"slope_out,omitempty" doc:"slope out from the house"`
	Turn        *Angle   `json:"turn,omitempty" doc:"angle by which the stair changes direction on it"`
	DoorSwings  *Flag    `json:"door_swings,omitempty" doc:"true where a door or gate swings over it"`
	DoorClear   *Length  `json:"clear_of_door,omitempty" doc:"depth that the swing of the door leaves clear"`
	Use         *Words   `json:"use,omitempty" doc:"what the stair serves: main, secondary, service or accessible"`
	Risers      *Count   `json:"risers,omitempty" doc:"risers of the flight below a top landing; absent for others"`
	DoorsApart  *Flag    `json:"doors_apart,omitempty" doc:"top landing: true where every door on its platform slides or swings away from it and none is the required exit; absent where no door is shown, or not all of that"`
}
