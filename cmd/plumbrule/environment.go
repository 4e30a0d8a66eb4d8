package main

import (
	"io"
	"strconv"
	"time"
)

// environment is everything a command reads of the world besides its flags and
// the files that it is given.
type environment struct {
	in       io.Reader
	out, err io.Writer
	getenv   func(string) string
	now      func() time.Time
	// terminal gives the width of the terminal behind out; ok is false where
	// out is no terminal.
	terminal func() (width int, ok bool)
	// watched reports whether err is a terminal.
	watched func() bool
}

// layout gives the width to wrap at, 0 for none, and whether to use colour: on
// a terminal only, and not where NO_COLOR is set (no-color.org) or the terminal
// is a dumb one.
func (e environment) layout() (width int, colour bool) {
	width, ok := e.terminal()
	if forced, err := strconv.Atoi(e.getenv("COLUMNS")); err == nil && forced > 0 {
		width = forced
	}
	if !ok {
		return width, false
	}
	return width, e.getenv("NO_COLOR") == "" && e.getenv("TERM") != "dumb"
}
