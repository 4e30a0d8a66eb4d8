package pages

import (
	"fmt"
	"slices"
	"strings"

	"plumbrule/checker/report/text"
	"plumbrule/checker/result"
)

// printed gives what the text report prints of one check: its findings with
// one outcome, each with its line of the design and what stands under it.
func printed(s *shot, check string, outcome result.Outcome) (string, error) {
	out, err := write(s, check, outcome, text.Options{})
	if err != nil {
		return "", err
	}
	var kept []string
	for part := range strings.SplitSeq(out, "\n\n") {
		// A section's title stands above its first finding, after an empty line.
		if strings.HasPrefix(part, s.file+":") {
			kept = append(kept, part)
		} else if _, below, ok := strings.Cut(part, "\n"+s.file+":"); ok {
			kept = append(kept, s.file+":"+below)
		}
	}
	if len(kept) == 0 {
		return "", fmt.Errorf("the report on %s prints nothing of what is %s", s.file, outcome)
	}
	return strings.Join(kept, "\n\n"), nil
}

// inside gives the lines in which the verbose report lists what of one check is
// within its limits.
func inside(s *shot, check string) (string, error) {
	out, err := write(s, check, result.Within, text.Options{Verbose: true})
	if err != nil {
		return "", err
	}
	_, below, _ := strings.Cut(out, "\nWITHIN (")
	section, _, _ := strings.Cut(below, "\n\n")
	_, lines, found := strings.Cut(section, "\n")
	if !found {
		return "", fmt.Errorf("the report on %s lists nothing of the check as within", s.file)
	}
	return lines, nil
}

// write prints a report that holds the results of one check with one outcome.
func write(s *shot, check string, outcome result.Outcome, options text.Options) (string, error) {
	d := *s.design()
	other := func(r result.Result) bool { return r.Check != check || r.Outcome != outcome }
	d.Findings = slices.DeleteFunc(slices.Clone(d.Findings), other)
	d.Readings = slices.DeleteFunc(slices.Clone(d.Readings), other)
	d.Counts = result.Tally(d.Findings, d.Readings)
	var out strings.Builder
	report := result.Report{Sets: s.run.Sets, Designs: []result.Design{d}}
	if err := text.New(options).Write(&out, report); err != nil {
		return "", fmt.Errorf("printing the report on %s: %w", s.file, err)
	}
	return out.String(), nil
}
