package main

import (
	"fmt"
	"slices"
	"strings"

	"github.com/spf13/cobra"

	"plumbrule/schema"
)

func newSchemaCommand(env environment) *cobra.Command {
	return &cobra.Command{
		Use:   "schema NAME",
		Short: "Print a published JSON Schema",
		Long: "Print a published JSON Schema (draft 2020-12). An editor that is told of the design schema\n" +
			"completes and explains every field:\n\n" +
			"  plumbrule schema design > design.schema.json\n" +
			"  # yaml-language-server: $schema=design.schema.json      (first line of a design)\n\n" +
			"Schemas: " + strings.Join(schema.Names(), ", "),
		Example:   "  plumbrule schema design",
		Args:      named(1, "a schema, as design"),
		ValidArgs: schema.Names(),
		RunE: func(_ *cobra.Command, args []string) error {
			if !slices.Contains(schema.Names(), args[0]) {
				return unknown("schema", args[0], "schemas", schema.Names())
			}
			text, err := schema.JSON(args[0])
			if err != nil {
				return err
			}
			_, err = env.out.Write(text)
			if err != nil {
				return &exitError{exitFailed, fmt.Errorf("write the schema: %w", err)}
			}
			return nil
		},
	}
}
