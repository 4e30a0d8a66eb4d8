package catalog

import "plumbrule/checker/source"

// Unit is what a number without a unit of its own counts: risers; or what it is
// a share of, in the words that follow it: of the span behind it.
type Unit struct{ One, Many string }

// UnitOf reads a unit as it is written for a kind: two nouns for a count, one
// phrase for a ratio. It is empty where there is none.
func UnitOf(n *source.Node) Unit {
	switch {
	case n == nil:
	case n.Kind == source.String:
		return Unit{n.Text, n.Text}
	case len(n.Items) > 1:
		return Unit{n.Items[0].Text, n.Items[1].Text}
	}
	return Unit{}
}

// After puts the unit behind a number: 1 riser, 7 risers.
func (u Unit) After(number string) string {
	switch {
	case u.Many == "":
		return number
	case number == "1" || number == "-1":
		return number + " " + u.One
	}
	return number + " " + u.Many
}
