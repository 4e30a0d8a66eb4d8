package json

// version is the version of the shape below.
const version = 1

// comparison is a whole file; one of Revisions and RuleSets is there.
type comparison struct {
	Version   int        `json:"version"`
	Sets      []set      `json:"sets"`
	Revisions *revisions `json:"revisions,omitempty"`
	RuleSets  *ruleSets  `json:"rule_sets,omitempty"`
	Waivers   []remark   `json:"waivers,omitempty"`
	Cautions  []string   `json:"cautions"`
}

type set struct {
	ID         string   `json:"id"`
	Edition    string   `json:"edition"`
	Title      string   `json:"title"`
	Place      string   `json:"place,omitempty"`
	Extends    string   `json:"extends,omitempty"`
	NotCovered []string `json:"not_covered"`
	// Lacks are checks that another set of the comparison has.
	Lacks []string `json:"lacks,omitempty"`
}

type revisions struct {
	Old      design    `json:"old"`
	New      design    `json:"new"`
	Changes  []change  `json:"changes"`
	Findings []finding `json:"findings"`
}

type design struct {
	File        string `json:"file"`
	Title       string `json:"title,omitempty"`
	Revision    string `json:"revision,omitempty"`
	System      string `json:"system"`
	Disposition string `json:"disposition"`
	Counts      counts `json:"counts"`
}

type counts struct {
	Outside      int `json:"outside"`
	Within       int `json:"within"`
	NotShown     int `json:"not_shown"`
	DoesNotApply int `json:"does_not_apply"`
	Excused      int `json:"excused"`
	CouldNotRun  int `json:"could_not_run"`
}

type change struct {
	Kind string `json:"kind"`
	Name string `json:"name"`
	Old  place  `json:"old"`
	New  place  `json:"new"`
}

type place struct {
	At      string   `json:"at"`
	Start   position `json:"start"`
	End     position `json:"end"`
	Text    string   `json:"text,omitempty"`
	Missing bool     `json:"missing,omitempty"`
}

type position struct {
	Line   int `json:"line"`
	Column int `json:"column"`
}

type finding struct {
	State       string  `json:"state"`
	Trend       string  `json:"trend,omitempty"`
	Reason      string  `json:"reason,omitempty"`
	Check       string  `json:"check"`
	Title       string  `json:"title,omitempty"`
	Set         string  `json:"set"`
	Consequence string  `json:"consequence"`
	Mark        string  `json:"mark,omitempty"`
	See         string  `json:"see,omitempty"`
	Message     string  `json:"message"`
	Old         *answer `json:"old,omitempty"`
	New         *answer `json:"new,omitempty"`
	Shown       *place  `json:"shown,omitempty"`
}

// answer is what one revision or one set makes of a subject.
type answer struct {
	Outcome     string   `json:"outcome"`
	At          string   `json:"at"`
	Start       position `json:"start"`
	End         position `json:"end"`
	Clause      string   `json:"clause,omitempty"`
	Status      string   `json:"status,omitempty"`
	Listing     *listing `json:"listing,omitempty"`
	Amended     string   `json:"amended,omitempty"`
	Have        *value   `json:"have,omitempty"`
	Limit       *value   `json:"limit,omitempty"`
	Margin      *float64 `json:"margin,omitempty"`
	MarginText  string   `json:"margin_text,omitempty"`
	Needs       string   `json:"needs,omitempty"`
	Reason      string   `json:"reason,omitempty"`
	Message     string   `json:"message,omitempty"`
	Fingerprint string   `json:"fingerprint,omitempty"`
}

// listing is where the design itself states the limit.
type listing struct {
	At      string   `json:"at"`
	Start   position `json:"start"`
	End     position `json:"end"`
	Text    string   `json:"text,omitempty"`
	Product string   `json:"product,omitempty"`
}

// value has no number and no unit for words and flags.
type value struct {
	Value    *float64 `json:"value,omitempty"`
	Unit     string   `json:"unit,omitempty"`
	Text     string   `json:"text"`
	Relation string   `json:"relation,omitempty"`
	Standard string   `json:"standard,omitempty"`
}

type ruleSets struct {
	Design   design    `json:"design"`
	Subjects []subject `json:"subjects"`
	Same     int       `json:"same"`
}

type subject struct {
	Difference  string   `json:"difference"`
	Check       string   `json:"check"`
	Title       string   `json:"title,omitempty"`
	Consequence string   `json:"consequence"`
	Name        string   `json:"name,omitempty"`
	Mark        string   `json:"mark,omitempty"`
	See         string   `json:"see,omitempty"`
	At          string   `json:"at"`
	Start       position `json:"start"`
	End         position `json:"end"`
	Count       int      `json:"count"`
	BySet       []bySet  `json:"by_set"`
}

type bySet struct {
	Set     string   `json:"set"`
	Has     bool     `json:"has"`
	Answer  *answer  `json:"answer,omitempty"`
	Figures []figure `json:"figures,omitempty"`
	// Elsewhere is where the set speaks of instead.
	Elsewhere []position `json:"elsewhere,omitempty"`
}

type figure struct {
	Name   string `json:"name"`
	Text   string `json:"text"`
	Clause string `json:"clause,omitempty"`
	Status string `json:"status,omitempty"`
}

// remark is a finding on a file of waivers.
type remark struct {
	File    string   `json:"file"`
	Check   string   `json:"check"`
	Start   position `json:"start"`
	Message string   `json:"message"`
}
