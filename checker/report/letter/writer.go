package letter

import (
	"fmt"
	"io"
	"strings"

	"plumbrule/checker/report/content"
	"plumbrule/checker/report/items"
	"plumbrule/checker/report/markdown"
	"plumbrule/checker/result"
)

// Options say what goes into a letter.
type Options struct {
	// Verbose adds why each check matters and where its figure was read.
	Verbose bool
	// Previous is what an earlier report numbered; its items keep their numbers.
	Previous items.Previous
}

// Writer writes letters. It is safe for concurrent use.
type Writer struct{ opts Options }

// New gives a writer for the options.
func New(opts Options) Writer { return Writer{opts} }

// Write writes the letters on all designs one after the other, then once what
// holds for all of them. An error is that of the underlying writer.
func (w Writer) Write(to io.Writer, report result.Report) error {
	p := &printer{Page: markdown.NewPage(to), opts: w.opts}
	for i := range report.Designs {
		if report.Designs[i].Kind == "" {
			p.letter(&report, i)
		}
	}
	p.closing(&report)
	return p.Flush()
}

// printer puts a letter out.
type printer struct {
	*markdown.Page
	opts Options
	// numbers of the items that findings outside belong to
	numbers map[findingAt]int
}

func (p *printer) block(lines ...string)           { p.Block(lines...) }
func (p *printer) heading(level int, words string) { p.Heading(level, words) }

// closing names the rule sets and prints the cautions.
func (p *printer) closing(report *result.Report) {
	if len(report.Designs) > 1 {
		p.block("---")
	}
	p.waivers(report.Designs)
	p.heading(2, "Rule sets")
	var lines []string
	for i := range report.Sets {
		set := &report.Sets[i]
		line := "- **" + plain(set.ID) + "**"
		if about := content.Edition(set); about != "" {
			line += ": " + plain(about)
		}
		lines = append(lines, line)
		if set.Scope != "" {
			lines = append(lines, "  - Covers: "+plain(set.Scope))
		}
		if len(set.NotCovered) > 0 {
			lines = append(lines, "  - Does not cover: "+plain(strings.Join(set.NotCovered, "; ")))
		}
		lines = append(lines, fmt.Sprintf("  - Figures: %d published, %d common practice, %d recalled",
			set.Figures.Published, set.Figures.CommonPractice, set.Figures.Recalled))
	}
	if lines == nil {
		lines = []string{"None."}
	}
	p.block(lines...)

	p.heading(2, "Cautions")
	lines = nil
	for _, caution := range content.Cautions(report.Sets) {
		lines = append(lines, "- "+plain(caution))
	}
	p.block(lines...)
}
