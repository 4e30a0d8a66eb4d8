package json

import (
	"encoding/json"
	"fmt"
	"io"

	"plumbrule/checker/result"
)

// Writer writes reports as JSON. It is safe for concurrent use.
type Writer struct{}

// New gives a writer.
func New() Writer { return Writer{} }

// Write writes the whole report as one JSON value. An error is that of the
// underlying writer, or names a number that JSON has no spelling for.
func (Writer) Write(to io.Writer, report result.Report) error {
	encoder := json.NewEncoder(to)
	encoder.SetEscapeHTML(false)
	encoder.SetIndent("", "  ")
	if err := encoder.Encode(convert(&report)); err != nil {
		return fmt.Errorf("writing the report as JSON: %w", err)
	}
	return nil
}
