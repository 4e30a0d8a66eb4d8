package main

import (
	"bytes"
	"context"
	"fmt"
	"io"

	"plumbrule/checker"
	"plumbrule/checker/compare"
	"plumbrule/checker/compare/json"
	"plumbrule/checker/compare/markdown"
	"plumbrule/checker/compare/text"
	"plumbrule/checker/result"
)

// comparison is one way to write a comparison.
type comparison struct {
	name      string
	revisions func(io.Writer, *compare.Revisions, text.Options) error
	sets      func(io.Writer, *compare.Sets, text.Options) error
}

// comparisons lists the formats, the usual one first.
func comparisons() []comparison {
	return []comparison{
		{name: "text", revisions: text.Revisions, sets: text.Sets},
		{
			name:      "json",
			revisions: func(to io.Writer, r *compare.Revisions, _ text.Options) error { return json.Revisions(to, r) },
			sets:      func(to io.Writer, s *compare.Sets, _ text.Options) error { return json.Sets(to, s) },
		},
		{
			name:      "markdown",
			revisions: func(to io.Writer, r *compare.Revisions, _ text.Options) error { return markdown.Revisions(to, r) },
			sets:      func(to io.Writer, s *compare.Sets, _ text.Options) error { return markdown.Sets(to, s) },
		},
	}
}

func comparisonNames() []string {
	var names []string
	for _, f := range comparisons() {
		names = append(names, f.name)
	}
	return names
}

func findComparison(name string) (comparison, error) {
	for _, f := range comparisons() {
		if f.name == name {
			return f, nil
		}
	}
	return comparison{}, unknown("report format", name, "formats", comparisonNames())
}

func compareRevisions(ctx context.Context, env environment, flags compareFlags, targets []target[comparison], s settings, c *checker.Checker, was, is checker.Input) error {
	r := c.Compare(ctx, was, is)
	if err := stopped(ctx); err != nil {
		return err
	}
	// Both files first: whoever mends one wants to know of the other.
	before, after := refuse(env, was.Name, r.Was.Problems), refuse(env, is.Name, r.Is.Problems)
	if before != nil || after != nil {
		return &exitError{exitUnreadable, nil}
	}
	if err := writeComparisons(env, flags, targets, func(t target[comparison], to io.Writer, o text.Options) error {
		return t.format.revisions(to, r, o)
	}); err != nil {
		return err
	}
	return verdict(r.Worse(s.class, s.failOpen), &r.Was, &r.Is)
}

func compareSets(ctx context.Context, env environment, flags compareFlags, targets []target[comparison], s settings, c *checker.Checker, in checker.Input) error {
	b := c.CompareSets(ctx, in)
	if err := stopped(ctx); err != nil {
		return err
	}
	if err := refuse(env, in.Name, b.Design.Problems); err != nil {
		return err
	}
	if err := writeComparisons(env, flags, targets, func(t target[comparison], to io.Writer, o text.Options) error {
		return t.format.sets(to, b, o)
	}); err != nil {
		return err
	}
	return verdict(b.Worse(s.class, s.failOpen), &b.Design)
}

// verdict gives the exit code of a comparison.
func verdict(worse bool, designs ...*result.Design) error {
	for _, d := range designs {
		if d.Counts.CouldNotRun > 0 {
			return &exitError{exitFailed, nil}
		}
	}
	if worse {
		return &exitError{exitFindings, nil}
	}
	return nil
}

// writeComparisons lays all formats out whole before any of them goes out.
func writeComparisons(env environment, flags compareFlags, targets []target[comparison], lay func(target[comparison], io.Writer, text.Options) error) error {
	var pages []page
	for _, t := range targets {
		options := text.Options{Verbose: flags.verbose}
		if t.file == "" {
			options.Width, options.Colour = env.layout()
		}
		var laid bytes.Buffer
		if err := lay(t, &laid, options); err != nil {
			return &exitError{exitFailed, fmt.Errorf("write the %s comparison: %w", t.format.name, err)}
		}
		pages = append(pages, page{t.file, laid.Bytes()})
	}
	return handOut(env, pages...)
}
