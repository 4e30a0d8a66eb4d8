package compare

import (
	"plumbrule/checker/measure"
	"plumbrule/checker/source"
	"plumbrule/schema"
)

// designs is the schema that says which values are quantities.
const designs = "design"

// same reports whether two values mean the same, in whatever unit and spelling.
// A member without a value is one that is not there.
func same(a, b *source.Node) bool {
	if scalar(a) && scalar(b) {
		return a.Text == b.Text || equal(a, b)
	}
	if a.Kind != b.Kind {
		return false
	}
	if a.Kind == source.Null {
		return true
	}
	if a.Kind == source.Array {
		if len(a.Items) != len(b.Items) {
			return false
		}
		for i := range a.Items {
			if !same(a.Items[i], b.Items[i]) {
				return false
			}
		}
		return true
	}
	different, _ := difference(a, b)
	return different == 0
}

func scalar(n *source.Node) bool {
	return n.Kind == source.String || n.Kind == source.Number || n.Kind == source.Bool
}

// equal reports whether two texts are one quantity.
func equal(a, b *source.Node) bool {
	switch schema.QuantityAt(designs, a.Pointer) {
	case schema.Length:
		return alike(a, b, measure.ParseLength)
	case schema.Pressure:
		return alike(a, b, measure.ParsePressure)
	case schema.Force:
		return alike(a, b, measure.ParseForce)
	case schema.Size:
		return alike(a, b, measure.ParseSize)
	case schema.Angle:
		x, err1 := measure.ParseAngle(a.Text)
		y, err2 := measure.ParseAngle(b.Text)
		return err1 == nil && err2 == nil && x == y
	case schema.Slope:
		x, err1 := measure.ParseSlope(a.Text)
		y, err2 := measure.ParseSlope(b.Text)
		return err1 == nil && err2 == nil && x.Cmp(y) == 0
	case schema.Plain, schema.Point:
	}
	return false
}

func alike[T comparable](a, b *source.Node, parse func(string) (T, measure.System, error)) bool {
	x, _, err1 := parse(a.Text)
	y, _, err2 := parse(b.Text)
	return err1 == nil && err2 == nil && x == y
}

// difference counts the values that differ between two trees, and those that
// there are in either. Marks do not count, since they are names.
func difference(a, b *source.Node) (different, total int) {
	switch {
	case a == nil || b == nil || a.Kind != b.Kind && (!scalar(a) || !scalar(b)):
		n := max(leaves(a), leaves(b), 1)
		return n, n
	case a.Kind == source.Object:
		for _, key := range keys(a, b) {
			if key == "mark" {
				continue
			}
			d, n := difference(shown(a, key), shown(b, key))
			different, total = different+d, total+n
		}
	case a.Kind == source.Array:
		for i := range max(len(a.Items), len(b.Items)) {
			d, n := difference(entry(a, i), entry(b, i))
			different, total = different+d, total+n
		}
	case !same(a, b):
		return 1, 1
	default:
		return 0, 1
	}
	return different, total
}

// leaves counts the single values in a tree.
func leaves(n *source.Node) int {
	if n == nil || n.Kind == source.Null {
		return 0
	}
	if scalar(n) {
		return 1
	}
	count := 0
	for _, m := range n.Members {
		count += leaves(m.Value)
	}
	for _, item := range n.Items {
		count += leaves(item)
	}
	return count
}

// shown gives the value of a member, or nil where the design shows none.
func shown(n *source.Node, key string) *source.Node {
	m := n.Member(key)
	if m == nil || m.Value.Kind == source.Null {
		return nil
	}
	return m.Value
}

func entry(n *source.Node, i int) *source.Node {
	if i >= len(n.Items) {
		return nil
	}
	return n.Items[i]
}

// keys gives the members that either object shows, those of the first first.
func keys(a, b *source.Node) []string {
	var list []string
	for _, m := range a.Members {
		if shown(a, m.Key) != nil {
			list = append(list, m.Key)
		}
	}
	for _, m := range b.Members {
		if shown(b, m.Key) != nil && shown(a, m.Key) == nil {
			list = append(list, m.Key)
		}
	}
	return list
}
