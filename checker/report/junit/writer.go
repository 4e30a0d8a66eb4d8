package junit

import (
	"encoding/xml"
	"fmt"
	"io"

	"plumbrule/checker/result"
)

// Writer writes reports as JUnit XML. It is safe for concurrent use.
type Writer struct{}

// New gives a writer.
func New() Writer { return Writer{} }

// Write writes the whole report as one document. Characters that XML cannot
// hold become the replacement character. An error is that of the underlying
// writer.
func (Writer) Write(to io.Writer, report result.Report) error {
	data, err := xml.MarshalIndent(convert(&report), "", "  ")
	if err == nil {
		_, err = fmt.Fprintf(to, "%s%s\n", xml.Header, data)
	}
	if err != nil {
		return fmt.Errorf("writing the report as JUnit XML: %w", err)
	}
	return nil
}
