package compare

import "slices"

// fill completes the lines of each check with what a set says of something else
// than the others do: of the design or an element as a whole, that the check does
// not apply there, could not run or lacks something; or of one thing only, as
// that the snow is outside of its table. Lines of which nothing is left that does
// not stand in another are dropped.
func fill(lines []line) []line {
	var order []string
	checks := map[string][]line{}
	for _, l := range lines {
		check := l.first().Check
		if checks[check] == nil {
			order = append(order, check)
		}
		checks[check] = append(checks[check], l)
	}
	var filled []line
	for _, check := range order {
		filled = append(filled, fillCheck(checks[check])...)
	}
	return filled
}

func fillCheck(lines []line) []line {
	results := make([]int, len(lines[0])) // by set
	for _, l := range lines {
		for i, s := range l {
			if s != nil {
				results[i]++
			}
		}
	}
	base := slices.IndexFunc(lines, func(l line) bool { return !l.lone(results) })
	base = max(base, 0)
	used := map[*subject]bool{}
	for k, l := range lines {
		if k != base && l.lone(results) {
			continue
		}
		for _, other := range lines {
			for i, s := range other {
				if l[i] == nil && s != nil && (results[i] == 1 || l.about(s)) {
					l[i] = s
					used[s] = true
				}
			}
		}
	}
	kept := lines[:0:0]
	for k, l := range lines {
		if k == base || slices.ContainsFunc(l, func(s *subject) bool { return s != nil && !used[s] }) {
			kept = append(kept, l)
		}
	}
	return kept
}

// lone reports whether each of the sets that a line has a result of has no other
// for the check.
func (l line) lone(results []int) bool {
	for i, s := range l {
		if s != nil && results[i] > 1 {
			return false
		}
	}
	return true
}

// about reports whether something that is no value stands for what a line is
// about: the whole design, or an element that holds it.
func (l line) about(s *subject) bool {
	if s.value() || !slices.ContainsFunc(l, func(own *subject) bool { return own != nil && own.value() }) {
		return false
	}
	return s.whole() || related(l.first(), s)
}
