package main

import (
	"github.com/spf13/cobra"

	"plumbrule/checker"
)

func newExplainCommand(env environment) *cobra.Command {
	var sets []string
	cmd := &cobra.Command{
		Use:   "explain CHECK",
		Short: "Explain a check: why it matters, its figures, its fields",
		Args:  cobra.ExactArgs(1),
		RunE: func(_ *cobra.Command, args []string) error {
			c, err := checker.New(checker.Options{Sets: sets})
			if err != nil {
				return err
			}
			return explain(env, c, args[0])
		},
	}
	cmd.Flags().StringArrayVar(&sets, "set", nil, "rule set whose figures to show, by `ID or FILE`; repeatable")
	return cmd
}
