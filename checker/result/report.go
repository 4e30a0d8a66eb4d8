package result

import (
	"plumbrule/checker/measure"
	"plumbrule/checker/source"
	"plumbrule/checker/wording"
)

// Report is one run: the sets that were active and what they found in each
// design, in the order the designs were given.
type Report struct {
	Sets    []Set
	Designs []Design
}

// Set names an active rule set.
type Set struct {
	ID, Edition, Title, Publisher, Scope string
	// Place is the town or state whose rules these are, and Extends the id of
	// the set that they amend; empty for a model code.
	Place, Extends string
	// NotCovered lists what the set does not look at, in its own words.
	NotCovered []string
	// Figures counts the set's figures by how far they can be trusted.
	Figures FigureCounts
	// Wording says things in the set's own words.
	Wording wording.Wording
}

// FigureCounts counts figures by status.
type FigureCounts struct{ Published, CommonPractice, Recalled int }

// KindWaivers marks a file of waivers among the designs.
const KindWaivers = "waivers"

// Design is what was found in one file.
type Design struct {
	// Kind is empty for a design. A file of waivers stands behind the designs
	// where some of its entries excuse nothing or have run out.
	Kind string
	// File is the name as given on the command line, "-" for standard input.
	File string
	// Document holds the text for source lines; nil if the file could not be opened.
	Document *source.Document
	Title    string
	Revision string
	// Sheets and ReviewedAgainst are what the title block says of the set of
	// drawings and of what it is held against besides the rule sets.
	Sheets, ReviewedAgainst string
	// Sets are the ids of the rule sets that the design was held against.
	Sets []string
	// System is the design's own system of units; values print in it first.
	System measure.System
	// Problems are the reasons why the design could not be read; when there
	// are any, nothing was checked and the disposition is NotReviewed.
	Problems []Problem
	// Unread are values that the design gives and no check reads.
	Unread      []Place
	Disposition Disposition
	Counts      Counts
	// Findings holds every outcome but within and does not apply, gravest first.
	Findings []Result
	// Readings holds within and does not apply, by check.
	Readings []Result
}

// Counts tallies outcomes. Counted are subjects, not checks.
type Counts struct {
	Outside, Within, NotShown, DoesNotApply, Excused, CouldNotRun int
}

// Problem is an error in the design file itself.
type Problem struct {
	Span    source.Span
	Pointer string
	Message string // one line, lower case, no full stop
	Hint    string // what was probably meant; may be empty
}

// Result is the outcome of one check of one set on one subject.
type Result struct {
	Check  string // "stairs/riser-height"
	Title  string
	Set    string // id of the set
	Clause string // of the figure that decided; empty where Listing decided
	Status string // "published", "common practice", "recalled" or StatedInDesign
	Source string // where the figure was seen; empty if recalled
	// Listing is what the design itself says that a product's listing allows,
	// where that is the limit; nil where a figure of the set is.
	Listing *Listing
	// Amended says in one line who amended the figure that decided, under which
	// clause, and what it replaced; empty for a figure of the set itself.
	Amended     string
	Outcome     Outcome
	Consequence Consequence
	// At holds JSON pointers into the design; the first is the primary place.
	At      []string
	Mark    string // mark of the nearest element that has one
	See     string // its sheet or detail
	Span    source.Span
	Related []Place
	Have    *Value
	Limit   *Value
	// Margin is positive inside the limit, in the unit of Have; nil where
	// values cannot be subtracted.
	Margin *Value
	// Table and Row name the table and the row of it that the limit was read in,
	// in the table's own words; empty where no table was read.
	Table, Row string
	// Engineered is the answer of wood engineering beside the set's limit; nil
	// where there is none.
	Engineered *Engineered
	// Message says what was found, one line, lower case, no full stop.
	Message string
	// Needs is the field that is not shown, as "guards[].height".
	Needs string
	// Reason says why the check does not apply or could not run.
	Reason string
	Why    string   // why the check matters
	Mend   []string // general ways to mend it
	// Remedies are changes of this design that mend it, the smallest first; nil
	// where none was looked for or found.
	Remedies []Remedy
	// Notes carry remarks that belong to the figure, as "this figure is recalled".
	Notes       []string
	Fingerprint string // stable over moved lines and changed values
	// Waiver says who excused the result; nil for all outcomes but excused.
	Waiver *Waiver
}

// Waiver is the leave to keep what is outside a limit.
type Waiver struct {
	By, Reason string
	Until      string // last day, as 2027-01-31; empty for no end
	Document   string // where it is written; may be empty
}

// StatedInDesign is the status of a limit that no set gives: the design says so
// of a product, and nobody compared it with the product's listing.
const StatedInDesign = "stated in the design"

// Listing is the place of the design that says what a product is listed for.
type Listing struct {
	Place
	// Product names product and listing as the design does; empty where it does
	// not.
	Product string
}

// Place is a second place that a finding concerns.
type Place struct {
	Pointer string
	Span    source.Span
	Text    string // the value as typed
}

// Value is a measured or limiting value ready to print.
type Value struct {
	// Number is the value in Unit; meaningless when Unit is empty.
	Number float64
	Unit   string // "in", "mm", "deg", "psf", "kPa", "lb", "N", "ratio", "count"; "" for words
	// Text is the value in the design's system: 7-3/4".
	Text string
	// Standard is the limit in the set's own system when that differs.
	Standard string
	// Relation is set on limits only.
	Relation Relation
}

// Engineered is what wood engineering by first principles allows.
type Engineered struct {
	Limit   Value
	Governs string   // what allows no more: bending, shear
	Working []string // assumptions and steps, each to be redone by hand
}
