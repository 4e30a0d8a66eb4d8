package main

import "errors"

// The exit codes. Over several designs the highest of 2, 4, 3, 1, 0, in this
// order of weight, is the code of the run.
const (
	exitClean      = 0 // nothing at or above the chosen class
	exitFindings   = 1
	exitUsage      = 2 // wrong flags or configuration
	exitUnreadable = 3 // a design that cannot be read or does not fit the schema
	exitFailed     = 4 // a check failed, or what was asked for could not be written
)

// exitError carries an exit code up to main. Without an error in it, what had
// to be said was said in the report.
type exitError struct {
	code int
	err  error
}

func (e *exitError) Error() string {
	if e.err == nil {
		return ""
	}
	return e.err.Error()
}

func (e *exitError) Unwrap() error { return e.err }

// exitCode is the code for what a command returned. Errors that nobody gave a
// code come from cobra: a wrong flag, a wrong argument.
func exitCode(err error) int {
	var exit *exitError
	switch {
	case err == nil:
		return exitClean
	case errors.As(err, &exit):
		return exit.code
	}
	return exitUsage
}

// weightier gives the code that stands for both.
func weightier(a, b int) int {
	weight := map[int]int{exitClean: 0, exitFindings: 1, exitUnreadable: 2, exitFailed: 3, exitUsage: 4}
	if weight[b] > weight[a] {
		return b
	}
	return a
}
