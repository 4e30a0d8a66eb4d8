package compare

import (
	"testing"

	"plumbrule/checker/source"
)

// FuzzChanges compares whatever can be read: nothing breaks, every value is
// paired with one other at most, and what differs one way differs the other way.
func FuzzChanges(f *testing.F) {
	for _, seed := range [][2]string{
		{before, after},
		{"guards: [{mark: G1}, {mark: G1}, {}]", "guards: [{mark: G1}, 3, null, [[]]]"},
		{"stairs: [{measured_risers: [7 in, 8 in, 7 in]}]", "stairs: [{measured_risers: [8 in, 7 in, 7 in, 9 in]}]"},
		{"platforms: [{outline: {corners: [[0 ft, 0 ft], [1 ft]]}}]", "platforms: {outline: {corners: [[0 ft], [1 ft, 2 ft]]}}"},
		{"[1, 2]", "{a: 1}"},
	} {
		f.Add(seed[0], seed[1])
	}
	f.Fuzz(func(t *testing.T, was, is string) {
		a, err := source.Read("was.yaml", []byte(was))
		if err != nil {
			return
		}
		b, err := source.Read("is.yaml", []byte(is))
		if err != nil {
			return
		}
		p, q := pair(a, b), pair(b, a)
		there, back := p.changes(a, b), q.changes(b, a)
		for old, fresh := range p.next {
			if p.prev[fresh] != old {
				t.Errorf("%s is %s, which is another", old.Pointer, fresh.Pointer)
			}
		}
		for _, doc := range []*source.Document{a, b} {
			if own := pair(doc, doc).changes(doc, doc); len(own) > 0 {
				t.Errorf("changed against itself: %+v", own)
			}
		}
		if (len(there) == 0) != (len(back) == 0) {
			t.Errorf("there %+v, back %+v", there, back)
		}
	})
}
