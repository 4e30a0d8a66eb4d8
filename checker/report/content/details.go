package content

import (
	"slices"
	"strings"

	"plumbrule/checker/result"
)

// Details gives what stands below the headline of a result, a line for each:
// values, reason, remarks, how to mend it, and where it is drawn. It is for
// formats that show each result by itself.
func Details(r *result.Result) []string {
	var lines []string
	tell := func(label, text string) {
		if text != "" {
			lines = append(lines, label+text)
		}
	}
	tell("", strings.Join(Values(r), " | "))
	tell("by engineering: ", Engineered(r))
	tell("to be shown: ", r.Needs)
	switch r.Outcome {
	case result.CouldNotRun:
		tell("reason: ", r.Reason)
	case result.Excused:
		tell("excused: ", r.Reason)
	case result.Outside, result.Within, result.NotShown, result.DoesNotApply:
	}
	tell("", r.Amended)
	for _, note := range r.Notes {
		tell("remark: ", note)
	}
	for i := range r.Remedies {
		tell("tried: ", Tried(r, &r.Remedies[i]))
	}
	for _, mend := range r.Mend {
		tell("to mend: ", mend)
	}
	tell("", Where(r.See, r.Mark))
	return lines
}

// SetsOf gives the sets of the run that a design was held against.
func SetsOf(report *result.Report, d *result.Design) []result.Set {
	if len(d.Sets) == 0 {
		return report.Sets
	}
	return slices.DeleteFunc(slices.Clone(report.Sets), func(s result.Set) bool { return !slices.Contains(d.Sets, s.ID) })
}
