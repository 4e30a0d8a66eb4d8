package remedy

import (
	"context"
	"runtime"
	"slices"
	"sync"

	"plumbrule/checker/edit"
	"plumbrule/checker/mending"
	"plumbrule/checker/result"
)

// How much is tried. They are counts, not times, so that the same design has
// the same remedies on a slow machine and on a fast one.
const (
	rungs      = 24      // of one kind of change for one finding
	patience   = 5       // of these that make something else worse
	perDesign  = 120     // changed designs that are checked
	perRun     = 100_000 // results of these checks, all in all: fewer trials for a larger design
	perFinding = 3       // remedies that are kept
)

// Options say how changed designs are checked.
type Options struct {
	// Check checks a changed text as the design was checked. It is called from
	// several goroutines at once.
	Check func(ctx context.Context, data []byte) result.Design
	// About says what is known of a check beside its results.
	About func(check string) About
	// Say says what is changed in the words of a set; nil leaves all as it is.
	Say func(set, text string) string
	// Tried is told how many changed designs are checked of at most so many, one
	// at a time. It may be nil.
	Tried func(done, most int)
}

// About is what is known of a check beside its results.
type About struct {
	// Tries names the kinds of change that may mend its findings, the one first
	// that costs least work.
	Tries []mending.Kind
	// Asks says that its limit is that from which on something is asked for. How
	// far past that a value lies makes nothing worse: the same is asked for.
	Asks bool
	// Accepted gives the words that the rule sets accept in answer to it, in the
	// order of their lists.
	Accepted []string
}

// Find looks for remedies of all that is outside in a checked design and files
// them with the findings. When ctx ends, none are filed.
func Find(ctx context.Context, d *result.Design, options Options) {
	if d.Document == nil || len(d.Problems) > 0 {
		return
	}
	s := search{ctx: ctx, design: d, options: options, tried: map[string]*trial{}, shared: map[string][]*subject{}, most: trials(d)}
	s.before = s.take(d)
	s.subjects, s.faulty = subjects(d), faulty(d)
	for i := range s.subjects {
		s.add(&s.subjects[i])
	}
	for s.round() || s.reopen() {
		continue
	}
	if ctx.Err() == nil {
		s.file()
	}
}

// trials is how many changed designs are checked.
func trials(d *result.Design) int {
	return min(perDesign, perRun/max(len(d.Findings)+len(d.Readings), 1))
}

// search is the work on one design.
type search struct {
	ctx      context.Context
	design   *result.Design
	options  Options
	before   standing
	subjects []subject
	faulty   []string // pointers to what is outside
	ladders  []ladder
	tried    map[string]*trial     // by changed text
	shared   map[string][]*subject // by field: those that a change of it brings inside
	most     int                   // trials
	done     int                   // trials
}

// trial is a changed design. Several subjects may ask for the same one.
type trial struct {
	data   []byte
	design result.Design
	after  standing
	done   bool
}

// add puts the ladders of a subject behind those of others.
func (s *search) add(of *subject) {
	finding := of.worst(s.design)
	about := s.options.About(finding.Check)
	g := ground{doc: s.design.Document, finding: finding, system: s.design.System, accepted: about.Accepted, faulty: s.faulty, farthest: farthest(s.design, finding)}
	for _, kind := range about.Tries {
		for _, move := range moves(kind) {
			behind := -1
			for _, list := range move(&g) {
				if len(list) > 0 {
					named(list, kind)
					s.ladders = append(s.ladders, ladder{subject: of, rungs: list[:min(len(list), rungs)], behind: behind})
					behind = len(s.ladders) - 1
				}
			}
		}
	}
}

// faulty lists where something is outside.
func faulty(d *result.Design) []string {
	var list []string
	for i := range d.Findings {
		if f := &d.Findings[i]; f.Outcome == result.Outside {
			list = append(list, f.At...)
		}
	}
	return list
}

// named says of which kind changes are.
func named(list []rung, kind mending.Kind) {
	for i := range list {
		list[i].kind = kind
		named(list[i].finer, kind)
	}
}

// failed reports whether no rung of a ladder holds, nor of those before it.
func (s *search) failed(i int) bool {
	return i < 0 || s.ladders[i].held == nil && !s.ladders[i].open() && s.failed(s.ladders[i].behind)
}

// round tries the next rung of every ladder that is still open, all at once. It
// reports whether there was one.
func (s *search) round() bool {
	var fresh []*trial
	asked := map[int]*trial{}
	for i := range s.ladders {
		l := &s.ladders[i]
		if s.ctx.Err() != nil || !l.open() || !s.failed(l.behind) {
			continue
		}
		t := s.trial(&l.rungs[l.next])
		if t != nil && !t.done && !slices.Contains(fresh, t) {
			fresh = append(fresh, t)
		}
		asked[i] = t
	}
	s.run(fresh)
	for i := range s.ladders {
		if t, ok := asked[i]; ok {
			s.climb(&s.ladders[i], t)
		}
	}
	return len(asked) > 0 && s.ctx.Err() == nil
}

// trial gives the changed design of a rung, checked or not yet; nil where the
// change cannot be made or enough was tried.
func (s *search) trial(r *rung) *trial {
	edits := make([]edit.Edit, len(r.changes))
	for i, c := range r.changes {
		edits[i] = edit.Edit{Pointer: c.pointer, Value: c.to}
	}
	data, err := edit.Apply(s.design.Document, edits)
	if err != nil {
		return nil
	}
	t := s.tried[string(data)]
	if t == nil && len(s.tried) < s.most {
		t = &trial{data: data}
		s.tried[string(data)] = t
	}
	return t
}

// run checks changed designs, several at once.
func (s *search) run(fresh []*trial) {
	next := make(chan *trial)
	var workers sync.WaitGroup
	var counting sync.Mutex
	for range min(runtime.GOMAXPROCS(0), len(fresh)) {
		workers.Go(func() {
			for t := range next {
				t.design = s.options.Check(s.ctx, t.data)
				t.after, t.done = s.take(&t.design), true
				counting.Lock()
				s.done++
				if s.options.Tried != nil {
					s.options.Tried(s.done, s.most)
				}
				counting.Unlock()
			}
		})
	}
	for _, t := range fresh {
		next <- t
	}
	close(next)
	workers.Wait()
}

// say says a text in the words of a set.
func (s *search) say(set, text string) string {
	if s.options.Say == nil {
		return text
	}
	return s.options.Say(set, text)
}
