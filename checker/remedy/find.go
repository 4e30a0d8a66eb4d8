package remedy

import (
	"context"
	"runtime"
	"slices"
	"sync"

	"plumbrule/checker/edit"
	"plumbrule/checker/result"
	"plumbrule/checker/source"
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
	// Accepted gives the words that the rule sets accept in answer to a check,
	// in the order of their lists.
	Accepted func(check string) []string
	// Say says what is changed in the words of a set; nil leaves all as it is.
	Say func(set, text string) string
}

// Find looks for remedies of all that is outside in a checked design and files
// them with the findings. When ctx ends, none are filed.
func Find(ctx context.Context, d *result.Design, options Options) {
	if d.Document == nil || len(d.Problems) > 0 {
		return
	}
	s := search{ctx: ctx, design: d, options: options, before: take(d), tried: map[string]*trial{}, most: trials(d)}
	for _, subject := range subjects(d) {
		s.add(subject)
	}
	for s.round() {
	}
	if ctx.Err() != nil {
		return
	}
	for i := range s.ladders {
		s.file(&s.ladders[i])
	}
}

// trials is how many changed designs are checked.
func trials(d *result.Design) int {
	return min(perDesign, perRun/max(len(d.Findings)+len(d.Readings), 1))
}

// search is the work on one design.
type search struct {
	ctx     context.Context
	design  *result.Design
	options Options
	before  standing
	ladders []ladder
	tried   map[string]*trial // by changed text
	most    int               // trials
}

// ladder holds changes of one kind for one subject, the smallest first. It is
// climbed until one of them holds.
type ladder struct {
	subject subject
	rungs   []rung
	behind  int // the ladder that has to fail before this one is tried; -1 for none
	next    int
	held    *trial // the changed design in which the rung before next held
	worse   int    // rungs that made something else worse; a longer way rarely mends that
}

func (l *ladder) open() bool {
	return l.held == nil && l.next < len(l.rungs) && l.worse < patience
}

// trial is a changed design. Several subjects may ask for the same one.
type trial struct {
	data   []byte
	design result.Design
	after  standing
	done   bool
}

// add puts the ladders of a subject behind those of others.
func (s *search) add(subject subject) {
	g := ground{doc: s.design.Document, finding: subject.worst(s.design), system: s.design.System}
	if s.options.Accepted != nil {
		g.accepted = s.options.Accepted(g.finding.Check)
	}
	for _, move := range moves(g.finding.Check) {
		behind := -1
		for _, list := range move(&g) {
			if len(list) > 0 {
				s.ladders = append(s.ladders, ladder{subject: subject, rungs: list[:min(len(list), rungs)], behind: behind})
				behind = len(s.ladders) - 1
			}
		}
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
			l := &s.ladders[i]
			l.next++
			if t != nil && s.holds(l, t) {
				l.held = t
			}
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
	for range min(runtime.GOMAXPROCS(0), len(fresh)) {
		workers.Go(func() {
			for t := range next {
				t.design = s.options.Check(s.ctx, t.data)
				t.after, t.done = take(&t.design), true
			}
		})
	}
	for _, t := range fresh {
		next <- t
	}
	close(next)
	workers.Wait()
}

// holds reports whether the subject of a ladder is inside in a changed design
// and nothing else of it is worse.
func (s *search) holds(l *ladder, t *trial) bool {
	if len(t.design.Problems) > 0 {
		return false
	}
	before, after := s.before, t.after
	if l.rungs[l.next-1].resized {
		before, after = before.withoutIndices(), after.withoutIndices()
	}
	if after.worseThan(before) {
		l.worse++
		return false
	}
	return l.subject.inside(s.design, before, after)
}

// file writes what a ladder came to into the findings of its subject.
func (s *search) file(l *ladder) {
	if l.held == nil {
		return
	}
	r := &l.rungs[l.next-1]
	remedy := result.Remedy{Changes: r.typed(s.design.Document)}
	for _, i := range l.subject.findings {
		f := &s.design.Findings[i]
		remedy.Text = r.text(l.subject, s.design, &l.held.design, func(text string) string { return s.say(f.Set, text) })
		known := slices.ContainsFunc(f.Remedies, func(other result.Remedy) bool { return slices.Equal(other.Changes, remedy.Changes) })
		if len(f.Remedies) < perFinding && !known {
			f.Remedies = append(f.Remedies, remedy)
		}
	}
}

// say says a text in the words of a set.
func (s *search) say(set, text string) string {
	if s.options.Say == nil {
		return text
	}
	return s.options.Say(set, text)
}

// typed gives the changes of a rung that was tried, as they are typed in.
func (r *rung) typed(doc *source.Document) []result.Change {
	list := make([]result.Change, len(r.changes))
	for i, c := range r.changes {
		list[i] = result.Change{Pointer: c.pointer, To: edit.Written(c.to)}
		if old := doc.Find(c.pointer); old != nil {
			list[i].From = edit.Written(old)
		}
		if places, err := edit.Replacements(doc, []edit.Edit{{Pointer: c.pointer, Value: c.to}}); err == nil {
			list[i].Span, list[i].Text = places[0].Span, places[0].Text
		}
	}
	return list
}
