package main

import (
	"bytes"
	"context"
	"fmt"
	"io"
	"os"
	"strings"

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
	file      string // where it goes; "" is standard output
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

func comparisonList() string {
	var names []string
	for _, f := range comparisons() {
		names = append(names, f.name)
	}
	return strings.Join(names, ", ")
}

// comparisons reads which formats go where.
func (f compareFlags) comparisons() ([]comparison, error) {
	var list []comparison
	taken := map[string]bool{}
	for _, name := range f.reports {
		name, file, toFile := strings.Cut(name, "=")
		if toFile && file == "" {
			return nil, fmt.Errorf("--report %s= names no file", name)
		}
		format, err := findComparison(name)
		if err != nil {
			return nil, err
		}
		if file == standardInput {
			file = ""
		}
		if taken[file] {
			return nil, fmt.Errorf("two reports would go to %s; give one of them a file: --report %s=FILE", destination(file), name)
		}
		taken[file] = true
		format.file = file
		list = append(list, format)
	}
	return list, nil
}

func findComparison(name string) (comparison, error) {
	for _, f := range comparisons() {
		if f.name == name {
			return f, nil
		}
	}
	return comparison{}, fmt.Errorf("no format of comparisons is named %q; there are %s", name, comparisonList())
}

func compareRevisions(ctx context.Context, env environment, flags compareFlags, targets []comparison, s settings, c *checker.Checker, was, is checker.Input) error {
	r := c.Compare(ctx, was, is)
	if err := stopped(ctx); err != nil {
		return err
	}
	// Both files first: whoever mends one wants to know of the other.
	before, after := refuse(env, was.Name, r.Was.Problems), refuse(env, is.Name, r.Is.Problems)
	if before != nil || after != nil {
		return &exitError{exitUnreadable, nil}
	}
	for _, t := range targets {
		if err := t.write(env, flags, func(to io.Writer, o text.Options) error { return t.revisions(to, r, o) }); err != nil {
			return &exitError{exitFailed, err}
		}
	}
	return verdict(r.Worse(s.class, s.failOpen), &r.Was, &r.Is)
}

func compareSets(ctx context.Context, env environment, flags compareFlags, targets []comparison, s settings, c *checker.Checker, in checker.Input) error {
	b := c.CompareSets(ctx, in)
	if err := stopped(ctx); err != nil {
		return err
	}
	if err := refuse(env, in.Name, b.Design.Problems); err != nil {
		return err
	}
	for _, t := range targets {
		if err := t.write(env, flags, func(to io.Writer, o text.Options) error { return t.sets(to, b, o) }); err != nil {
			return &exitError{exitFailed, err}
		}
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

// write lays a comparison out whole before any of it goes out.
func (t comparison) write(env environment, flags compareFlags, lay func(io.Writer, text.Options) error) error {
	options := text.Options{Verbose: flags.verbose}
	if t.file == "" {
		options.Width, options.Colour = env.layout()
	}
	var page bytes.Buffer
	if err := lay(&page, options); err != nil {
		return fmt.Errorf("write the %s comparison: %w", t.name, err)
	}
	if t.file == "" {
		if _, err := io.Copy(env.out, &page); err != nil {
			return fmt.Errorf("write the %s comparison: %w", t.name, err)
		}
		return nil
	}
	if err := os.WriteFile(t.file, page.Bytes(), 0o644); err != nil {
		return fmt.Errorf("write the %s comparison: %w", t.name, err)
	}
	return nil
}
