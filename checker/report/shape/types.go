package shape

// Set is a rule set.
type Set struct {
	ID         string   `json:"id"`
	Edition    string   `json:"edition"`
	Title      string   `json:"title"`
	Publisher  string   `json:"publisher,omitempty"`
	Place      string   `json:"place,omitempty"`
	Extends    string   `json:"extends,omitempty"`
	Scope      string   `json:"scope,omitempty"`
	NotCovered []string `json:"not_covered"`
}

// Counts is how many subjects have which outcome.
type Counts struct {
	Outside      int `json:"outside"`
	Within       int `json:"within"`
	NotShown     int `json:"not_shown"`
	DoesNotApply int `json:"does_not_apply"`
	Excused      int `json:"excused"`
	CouldNotRun  int `json:"could_not_run"`
}

// Position is a line and a column in a file, both from 1.
type Position struct {
	Line   int `json:"line"`
	Column int `json:"column"`
}

// Place is where a value stands, and what stands there.
type Place struct {
	At    string   `json:"at"`
	Start Position `json:"start"`
	End   Position `json:"end"`
	Text  string   `json:"text,omitempty"`
}

// Listing is where the design itself states the limit, and of which product.
type Listing struct {
	Place
	Product string `json:"product,omitempty"`
}

// Value has no number and no unit for words and flags.
type Value struct {
	Value    *float64 `json:"value,omitempty"`
	Unit     string   `json:"unit,omitempty"`
	Text     string   `json:"text"`
	Relation string   `json:"relation,omitempty"`
	Standard string   `json:"standard,omitempty"`
}
