package model

import "plumbrule/checker/measure"

// Value is a typed value and the JSON pointer of its place in the design.
type Value[T any] struct {
	V  T
	At string
}

// The kinds of value a design holds. Fields use pointers; nil is not shown.
type (
	// Length is in nanometres.
	Length = Value[measure.Length]
	// Pressure is a load on an area, in micropascals.
	Pressure = Value[measure.Pressure]
	// Force is a force or weight, in micronewtons.
	Force = Value[measure.Force]
	// Angle is in micro-degrees.
	Angle = Value[measure.Angle]
	// Slope is a rise over a run.
	Slope = Value[measure.Slope]
	// Size is a cross-section of lumber.
	Size = Value[measure.Size]
	// Count is a whole number.
	Count = Value[int64]
	// Words is a word or text.
	Words = Value[string]
	// Flag is yes or no.
	Flag = Value[bool]
)

// Coordinate is a place on the plan: x along the house from its left end, y
// out from the house face. Unlike other lengths, it may be negative.
type Coordinate = Value[measure.Length]

// Point is a place on the plan.
type Point struct {
	At   string
	X, Y measure.Length
}

// LengthOrWord is a field that takes a length or one of a few words, as
// headroom takes "open to sky".
type LengthOrWord struct {
	At     string
	Length *Length
	Word   string
}

// Entry is one member of a map whose keys are names given by the author.
type Entry[T any] struct {
	Name  string
	Value T
}

// Map keeps named members in the order of the file.
type Map[T any] []Entry[T]

// Get gives the member called name.
func (m Map[T]) Get(name string) (T, bool) {
	for i := range m {
		if m[i].Name == name {
			return m[i].Value, true
		}
	}
	var zero T
	return zero, false
}

// Names lists the names in the order of the file.
func (m Map[T]) Names() []string {
	names := make([]string, len(m))
	for i := range m {
		names[i] = m[i].Name
	}
	return names
}
