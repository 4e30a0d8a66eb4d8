package main

import (
	"fmt"
	"io"
	"slices"
	"strings"

	"github.com/spf13/cobra"

	"plumbrule/checker"
	"plumbrule/checker/catalog"
	"plumbrule/checker/caution"
	"plumbrule/checker/result"
	"plumbrule/checker/ruleset"
	"plumbrule/checker/waive"
	"plumbrule/checker/wording"
)

func newExplainCommand(env environment) *cobra.Command {
	var sets []string
	cmd := &cobra.Command{
		Use:   "explain CHECK [DESIGN]",
		Short: "Explain a check: why it matters, when it applies, its figures and tables",
		Long: "Explain a check by its id, as stairs/riser-height, or list the checks of a topic, as stairs.\n" +
			"With a design, the cells of tables that were read for it are marked.",
		Example: "  plumbrule explain stairs/riser-height\n" +
			"  plumbrule explain joists/span fixtures/designs/alder-lane.deck.yaml\n" +
			"  plumbrule explain stairs",
		Args: named(2, "a check, as stairs/riser-height, or a topic, as stairs"),
		RunE: func(cmd *cobra.Command, args []string) error {
			c, err := checker.New(checker.Options{Sets: sets})
			if err != nil {
				return err
			}
			lit, err := readCells(cmd.Context(), env, c, args[1:])
			if err != nil {
				return err
			}
			return explain(env.out, c, strings.ToLower(args[0]), lit)
		},
	}
	cmd.Flags().StringArrayVar(&sets, "set", nil, "rule set whose figures to show, by `ID or FILE`; repeatable")
	return cmd
}

func explain(out io.Writer, c *checker.Checker, name string, lit cells) error {
	if explainWaivers(out, name) {
		return nil
	}
	check := c.Catalog().Find(name)
	if check == nil {
		return explainTopic(out, c.Catalog(), name)
	}
	if sets := c.Sets(); len(sets) == 1 { // several may call it several things
		check, _ = check.In(sets[0].Wording())
	}
	fmt.Fprintf(out, "%s: %s\n\n%s\n\nwhy          %s\nconsequence  %s\napplies      where %s\n",
		check.ID, check.Title, check.Description, check.Why, check.Consequence, check.AppliesWhen)
	if len(check.Aliases) > 0 {
		fmt.Fprintf(out, "also called  %s\n", strings.Join(check.Aliases, ", "))
	}
	for _, mend := range check.Mend {
		fmt.Fprintf(out, "to mend      %s\n", mend)
	}
	for _, set := range c.Sets() {
		explainFigures(out, check, set, lit)
	}
	var wordings []wording.Wording
	for _, set := range c.Sets() {
		wordings = append(wordings, set.Wording())
	}
	_, err := fmt.Fprintf(out, "\n%s\nFigures marked recalled were not read in print.\n", caution.Decides().In(wordings...))
	return err
}

// explainWaivers explains the checks on waivers, by id or by their topic; they
// have no figures.
func explainWaivers(out io.Writer, name string) bool {
	found := false
	for _, check := range waive.Checks() {
		switch name {
		case check.ID:
			fmt.Fprintf(out, "%s: %s\n\nwhy          %s\nconsequence  %s\nto mend      %s\n", check.ID, check.Title, check.Why, result.Workmanship, check.Mend)
			found = true
		case "waivers":
			fmt.Fprintf(out, "%-28s %s\n", check.ID, check.Title)
			found = true
		}
	}
	return found
}

// explainTopic lists the checks of a topic; a name that is neither says which
// check was probably meant.
func explainTopic(out io.Writer, checks *catalog.Catalog, name string) error {
	var ids, topics []string
	for _, check := range checks.Checks() {
		if check.Topic == name {
			fmt.Fprintf(out, "%-28s %s\n", check.ID, check.Title)
			ids = append(ids, check.ID)
		}
		if !slices.Contains(topics, check.Topic) {
			topics = append(topics, check.Topic)
		}
	}
	if len(ids) > 0 {
		return nil
	}
	if near := meantCheck(name, checks.IDs(), topics); near != "" {
		return fmt.Errorf("there is no check %q; did you mean %s?", name, near)
	}
	return fmt.Errorf("there is no check %q; topics: %s", name, strings.Join(topics, ", "))
}

// meantCheck guesses the check that somebody meant who left out its topic, took
// a space or an underscore for a hyphen, or misspelt it.
func meantCheck(typed string, ids, topics []string) string {
	typed = strings.NewReplacer(" ", "-", "_", "-", ".", "/").Replace(typed)
	var named []string
	for _, id := range ids {
		if id == typed || strings.HasSuffix(id, "/"+typed) {
			named = append(named, id)
		}
	}
	if len(named) > 0 {
		return strings.Join(named, " or ")
	}
	if near := catalog.Nearest(typed, slices.Concat(ids, topics)); near != "" {
		return near
	}
	var names []string
	for _, id := range ids {
		_, name, _ := strings.Cut(id, "/")
		names = append(names, name)
	}
	if near := catalog.Nearest(typed, names); near != "" && near != typed {
		return meantCheck(near, ids, topics)
	}
	return ""
}

// explainFigures prints what one set gives a check.
func explainFigures(out io.Writer, check *catalog.Check, set *ruleset.Set, lit cells) {
	given := set.Check(check.ID)
	if given == nil {
		fmt.Fprintf(out, "\n%s gives no figures for it\n", set.ID)
		return
	}
	check = set.Describe(check.ID)
	fmt.Fprintf(out, "\n%s (%s %s), %s\n", set.ID, set.Title, set.Edition, given.Clause)
	if given.Off != nil {
		fmt.Fprintf(out, "  %s\n", given.Off)
	}
	if given.Class != "" {
		fmt.Fprintf(out, "  %-14s %s, as the set has it\n", "consequence", given.Class)
	}
	for i := range given.Figures {
		f := &given.Figures[i]
		asked := check.Figure(f.Name)
		fmt.Fprintf(out, "  %-14s %s\n", f.Name, figureText(asked, f))
		fmt.Fprintf(out, "  %-14s %s: %s\n", "", asked.About, status(f))
		if amended := f.Amended(); amended != "" {
			fmt.Fprintf(out, "  %-14s %s\n", "", amended)
		}
		if f.Note != "" {
			fmt.Fprintf(out, "  %-14s %s\n", "", f.Note)
		}
		if f.Table != nil {
			explainTable(out, f.Table, lit)
		}
	}
}

func figureText(asked *catalog.Figure, f *ruleset.Figure) string {
	if asked.Relation != "" && f.Table == nil {
		return string(asked.Relation) + " " + f.Text
	}
	return f.Text
}

// status says how far a figure can be trusted, and where it was read.
func status(f *ruleset.Figure) string {
	if f.Source != "" {
		return string(f.Status) + ", " + f.Source
	}
	return string(f.Status)
}
