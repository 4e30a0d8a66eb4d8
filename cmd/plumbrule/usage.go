package main

import (
	"errors"
	"fmt"
	"os"
	"strings"

	"github.com/spf13/cobra"
	"github.com/spf13/pflag"

	"plumbrule/checker/catalog"
)

// usageError is a command line that cannot be run as it was typed. It says how
// the command is typed, with an example.
type usageError struct {
	cmd     *cobra.Command
	problem string
}

func (e *usageError) Error() string {
	lines := []string{
		e.cmd.CommandPath() + ": " + e.problem,
		"usage:   " + e.cmd.UseLine(),
	}
	if e.cmd.HasSubCommands() {
		lines[1] = "usage:   " + e.cmd.CommandPath() + " COMMAND"
	}
	if example, _, _ := strings.Cut(strings.TrimSpace(e.cmd.Example), "\n"); example != "" {
		lines = append(lines, "example: "+example)
	}
	return strings.Join(append(lines, "help:    "+e.cmd.CommandPath()+" --help"), "\n")
}

// named asks for one argument at least, and at most so many unless that is 0, and
// says what they are.
func named(most int, what string) cobra.PositionalArgs {
	return func(cmd *cobra.Command, args []string) error {
		switch {
		case len(args) == 0:
			return &usageError{cmd, "name " + what}
		case most > 0 && len(args) > most:
			return &usageError{cmd, fmt.Sprintf("too many arguments, from %q on", args[most])}
		}
		return nil
	}
}

// noArguments is for a command that takes none.
func noArguments(cmd *cobra.Command, args []string) error {
	if len(args) > 0 {
		return &usageError{cmd, fmt.Sprintf("takes no arguments, found %q", args[0])}
	}
	return nil
}

// oneDesign asks for what a command about one design takes.
func oneDesign(cmd *cobra.Command, args []string) error {
	switch {
	case len(args) == 0:
		return &usageError{cmd, "name a design: a file, or - for standard input"}
	case len(args) > 1:
		return &usageError{cmd, fmt.Sprintf("one design at a time; %d are named", len(args))}
	}
	return nil
}

// onlyCommands refuses what is no command behind one that has only those.
func onlyCommands(cmd *cobra.Command, args []string) error {
	if len(args) == 0 {
		return nil
	}
	var names []string
	for _, sub := range cmd.Commands() {
		if sub.IsAvailableCommand() {
			names = append(names, sub.Name())
		}
	}
	problem := fmt.Sprintf("unknown command %q;", args[0])
	if _, err := os.Stat(args[0]); err == nil && !cmd.HasParent() {
		problem += " to check a design: " + cmd.CommandPath() + " check " + args[0] + ";"
	} else if near := meant(args[0], names); near != "" {
		problem += " did you mean " + near + "?"
	}
	return &usageError{cmd, problem + " commands: " + strings.Join(names, ", ")}
}

// flagError words a mistake in flags, and guesses which one was meant.
func flagError(cmd *cobra.Command, err error) error {
	var unknown *pflag.NotExistError
	if errors.As(err, &unknown) {
		return &usageError{cmd, err.Error() + meantFlag(cmd, unknown)}
	}
	return &usageError{cmd, err.Error()}
}

func meantFlag(cmd *cobra.Command, unknown *pflag.NotExistError) string {
	var names []string
	cmd.Flags().VisitAll(func(f *pflag.Flag) {
		if !f.Hidden {
			names = append(names, f.Name)
		}
	})
	typed := unknown.GetSpecifiedName()
	if letters := unknown.GetSpecifiedShortnames(); letters != "" {
		typed, _, _ = strings.Cut(letters, "=") // a name behind a single dash is taken for letters
	}
	if near := meant(typed, names); near != "" {
		return "; did you mean --" + near + "?"
	}
	return ""
}

// fewestLetters is how long a word is at least that a guess is made for: any two
// shorter ones, as a3 and a5, are near each other.
const fewestLetters = 3

// unknown refuses a word that is none of those known, and guesses which one was
// meant. Of is the word for one of them, all for several.
func unknown(of, typed, all string, known []string) error {
	guess := ""
	if near := meant(typed, known); near != "" && len(typed) >= fewestLetters {
		guess = "did you mean " + near + "? "
	}
	return fmt.Errorf("unknown %s %q; %s%s: %s", of, typed, guess, all, strings.Join(known, ", "))
}

// meant guesses a word that was cut short or misspelt; "" where none is near.
func meant(typed string, known []string) string {
	typed = strings.ToLower(typed)
	var begin []string
	for _, word := range known {
		if len(typed) > 1 && strings.HasPrefix(word, typed) {
			begin = append(begin, word)
		}
	}
	if len(begin) == 1 {
		return begin[0]
	}
	return catalog.Nearest(typed, known)
}
