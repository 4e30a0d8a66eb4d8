package main

import (
	"context"
	"fmt"

	"github.com/spf13/cobra"
)

// run executes the command line and gives the exit code.
func run(ctx context.Context, env environment, args []string) int {
	root := newRootCommand(env)
	root.SetArgs(args)
	err := root.ExecuteContext(ctx)
	if err != nil && err.Error() != "" {
		fmt.Fprintf(env.err, "plumbrule: %v\n", err)
	}
	return exitCode(err)
}

func newRootCommand(env environment) *cobra.Command {
	root := &cobra.Command{
		Use:   "plumbrule",
		Short: "Check a written description of a residential deck against rule sets",
		Long: "plumbrule reads a deck as it is typed in (YAML or JSON), works out what it is, checks it\n" +
			"against rule sets and prints warnings: what is outside, by how much, under which clause,\n" +
			"how to mend it, and what the drawings do not show. The building department decides.",
		SilenceErrors: true,
		SilenceUsage:  true,
		Args:          cobra.NoArgs,
		RunE:          func(cmd *cobra.Command, _ []string) error { return cmd.Help() },
	}
	root.SetIn(env.in)
	root.SetOut(env.out)
	root.SetErr(env.err)
	root.AddCommand(
		newCheckCommand(env),
		newCompareCommand(env),
		newDrawCommand(env),
		newExplainCommand(env),
		newFactsCommand(env),
		newFieldsheetCommand(env),
		newForeignCommand(env),
		newPacketCommand(env),
		newSetsCommand(env),
		newSchemaCommand(env),
	)
	return root
}

// named asks for at least so many arguments, and at most so many unless that is
// 0, and says what they are.
func named(least, most int, what string) cobra.PositionalArgs {
	return func(cmd *cobra.Command, args []string) error {
		switch {
		case len(args) < least:
			return fmt.Errorf("%s: name %s", cmd.CommandPath(), what)
		case most > 0 && len(args) > most:
			return fmt.Errorf("%s: too many arguments, from %q on", cmd.CommandPath(), args[most])
		}
		return nil
	}
}
