package sarif

import (
	"fmt"
	"strings"

	"plumbrule/checker/report/content"
	"plumbrule/checker/result"
)

// The names under which a fingerprint stands: ours, and that of code scanning
// services, which tell alerts apart by it.
const (
	ownFingerprint     = "plumbruleFinding/v1"
	serviceFingerprint = "primaryLocationLineHash"
)

func convert(report *result.Report) log {
	r := run{
		Tool:              tool{driver{Name: "plumbrule", Rules: rules(report), Notifications: notifications()}},
		AutomationDetails: automationDetails{ID: automationID(report.Sets)},
		URIBases:          map[string]artifactBase{base: {text{"The directory that the program was run in."}}},
		Artifacts:         []artifact{},
		ColumnKind:        "unicodeCodePoints",
		Results:           []sarifResult{},
		Properties:        propertiesOf(report),
	}
	c := converter{run: &r, ruleIndex: map[string]int{}, invocation: invocation{Successful: true}}
	for i := range r.Tool.Driver.Rules {
		c.ruleIndex[r.Tool.Driver.Rules[i].ID] = i
	}
	for i := range report.Designs {
		f := file{report.Designs[i].File, i, report.Designs[i].Document}
		r.Artifacts = append(r.Artifacts, artifact{f.artifact()})
		c.design(f, &report.Designs[i])
	}
	r.Invocations = []invocation{c.invocation}
	return log{
		Schema:  "https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/sarif-schema-2.1.0.json",
		Version: "2.1.0",
		Runs:    []run{r},
	}
}

// automationID names the category of the run: two runs with the same sets
// replace each other, runs with other sets stand beside them. What follows the
// last slash would name the single run.
func automationID(sets []result.Set) string {
	ids := make([]string, len(sets))
	for i := range sets {
		ids[i] = sets[i].ID
	}
	return "plumbrule/" + strings.Join(ids, "+") + "/"
}

// converter fills the results and notifications of a run.
type converter struct {
	run        *run
	ruleIndex  map[string]int
	invocation invocation
}

func (c *converter) design(f file, d *result.Design) {
	for i := range d.Problems {
		c.problem(f, &d.Problems[i])
	}
	seen := map[string]int{}
	for i := range d.Findings {
		r := &d.Findings[i]
		if r.Outcome == result.CouldNotRun {
			c.failure(f, r)
			continue
		}
		seen[r.Fingerprint]++
		c.finding(f, r, seen[r.Fingerprint])
	}
}

// problem puts a reason why a design cannot be read into both places.
func (c *converter) problem(f file, p *result.Problem) {
	words := text{message(content.Sentences("cannot read: "+p.Message, hint(p)))}
	at := []location{f.at(p.Span)}
	c.invocation.Successful = false
	c.invocation.Notifications = append(c.invocation.Notifications, notification{
		Descriptor: reference{ID: cannotRead, Index: 0}, Level: levelError, Message: words, Locations: at,
	})
	c.run.Results = append(c.run.Results, sarifResult{
		RuleID: cannotRead, RuleIndex: c.ruleIndex[cannotRead], Level: levelError, Message: words, Locations: at,
	})
}

func hint(p *result.Problem) string {
	if p.Hint == "" {
		return ""
	}
	return "hint: " + p.Hint
}

// failure notes that a check could not run.
func (c *converter) failure(f file, r *result.Result) {
	c.invocation.Successful = false
	c.invocation.Notifications = append(c.invocation.Notifications, notification{
		Descriptor:     reference{ID: couldNotRun, Index: 1},
		AssociatedRule: &reference{ID: r.Check, Index: c.ruleIndex[r.Check]},
		Level:          levelError,
		Message:        text{message(content.Sentences(content.Headline(r), r.Reason))},
		Locations:      []location{f.place(r)},
	})
}

// finding writes a result; count tells apart those of one fingerprint.
func (c *converter) finding(f file, r *result.Result, count int) {
	out := sarifResult{
		RuleID:           r.Check,
		RuleIndex:        c.ruleIndex[r.Check],
		Level:            level(r),
		Message:          text{message(words(r))},
		Locations:        []location{f.place(r)},
		RelatedLocations: f.related(r),
		Properties:       resultPropertiesOf(r),
		Fixes:            f.fixes(r),
	}
	if r.Fingerprint != "" {
		out.PartialFingerprints = map[string]string{
			ownFingerprint:     r.Fingerprint,
			serviceFingerprint: fmt.Sprintf("%s:%d", r.Fingerprint, count),
		}
	}
	if r.Outcome == result.Excused {
		out.Suppressions = []suppression{{Kind: "external", Status: "accepted", Justification: r.Reason}}
	}
	c.run.Results = append(c.run.Results, out)
}

func level(r *result.Result) string {
	switch r.Outcome {
	case result.NotShown:
		return levelWarning
	case result.Excused:
		return levelNote
	}
	return levelOf(r.Consequence)
}
