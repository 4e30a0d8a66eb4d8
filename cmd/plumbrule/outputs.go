package main

import (
	"fmt"
	"os"
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

// hand puts a finished page into a file, or onto standard output.
func hand(env environment, file string, page []byte) error {
	if file == "" || file == standardInput {
		_, err := env.out.Write(page)
		return err
	}
	return os.WriteFile(file, page, 0o644)
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
