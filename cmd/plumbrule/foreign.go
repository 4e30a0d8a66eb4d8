package main

import (
	"fmt"
	"io"
	"os"

	"github.com/spf13/cobra"

	"plumbrule/checker"
	"plumbrule/checker/sandbox"
)

// foreignCommand is the name of the command that runs what strangers wrote. The
// program starts itself with it; nobody types it.
const foreignCommand = "evaluate-foreign"

// newSandbox lets this program start itself again for the checks that sets
// bring. Where it does not know its own file these could not run, and say so.
func newSandbox() *sandbox.Sandbox {
	program, err := os.Executable()
	if err != nil {
		return nil
	}
	return &sandbox.Sandbox{Command: []string{program, foreignCommand}, Limits: sandbox.Default()}
}

func newForeignCommand(env environment) *cobra.Command {
	var limits sandbox.Limits
	cmd := &cobra.Command{
		Use:    foreignCommand,
		Short:  "Run the checks of a foreign set on standard input, confined",
		Hidden: true,
		Args:   cobra.NoArgs,
		RunE: func(cmd *cobra.Command, _ []string) error {
			if err := sandbox.Confine(limits); err != nil {
				return &exitError{exitFailed, err}
			}
			if err := checker.ServeForeign(cmd.Context(), io.LimitReader(env.in, limits.Question), env.out); err != nil {
				return &exitError{exitFailed, fmt.Errorf("evaluate foreign checks: %w", err)}
			}
			return nil
		},
	}
	f := cmd.Flags()
	f.DurationVar(&limits.Time, "time", 0, "wall clock `TIME`")
	f.Int64Var(&limits.Memory, "memory", 0, "`BYTES` of memory")
	f.Int64Var(&limits.Question, "question", 0, "`BYTES` of what is asked")
	return cmd
}
