package sarif

import (
	"slices"
	"strings"

	"plumbrule/checker/report/content"
	"plumbrule/checker/result"
)

// The ids of what is no check. They hold no slash, as the ids of checks do.
const (
	cannotRead  = "cannot-read"
	couldNotRun = "could-not-run"
)

const (
	levelError   = "error"
	levelWarning = "warning"
	levelNote    = "note"
)

// levelOf gives the level of what is outside its limit.
func levelOf(c result.Consequence) string {
	switch c {
	case result.LifeSafety, result.Structure:
		return levelError
	case result.Durability:
		return levelWarning
	}
	return levelNote
}

// rules describes the checks of the run, those included that found nothing, by
// id, after the rule for designs that cannot be read.
func rules(report *result.Report) []descriptor {
	byID := map[string]*descriptor{}
	mend := map[string][]string{}
	why := map[string]string{}
	for i := range report.Designs {
		for _, list := range [][]result.Result{report.Designs[i].Findings, report.Designs[i].Readings} {
			for j := range list {
				r := &list[j]
				if byID[r.Check] == nil {
					byID[r.Check] = &descriptor{ID: r.Check, Short: &text{content.Title(r)}, consequence: string(r.Consequence),
						Default: &configuration{levelOf(r.Consequence)}}
				}
				if why[r.Check] == "" {
					why[r.Check] = r.Why
				}
				for _, m := range r.Mend {
					if !slices.Contains(mend[r.Check], m) {
						mend[r.Check] = append(mend[r.Check], m)
					}
				}
			}
		}
	}
	list := []descriptor{unreadableRule()}
	for id, d := range byID {
		if why[id] != "" {
			d.Full = &text{why[id]}
		}
		slices.Sort(mend[id])
		d.Help = helpOn(id, why[id], mend[id], content.Decides(report.Sets))
		topic, _, _ := strings.Cut(id, "/")
		d.Properties = &ruleProperties{Tags: []string{d.consequence, topic}}
		list = append(list, *d)
	}
	slices.SortFunc(list[1:], func(a, b descriptor) int { return strings.Compare(a.ID, b.ID) })
	return list
}

func unreadableRule() descriptor {
	const words = "A design cannot be read, so that nothing in it was checked."
	return descriptor{
		ID: cannotRead, Short: &text{"Design that cannot be read"}, Full: &text{words},
		Help:       &help{Text: words, Markdown: words},
		Default:    &configuration{levelError},
		Properties: &ruleProperties{Tags: []string{"reading"}},
	}
}

// helpOn says of a check why it matters, how to mend what it finds, and who
// decides.
func helpOn(id, why string, mend []string, decides string) *help {
	var plain, marked []string
	if why != "" {
		plain, marked = append(plain, why), append(marked, why)
	}
	if len(mend) > 0 {
		plain = append(plain, "To mend: "+strings.Join(mend, "; ")+".")
		marked = append(marked, "To mend:\n\n- "+strings.Join(mend, "\n- "))
	}
	plain = append(plain, "More: plumbrule explain "+id)
	marked = append(marked, "More: `plumbrule explain "+id+"`")
	return &help{Text: strings.Join(append(plain, decides), "\n"), Markdown: strings.Join(append(marked, decides), "\n\n")}
}

// notifications describes what a run may have to say about itself.
func notifications() []descriptor {
	return []descriptor{
		{ID: cannotRead, Short: &text{"Design that cannot be read"}},
		{ID: couldNotRun, Short: &text{"Check that could not run"}},
	}
}
