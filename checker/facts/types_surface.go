package facts

// Decking is the boards of one platform.
type Decking struct {
	At                []string `json:"at" doc:"the decking"`
	Platform          string   `json:"platform" doc:"mark of the platform, or its number"`
	Material          *Words   `json:"material,omitempty" doc:"wood, composite or another word of the description"`
	Nominal           *Words   `json:"nominal,omitempty" doc:"nominal size, as 5/4x6"`
	Thickness         *Length  `json:"thickness,omitempty" doc:"actual thickness"`
	Lumber            Lumber   `json:"lumber" doc:"the wood of the boards"`
	BoardWidth        *Length  `json:"board_width,omitempty" doc:"actual width of a board"`
	Gap               *Length  `json:"gap,omitempty" doc:"gap between boards"`
	BoardAngle        *Angle   `json:"board_angle,omitempty" doc:"away from square across the joists; 0 is perpendicular to them"`
	JoistSpacing      *Length  `json:"joist_spacing,omitempty" doc:"center to center of the joists below"`
	SpacingField      string   `json:"spacing_field,omitempty" doc:"field that would give the joist spacing, where it is not shown"`
	SpanAlongBoard    *Length  `json:"span_along_board,omitempty" doc:"joist spacing measured along the board"`
	JoistCount        *Count   `json:"joist_count,omitempty" doc:"joists below"`
	JoistsPerBoard    *Count   `json:"joists_per_board,omitempty" doc:"fewest joists that a board lies on"`
	ListedStraight    *Length  `json:"listed_straight,omitempty" doc:"greatest joist spacing in the product's listing, boards square across"`
	ListedDiagonal    *Length  `json:"listed_diagonal,omitempty" doc:"greatest joist spacing in the product's listing, boards on the diagonal"`
	ListedAngle       *Angle   `json:"listed_angle,omitempty" doc:"furthest from square that the listing for boards on the diagonal is for"`
	Rows              *Count   `json:"rows,omitempty" doc:"rows of boards across the depth, where boards run square"`
	RowFields         []string `json:"row_fields" doc:"fields that would give the last row, where boards run square"`
	LastRip           *Length  `json:"last_rip,omitempty" doc:"width of the last row, where boards run square"`
	PictureFrame      bool     `json:"picture_frame" doc:"true where a border is described"`
	FrameBlocking     *Flag    `json:"frame_blocking,omitempty" doc:"blocking below the border"`
	FastenersPerJoist *Count   `json:"fasteners_per_joist,omitempty" doc:"fasteners where a board crosses a joist"`
	Overhang          *Length  `json:"overhang,omitempty" doc:"decking past the frame or fascia"`
}

// PlatformOpening is a hole framed in a platform.
type PlatformOpening struct {
	At       []string `json:"at" doc:"the opening"`
	Platform string   `json:"platform" doc:"mark of the platform, or its number"`
	Name     string   `json:"name" doc:"what it is called: opening, with what it is for before it where that is described"`
	Gap      *Length  `json:"gap,omitempty" doc:"its lesser side, along the house or out from it"`
	Drop     *Length  `json:"drop,omitempty" doc:"walking surface to the ground below it: as stated, as ground shown at points gives it, or the height of the whole surface"`
	Told     bool     `json:"told" doc:"true where it is said which guard it has, or that it has none"`
	Guarded  bool     `json:"guarded" doc:"true where a guard is named for it"`
	Guard    string   `json:"guard,omitempty" doc:"mark of the guard named"`
	Covered  bool     `json:"covered" doc:"true where a lid or grate that is walked on lies over it"`
}

// Guard is a fall barrier along edges of platforms.
type Guard struct {
	At              []string  `json:"at" doc:"the guard"`
	Mark            string    `json:"mark,omitempty" doc:"its mark"`
	Edges           []string  `json:"edges" doc:"names of the edges that it stands on"`
	Drops           []DropOut `json:"drops" doc:"greatest drops of the edges that it stands on, the nearest first; empty where it stands on none"`
	GroundSlope     *Slope    `json:"ground_slope,omitempty" doc:"steepest slope of the ground within 1200 mm out from the edges that it stands on; absent where one of them does not show it"`
	Height          *Length   `json:"height,omitempty" doc:"walking surface to the top"`
	HeightAboveSeat *Length   `json:"height_above_seat,omitempty" doc:"top of the guard above the highest fixed bench seat along it"`
	InfillKind      *Words    `json:"infill_kind,omitempty" doc:"balusters, cables, glass and so on"`
	Opening         *Length   `json:"opening,omitempty" doc:"widest opening of the infill"`
	BottomGap       *Length   `json:"bottom_gap,omitempty" doc:"gap below the bottom rail"`
	Climbable       *Flag     `json:"climbable,omitempty" doc:"true where the infill can be climbed"`
	Footholds       []Length  `json:"footholds" doc:"heights above the walking surface of what a foot can stand on; empty where none is shown"`
	PostSize        *Words    `json:"post_size,omitempty" doc:"nominal size of the guard posts"`
	PostSpacing     *Length   `json:"post_spacing,omitempty" doc:"greatest distance between guard posts, center to center"`
	PostNotched     *Flag     `json:"post_notched,omitempty" doc:"true where posts are notched at the fixing"`
	PostFixing      *Words    `json:"post_fixing,omitempty" doc:"how posts are fixed to the frame"`
	ListedLoad      *Force    `json:"listed_load,omitempty" doc:"concentrated load that the system is listed or designed for"`
	InfillLoad      *Force    `json:"infill_load,omitempty" doc:"infill load that the system is listed or designed for"`
	BalusterWidth   *Length   `json:"baluster_width,omitempty" doc:"width of a baluster along the guard"`
	BayClear        *Length   `json:"bay_clear,omitempty" doc:"clear distance between posts at their greatest spacing"`
	LastGap         *Length   `json:"last_gap,omitempty" doc:"gap left at the far post when balusters are set out at the drawn opening from the near one"`
	EvenGap         *Length   `json:"even_gap,omitempty" doc:"gap when the same bay is divided evenly"`
	EvenCount       *Count    `json:"even_count,omitempty" doc:"balusters in that even bay"`
}

// Rectangle is six tape readings: four sides in walking order, two diagonals.
type Rectangle struct {
	At                 []string `json:"at" doc:"the measurement"`
	SideDifference     *Length  `json:"side_difference,omitempty" doc:"greater difference between opposite sides"`
	SidesAt            string   `json:"sides,omitempty" doc:"which pair differs most: along the house or out from it"`
	DiagonalDifference *Length  `json:"diagonal_difference,omitempty" doc:"difference of the diagonals"`
	Diagonal           *Length  `json:"diagonal,omitempty" doc:"diagonal that the mean sides would have when square"`
	Miss               *Length  `json:"miss,omitempty" doc:"second diagonal as measured against the one that the other five readings give"`
	Slide              *Length  `json:"slide,omitempty" doc:"how far to slide the side along the house to square it"`
	LongestSide        *Length  `json:"longest_side,omitempty" doc:"longest side measured"`
	Possible           bool     `json:"possible" doc:"false where the readings make no quadrilateral, or diagonals are missing"`
}

// Triangle is three tape readings at a corner.
type Triangle struct {
	At        []string `json:"at" doc:"the measurement"`
	Diagonal  *Length  `json:"diagonal,omitempty" doc:"diagonal as measured"`
	Square    *Length  `json:"square,omitempty" doc:"diagonal if the corner were square"`
	Deviation *Length  `json:"deviation,omitempty" doc:"how far they are apart, never negative"`
	Corner    *Angle   `json:"corner,omitempty" doc:"angle of the corner"`
	Possible  bool     `json:"possible" doc:"false where three such lengths make no triangle"`
}

// Level is the worst pair of level readings on one surface.
type Level struct {
	At         []string `json:"at" doc:"the measurement"`
	Missing    []string `json:"missing" doc:"fields that would give the two"`
	Difference *Length  `json:"difference,omitempty" doc:"difference of height"`
	Distance   *Length  `json:"distance,omitempty" doc:"distance between the two points"`
}

// Door is a door that opens on a platform.
type Door struct {
	At           []string `json:"at" doc:"the door"`
	Platform     string   `json:"platform,omitempty" doc:"the platform in front of it"`
	StepDown     *Length  `json:"step_down,omitempty" doc:"top of the threshold down to the decking"`
	AboveGrade   *Length  `json:"above_grade,omitempty" doc:"top of the threshold above the grade that the platform's height is stated for"`
	SwingsOver   *Flag    `json:"swings_over,omitempty" doc:"true where the door swings over the deck"`
	RequiredExit *Flag    `json:"required_exit,omitempty" doc:"true where it is the required egress door"`
	LandingDepth *Length  `json:"landing_depth,omitempty" doc:"level depth in front of the door in the direction of travel"`
	LandingWidth *Length  `json:"landing_width,omitempty" doc:"level width in front of the door"`
	ClearWidth   *Length  `json:"clear_width,omitempty" doc:"clear width of the door"`
}

// Window is a window whose way out lies under a platform.
type Window struct {
	At          []string `json:"at" doc:"the window"`
	Egress      *Flag    `json:"egress,omitempty" doc:"true where it is an emergency escape and rescue opening"`
	Platform    string   `json:"platform,omitempty" doc:"the platform above or in front of it"`
	PathHeight  *Length  `json:"path_height,omitempty" doc:"clear height of the way out under the deck"`
	PathWidth   *Length  `json:"path_width,omitempty" doc:"clear width of the way out"`
	WellToFrame *Length  `json:"well_to_frame,omitempty" doc:"top of the window well up to the underside of the framing"`
}
