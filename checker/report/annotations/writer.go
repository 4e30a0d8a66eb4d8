package annotations

import (
	"bufio"
	"fmt"
	"io"

	"plumbrule/checker/report/content"
	"plumbrule/checker/result"
)

// Writer writes reports as workflow commands. It is safe for concurrent use.
type Writer struct{}

// New gives a writer.
func New() Writer { return Writer{} }

// Write writes a command for each finding and each reason why a design cannot
// be read, one for each disposition, and what holds for the whole run. An error
// is that of the underlying writer.
func (Writer) Write(to io.Writer, report result.Report) error {
	out := bufio.NewWriter(to)
	var commands []command
	for i := range report.Designs {
		commands = append(commands, commandsOf(&report.Designs[i])...)
	}
	for _, c := range sorted(commands) {
		fmt.Fprintln(out, c)
	}
	for i := range report.Designs {
		d := &report.Designs[i]
		fmt.Fprintf(out, "  design %s: %s\n", logged(d.File), content.Disposition(d))
	}
	fmt.Fprintf(out, "  rule sets in use: %s\n", logged(content.SetNames(report.Sets)))
	for i := range report.Sets {
		sets(out, &report.Sets[i])
	}
	fmt.Fprintln(out, "  cautions:")
	for _, caution := range content.Cautions(report.Sets) {
		fmt.Fprintf(out, "  - %s\n", logged(caution))
	}
	return out.Flush()
}

func sets(out io.Writer, set *result.Set) {
	fmt.Fprintf(out, "  set %s: %s\n", logged(set.ID), logged(content.Edition(set)))
	for _, what := range set.NotCovered {
		fmt.Fprintf(out, "    does not cover: %s\n", logged(what))
	}
}

// commandsOf gives the commands for one design, in the order of its findings.
func commandsOf(d *result.Design) []command {
	var list []command
	for i := range d.Problems {
		p := &d.Problems[i]
		message := content.Printable(p.Message)
		if p.Hint != "" {
			message += "\nhint: " + content.Printable(p.Hint)
		}
		list = append(list, command{rank: 0, level: levelError, file: d.File, span: p.Span, title: "cannot read", message: message})
	}
	for i := range d.Findings {
		r := &d.Findings[i]
		rank, level := weigh(r)
		list = append(list, command{rank: rank, level: level, file: d.File, span: r.Span, title: title(r), message: message(r)})
	}
	return list
}
