package sarif

import (
	"encoding/json"
	"fmt"
	"io"

	"plumbrule/checker/result"
)

// Writer writes reports as SARIF. It is safe for concurrent use.
type Writer struct{}

// New gives a writer.
func New() Writer { return Writer{} }

// Write writes the whole report as a log of one run. An error is that of the
// underlying writer.
func (Writer) Write(to io.Writer, report result.Report) error {
	encoder := json.NewEncoder(to)
	encoder.SetEscapeHTML(false)
	encoder.SetIndent("", "  ")
	if err := encoder.Encode(convert(&report)); err != nil {
		return fmt.Errorf("writing the report as SARIF: %w", err)
	}
	return nil
}
