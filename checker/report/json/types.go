package json

import "plumbrule/checker/report/shape"

// version is the version of the shape below.
const version = 1

type report struct {
	Version  int      `json:"version"`
	Sets     []set    `json:"sets"`
	Designs  []design `json:"designs"`
	Cautions []string `json:"cautions"`
}

type set struct {
	shape.Set
	Figures figures `json:"figures"`
}

type figures struct {
	Published      int `json:"published"`
	CommonPractice int `json:"common_practice"`
	Recalled       int `json:"recalled"`
}

type design struct {
	File        string       `json:"file"`
	Kind        string       `json:"kind,omitempty"`
	Title       string       `json:"title,omitempty"`
	Revision    string       `json:"revision,omitempty"`
	Sheets      string       `json:"sheets,omitempty"`
	Against     string       `json:"reviewed_against,omitempty"`
	System      string       `json:"system,omitempty"`
	Sets        []string     `json:"sets,omitempty"`
	Disposition string       `json:"disposition"`
	Counts      shape.Counts `json:"counts"`
	Problems    []problem    `json:"problems,omitempty"`
	Unread      []unread     `json:"unread,omitempty"`
	Findings    []finding    `json:"findings"`
	Readings    []reading    `json:"readings"`
	Earlier     []earlier    `json:"earlier,omitempty"`
}

type problem struct {
	At      string         `json:"at"`
	Start   shape.Position `json:"start"`
	End     shape.Position `json:"end"`
	Message string         `json:"message"`
	Hint    string         `json:"hint,omitempty"`
}

// subject is what findings and readings have in common.
type subject struct {
	Check       string         `json:"check"`
	Title       string         `json:"title,omitempty"`
	Set         string         `json:"set"`
	Clause      string         `json:"clause,omitempty"`
	Status      string         `json:"status,omitempty"`
	Source      string         `json:"source,omitempty"`
	Listing     *shape.Listing `json:"listing,omitempty"`
	Amended     string         `json:"amended,omitempty"`
	Outcome     string         `json:"outcome"`
	Consequence string         `json:"consequence"`
	At          string         `json:"at"`
	Mark        string         `json:"mark,omitempty"`
	See         string         `json:"see,omitempty"`
	Start       shape.Position `json:"start"`
	End         shape.Position `json:"end"`
	Related     []shape.Place  `json:"related,omitempty"`
	Have        *shape.Value   `json:"have,omitempty"`
	Limit       *shape.Value   `json:"limit,omitempty"`
	Margin      *float64       `json:"margin,omitempty"`
	MarginText  string         `json:"margin_text,omitempty"`
	Reason      string         `json:"reason,omitempty"`
	Notes       []string       `json:"notes,omitempty"`
	Engineered  *engineering   `json:"engineered,omitempty"`
	Table       string         `json:"table,omitempty"`
	Row         string         `json:"row,omitempty"`
}

type finding struct {
	Item int `json:"item,omitempty"`
	subject
	Message     string   `json:"message"`
	Needs       string   `json:"needs,omitempty"`
	Why         string   `json:"why,omitempty"`
	Mend        []string `json:"mend"`
	Remedies    []remedy `json:"remedies,omitempty"`
	Fingerprint string   `json:"fingerprint"`
	Waiver      *waiver  `json:"waiver,omitempty"`
}

// remedy is a change of the design that was tried and mends the finding.
type remedy struct {
	Text    string    `json:"text"`
	Changes []change  `json:"changes"`
	Clears  []cleared `json:"clears,omitempty"`
}

// cleared is a finding of the same report.
type cleared struct {
	Check       string `json:"check"`
	Set         string `json:"set"`
	At          string `json:"at"`
	Fingerprint string `json:"fingerprint"`
}

// change has no from where the design has no value there.
type change struct {
	At   string `json:"at"`
	From string `json:"from,omitempty"`
	To   string `json:"to"`
}

type waiver struct {
	By       string `json:"by"`
	Reason   string `json:"reason"`
	Until    string `json:"until,omitempty"`
	Document string `json:"document,omitempty"`
}

// earlier is an item that an earlier report numbered and that is not found
// under its number now.
type earlier struct {
	Item    int     `json:"item"`
	State   string  `json:"state"`
	Outcome string  `json:"outcome"`
	Reason  string  `json:"reason,omitempty"`
	Now     int     `json:"now,omitempty"`
	At      string  `json:"at"`
	Mark    string  `json:"mark,omitempty"`
	See     string  `json:"see,omitempty"`
	Message string  `json:"message"`
	Found   []found `json:"found"`
}

// The states of an earlier item.
const (
	stateOpen   = "open"
	stateClosed = "closed"
)

type found struct {
	Check       string `json:"check"`
	Set         string `json:"set"`
	Fingerprint string `json:"fingerprint"`
}

type reading struct {
	subject
	Message     string `json:"message,omitempty"`
	Fingerprint string `json:"fingerprint,omitempty"`
}

// engineering is what wood engineering allows beside the set's limit.
type engineering struct {
	Value   float64  `json:"value"`
	Unit    string   `json:"unit"`
	Text    string   `json:"text"`
	Governs string   `json:"governs"`
	Working []string `json:"working"`
}

// unread is a value of the design that no check reads.
type unread struct {
	At    string         `json:"at"`
	Start shape.Position `json:"start"`
	End   shape.Position `json:"end"`
}
