package wood

import (
	"math"
	"slices"
	"strconv"
	"strings"

	"plumbrule/checker/measure"
)

// Status says how a number is known.
type Status string

// The statuses, the most trustworthy first.
const (
	Computed       Status = "computed"        // follows from the steps before it
	Given          Status = "given"           // handed in by the caller
	Published      Status = "published"       // seen in print, in the source named
	CommonPractice Status = "common practice" // known in the trade, without a source
	Recalled       Status = "recalled"        // from memory of the source named
	Fitted         Status = "fitted"          // chosen so that the cells of a printed table come out
)

// Step is one line of a calculation.
type Step struct {
	Name    string  // the symbol, as the NDS writes it where it has one: Fb′, CM_Fb
	Formula string  // in the symbols of earlier steps and numbers; empty for a number that was put in
	Value   float64 // in Unit
	Unit    string  // psi, in, lb, plf and so on; empty for a ratio
	Status  Status
	Note    string // where the number comes from, or why it applies
}

// Report is what stands behind a result: what was assumed, and the way from the input to the result.
type Report struct {
	Title       string
	Assumptions []string
	Steps       []Step
}

// Lines renders the report, a line for the title, for each assumption and for each step.
func (r Report) Lines() []string {
	lines := []string{r.Title}
	for _, a := range r.Assumptions {
		lines = append(lines, "assumed: "+a)
	}
	for _, s := range r.Steps {
		lines = append(lines, s.String())
	}
	return lines
}

// Weakest is the least trustworthy status among the steps.
func (r Report) Weakest() Status {
	order := []Status{Computed, Given, Published, CommonPractice, Recalled, Fitted}
	weakest := 0
	for _, s := range r.Steps {
		weakest = max(weakest, slices.Index(order, s.Status))
	}
	return order[weakest]
}

// Find gives the last step of that name.
func (r Report) Find(name string) (Step, bool) {
	for _, s := range slices.Backward(r.Steps) {
		if s.Name == name {
			return s, true
		}
	}
	return Step{}, false
}

// String prints the step on one line: w = q · s / 12 = 66.6667 plf.
func (s Step) String() string {
	var line strings.Builder
	line.WriteString(s.Name)
	if s.Formula != "" {
		line.WriteString(" = " + s.Formula)
	}
	line.WriteString(" = " + number(s.Value))
	if s.Unit != "" {
		line.WriteString(" " + s.Unit)
	}
	if s.Unit == "in" && math.Abs(s.Value) >= 12 {
		line.WriteString(" (" + lengthOf(s.Value).Sixteenths() + ")")
	}
	var tail []string
	if s.Note != "" {
		tail = append(tail, s.Note)
	}
	if s.Status != Computed {
		tail = append(tail, string(s.Status))
	}
	if len(tail) > 0 {
		line.WriteString("  [" + strings.Join(tail, "; ") + "]")
	}
	return line.String()
}

// number prints six significant digits, never an exponent, without trailing zeros.
func number(v float64) string {
	decimals := 0
	if v != 0 {
		decimals = max(0, 5-int(math.Floor(math.Log10(math.Abs(v)))))
	}
	text := strconv.FormatFloat(v, 'f', min(decimals, 12), 64)
	if strings.Contains(text, ".") {
		text = strings.TrimRight(strings.TrimRight(text, "0"), ".")
	}
	if text == "-0" {
		return "0"
	}
	return text
}

// working collects a report while numbers are found.
type working struct{ Report }

func (w *working) assume(text string) {
	if !slices.Contains(w.Assumptions, text) {
		w.Assumptions = append(w.Assumptions, text)
	}
}

// put records a number that was put in, once.
func (w *working) put(name string, value float64, unit string, status Status, note string) float64 {
	if s, ok := w.Find(name); !ok || s.Value != value {
		w.Steps = append(w.Steps, Step{Name: name, Value: value, Unit: unit, Status: status, Note: note})
	}
	return value
}

// given records a number of the caller's.
func (w *working) given(name string, value float64, unit, note string) float64 {
	return w.put(name, value, unit, Given, note)
}

// find records a number and the formula it was found by.
func (w *working) find(name, formula string, value float64, unit string) float64 {
	w.Steps = append(w.Steps, Step{Name: name, Formula: formula, Value: value, Unit: unit, Status: Computed})
	return value
}

// fork copies the working, so that two ways can go on from here.
func (w *working) fork() *working {
	return &working{Report{
		Title:       w.Title,
		Assumptions: slices.Clone(w.Assumptions),
		Steps:       slices.Clone(w.Steps),
	}}
}

func (w *working) report() Report { return w.Report }

// lengthOf rounds inches to a whole length.
func lengthOf(inches float64) measure.Length {
	return measure.Length(math.Round(inches * float64(measure.Inch)))
}
