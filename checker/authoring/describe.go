package authoring

import (
	"plumbrule/checker/catalog"
	"plumbrule/checker/ruleset"
)

// described is the set as others read it beside the rows: who says so, and the
// words of the checks.
type described struct {
	ID         string                    `json:"id"`
	Title      string                    `json:"title"`
	Edition    string                    `json:"edition"`
	Publisher  string                    `json:"publisher"`
	Place      string                    `json:"place,omitempty"`
	Extends    string                    `json:"extends,omitempty"`
	System     string                    `json:"system"`
	Scope      string                    `json:"scope"`
	NotCovered []string                  `json:"not_covered"`
	Checks     map[string]describedCheck `json:"checks"` // by id
	Off        map[string]string         `json:"off"`    // why, by id
}

type describedCheck struct {
	Topic       string                     `json:"topic"` // data.checks.<topic>.<name>
	Name        string                     `json:"name"`
	Title       string                     `json:"title"`
	Why         string                     `json:"why"`
	Consequence string                     `json:"consequence"`
	AppliesWhen string                     `json:"applies_when"`
	Clause      string                     `json:"clause"`
	Note        string                     `json:"note,omitempty"`
	Figures     map[string]describedFigure `json:"figures"`  // by name
	Messages    map[string]string          `json:"messages"` // by key
	Exempt      map[string]string          `json:"exempt"`
	Mend        []string                   `json:"mend"`
}

type describedFigure struct {
	Type     string `json:"type"`
	Relation string `json:"relation,omitempty"`
	About    string `json:"about"`
	Text     string `json:"text"` // as the standard writes it; the title of a table
	Clause   string `json:"clause"`
	Status   string `json:"status"`
	Source   string `json:"source,omitempty"`
	Note     string `json:"note,omitempty"`
	Amended  string `json:"amended,omitempty"`
}

func describe(set *ruleset.Set) described {
	d := described{
		ID: set.ID, Title: set.Title, Edition: set.Edition, Publisher: set.Publisher, Place: set.Place, Extends: set.Extends,
		System: set.System.String(), Scope: set.Scope, NotCovered: append([]string{}, set.NotCovered...),
		Checks: map[string]describedCheck{}, Off: map[string]string{},
	}
	for i := range set.Checks {
		given := &set.Checks[i]
		if given.Off != nil {
			d.Off[given.ID] = given.Off.String()
			continue
		}
		d.Checks[given.ID] = describeCheck(set.Describe(given.ID), given)
	}
	return d
}

func describeCheck(check *catalog.Check, given *ruleset.Check) describedCheck {
	d := describedCheck{
		Title: check.Title, Why: check.Why, Consequence: string(check.Consequence), AppliesWhen: check.AppliesWhen,
		Clause: given.Clause, Note: given.Note, Figures: map[string]describedFigure{},
		Messages: lines(check.Messages), Exempt: lines(check.Exempt), Mend: append([]string{}, check.Mend...),
	}
	d.Topic, d.Name = check.Path()
	for i := range given.Figures {
		f := &given.Figures[i]
		asked := check.Figure(f.Name)
		d.Figures[f.Name] = describedFigure{
			Type: string(f.Kind), Relation: string(asked.Relation), About: asked.About, Text: f.Text, Clause: f.Clause,
			Status: string(f.Status), Source: f.Source, Note: f.Note, Amended: f.Amended(),
		}
	}
	return d
}

func lines(templates map[string]catalog.Template) map[string]string {
	texts := map[string]string{}
	for key, template := range templates {
		texts[key] = template.String()
	}
	return texts
}
