package json

import (
	"fmt"
	"io"

	"plumbrule/checker/report/items"
	"plumbrule/checker/report/shape"
	"plumbrule/checker/result"
)

// Options say what a report is written after.
type Options struct {
	// Previous is what an earlier report numbered; its items keep their numbers.
	Previous items.Previous
}

// Writer writes reports as JSON. It is safe for concurrent use.
type Writer struct{ opts Options }

// New gives a writer for the options.
func New(opts Options) Writer { return Writer{opts} }

// Write writes the whole report as one JSON value. An error is that of the
// underlying writer, or names a number that JSON has no spelling for.
func (w Writer) Write(to io.Writer, report result.Report) error {
	if err := shape.Write(to, convert(&report, w.opts.Previous)); err != nil {
		return fmt.Errorf("writing the report as JSON: %w", err)
	}
	return nil
}
