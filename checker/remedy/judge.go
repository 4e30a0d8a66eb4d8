package remedy

import (
	"math"
	"slices"
	"strings"

	"plumbrule/checker/result"
	"plumbrule/checker/source"
)

// subject is one thing that is outside: what the same check says in the same
// place, by however many sets and for however many members that share it.
type subject struct {
	findings []int // in the design's findings
}

// subjects lists what is outside, in the order of the findings.
func subjects(d *result.Design) []subject {
	var list []subject
	index := map[[2]string]int{}
	for i := range d.Findings {
		f := &d.Findings[i]
		if f.Outcome != result.Outside {
			continue
		}
		key := [2]string{f.Check, first(f.At)}
		n, known := index[key]
		if !known {
			n = len(list)
			index[key] = n
			list = append(list, subject{})
		}
		list[n].findings = append(list[n].findings, i)
	}
	return list
}

// worst is the finding that lies farthest outside.
func (s *subject) worst(d *result.Design) *result.Result {
	worst := &d.Findings[s.findings[0]]
	for _, i := range s.findings[1:] {
		if f := &d.Findings[i]; lesser(f, worst) {
			worst = f
		}
	}
	return worst
}

// lesser reports whether a result has less margin than another, as far as both
// have one.
func lesser(a, b *result.Result) bool {
	return a.Margin != nil && b.Margin != nil && a.Margin.Number < b.Margin.Number
}

// farthest is the finding that lies farthest outside of those that ask for the
// same way at the place of one: whatever mends that has to go as far.
func farthest(d *result.Design, of *result.Result) *result.Result {
	if of.Limit == nil || of.Margin == nil {
		return of
	}
	most := of
	for i := range d.Findings {
		f := &d.Findings[i]
		if f.Outcome == result.Outside && first(f.At) == first(of.At) && f.Limit != nil && f.Margin != nil &&
			f.Margin.Unit == of.Margin.Unit && upward(f.Limit.Relation) == upward(of.Limit.Relation) && lesser(f, most) {
			most = f
		}
	}
	return most
}

// upward says which way a value has to go to come inside: 1, -1, or 0 where the
// relation does not say.
func upward(r result.Relation) int {
	switch r {
	case result.AtLeast, result.MoreThan:
		return 1
	case result.AtMost, result.LessThan:
		return -1
	case result.Exactly, result.OneOf:
	}
	return 0
}

// inside reports whether a changed design has settled a subject: none of its
// sets says anything against it, and each finds more within than it did. Where a
// check names the kind of change as one that mends, it may also not apply any
// more: closed risers have no opening. Of other kinds, having nothing to say is
// no answer. What the subject is said of has to be there still: a stair that is
// taken out of a design has not been mended.
func (s *search) inside(of *subject, r *rung, t *trial) bool {
	before, after := s.before, t.after
	if r.resized {
		before, after = before.withoutIndices(), after.withoutIndices()
	}
	for _, i := range of.findings {
		f := &s.design.Findings[i]
		who := [2]string{f.Set, f.Check}
		settled := after.inside[who] > before.inside[who] ||
			after.spared[who] > before.spared[who] && slices.Contains(s.options.About(f.Check).Tries, r.kind)
		if len(after.against[after.key(f)]) > 0 || !settled || s.gone(first(f.At), t) {
			return false
		}
	}
	return true
}

// lost reports whether something that was found within is no longer spoken of
// because what it was said of was taken out of the design. A check that has
// nothing to ask any more, as of the guard of a deck that lies lower now, is no
// loss: it says so itself.
func (s *search) lost(t *trial) bool {
	for p := range s.before.within {
		if !t.after.within[p] && s.gone(p.at, t) {
			return true
		}
	}
	return false
}

// gone reports whether a changed design has no longer the part that is at a
// place, or in which the value of that place stood.
func (s *search) gone(at string, t *trial) bool {
	old := s.design.Document.Find(at)
	if old == nil {
		return false
	}
	if old.Kind != source.Object && old.Parent != nil {
		at = old.Parent.Pointer
	}
	return t.design.Document == nil || t.design.Document.Find(at) == nil
}

// standing is how a design stands: what speaks against it, what is within, and
// how often each check of each set finds something within or does not apply.
type standing struct {
	against map[key][]weight
	within  map[key]bool
	inside  map[[2]string]int // results within
	spared  map[[2]string]int // subjects to which a check does not apply
	// bare drops the numbers of posts, which change when posts are added.
	bare bool
}

// key says of what something is said, in which manner.
type key struct {
	set, check, at, needs string
	outcome               result.Outcome
}

// weight says how far outside something is; message tells apart what cannot be
// measured.
type weight struct {
	margin  float64
	message string
}

// take reads how a design stands.
func (s *search) take(d *result.Design) standing {
	now := standing{against: map[key][]weight{}, within: map[key]bool{}, inside: map[[2]string]int{}, spared: map[[2]string]int{}}
	for i := range d.Readings {
		r := &d.Readings[i]
		who := [2]string{r.Set, r.Check}
		if r.Outcome == result.Within {
			now.within[now.key(r)] = true
			now.inside[who]++
		} else {
			now.spared[who]++
		}
	}
	for i := range d.Findings {
		r := &d.Findings[i]
		w := weight{math.Inf(-1), r.Message}
		if r.Margin != nil {
			w = weight{margin: r.Margin.Number}
		}
		if s.options.About(r.Check).Asks {
			w = weight{}
		}
		k := now.key(r)
		now.against[k] = append(now.against[k], w)
	}
	return now
}

// numberless takes the number of a post off a pointer: /beams/0/posts_at.
func numberless(at string) string {
	cut := strings.LastIndexByte(at, '/')
	if cut > 0 && (strings.HasSuffix(at[:cut], "/posts_at") || strings.HasSuffix(at[:cut], "/ply_joints_at")) {
		return at[:cut]
	}
	return at
}

// key is the key of a result. What is excused counts like what is outside: its
// leave was given for what it was.
func (s standing) key(r *result.Result) key {
	k := key{r.Set, r.Check, first(r.At), r.Needs, r.Outcome}
	if k.outcome == result.Excused {
		k.outcome = result.Outside
	}
	if s.bare {
		k.at = numberless(k.at)
	}
	return k
}

// withoutIndices takes together what is said of single posts of a beam.
func (s standing) withoutIndices() standing {
	bare := standing{against: map[key][]weight{}, within: s.within, inside: s.inside, spared: s.spared, bare: true}
	for k, weights := range s.against {
		k.at = numberless(k.at)
		bare.against[k] = append(bare.against[k], weights...)
	}
	return bare
}

// worseThan reports whether anything speaks against a design that did not speak
// against the other, or lies farther outside.
func (s standing) worseThan(other standing) bool {
	for k, weights := range s.against {
		if !covered(sorted(weights), sorted(other.against[k])) {
			return true
		}
	}
	return false
}

// covered holds weights against those before, the gravest against the gravest.
func covered(after, before []weight) bool {
	if len(after) > len(before) {
		return false
	}
	for i := range after {
		if after[i].margin < before[i].margin || after[i].message != before[i].message {
			return false
		}
	}
	return true
}

func sorted(weights []weight) []weight {
	weights = slices.Clone(weights)
	slices.SortFunc(weights, func(a, b weight) int {
		switch {
		case a.margin < b.margin:
			return -1
		case a.margin > b.margin:
			return 1
		}
		return strings.Compare(a.message, b.message)
	})
	return weights
}

func first(at []string) string {
	if len(at) == 0 {
		return ""
	}
	return at[0]
}
