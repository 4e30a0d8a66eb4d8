package checker

import (
	"context"
	"errors"
	"fmt"
	"io/fs"
	"runtime"
	"sync"

	"plumbrule/checker/catalog"
	"plumbrule/checker/engine"
	"plumbrule/checker/measure"
	"plumbrule/checker/result"
	"plumbrule/checker/ruleset"
	"plumbrule/checker/sandbox"
	"plumbrule/checker/waive"
	"plumbrule/rules"
)

// DefaultSets are the rule sets that run when none is named.
func DefaultSets() []string { return []string{"irc-2021", "common-practice"} }

// Options say what a checker runs. The zero value runs the default sets.
type Options struct {
	// Sets names rule sets, by id or by the path of a set's file.
	Sets []string
	// Waivers are files of waivers.
	Waivers []WaiverFile
	// Today is the day on which waivers hold or have run out. It is needed where
	// one of them has a last day.
	Today waive.Date
	// Sandbox starts processes in which ServeForeign runs the checks that sets
	// bring. Where it is nil, these could not run.
	Sandbox *sandbox.Sandbox
	// Progress is told how many designs of a run are done, after each of them and
	// never twice at once. It may be nil.
	Progress func(done int)
	// Remedies has changes tried that mend what is outside. Each costs as much
	// as checking the design once.
	Remedies bool
	// Trying is told how many changes of a design, the first being 1, were tried,
	// of at most so many; never twice at once. It may be nil.
	Trying func(design, done, most int)
}

// Checker holds compiled checks with the figures of its sets. It does not
// change and is safe for concurrent use.
type Checker struct {
	catalog *catalog.Catalog
	sets    []*ruleset.Set
	ids     map[string]string // of the sets, by the name by which each was asked for
	waivers []*waive.List
	today   waive.Date
	engine  *engine.Engine
	done    func(int)
	trying  func(design, done, most int)

	remedies bool
}

// New loads the checks and the rule sets. The error says what is wrong with
// them, each mistake with file, line and column.
func New(options Options) (*Checker, error) {
	checks, err := catalog.Load(rules.Checks())
	if err != nil {
		return nil, err
	}
	c := &Checker{catalog: checks, ids: map[string]string{}, today: options.Today, done: options.Progress, trying: options.Trying, remedies: options.Remedies}
	if c.done == nil {
		c.done = func(int) {}
	}
	if c.trying == nil {
		c.trying = func(int, int, int) {}
	}
	names := options.Sets
	if len(names) == 0 {
		names = DefaultSets()
	}
	if err := errors.Join(c.loadSets(names), c.loadWaivers(options.Waivers)); err != nil {
		return nil, err
	}
	running := engine.Options{Checks: checks, Sets: c.sets}
	if options.Sandbox != nil {
		running.Foreign = options.Sandbox
	}
	if c.engine, err = engine.New(running); err != nil {
		return nil, err
	}
	return c, nil
}

func (c *Checker) loadSets(names []string) error {
	library := ruleset.NewLibrary(rules.Sets(), c.catalog)
	files := map[string]string{}
	var errs []error
	for _, name := range names {
		set, err := library.ByName(name)
		if err != nil {
			errs = append(errs, err)
			continue
		}
		if other, taken := files[set.ID]; taken && other != set.File {
			errs = append(errs, fmt.Errorf("two rule sets call themselves %s: %s and %s", set.ID, other, set.File))
		}
		files[set.ID] = set.File
		c.ids[name] = set.ID
		c.sets = append(c.sets, set)
	}
	if len(errs) > 0 {
		return errors.Join(errs...)
	}
	return c.joinChecks()
}

// Catalog describes the checks, those that the sets bring included.
func (c *Checker) Catalog() *catalog.Catalog { return c.catalog }

// Sets gives the active rule sets, in the order in which they were named.
func (c *Checker) Sets() []*ruleset.Set { return c.sets }

// Library gives the rule sets that come with the program, and finds others by
// their path, without preparing any of them.
func Library() (*ruleset.Library, error) {
	checks, err := catalog.Load(rules.Checks())
	if err != nil {
		return nil, err
	}
	return ruleset.NewLibrary(rules.Sets(), checks), nil
}

// Input is one design.
type Input struct {
	// Name is what reports call it; its ending tells YAML from JSON.
	Name string
	Data []byte
	// Err says why there is no data; the design is then reported as not readable.
	Err error
	// Path is where the file lies, in the form of the waivers' directories; the
	// name where it is empty.
	Path string
	// Sets and Waivers are those of the checker that are for this design, by the
	// names by which the checker was given them; nil for all.
	Sets, Waivers []string
	// System is the system of units in which values print; nil for the design's
	// own.
	System *measure.System
}

// Check checks designs, several at once, and reports on them in their order.
// What a design lacks or gets wrong is in the report. Files of waivers with
// entries that excuse nothing or have run out stand behind the designs.
func (c *Checker) Check(ctx context.Context, inputs ...Input) result.Report {
	reviews := make([]*review, len(inputs))
	c.each(len(inputs), func(i int) {
		reviews[i] = c.open(inputs[i])
		c.judge(ctx, reviews[i])
		reviews[i].derived = nil // that of a thousand designs is much, and nobody asks for it
	})
	return c.report(ctx, reviews...)
}

// report puts designs that were judged into a report, with remedies where these
// are asked for, and with what there is to say on waivers.
func (c *Checker) report(ctx context.Context, reviews ...*review) result.Report {
	report := result.Report{Designs: make([]result.Design, len(reviews))}
	for _, set := range c.sets {
		report.Sets = append(report.Sets, set.Summary())
	}
	uses := make([][]waive.Use, len(reviews))
	for i, r := range reviews {
		report.Designs[i], uses[i] = r.design, r.uses
		if c.remedies {
			c.mend(ctx, i, r.in, &report.Designs[i])
		}
	}
	report.Designs = append(report.Designs, c.aboutWaivers(uses)...)
	return report
}

// each does some work for each of n designs, several at once, and tells how many
// are done.
func (c *Checker) each(n int, work func(i int)) {
	next := make(chan int)
	var workers sync.WaitGroup
	var counting sync.Mutex
	done := 0
	for range min(runtime.GOMAXPROCS(0), n) {
		workers.Go(func() {
			for i := range next {
				work(i)
				counting.Lock()
				done++
				c.done(done)
				counting.Unlock()
			}
		})
	}
	for i := range n {
		next <- i
	}
	close(next)
	workers.Wait()
}

// reason puts why a file cannot be opened into words.
func reason(err error) string {
	switch {
	case errors.Is(err, fs.ErrNotExist):
		return "there is no such file"
	case errors.Is(err, fs.ErrPermission):
		return "permission to read it is denied"
	}
	return fmt.Sprint(err)
}
