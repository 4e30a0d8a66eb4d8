package facts

// StatedRun is a horizontal length of a stair written down by hand, with the
// one that its steps give.
type StatedRun struct {
	At         []string `json:"at" doc:"the stated value"`
	Stair      string   `json:"stair" doc:"mark of the stair, or its number"`
	Stated     Length   `json:"stated" doc:"as written"`
	Derived    *Length  `json:"derived,omitempty" doc:"as the steps give it, the one nearest to what is written; absent where they give none"`
	Difference *Length  `json:"difference,omitempty" doc:"how far they are apart, never negative"`
	Missing    []string `json:"missing" doc:"fields that would give it"`
}

// StatedHeight is the height of a walking surface above grade as written down,
// with the ground shown below it.
type StatedHeight struct {
	At         []string `json:"at" doc:"the stated value"`
	Platform   string   `json:"platform" doc:"mark of the platform, or its number"`
	Stated     Length   `json:"stated" doc:"as written"`
	Derived    Length   `json:"derived" doc:"the height nearest to it that the ground shown allows"`
	Difference Length   `json:"difference" doc:"how far they are apart, never negative"`
	Missing    []string `json:"missing" doc:"fields that may show ground which allows what is written"`
}
