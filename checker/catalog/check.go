package catalog

import (
	"slices"
	"strings"

	"github.com/open-policy-agent/opa/v1/ast"

	"plumbrule/checker/mending"
	"plumbrule/checker/result"
)

// Check is one check as its metadata describes it.
type Check struct {
	ID          string // "stairs/riser-height"
	Aliases     []string
	Topic       string // "stairs"
	Title       string
	Description string
	Why         string
	AppliesWhen string             // follows the words "applies where"
	Consequence result.Consequence // a set may give it another
	Figures     []Figure           // in the order of the metadata
	// Values are the further keys of the rows that the check returns.
	Values   map[string]Kind
	Messages map[string]Template // by key; "outside" is always there
	Exempt   map[string]Template
	Mend     []string
	// Unmended names the messages whose findings Mend says nothing about.
	Unmended []string
	// Tries names the kinds of change that may mend a finding, the usual ones
	// where the metadata names none. It is empty where no change may.
	Tries []mending.Kind
	// Asks says that the limit is that from which on something is asked for, so
	// that no finding is farther outside than another.
	Asks  bool
	Reads []string // ids of other checks whose figures it reads
	File  string
	// Foreign says that a rule set brought the check. Only a process of its own
	// runs it.
	Foreign bool
	// Rules names those of the reserved rules that the module defines.
	Rules []string
}

// Figure is what a check asks a set to give.
type Figure struct {
	Name     string
	Kind     Kind
	Relation result.Relation // empty where the figure limits nothing by itself
	About    string
	Unit     Unit // of a count or a ratio, or of the cells that are
	Optional bool
	// Cells and Keys describe a table; they are empty where the check leaves
	// them to the set.
	Cells Kind
	Keys  []string
	// Gaps says that the check has an answer where a table leaves a cell out,
	// so that sets may do so.
	Gaps bool
}

// Figure gives the figure of that name, or nil.
func (c *Check) Figure(name string) *Figure {
	i := slices.IndexFunc(c.Figures, func(f Figure) bool { return f.Name == name })
	if i < 0 {
		return nil
	}
	return &c.Figures[i]
}

// Limits reports whether readings may rest on the figure: a number must say on
// which side of it the inside lies.
func (f *Figure) Limits() bool {
	numeric := f.Kind.Whole() || f.Kind == Slope || f.Kind == Ratio || f.Kind == Table || f.Kind == Steps
	return f.Relation != "" || !numeric
}

// Path gives the two names under which the check stands in packages and data:
// "stairs" and "riser_height".
func (c *Check) Path() (topic, name string) { return Path(c.ID) }

// Ref gives the reference to a rule of the check: data.checks.stairs.riser_height.readings.
func (c *Check) Ref(rule string) ast.Ref {
	topic, name := c.Path()
	return ast.MustParseRef("data.checks." + topic + "." + name + "." + rule)
}

// Defines reports whether the check has the reserved rule.
func (c *Check) Defines(rule string) bool { return slices.Contains(c.Rules, rule) }

// Path gives the two names under which the check of an id stands in packages
// and data: "stairs" and "riser_height" for stairs/riser-height.
func Path(id string) (topic, name string) {
	topic, name, _ = strings.Cut(id, "/")
	return topic, strings.ReplaceAll(name, "-", "_")
}
