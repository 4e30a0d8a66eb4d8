package annotations

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"plumbrule/checker/report/content"
	"plumbrule/checker/result"
	"plumbrule/checker/source"
)

const (
	levelError   = "error"
	levelWarning = "warning"
	levelNotice  = "notice"
)

// command is one line for the runner.
type command struct {
	rank           int // the gravest have the least
	level          string
	file           string
	span           source.Span
	title, message string
}

// sorted puts the gravest commands first and keeps the order of equals.
func sorted(commands []command) []command {
	slices.SortStableFunc(commands, func(a, b command) int { return cmp.Compare(a.rank, b.rank) })
	return commands
}

// String spells the command.
func (c command) String() string {
	var properties []string
	add := func(name, value string) { properties = append(properties, name+"="+property(value)) }
	if c.file != "-" {
		add("file", c.file)
		start, end := c.span.Start, c.span.End
		add("line", fmt.Sprint(max(start.Line, 1)))
		switch {
		case start.Line < 1: // the whole file
		case end.Line > start.Line:
			add("endLine", fmt.Sprint(end.Line))
		default:
			add("col", fmt.Sprint(max(start.Column, 1)))
			add("endColumn", fmt.Sprint(max(end.Column-1, start.Column, 1)))
		}
	}
	add("title", c.title)
	return "::" + c.level + " " + strings.Join(properties, ",") + "::" + data(c.message)
}

// weigh gives the place of a result in the order and its level.
func weigh(r *result.Result) (rank int, level string) {
	switch r.Outcome {
	case result.CouldNotRun:
		return 1, levelError
	case result.NotShown:
		return 4 + r.Consequence.Rank(), levelWarning
	case result.Excused:
		return 9, levelNotice
	}
	switch r.Consequence {
	case result.LifeSafety, result.Structure:
		return 1 + r.Consequence.Rank(), levelError
	case result.Durability:
		return 3, levelWarning
	}
	return 8, levelNotice
}

// title names the class, the check and whose figure it is.
func title(r *result.Result) string {
	words := fmt.Sprintf("%s: %s (%s", r.Consequence, content.Title(r), r.Set)
	if clause := content.Clause(r); clause != "" {
		words += " " + clause
	}
	return content.Printable(words + ")")
}

// message says on several lines what the report for the terminal says below a
// first line.
func message(r *result.Result) string {
	lines := append([]string{content.Headline(r)}, content.Details(r)...)
	for i := range lines {
		lines[i] = content.Printable(lines[i])
	}
	return strings.Join(lines, "\n")
}

// logged makes s fit for a line of the log: runners look for the older spelling
// of a command anywhere in it, and for the newer one behind leading blanks,
// which is why a word of ours comes first.
func logged(s string) string {
	return strings.ReplaceAll(content.Printable(s), "##[", "# #[")
}

// data escapes what follows the second pair of colons.
func data(s string) string {
	return strings.NewReplacer("%", "%25", "\r", "%0D", "\n", "%0A").Replace(s)
}

// property escapes the value of a property.
func property(s string) string {
	return strings.NewReplacer("%", "%25", "\r", "%0D", "\n", "%0A", ":", "%3A", ",", "%2C").Replace(s)
}
