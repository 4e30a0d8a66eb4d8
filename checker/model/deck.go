package model

import (
	"plumbrule/checker/measure"
	"plumbrule/checker/source"
)

// Deck is a whole design.
type Deck struct {
	At        string
	Job       *Job        `deck:"job"`
	Site      *Site       `deck:"site"`
	House     *House      `deck:"house"`
	Lumber    Map[Lumber] `deck:"lumber"`
	Platforms []Platform  `deck:"platforms"`
	Guards    []Guard     `deck:"guards"`
	Stairs    []Stair     `deck:"stairs"`
	Measured  []Measured  `deck:"measured"`

	// Unread are values that the design gives and nothing here reads, in the order
	// of the file. Marks, sheets, notes and the title block are not among them.
	Unread []*source.Node

	// System is the system that most of the design's lengths were typed in.
	System measure.System
}

// Job is the title block.
type Job struct {
	At       string
	Title    *Words `deck:"title"`
	Revision *Words `deck:"revision"`
	Sheets   *Words `deck:"sheets"`
	// ReviewedAgainst names what the drawings are held against besides the code.
	ReviewedAgainst *Words `deck:"reviewed_against"`
}

// Site is the place: loads and ground.
type Site struct {
	At             string
	LiveLoad       *Pressure  `deck:"live_load"`
	DeadLoad       *Pressure  `deck:"dead_load"`
	GroundSnowLoad *Pressure  `deck:"ground_snow_load"`
	RoofSnowLoad   *Pressure  `deck:"roof_snow_load"`
	SoilBearing    *Pressure  `deck:"soil_bearing"`
	SoilClass      *Words     `deck:"soil_class"`
	FrostDepth     *Length    `deck:"frost_depth"`
	GradeFall      *GradeFall `deck:"grade_fall"`
}

// GradeFall is how the ground falls away.
type GradeFall struct {
	At        string
	Direction *Words `deck:"direction"`
	Slope     *Slope `deck:"slope"`
}

// House is the wall that the deck stands against.
type House struct {
	At                string
	HouseRim          *HouseRim `deck:"house_rim"`
	CladdingRemoved   *Flag     `deck:"cladding_removed_at_ledger"`
	Veneer            *Words    `deck:"veneer"`
	CantileveredFloor *Flag     `deck:"cantilevered_floor"`
	Floor             *Words    `deck:"floor"`
	Stories           *Count    `deck:"stories"`
	FoundationDepth   *Length   `deck:"foundation_depth"`
	Openings          []Opening `deck:"openings"`
}

// Opening is a door or window of the house.
type Opening struct {
	At                    string
	Kind                  *Words  `deck:"kind"`
	Mark                  *Words  `deck:"mark"`
	Along                 *Length `deck:"along"`
	ClearWidth            *Length `deck:"clear_width"`
	ThresholdAboveDecking *Length `deck:"threshold_above_decking" signed:"true"`
	SwingsOverDeck        *Flag   `deck:"swings_over_deck"`
	Sliding               *Flag   `deck:"sliding"`
	RequiredEgressDoor    *Flag   `deck:"required_egress_door"`
	Platform              *Words  `deck:"platform"`
	LandingDepth          *Length `deck:"landing_depth"`
	LandingAlong          *Length `deck:"landing_along"`
	Egress                *Flag   `deck:"egress"`
	WellTopBelowFraming   *Length `deck:"well_top_below_framing"`
	ClearPathHeight       *Length `deck:"clear_path_height"`
	ClearPathWidth        *Length `deck:"clear_path_width"`
}

// Lumber is a material that members refer to by name.
type Lumber struct {
	At         string
	Species    *Words `deck:"species"`
	Grade      *Words `deck:"grade"`
	Product    *Words `deck:"product"`
	Treated    *Flag  `deck:"treated"`
	Durable    *Flag  `deck:"naturally_durable"`
	Incised    *Flag  `deck:"incised"`
	WetService *Flag  `deck:"wet_service"`
}

// Measured is something read off the work with a tape or a level.
type Measured struct {
	At        string
	What      *Words         `deck:"what"`
	Mark      *Words         `deck:"mark"`
	Sides     []*Length      `deck:"sides"`
	Diagonals []*Length      `deck:"diagonals"`
	Legs      []*Length      `deck:"legs"`
	Diagonal  *Length        `deck:"diagonal"`
	Points    []LevelReading `deck:"points"`
	Positions []*Length      `deck:"positions"`
	Along     *Words         `deck:"along"`
	Platform  *Words         `deck:"platform"`
}

// LevelReading is the height of one point of a surface.
type LevelReading struct {
	At     string
	Place  *Point      `deck:"at"`
	Height *Coordinate `deck:"height" signed:"true"`
}
