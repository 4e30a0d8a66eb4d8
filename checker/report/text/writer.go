package text

import (
	"io"

	"plumbrule/checker/report/content"
	"plumbrule/checker/report/lines"
	"plumbrule/checker/result"
)

// narrowest is the least width that lines are fitted to.
const narrowest = 40

// Options say how to lay the report out.
type Options struct {
	// Width is the number of cells in a line; 0 breaks no line, for pipes. A
	// width below 40 counts as 40.
	Width int
	// Colour adds colour codes.
	Colour bool
	// Verbose adds why a check matters, where a figure was read, and the results
	// within their limits and those that do not apply.
	Verbose bool
	// Compact leaves the first lines, and in two lines the sets and a caution.
	Compact bool
}

// Writer writes reports as text. It is safe for concurrent use.
type Writer struct{ opts Options }

// New gives a writer for the options.
func New(opts Options) *Writer {
	if opts.Width < 0 {
		opts.Width = 0
	}
	if opts.Width > 0 {
		opts.Width = max(opts.Width, narrowest)
	}
	return &Writer{opts}
}

// Write writes the whole report. An error is that of the underlying writer.
func (w *Writer) Write(to io.Writer, report result.Report) error {
	style := newStyle(w.opts.Colour)
	p := &printer{Printer: lines.NewPrinter(to, w.opts.Width, style.label, style.heading), opts: w.opts, style: style, cells: newCells()}
	if w.opts.Compact {
		p.compact(&report)
	} else {
		p.full(&report)
	}
	return p.Flush()
}

func (p *printer) full(report *result.Report) {
	p.inRun = len(report.Sets)
	for i := range report.Designs {
		p.gap()
		p.design(&report.Designs[i])
	}
	p.closing(report)
}

func (p *printer) compact(report *result.Report) {
	for i := range report.Designs {
		d := &report.Designs[i]
		for j := range d.Problems {
			p.problemLine(d, &d.Problems[j])
		}
		layout := content.Arrange(d.Findings)
		for _, class := range layout.Outside {
			p.groups(d, class.Groups)
		}
		for _, sheet := range layout.NotShown {
			p.groups(d, sheet.Groups)
		}
		p.groups(d, layout.CouldNotRun)
		p.groups(d, layout.Excused)
	}
	p.compactClosing(report)
}
