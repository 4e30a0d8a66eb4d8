package main

import (
	"errors"
	"fmt"
	"strings"

	"github.com/spf13/cobra"

	"plumbrule/checker"
	"plumbrule/checker/config"
	"plumbrule/checker/result"
)

// compareFlags are the flags of the compare command as typed.
type compareFlags struct {
	checkFlags
	beside []string
}

func newCompareCommand(env environment) *cobra.Command {
	var flags compareFlags
	cmd := &cobra.Command{
		Use:   "compare OLD NEW, or compare --sets A,B DESIGN",
		Short: "Compare two revisions of a design, or rule sets on one design",
		Long: "Compare two revisions of a design: what was changed, each value with its place in both files, and what\n" +
			"became of the findings: gone, still outside and by how much before and now, new, not shown any more, now\n" +
			"shown, excused. Elements are known by their marks, wherever in a list they stand, and a value that is typed\n" +
			"in another unit is the same value. Both revisions are held against the rule sets and waivers that are for\n" +
			"the new one.\n\n" +
			"With --sets, compare what rule sets make of one design: first what has another outcome, then what has another\n" +
			"limit with the same outcome, then the checks that not all of the sets have.\n\n" +
			"What flags leave open is taken from the " + config.FileName + " nearest above the design.\n\n" +
			"Exit codes: 0 nothing is worse; 1 something at or above the failing class is new, further outside, or was\n" +
			"outside, excused or not, and cannot be seen any more, and with --sets: a set behind the first finds something\n" +
			"outside that the first does not; 2 wrong flags, configuration or rule sets; 3 a design cannot be read; 4 a\n" +
			"check failed to run, on either revision, or a comparison could not be written.",
		Example: "  plumbrule compare fixtures/compare/before.deck.yaml fixtures/compare/after.deck.yaml\n" +
			"  plumbrule compare --report markdown=remarks.md --report text jobs/heron.rev-a.deck.yaml jobs/heron.deck.yaml\n" +
			"  plumbrule compare --sets irc-2018,irc-2021,us-mi fixtures/designs/ketch-point.deck.yaml",
		Args: named(2, "the old and the new revision, or with --sets one design"),
		RunE: func(cmd *cobra.Command, args []string) error { return runCompare(cmd, env, flags, args) },
	}
	f := cmd.Flags()
	f.StringArrayVar(&flags.beside, "sets", nil, "compare rule sets, by `A,B`: ids or files with commas between them; repeatable")
	flags.add(f, usualSets())
	f.StringArrayVar(&flags.reports, "report", nil, "`FORMAT or FORMAT=FILE`; repeatable; formats: "+strings.Join(comparisonNames(), ", ")+" (default text)")
	f.StringVar(&flags.failOn, "fail-on", string(result.Structure), "`CLASS` from which what is worse gives exit code 1: "+strings.Join(classNames(), ", "))
	f.BoolVar(&flags.failOpen, "fail-on-not-shown", false, "items not shown any more or newly asked for give exit code 1 too")
	f.BoolVarP(&flags.verbose, "verbose", "v", false, "also list what is still not shown and what is not asked for any more")
	return cmd
}

// ids splits what --sets names.
func (f compareFlags) ids() []string {
	var ids []string
	for _, list := range f.beside {
		for id := range strings.SplitSeq(list, ",") {
			if id = strings.TrimSpace(id); id != "" {
				ids = append(ids, id)
			}
		}
	}
	return ids
}

// settle says whether sets are compared, or what is wrong with flags and
// arguments.
func (f *compareFlags) settle(cmd *cobra.Command, args []string) (sets bool, err error) {
	if _, err := f.class(); err != nil {
		return false, err
	}
	if len(f.reports) == 0 {
		f.reports = []string{"text"}
	}
	if f.beside == nil {
		if len(args) != 2 {
			return false, &usageError{cmd, "name the old and the new revision, or rule sets to compare with --sets A,B"}
		}
		return false, nil
	}
	ids := f.ids()
	switch {
	case len(f.sets) > 0:
		return false, errors.New("--set and --sets exclude each other")
	case len(ids) < 2:
		return false, errors.New("--sets: name two rule sets at least, with a comma between them")
	case len(args) != 1:
		return false, fmt.Errorf("--sets: name one design, not %d", len(args))
	}
	f.sets = ids
	return true, nil
}

func runCompare(cmd *cobra.Command, env environment, flags compareFlags, args []string) error {
	sets, err := flags.settle(cmd, args)
	if err != nil {
		return err
	}
	targets, err := readTargets(flags.reports, findComparison)
	if err != nil {
		return err
	}
	inputs, err := readEach(env, args)
	if err != nil {
		return err
	}
	for _, t := range targets {
		if err := ready(t.file, inputs...); err != nil {
			return err
		}
	}
	newest := inputs[len(inputs)-1:]
	plan, err := newPlan(flags.checkFlags, cmd.Flags().Changed, newest)
	if err != nil {
		return err
	}
	c, err := plan.start(env, checker.Options{})
	if err != nil {
		return err
	}
	s := plan.designs[0]
	if sets {
		return compareSets(cmd.Context(), env, flags, targets, s, c, newest[0])
	}
	return compareRevisions(cmd.Context(), env, flags, targets, s, c, inputs[0], newest[0])
}

// readEach reads one design for each argument.
func readEach(env environment, args []string) ([]checker.Input, error) {
	if len(args) == 2 && args[0] == standardInput && args[1] == standardInput {
		return nil, errors.New("standard input can be named once only")
	}
	var inputs []checker.Input
	for _, arg := range args {
		in, err := readDesign(env, arg)
		if err != nil {
			return nil, err
		}
		inputs = append(inputs, in)
	}
	return inputs, nil
}
