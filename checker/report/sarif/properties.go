package sarif

import (
	"plumbrule/checker/report/content"
	"plumbrule/checker/result"
)

// runProperties say what the standard has no place for.
type runProperties struct {
	Sets     []setProperties    `json:"sets"`
	Designs  []designProperties `json:"designs"`
	Cautions []string           `json:"cautions"`
}

type setProperties struct {
	ID         string   `json:"id"`
	Edition    string   `json:"edition,omitempty"`
	Title      string   `json:"title,omitempty"`
	Publisher  string   `json:"publisher,omitempty"`
	Scope      string   `json:"scope,omitempty"`
	NotCovered []string `json:"notCovered,omitempty"`
}

type designProperties struct {
	URI         string         `json:"uri"`
	Title       string         `json:"title,omitempty"`
	Revision    string         `json:"revision,omitempty"`
	Disposition string         `json:"disposition"`
	Counts      map[string]int `json:"counts,omitempty"` // the encoder sorts the keys
}

type resultProperties struct {
	Outcome     string `json:"outcome"`
	Consequence string `json:"consequence"`
	Set         string `json:"set"`
	Clause      string `json:"clause,omitempty"`
	Status      string `json:"status,omitempty"`
	Listing     string `json:"listing,omitempty"`
	Measured    string `json:"measured,omitempty"`
	Limit       string `json:"limit,omitempty"`
	Margin      string `json:"margin,omitempty"`
	Needs       string `json:"needs,omitempty"`
	Mark        string `json:"mark,omitempty"`
	See         string `json:"see,omitempty"`
}

func propertiesOf(report *result.Report) runProperties {
	p := runProperties{Sets: []setProperties{}, Designs: []designProperties{}, Cautions: content.Cautions(report.Sets)}
	for i := range report.Sets {
		s := &report.Sets[i]
		p.Sets = append(p.Sets, setProperties{s.ID, s.Edition, s.Title, s.Publisher, s.Scope, s.NotCovered})
	}
	for i := range report.Designs {
		d := &report.Designs[i]
		entry := designProperties{URI: uri(d.File), Title: d.Title, Revision: d.Revision, Disposition: content.Disposition(d)}
		if len(d.Problems) == 0 {
			entry.Counts = map[string]int{}
			for _, tally := range content.Tallies(d.Counts) {
				entry.Counts[string(tally.Outcome)] = tally.N
			}
		}
		p.Designs = append(p.Designs, entry)
	}
	return p
}

func resultPropertiesOf(r *result.Result) *resultProperties {
	p := &resultProperties{
		Outcome: string(r.Outcome), Consequence: string(r.Consequence), Set: r.Set, Clause: r.Clause, Status: r.Status,
		Measured: content.Measured(r), Limit: content.Limit(r), Margin: content.Margin(r), Needs: r.Needs, Mark: r.Mark, See: r.See,
	}
	if r.Listing != nil {
		p.Listing = content.Clause(r)
	}
	return p
}
