package remedy

import (
	"math"
	"slices"
	"strings"

	"plumbrule/checker/result"
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
func (s subject) worst(d *result.Design) *result.Result {
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

// inside reports whether a changed design says of the subject that it lies
// inside: none of its sets says anything else there, and each has more to say
// that is within than it had.
func (s subject) inside(d *result.Design, before, after standing) bool {
	for _, i := range s.findings {
		f := &d.Findings[i]
		who := [2]string{f.Set, f.Check}
		if len(after.against[after.key(f)]) > 0 || after.within[who] <= before.within[who] {
			return false
		}
	}
	return true
}

// standing is how a design stands: what speaks against it, and how often each
// check of each set finds something within.
type standing struct {
	against map[key][]weight
	within  map[[2]string]int
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
func take(d *result.Design) standing {
	s := standing{against: map[key][]weight{}, within: map[[2]string]int{}}
	for i := range d.Readings {
		if r := &d.Readings[i]; r.Outcome == result.Within {
			s.within[[2]string{r.Set, r.Check}]++
		}
	}
	for i := range d.Findings {
		r := &d.Findings[i]
		w := weight{math.Inf(-1), r.Message}
		if r.Margin != nil {
			w = weight{margin: r.Margin.Number}
		}
		if asks(r.Check) {
			w = weight{}
		}
		k := s.key(r)
		s.against[k] = append(s.against[k], w)
	}
	return s
}

// asks reports whether a check asks for a thing from some height on. How far
// above that height something lies makes nothing worse: the same is asked for.
func asks(check string) bool {
	switch check {
	case "guards/required", "guards/stair-required", "posts/bracing":
		return true
	}
	return false
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
	bare := standing{against: map[key][]weight{}, within: s.within, bare: true}
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
