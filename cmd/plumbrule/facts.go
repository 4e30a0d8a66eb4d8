package main

import (
	"encoding/json"
	"fmt"

	"github.com/spf13/cobra"

	"plumbrule/checker"
)

func newFactsCommand(env environment) *cobra.Command {
	return &cobra.Command{
		Use:   "facts DESIGN",
		Short: "Print what a design comes to: the document that checks read",
		Long: "Print the facts of a design as JSON: spans, marks, risers, drops, angles, in whole nanometres,\n" +
			"micropascals, micronewtons and micro-degrees, each with the places that it came from.\n" +
			"Their schema is printed by: plumbrule schema facts",
		Args: cobra.ExactArgs(1),
		RunE: func(_ *cobra.Command, args []string) error {
			inputs, err := readDesigns(env, args)
			if err != nil {
				return err
			}
			if len(inputs) != 1 {
				return fmt.Errorf("%s holds %d designs; name one", args[0], len(inputs))
			}
			f, problems := checker.Facts(inputs[0])
			for _, p := range problems {
				fmt.Fprintf(env.err, "%s:%d:%d: cannot read: %s\n", inputs[0].Name, p.Span.Start.Line, p.Span.Start.Column, p.Message)
			}
			if len(problems) > 0 {
				return &exitError{exitUnreadable, nil}
			}
			out := json.NewEncoder(env.out)
			out.SetEscapeHTML(false)
			out.SetIndent("", "  ")
			if err := out.Encode(f); err != nil {
				return &exitError{exitFailed, fmt.Errorf("write the facts: %w", err)}
			}
			return nil
		},
	}
}
