package main

import (
	"fmt"
	"io"
	"text/tabwriter"

	"github.com/spf13/cobra"

	"plumbrule/checker"
	"plumbrule/checker/ruleset"
)

func newSetsCommand(env environment) *cobra.Command {
	cmd := &cobra.Command{
		Use:   "sets",
		Short: "List, show, write, test and pack rule sets",
		Args:  onlyCommands,
		RunE:  func(cmd *cobra.Command, _ []string) error { return cmd.Help() },
	}
	cmd.AddCommand(newSetsListCommand(env), newSetsShowCommand(env), newSetsNewCommand(env), newSetsTestCommand(env), newSetsBundleCommand(env))
	return cmd
}

func newSetsListCommand(env environment) *cobra.Command {
	return &cobra.Command{
		Use:     "list",
		Short:   "List the rule sets that come with the program",
		Example: "  plumbrule sets list",
		Args:    noArguments,
		RunE: func(*cobra.Command, []string) error {
			library, err := checker.Library()
			if err != nil {
				return err
			}
			ids, err := library.IDs()
			if err != nil {
				return err
			}
			table := tabwriter.NewWriter(env.out, 0, 0, 2, ' ', 0)
			fmt.Fprintln(table, "SET\tEDITION\tCHECKS\tPUBLISHED\tCOMMON PRACTICE\tRECALLED\tTITLE")
			for _, id := range ids {
				set, err := library.ByName(id)
				if err != nil {
					return err
				}
				n := set.Summary().Figures
				fmt.Fprintf(table, "%s\t%s\t%d\t%d\t%d\t%d\t%s\n", set.ID, set.Edition, len(set.Checks), n.Published, n.CommonPractice, n.Recalled, set.Title)
			}
			return table.Flush()
		},
	}
}

func newSetsShowCommand(env environment) *cobra.Command {
	return &cobra.Command{
		Use:     "show SET",
		Short:   "Show every figure of a rule set with clause, status and source",
		Example: "  plumbrule sets show irc-2021",
		Args:    named(1, "a rule set, by its id or file, as irc-2021"),
		RunE: func(_ *cobra.Command, args []string) error {
			library, err := checker.Library()
			if err != nil {
				return err
			}
			set, err := library.ByName(args[0])
			if err != nil {
				return err
			}
			return showSet(env.out, set)
		},
	}
}

func showSet(out io.Writer, set *ruleset.Set) error {
	fmt.Fprintf(out, "%s: %s\nedition    %s\npublisher  %s\nscope      %s\n", set.ID, set.Title, set.Edition, set.Publisher, set.Scope)
	if set.Place != "" {
		fmt.Fprintf(out, "place      %s\n", set.Place)
	}
	if set.Extends != "" {
		fmt.Fprintf(out, "amends     %s\n", set.Extends)
	}
	for _, gap := range set.NotCovered {
		fmt.Fprintf(out, "not here   %s\n", gap)
	}
	for _, word := range set.Words {
		fmt.Fprintf(out, "says       %s for %s\n", word.Says, word.Phrase)
	}
	for i := range set.Checks {
		if check := &set.Checks[i]; check.Class != "" {
			fmt.Fprintf(out, "class      %s for %s\n", check.Class, check.ID)
		}
	}
	fmt.Fprintln(out)
	table := tabwriter.NewWriter(out, 0, 0, 2, ' ', 0)
	fmt.Fprintln(table, "CHECK\tFIGURE\tVALUE\tCLAUSE\tSTATUS")
	for i := range set.Checks {
		check := &set.Checks[i]
		for k := range check.Figures {
			f := &check.Figures[k]
			fmt.Fprintf(table, "%s\t%s\t%s\t%s\t%s\n", check.ID, f.Name, f.Text, f.Clause, standing(check, f))
		}
	}
	if err := table.Flush(); err != nil {
		return err
	}
	showAmendments(out, set)
	if len(set.Sources) > 0 {
		fmt.Fprintln(out, "\nread in")
	}
	for _, s := range set.Sources {
		fmt.Fprintf(out, "  %-18s %s\n", s.ID, s.Title)
	}
	return nil
}
