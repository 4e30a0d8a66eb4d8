package main

import (
	"context"
	"errors"
	"fmt"
	"runtime/debug"

	"github.com/spf13/cobra"
)

// run executes the command line and gives the exit code.
func run(ctx context.Context, env environment, args []string) int {
	out := &outlet{to: env.out}
	env.out, env.in = out, interruptible{ctx, env.in}
	root := newRootCommand(env)
	root.SetArgs(args)
	err := root.ExecuteContext(ctx)
	var usage *usageError
	switch {
	case errors.As(err, &usage):
		fmt.Fprintln(env.err, err)
	case err != nil && err.Error() != "":
		fmt.Fprintf(env.err, "plumbrule: %v\n", err)
	}
	if out.err != nil {
		fmt.Fprintf(env.err, "plumbrule: cannot write to standard output: %v\n", plain(out.err))
		return exitFailed
	}
	return exitCode(err)
}

func newRootCommand(env environment) *cobra.Command {
	root := &cobra.Command{
		Use:     "plumbrule",
		Short:   "Check a written description of a residential deck against rule sets",
		Version: version(),
		Long: "plumbrule reads a deck as it is typed in (YAML or JSON), works out what it is, checks it\n" +
			"against rule sets and prints warnings: what is outside, by how much, under which clause,\n" +
			"how to mend it, and what the drawings do not show. The building department decides.",
		SilenceErrors: true,
		SilenceUsage:  true,
		Args:          onlyCommands,
		RunE:          func(cmd *cobra.Command, _ []string) error { return cmd.Help() },
	}
	root.SetIn(env.in)
	root.SetOut(env.out)
	root.SetErr(env.err)
	root.SetFlagErrorFunc(flagError)
	root.SetHelpCommand(newHelpCommand())
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

// version is what the program was built from, as far as the build says it.
func version() string {
	if info, ok := debug.ReadBuildInfo(); ok && info.Main.Version != "" {
		return info.Main.Version
	}
	return "(unknown)"
}

// newHelpCommand takes the place of the library's, which answers a command that
// does not exist as if nothing were wrong.
func newHelpCommand() *cobra.Command {
	return &cobra.Command{
		Use:   "help [COMMAND]",
		Short: "Print the help of a command",
		RunE: func(cmd *cobra.Command, args []string) error {
			found, rest, err := cmd.Root().Find(args)
			if err != nil {
				return err
			}
			if err := onlyCommands(found, rest); err != nil && found.HasSubCommands() {
				return err
			}
			return found.Help()
		},
	}
}
