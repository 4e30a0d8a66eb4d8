package json

import "plumbrule/checker/report/shape"

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
	shape.Set
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
	File        string       `json:"file"`
	Title       string       `json:"title,omitempty"`
	Revision    string       `json:"revision,omitempty"`
	System      string       `json:"system"`
	Disposition string       `json:"disposition"`
	Counts      shape.Counts `json:"counts"`
}

type change struct {
	Kind string `json:"kind"`
	Name string `json:"name"`
	Old  place  `json:"old"`
	New  place  `json:"new"`
}

type place struct {
	shape.Place
	Missing bool `json:"missing,omitempty"`
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
	Outcome     string         `json:"outcome"`
	At          string         `json:"at"`
	Start       shape.Position `json:"start"`
	End         shape.Position `json:"end"`
	Clause      string         `json:"clause,omitempty"`
	Status      string         `json:"status,omitempty"`
	Listing     *shape.Listing `json:"listing,omitempty"`
	Amended     string         `json:"amended,omitempty"`
	Have        *shape.Value   `json:"have,omitempty"`
	Limit       *shape.Value   `json:"limit,omitempty"`
	Margin      *float64       `json:"margin,omitempty"`
	MarginText  string         `json:"margin_text,omitempty"`
	Needs       string         `json:"needs,omitempty"`
	Reason      string         `json:"reason,omitempty"`
	Message     string         `json:"message,omitempty"`
	Fingerprint string         `json:"fingerprint,omitempty"`
}

type ruleSets struct {
	Design   design    `json:"design"`
	Subjects []subject `json:"subjects"`
	Same     int       `json:"same"`
}

type subject struct {
	Difference  string         `json:"difference"`
	Check       string         `json:"check"`
	Title       string         `json:"title,omitempty"`
	Consequence string         `json:"consequence"`
	Name        string         `json:"name,omitempty"`
	Mark        string         `json:"mark,omitempty"`
	See         string         `json:"see,omitempty"`
	At          string         `json:"at"`
	Start       shape.Position `json:"start"`
	End         shape.Position `json:"end"`
	Count       int            `json:"count"`
	BySet       []bySet        `json:"by_set"`
}

type bySet struct {
	Set     string   `json:"set"`
	Has     bool     `json:"has"`
	Answer  *answer  `json:"answer,omitempty"`
	Figures []figure `json:"figures,omitempty"`
	// Elsewhere is where the set speaks of instead.
	Elsewhere []shape.Position `json:"elsewhere,omitempty"`
}

type figure struct {
	Name   string `json:"name"`
	Text   string `json:"text"`
	Clause string `json:"clause,omitempty"`
	Status string `json:"status,omitempty"`
}

// remark is a finding on a file of waivers.
type remark struct {
	File    string         `json:"file"`
	Check   string         `json:"check"`
	Start   shape.Position `json:"start"`
	Message string         `json:"message"`
}
