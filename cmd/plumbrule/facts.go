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
		Example: "  plumbrule facts fixtures/designs/quarry-hill.deck.yaml",
		Args:    oneDesign,
		RunE: func(_ *cobra.Command, args []string) error {
			in, err := readDesign(env, args[0])
			if err != nil {
				return err
			}
			f, problems := checker.Facts(in)
			if err := refuse(env, in.Name, problems); err != nil {
				return err
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
