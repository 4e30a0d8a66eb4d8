package remedy

import "slices"

// ladder holds changes of one kind for one subject, the smallest first. It is
// climbed until one of them holds.
type ladder struct {
	subject *subject
	rungs   []rung
	behind  int // the ladder that has to fail before this one is tried; -1 for none
	next    int
	worse   int // rungs that made something else worse; a longer way rarely mends that

	held    *trial // the changed design that holds
	by      *rung  // its change
	settled bool   // held is the smallest that there is
}

func (l *ladder) open() bool {
	return !l.settled && l.next < len(l.rungs) && l.worse < patience
}

// climb takes the step that a trial came to. A rung that holds and has finer
// ones below it is held while these are tried.
func (s *search) climb(l *ladder, t *trial) {
	r := &l.rungs[l.next]
	l.next++
	if t == nil || !s.holds(l, r, t) {
		return
	}
	s.share(r, t)
	l.held, l.by = t, r
	l.settled = len(r.finer) == 0
	if !l.settled {
		l.rungs = slices.Concat(r.finer, l.rungs[l.next-1:])
		l.rungs[len(r.finer)].finer = nil
		l.next, l.worse = 0, 0
	}
}

// holds reports whether the subject of a ladder is inside in a changed design
// and nothing else of it is worse.
func (s *search) holds(l *ladder, r *rung, t *trial) bool {
	if len(t.design.Problems) > 0 {
		l.worse++
		return false
	}
	before, after := s.before, t.after
	if r.resized {
		before, after = before.withoutIndices(), after.withoutIndices()
	}
	if after.worseThan(before) || s.lost(t) {
		l.worse++
		if r.straight && s.farther(l.subject, before, after) {
			l.worse = patience // this way leads away from the limit
		}
		return false
	}
	return s.inside(l.subject, r, t)
}

// farther reports whether a subject lies farther outside than it did.
func (s *search) farther(of *subject, before, after standing) bool {
	for _, i := range of.findings {
		k := before.key(&s.design.Findings[i])
		was, is := sorted(before.against[k]), sorted(after.against[k])
		if len(is) > 0 && len(was) > 0 && is[0].margin < was[0].margin {
			return true
		}
	}
	return false
}

// field is what the change of a rung is about.
func (r *rung) field() string { return r.changes[0].pointer }

// restsOn reports whether what is found outside rests on the value at a
// pointer.
func (s *search) restsOn(of *subject, pointer string) bool {
	return slices.ContainsFunc(of.findings, func(i int) bool { return slices.Contains(s.design.Findings[i].At, pointer) })
}

// share notes which subjects a change that holds brings inside, of those that
// rest on its field. Whoever changes the field has to answer all of them, or the
// next one asks for another change of the same.
func (s *search) share(r *rung, t *trial) {
	for i := range s.subjects {
		of := &s.subjects[i]
		if s.restsOn(of, r.field()) && !slices.Contains(s.shared[r.field()], of) && s.inside(of, r, t) {
			s.shared[r.field()] = append(s.shared[r.field()], of)
		}
	}
}

// answers reports whether a change brings all subjects inside that some change
// of its field does.
func (s *search) answers(r *rung, t *trial) bool {
	return !slices.ContainsFunc(s.shared[r.field()], func(of *subject) bool { return !s.inside(of, r, t) })
}

// reopen sends ladders on whose change leaves another finding on the same field
// outside, though there are changes of that field that do not. It reports
// whether there were any.
func (s *search) reopen() bool {
	found := false
	for i := range s.ladders {
		l := &s.ladders[i]
		if l.held != nil && !s.answers(l.by, l.held) {
			l.held, l.by, l.settled, found = nil, nil, false, true
		}
	}
	return found
}
