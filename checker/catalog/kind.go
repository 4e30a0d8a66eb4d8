package catalog

import "slices"

// Kind is the type of a figure: how a set may write it, in which form checks
// get it, and how it prints.
type Kind string

// The kinds of figures, with the form in which checks get them.
const (
	Length   Kind = "length"   // whole nanometres
	Pressure Kind = "pressure" // whole micropascals
	Force    Kind = "force"    // whole micronewtons
	Angle    Kind = "angle"    // whole micro-degrees
	Slope    Kind = "slope"    // {"rise", "run"}
	Ratio    Kind = "ratio"    // {"rise", "run"}
	Count    Kind = "count"    // a whole number
	Flag     Kind = "flag"     // true or false
	Words    Kind = "words"    // a text
	List     Kind = "list"     // a list of texts
	Groups   Kind = "groups"   // lists of texts by name
	Steps    Kind = "steps"    // a list of {"upto", "read"}, pressures
	Table    Kind = "table"    // {"breaks", "cells"}
)

// Part is the type of values only: a part of the deck by its mark, or where it
// has none by a text of the facts, which a set may word otherwise.
const Part Kind = "part"

// Whole reports whether values of the kind are single whole numbers, the only
// ones that a table may hold and step along.
func (k Kind) Whole() bool {
	return slices.Contains([]Kind{Length, Pressure, Force, Angle, Count}, k)
}

// Schema gives the JSON Schema of the form in which checks get a figure of the
// kind, in keywords that their type checker reads.
func (k Kind) Schema() map[string]any {
	whole, text := map[string]any{"type": "integer"}, map[string]any{"type": "string"}
	switch k {
	case Slope, Ratio:
		return object(map[string]any{"rise": whole, "run": whole})
	case Flag:
		return map[string]any{"type": "boolean"}
	case Words:
		return text
	case List:
		return map[string]any{"type": "array", "items": text}
	case Groups:
		return map[string]any{"type": "object"}
	case Steps:
		return map[string]any{"type": "array", "items": object(map[string]any{"upto": whole, "read": whole})}
	case Table:
		// Cells nest as deep as a set's table has keys, which is not known here.
		return object(map[string]any{"breaks": map[string]any{"type": "object"}, "cells": map[string]any{}})
	default:
		return whole
	}
}

func object(properties map[string]any) map[string]any {
	return map[string]any{"type": "object", "properties": properties, "additionalProperties": false}
}
