package main

import (
	"context"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
	"path/filepath"
	"slices"
	"strings"

	"plumbrule/checker"
	"plumbrule/checker/report/content"
	"plumbrule/checker/result"
	"plumbrule/checker/source"
)

// standardInput is the name by which standard input is asked for.
const standardInput = "-"

// designEndings are the endings by which a directory is searched for designs.
func designEndings() []string { return []string{".deck.yaml", ".deck.yml", ".deck.json"} }

// readDesigns reads the designs that the arguments name: files as they are,
// directories searched, "-" for standard input. A file that cannot be read is
// an input that carries its error, so that the others are still checked.
func readDesigns(env environment, args []string) ([]checker.Input, error) {
	var inputs []checker.Input
	stdin := false
	for _, arg := range args {
		if arg == standardInput {
			if stdin {
				return nil, errors.New("standard input can be named once only")
			}
			stdin = true
			data, err := readBounded(env.in)
			if errors.Is(err, context.Canceled) {
				return nil, errInterrupted()
			}
			inputs = append(inputs, checker.Input{Name: standardInput, Data: data, Err: err})
			continue
		}
		names, err := find(arg)
		if err != nil {
			return nil, err
		}
		for _, name := range names {
			data, err := readFile(name)
			inputs = append(inputs, checker.Input{Name: filepath.ToSlash(name), Data: data, Err: plain(err)})
		}
	}
	return inputs, nil
}

// readFile reads a description, of which it takes no more than it needs to see
// that it is too large.
func readFile(name string) ([]byte, error) {
	file, err := os.Open(name)
	if err != nil {
		return nil, err
	}
	defer func() { _ = file.Close() }() // nothing was written
	return readBounded(file)
}

func readBounded(from io.Reader) ([]byte, error) {
	return io.ReadAll(io.LimitReader(from, source.MaxBytes+1))
}

// readDesign reads the one design that an argument names.
func readDesign(env environment, arg string) (checker.Input, error) {
	inputs, err := readDesigns(env, []string{arg})
	if err != nil {
		return checker.Input{}, err
	}
	if len(inputs) != 1 {
		return checker.Input{}, fmt.Errorf("%s holds %d designs; name one", arg, len(inputs))
	}
	return inputs[0], nil
}

// refuse says what is wrong with a design that a command cannot go on without;
// nil where nothing is.
func refuse(env environment, name string, problems []result.Problem) error {
	for _, p := range problems {
		place := ""
		if at := p.Span.Start; at.Line > 0 {
			place = fmt.Sprintf(":%d:%d", at.Line, at.Column)
		}
		fmt.Fprintf(env.err, "%s%s: cannot read: %s\n", content.Printable(name), place, content.Printable(p.Message))
		if p.Hint != "" {
			fmt.Fprintf(env.err, "  hint: %s\n", content.Printable(p.Hint))
		}
	}
	if len(problems) > 0 {
		return &exitError{exitUnreadable, nil}
	}
	return nil
}

// plain takes the path out of a file error; the report names the file already.
func plain(err error) error {
	var path *fs.PathError
	var link *os.LinkError
	switch {
	case errors.As(err, &path):
		return path.Err
	case errors.As(err, &link):
		return link.Err
	}
	return err
}

// find lists the designs that an argument stands for, in order of their names. A
// directory that cannot be searched is among them, since nobody knows what it
// holds.
func find(arg string) ([]string, error) {
	if info, err := os.Stat(arg); err != nil || !info.IsDir() {
		return []string{arg}, nil //nolint:nilerr // a missing file is reported like an unreadable one
	}
	var names []string
	err := filepath.WalkDir(arg, func(path string, entry fs.DirEntry, err error) error {
		if err != nil {
			names = append(names, path) // reading it fails too, and the report says so
			return fs.SkipDir
		}
		if entry.IsDir() && path != arg && strings.HasPrefix(entry.Name(), ".") {
			return fs.SkipDir
		}
		if !entry.IsDir() && slices.ContainsFunc(designEndings(), func(end string) bool { return strings.HasSuffix(path, end) }) {
			names = append(names, path)
		}
		return nil
	})
	if err != nil {
		return nil, fmt.Errorf("search %s for designs: %w", arg, err)
	}
	if len(names) == 0 {
		return nil, fmt.Errorf("no design below %s: names end in %s", arg, strings.Join(designEndings(), ", "))
	}
	slices.Sort(names)
	return names, nil
}
