package main

import (
	"bytes"
	"fmt"
	"os"
	"strings"

	"github.com/spf13/cobra"

	"plumbrule/checker"
	"plumbrule/checker/config"
	"plumbrule/checker/report"
	"plumbrule/checker/report/items"
	"plumbrule/checker/report/json"
	"plumbrule/checker/result"
)

// checkFlags are the flags of the check command as typed.
type checkFlags struct {
	runFlags
	reports  []string
	previous string
	failOn   string
	failOpen bool
	verbose  bool
	compact  bool
	remedies remediesFlag
}

func newCheckCommand(env environment) *cobra.Command {
	var flags checkFlags
	cmd := &cobra.Command{
		Use:   "check DESIGN...",
		Short: "Check designs against rule sets",
		Long: "Check designs and print what is outside, what is not shown, and by how much the rest is inside.\n" +
			"A DESIGN is a file, a directory (searched for " + strings.Join(designEndings(), ", ") + ") or - for standard input.\n\n" +
			"What flags leave open is taken from the " + config.FileName + " nearest above each design.\n\n" +
			"Exit codes: 0 nothing at or above the failing class; 1 findings; 2 wrong flags, configuration or rule sets;\n" +
			"3 a design cannot be read; 4 a check failed to run, or a report could not be written.",
		Example: "  plumbrule check fixtures/designs/ketch-point.deck.yaml\n" +
			"  plumbrule check --set irc-2021 --report json=out.json --report text jobs/\n" +
			"  plumbrule check --report letter=letter.md --report json=next.json --previous last.json jobs/heron.deck.yaml",
		Args: named(0, "designs: files, directories, or - for standard input"),
		RunE: func(cmd *cobra.Command, args []string) error { return check(cmd, env, flags, args) },
	}
	f := cmd.Flags()
	flags.add(f, usualSets())
	f.StringArrayVar(&flags.reports, "report", nil, "`FORMAT or FORMAT=FILE`; repeatable; formats: "+strings.Join(formatNames(), ", ")+" (default text)")
	f.StringVar(&flags.previous, "previous", "", "`FILE` with an earlier json report, whose items keep their numbers in the formats letter and json")
	f.StringVar(&flags.failOn, "fail-on", string(result.Structure), "`CLASS` from which a finding gives exit code 1: "+strings.Join(classNames(), ", "))
	f.BoolVar(&flags.failOpen, "fail-on-not-shown", false, "items not shown give exit code 1 too")
	f.BoolVarP(&flags.verbose, "verbose", "v", false, "also print what is within, what does not apply and why a check matters")
	f.BoolVar(&flags.compact, "compact", false, "one line per finding")
	flags.remedies.add(f, "on for a single design, off for several")
	return cmd
}

func findReport(name string) (report.Format, error) {
	for _, f := range report.Formats() {
		if f.Name == name {
			return f, nil
		}
	}
	return report.Format{}, unknown("report format", name, "formats", formatNames())
}

func formatNames() []string {
	var names []string
	for _, f := range report.Formats() {
		names = append(names, f.Name)
	}
	return names
}

func classNames() []string {
	var names []string
	for _, c := range result.Consequences() {
		names = append(names, className(c))
	}
	return names
}

// className is a class as a flag takes it, without the space.
func className(c result.Consequence) string { return strings.ReplaceAll(string(c), " ", "-") }

func (f checkFlags) targets() ([]target[report.Format], error) {
	names := f.reports
	if len(names) == 0 {
		names = []string{"text"}
	}
	return readTargets(names, findReport)
}

func (f checkFlags) class() (result.Consequence, error) {
	for _, c := range result.Consequences() {
		if f.failOn == className(c) || f.failOn == string(c) {
			return c, nil
		}
	}
	return "", fmt.Errorf("--fail-on: %w", unknown("class", f.failOn, "classes", classNames()))
}

func check(cmd *cobra.Command, env environment, flags checkFlags, args []string) error {
	if _, err := flags.targets(); err != nil {
		return err
	}
	if _, err := flags.class(); err != nil {
		return err
	}
	previous, err := readPrevious(flags.previous)
	if err != nil {
		return err
	}
	inputs, err := readDesigns(env, args)
	if err != nil {
		return err
	}
	plan, err := newPlan(flags, cmd.Flags().Changed, inputs)
	if err != nil {
		return err
	}
	flags.reports = plan.reports
	targets, err := flags.targets()
	if err != nil {
		return err
	}
	for _, t := range targets {
		if err := ready(t.file, inputs...); err != nil {
			return err
		}
	}
	remedies, err := flags.wantsRemedies(len(inputs), targets)
	if err != nil {
		return err
	}
	line := newProgress(env, len(inputs))
	c, err := plan.start(env, checker.Options{Progress: line.done, Remedies: remedies, Trying: line.trying})
	if err != nil {
		return err
	}
	run := c.Check(cmd.Context(), inputs...)
	line.end()
	if err := stopped(cmd.Context()); err != nil {
		return err
	}
	var pages []page
	for _, t := range targets {
		p, err := flags.lay(env, t, previous, run)
		if err != nil {
			return &exitError{exitFailed, err}
		}
		pages = append(pages, p)
	}
	if err := handOut(env, pages...); err != nil {
		return err
	}
	code := exitClean
	for i := range run.Designs {
		d := &run.Designs[i]
		s := plan.settingsOf(i, d, inputs)
		code = weightier(code, codeOf(d, s.class, s.failOpen))
	}
	if code != exitClean {
		return &exitError{code, nil}
	}
	return nil
}

// readPrevious reads the items of an earlier report; no name is a first review.
func readPrevious(name string) (items.Previous, error) {
	if name == "" {
		return nil, nil
	}
	data, err := os.ReadFile(name)
	if err != nil {
		return nil, fmt.Errorf("read the previous report: %w; a first review has none, leave --previous out", err)
	}
	previous, err := json.ReadPrevious(data)
	if err != nil {
		return nil, fmt.Errorf("read the previous report %s: %w", name, err)
	}
	return previous, nil
}

// lay lays a report out whole, so that a format that fails leaves no half a
// file.
func (f checkFlags) lay(env environment, t target[report.Format], previous items.Previous, run result.Report) (page, error) {
	options := report.Options{Verbose: f.verbose, Compact: f.compact, Previous: previous}
	if t.file == "" {
		options.Width, options.Colour = env.layout()
	}
	var text bytes.Buffer
	if err := t.format.New(options).Write(&text, run); err != nil {
		return page{}, fmt.Errorf("write the %s report: %w", t.format.Name, err)
	}
	return page{t.file, text.Bytes()}, nil
}

// codeOf is the exit code that one design asks for.
func codeOf(d *result.Design, class result.Consequence, failOpen bool) int {
	if len(d.Problems) > 0 {
		return exitUnreadable
	}
	if d.Counts.CouldNotRun > 0 {
		return exitFailed
	}
	for i := range d.Findings {
		r := &d.Findings[i]
		if r.Outcome == result.Outside && r.Consequence.AtLeast(class) || r.Outcome == result.NotShown && failOpen {
			return exitFindings
		}
	}
	return exitClean
}
