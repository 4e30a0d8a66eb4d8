package main

import (
	"fmt"
	"io"
	"strings"
	"time"
)

const (
	progressAfter = time.Second            // a shorter run needs no line
	progressEvery = 100 * time.Millisecond // oftener than this nobody can read
)

// progress is one line on a terminal that says how far a long run is. It goes
// away when the run is over.
type progress struct {
	out     io.Writer
	now     func() time.Time
	total   int
	started time.Time
	last    time.Time
	width   int // cells of the line that stands there
}

// newProgress gives the line for a run over so many designs; nil, which writes
// nothing, where nobody would see it.
func newProgress(env environment, total int) *progress {
	if !env.watched() || env.getenv("TERM") == "dumb" {
		return nil
	}
	return &progress{out: env.err, now: env.now, total: total, started: env.now()}
}

// done tells how many designs are checked.
func (p *progress) done(n int) {
	if p.due() {
		p.replace(fmt.Sprintf("checked %d of %d designs", n, p.total))
	}
}

// trying tells how many changes of a design were tried, of at most so many: how
// many it takes is known only when one of each kind holds.
func (p *progress) trying(design, done, most int) {
	if !p.due() {
		return
	}
	line := fmt.Sprintf("trying changes, %d of at most %d", done, most)
	if p.total > 1 {
		line += fmt.Sprintf(", for design %d of %d", design, p.total)
	}
	p.replace(line)
}

// due reports whether it is time for a line.
func (p *progress) due() bool {
	if p == nil {
		return false
	}
	now := p.now()
	if now.Sub(p.started) < progressAfter || now.Sub(p.last) < progressEvery {
		return false
	}
	p.last = now
	return true
}

// end takes the line away.
func (p *progress) end() {
	if p != nil && p.width > 0 {
		p.replace("")
		fmt.Fprint(p.out, "\r")
	}
}

// replace writes over the line that stands there. The line is an extra: where
// it cannot be written, the run goes on.
func (p *progress) replace(line string) {
	fmt.Fprint(p.out, "\r", line, strings.Repeat(" ", max(0, p.width-len(line))))
	p.width = len(line)
}
