package model

// Guard is a fall barrier that edges refer to by its mark.
type Guard struct {
	At           string
	Mark         *Words      `deck:"mark"`
	Height       *Length     `deck:"height"`
	AboveSeat    *Length     `deck:"height_above_seat"`
	Bays         []*Length   `deck:"bays"`
	CapRailWidth *Length     `deck:"cap_rail_width"`
	Infill       *Infill     `deck:"infill"`
	Posts        *GuardPosts `deck:"posts"`
	ListedLoad   *Force      `deck:"listed_load"`
	InfillLoad   *Force      `deck:"infill_load"`
}

// Infill is what fills a guard between its rails.
type Infill struct {
	At            string
	Kind          *Words    `deck:"kind"`
	Opening       *Length   `deck:"opening"`
	BottomGap     *Length   `deck:"bottom_gap"`
	BalusterWidth *Length   `deck:"baluster_width"`
	Climbable     *Flag     `deck:"climbable"`
	Footholds     []*Length `deck:"footholds"`
}

// GuardPosts are the posts of a guard.
type GuardPosts struct {
	Member
	MaxSpacing *Length `deck:"max_spacing"`
	Notched    *Flag   `deck:"notched"`
	Fixing     *Words  `deck:"fixing"`
}
