package main

import (
	"context"
	"errors"
	"strings"

	"github.com/spf13/cobra"
	"github.com/spf13/pflag"

	"plumbrule/checker"
	"plumbrule/checker/config"
	"plumbrule/checker/result"
	"plumbrule/checker/waive"
)

// runFlags are the flags, as typed, that say which rule sets run and which
// waivers hold. They are the same for all commands that run rule sets.
type runFlags struct {
	sets     []string
	waivers  []string
	config   string
	noConfig bool
}

// add adds the flags to a command. Usual says what runs where none is named.
func (r *runFlags) add(f *pflag.FlagSet, usual string) {
	f.StringArrayVar(&r.sets, "set", nil, "rule set, by `ID or FILE`; repeatable (default "+usual+")")
	f.StringArrayVar(&r.waivers, "waivers", nil, "`FILE` of waivers; repeatable")
	f.StringVar(&r.config, "config", "", "configuration `FILE` for all designs, in place of the "+config.FileName+" nearest above each")
	f.BoolVar(&r.noConfig, "no-config", false, "use no configuration")
}

// usualSets says what runs where no rule set is named.
func usualSets() string { return strings.Join(checker.DefaultSets(), ", ") }

// start prepares the rule sets and waivers of a plan; options say what else the
// checker does.
func (p *plan) start(env environment, options checker.Options) (*checker.Checker, error) {
	options.Sets, options.Waivers = p.sets, p.waivers
	options.Today, options.Sandbox = waive.DateOf(env.now()), newSandbox()
	c, err := checker.New(options)
	if err != nil {
		return nil, p.blame(err)
	}
	return c, nil
}

// startOne prepares the rule sets and waivers for one design, and fills in where
// it lies and which of them are for it. Options say what else the checker does.
func (r *runFlags) startOne(cmd *cobra.Command, env environment, in *checker.Input, options checker.Options) (*checker.Checker, error) {
	inputs := []checker.Input{*in}
	// What a configuration says of reports and exit codes is for check alone.
	flags := checkFlags{runFlags: *r, failOn: string(result.Structure), reports: []string{"text"}}
	plan, err := newPlan(flags, cmd.Flags().Changed, inputs)
	if err != nil {
		return nil, err
	}
	*in = inputs[0]
	return plan.start(env, options)
}

// stopped says that a run was interrupted: what it found until then would look
// like all there is.
func stopped(ctx context.Context) error {
	if ctx.Err() != nil {
		return errInterrupted()
	}
	return nil
}

func errInterrupted() error {
	return &exitError{exitFailed, errors.New("interrupted; nothing was written")}
}
