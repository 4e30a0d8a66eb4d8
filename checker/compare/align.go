package compare

import (
	"plumbrule/checker/measure"
	"plumbrule/checker/source"
	"plumbrule/schema"
)

// The costs of laying two lists against each other. Putting in and taking out
// cost as much together as two entries that have nothing in common, so that
// whatever has a little in common is one entry that changed.
const (
	gapCost    = 0.5
	renameCost = 0.1 // alike in all but the mark
	apartCost  = 3   // never one entry
	valueCost  = 0.6 // single values that differ; farCost more for those that lie far apart
	farCost    = 0.3
	objectCost = 0.95
)

// mostCells bounds the work on lists of absurd length, whose entries are then
// laid against each other by their numbers.
const mostCells = 1 << 20

// align says which entries of two lists belong together, as pairs of indices:
// those that come out cheapest in keeping their order, and of the rest those
// that say the same at another place.
func align(was, is []*source.Node) [][2]int {
	var found [][2]int
	usedA, usedB := make([]bool, len(was)), make([]bool, len(is))
	for _, m := range inOrder(was, is) {
		found = append(found, m)
		usedA[m[0]], usedB[m[1]] = true, true
	}
	if len(was)*len(is) > mostCells {
		return found
	}
	for i := range was {
		for k := range is {
			if !usedA[i] && !usedB[k] && ownName(was[i]) == ownName(is[k]) && same(was[i], is[k]) {
				found = append(found, [2]int{i, k})
				usedA[i], usedB[k] = true, true
			}
		}
	}
	return found
}

// inOrder pairs entries without changing their order, at the least cost.
func inOrder(was, is []*source.Node) [][2]int {
	if len(was)*len(is) > mostCells {
		return byNumber(was, is)
	}
	// cheapest[i][k] is the cost of the entries from i and k on.
	cheapest := make([][]float64, len(was)+1)
	costs := make([][]float64, len(was))
	for i := range cheapest {
		cheapest[i] = make([]float64, len(is)+1)
		for k := range cheapest[i] {
			cheapest[i][k] = gapCost * float64(len(was)-i+len(is)-k)
		}
	}
	for i := len(was) - 1; i >= 0; i-- {
		costs[i] = make([]float64, len(is))
		for k := len(is) - 1; k >= 0; k-- {
			costs[i][k] = cost(was[i], is[k])
			cheapest[i][k] = min(costs[i][k]+cheapest[i+1][k+1], gapCost+cheapest[i+1][k], gapCost+cheapest[i][k+1])
		}
	}
	var found [][2]int
	for i, k := 0, 0; i < len(was) && k < len(is); {
		switch cheapest[i][k] {
		case costs[i][k] + cheapest[i+1][k+1]:
			found = append(found, [2]int{i, k})
			i, k = i+1, k+1
		case gapCost + cheapest[i+1][k]:
			i++
		default:
			k++
		}
	}
	return found
}

func byNumber(was, is []*source.Node) [][2]int {
	var found [][2]int
	for i := range min(len(was), len(is)) {
		if cost(was[i], is[i]) < apartCost {
			found = append(found, [2]int{i, i})
		}
	}
	return found
}

// cost says how little two entries have in common, from 0 for the same.
func cost(a, b *source.Node) float64 {
	if scalar(a) && scalar(b) {
		if same(a, b) {
			return 0
		}
		return valueCost + farCost*distance(a, b)
	}
	if a.Kind != b.Kind {
		return apartCost
	}
	different, total := difference(a, b)
	if nameA, nameB := ownName(a), ownName(b); nameA != "" && nameB != "" && nameA != nameB {
		if different == 0 {
			return renameCost
		}
		return apartCost // a mark that is gone, and another that is new
	}
	return objectCost * float64(different) / float64(max(total, 1))
}

// distance says how far two lengths lie apart, between 0 and 1; it is 1 for
// what is no length.
func distance(a, b *source.Node) float64 {
	if schema.QuantityAt(designs, a.Pointer) != schema.Length {
		return 1
	}
	x, _, err1 := measure.ParseLength(a.Text)
	y, _, err2 := measure.ParseLength(b.Text)
	if err1 != nil || err2 != nil {
		return 1
	}
	far := abs(float64(x) - float64(y))
	return far / (far + float64(measure.Foot))
}

func abs(x float64) float64 { return max(x, -x) }
