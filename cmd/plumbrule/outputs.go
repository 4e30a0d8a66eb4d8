package main

import (
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"strings"

	"plumbrule/checker"
)

// target is something to write, in a format, and the file it goes to; no file
// means standard output.
type target[Format any] struct {
	format Format
	file   string
}

// readTargets reads what is typed after --report, FORMAT or FORMAT=FILE each.
func readTargets[Format any](typed []string, find func(name string) (Format, error)) ([]target[Format], error) {
	var list []target[Format]
	taken := map[string]bool{}
	for _, one := range typed {
		name, file, toFile := strings.Cut(one, "=")
		if toFile && file == "" {
			return nil, fmt.Errorf("--report %s= names no file", name)
		}
		format, err := find(name)
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
		list = append(list, target[Format]{format, file})
	}
	return list, nil
}

func destination(file string) string {
	if file == "" {
		return "standard output"
	}
	return file
}

// ready refuses, before anything is worked out, to write over what is read, and
// into a place where no file can be.
func ready(file string, inputs ...checker.Input) error {
	if file == "" || file == standardInput {
		return nil
	}
	if err := keep(file, inputs...); err != nil {
		return err
	}
	if info, err := os.Stat(file); err == nil && info.IsDir() {
		return cannotWrite(file, errors.New("it is a directory"))
	}
	switch info, err := os.Stat(filepath.Dir(file)); {
	case errors.Is(err, fs.ErrNotExist):
		return cannotWrite(file, errors.New("its directory is not there"))
	case err != nil:
		return cannotWrite(file, err)
	case !info.IsDir():
		return cannotWrite(file, fmt.Errorf("%s is no directory", filepath.ToSlash(filepath.Dir(file))))
	}
	return nil
}

// unprintable refuses to put a format on a terminal that would make a mess of it
// there. A pipe and a file take whatever comes.
func unprintable(env environment, file, format string) error {
	if file != "" && file != standardInput || format != "pdf" && format != "png" {
		return nil
	}
	if _, terminal := env.terminal(); !terminal {
		return nil
	}
	return fmt.Errorf("a terminal cannot show %s; name a file, -o FILE.%s, or send it on with > FILE.%s or a pipe", format, format, format)
}

// keep refuses to write over what is read.
func keep(output string, inputs ...checker.Input) error {
	to, err := os.Stat(output)
	if err != nil {
		return nil //nolint:nilerr // a file that is not there is nothing to lose
	}
	for i := range inputs {
		if from, err := os.Stat(inputs[i].Name); err == nil && os.SameFile(to, from) {
			return fmt.Errorf("%s is the design itself; write to another file", output)
		}
	}
	return nil
}

// cannotWrite is the error for an output that could not be written, of which
// nothing is there then.
func cannotWrite(file string, err error) error {
	return &exitError{exitFailed, fmt.Errorf("cannot write %s: %w; nothing was written", filepath.ToSlash(file), plain(err))}
}
