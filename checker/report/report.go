package report

import (
	"io"

	"plumbrule/checker/report/annotations"
	"plumbrule/checker/report/items"
	"plumbrule/checker/report/json"
	"plumbrule/checker/report/junit"
	"plumbrule/checker/report/letter"
	"plumbrule/checker/report/sarif"
	"plumbrule/checker/report/text"
	"plumbrule/checker/result"
)

// Writer writes a whole report. An error is that of the underlying writer, or
// says what could not be encoded. A Writer keeps nothing between calls.
type Writer interface {
	Write(io.Writer, result.Report) error
}

// Options say how to lay a report out. A format heeds those that mean something
// for it.
type Options struct {
	Width   int  // cells in a line of text; 0 for no wrapping
	Colour  bool // add colour; it never carries anything alone
	Verbose bool // also everything that is within or does not apply, and why checks matter
	Compact bool // one line per finding
	// Previous is what an earlier report numbered; formats with numbered items
	// keep the numbers.
	Previous items.Previous
}

// Format is one way to write a report.
type Format struct {
	Name  string // as typed after --report
	About string // one line, lower case, no full stop
	New   func(Options) Writer
}

// Formats lists all formats, the usual one first.
func Formats() []Format {
	return []Format{
		{"text", "for the terminal: each finding with its line of the file, and how to mend it", func(o Options) Writer {
			return text.New(text.Options{Width: o.Width, Colour: o.Colour, Verbose: o.Verbose, Compact: o.Compact})
		}},
		{"json", "for other programs, as report.schema.json describes it", func(o Options) Writer {
			return json.New(json.Options{Previous: o.Previous})
		}},
		{"sarif", "for code scanning services and editors: SARIF, with places, fingerprints and what could not run", func(Options) Writer {
			return sarif.New()
		}},
		{"junit", "for build servers: JUnit XML, a suite for each design", func(Options) Writer {
			return junit.New()
		}},
		{"annotations", "lines that a workflow runner turns into remarks on the changed lines", func(Options) Writer {
			return annotations.New()
		}},
		{"letter", "the review letter in Markdown: numbered items by sheet, with a table to answer in", func(o Options) Writer {
			return letter.New(letter.Options{Verbose: o.Verbose, Previous: o.Previous})
		}},
	}
}
