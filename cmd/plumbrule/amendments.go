package main

import (
	"fmt"
	"io"
	"strings"

	"plumbrule/checker/ruleset"
)

// standing is how far a figure can be trusted, and what an overlay did to it.
func standing(check *ruleset.Check, f *ruleset.Figure) string {
	words := []string{string(f.Status)}
	switch {
	case f.Amends != nil:
		words = append(words, "amended")
	case f.Table != nil && len(f.Table.Amended()) > 0:
		words = append(words, "cells amended")
	}
	if check.Off != nil {
		words = append(words, "taken out")
	}
	return strings.Join(words, ", ")
}

// showAmendments lists what a set changed in those below it.
func showAmendments(out io.Writer, set *ruleset.Set) {
	if set.Extends == "" {
		return
	}
	fmt.Fprintf(out, "\namended\n")
	for i := range set.Checks {
		check := &set.Checks[i]
		if check.Off != nil {
			fmt.Fprintf(out, "  %s is %s\n", check.ID, check.Off)
		}
		for k := range check.Figures {
			f := &check.Figures[k]
			if f.Amends != nil {
				showAmendment(out, check.ID+" "+f.Name, f.Text, f.Amended(), f.History())
			}
			if f.Table == nil {
				continue
			}
			for _, cell := range f.Table.Amended() {
				showAmendment(out, check.ID+" "+f.Name+" ("+cell.Row+")", cell.Text, cell.Amended(), cell.History())
			}
		}
	}
}

// showAmendment prints one amended figure and, where that was one itself, what
// it had replaced.
func showAmendment(out io.Writer, name, text, amended string, history []string) {
	fmt.Fprintf(out, "  %s: %s, %s\n", name, text, amended)
	for i, before := range history {
		if i > 0 {
			fmt.Fprintf(out, "    which replaced %s\n", before)
		}
	}
}
