package main

import (
	"bytes"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
	"path/filepath"
	"strings"

	"github.com/spf13/cobra"

	"plumbrule/checker/authoring"
	"plumbrule/checker/ruleset"
)

func newSetsNewCommand(env environment) *cobra.Command {
	return &cobra.Command{
		Use:   "new DIR",
		Short: "Start a rule set of your own in a new directory",
		Long: "Start a rule set of your own: a file with figures, a table, a check in Rego with its test, and\n" +
			"fixtures. It works as it stands; replace what it says by what you want.",
		Example: "  plumbrule sets new office",
		Args:    named(1, "a directory to make, whose name becomes that of the set"),
		RunE: func(_ *cobra.Command, args []string) error {
			written, err := authoring.Start(args[0])
			var disk *fs.PathError
			if errors.As(err, &disk) {
				err = &exitError{exitFailed, err}
			}
			if err != nil {
				return err
			}
			for _, file := range written {
				fmt.Fprintln(env.out, file)
			}
			fmt.Fprintf(env.out, "\nnext: plumbrule sets test %s\n", filepath.ToSlash(args[0]))
			return nil
		},
	}
}

func newSetsTestCommand(env environment) *cobra.Command {
	return &cobra.Command{
		Use:   "test DIR",
		Short: "Test a rule set: its figures, the tests of its checks, its fixtures",
		Long: "Test a rule set: read its figures and tables, see that something says each phrase of its words, run the\n" +
			"Rego tests beside the checks that it brings and see that they reach every line, and check the designs in\n" +
			"fixtures/<topic>/<check>/, whose names begin with what the check is to say: within, outside, not-shown\n" +
			"or does-not-apply.\n\n" +
			"Exit codes: 0 nothing is wrong; 1 something is; 2 there is no such set.",
		Example: "  plumbrule sets test office",
		Args:    named(1, "the directory of a rule set"),
		RunE: func(cmd *cobra.Command, args []string) error {
			trial, err := authoring.Try(cmd.Context(), asPath(args[0]), newSandbox())
			switch {
			case errors.Is(err, fs.ErrNotExist):
				return err
			case err != nil:
				return &exitError{exitFindings, err}
			}
			return showTrial(env.out, trial)
		},
	}
}

// asPath makes the name of a directory here one that is not taken for an id.
func asPath(name string) string {
	if info, err := os.Stat(name); err == nil && info.IsDir() && !strings.ContainsAny(name, `/\`) {
		return "./" + name
	}
	return name
}

func showTrial(out io.Writer, t *authoring.Trial) error {
	for _, problem := range t.Problems {
		fmt.Fprintln(out, problem)
	}
	if len(t.Problems) > 0 {
		fmt.Fprintln(out)
	}
	n := t.Summary()
	fmt.Fprintf(out, "set        %s (%s), %s\n", t.Set.ID, t.Set.Edition, t.Set.File)
	fmt.Fprintf(out, "figures    %d published, %d common practice, %d recalled, in %s\n",
		n.Published, n.CommonPractice, n.Recalled, counted(len(t.Set.Checks), "check"))
	fmt.Fprintf(out, "words      %s\n", ownWords(t.Set))
	own := "none"
	if len(t.Own) > 0 {
		own = strings.Join(t.Own, ", ")
	}
	fmt.Fprintf(out, "own checks %s\n", own)
	if len(t.Own) > 0 {
		fmt.Fprintf(out, "tests      %d, which reach %d of %d lines\n", t.Tests, t.Lines-t.Unreached, t.Lines)
	}
	fmt.Fprintf(out, "fixtures   %d\n", t.Fixtures)
	if len(t.Problems) > 0 {
		fmt.Fprintf(out, "wrong      %s, listed above\n", counted(len(t.Problems), "thing"))
		return &exitError{exitFindings, nil}
	}
	return nil
}

func counted(n int, word string) string {
	if n == 1 {
		return "1 " + word
	}
	return fmt.Sprintf("%d %ss", n, word)
}

func newSetsBundleCommand(env environment) *cobra.Command {
	var file string
	cmd := &cobra.Command{
		Use:   "bundle SET -o FILE",
		Short: "Pack a rule set for the Open Policy Agent",
		Long: "Pack a rule set with its checks as a bundle that the Open Policy Agent evaluates by itself:\n\n" +
			"  plumbrule sets bundle irc-2021 -o irc.tar.gz\n" +
			"  plumbrule facts DESIGN > facts.json\n" +
			"  opa eval --bundle irc.tar.gz --input facts.json data.plumbrule.review.rows\n\n" +
			"The bundle can be named as a set here too: plumbrule check --set irc.tar.gz DESIGN",
		Example: "  plumbrule sets bundle irc-2021 -o irc.tar.gz",
		Args:    named(1, "a rule set, by its id or file, as irc-2021"),
		RunE: func(cmd *cobra.Command, args []string) error {
			if ext := filepath.Ext(file); ext != ".gz" && ext != ".tgz" {
				return &usageError{cmd, fmt.Sprintf("name the file to write, something.tar.gz, with -o, not %q", file)}
			}
			return bundle(cmd, env, asPath(args[0]), file)
		},
	}
	cmd.Flags().StringVarP(&file, "output", "o", "", "`FILE` to write, ending in .tar.gz")
	return cmd
}

// bundle packs a set into a file.
func bundle(cmd *cobra.Command, env environment, set, file string) error {
	if err := ready(file); err != nil {
		return err
	}
	var laid bytes.Buffer
	packed, err := authoring.Bundle(cmd.Context(), set, &laid, newSandbox())
	if err != nil {
		return err
	}
	if err := handOut(env, page{file, laid.Bytes()}); err != nil {
		return err
	}
	fmt.Fprintf(env.out, "%s: %s of %s\n", filepath.ToSlash(file), counted(packed.Checks, "check"), packed.Set)
	if !packed.Sources {
		fmt.Fprintln(env.out, "It is for the Open Policy Agent only: the set extends a file, which a bundle does not carry.")
	}
	return nil
}

// ownWords counts the phrases that a set says otherwise.
func ownWords(set *ruleset.Set) string {
	if len(set.Words) == 0 {
		return "none of its own"
	}
	return counted(len(set.Words), "phrase")
}
