package shape

import (
	"encoding/json"
	"io"

	"plumbrule/checker/result"
	"plumbrule/checker/source"
)

// SetOf shapes a rule set.
func SetOf(s *result.Set) Set {
	return Set{
		ID: s.ID, Edition: s.Edition, Title: s.Title, Publisher: s.Publisher,
		Place: s.Place, Extends: s.Extends, Scope: s.Scope, NotCovered: List(s.NotCovered),
	}
}

// CountsOf shapes the counts of a design.
func CountsOf(c result.Counts) Counts {
	return Counts{
		Outside: c.Outside, Within: c.Within, NotShown: c.NotShown,
		DoesNotApply: c.DoesNotApply, Excused: c.Excused, CouldNotRun: c.CouldNotRun,
	}
}

// PositionOf shapes a position. What has no place in the file is put at its
// start, as lines and columns count from 1.
func PositionOf(p source.Position) Position {
	return Position{Line: max(p.Line, 1), Column: max(p.Column, 1)}
}

// SpanOf shapes where something starts and where it ends.
func SpanOf(s source.Span) (start, end Position) {
	return PositionOf(s.Start), PositionOf(s.End)
}

// PlaceOf shapes where a value stands.
func PlaceOf(pointer string, span source.Span, text string) Place {
	start, end := SpanOf(span)
	return Place{At: pointer, Start: start, End: end, Text: text}
}

// ListingOf shapes where the design states a limit; nil stays nil.
func ListingOf(l *result.Listing) *Listing {
	if l == nil {
		return nil
	}
	return &Listing{Place: PlaceOf(l.Pointer, l.Span, l.Text), Product: l.Product}
}

// PointerOf is where the value of a result stands. A check that failed as a whole
// has no place; the root, "", stands for it.
func PointerOf(r *result.Result) string {
	if len(r.At) == 0 {
		return ""
	}
	return r.At[0]
}

// ValueOf shapes a value; nil stays nil.
func ValueOf(v *result.Value) *Value {
	if v == nil {
		return nil
	}
	out := &Value{Unit: v.Unit, Text: v.Text, Relation: string(v.Relation), Standard: v.Standard}
	if v.Unit != "" {
		out.Value = &v.Number
	}
	return out
}

// MarginOf shapes a margin: its number, nil where it is none, and its words.
func MarginOf(v *result.Value) (number *float64, text string) {
	switch {
	case v == nil:
		return nil, ""
	case v.Unit == "":
		return nil, v.Text
	}
	return &v.Number, v.Text
}

// Each shapes a list; an empty one stays a list, never null.
func Each[From, To any](from []From, shape func(*From) To) []To {
	to := make([]To, len(from))
	for i := range from {
		to[i] = shape(&from[i])
	}
	return to
}

// List is a list of words that is never null.
func List(words []string) []string {
	if words == nil {
		return []string{}
	}
	return words
}

// Write writes a whole file as one indented JSON value. An error is that of the
// underlying writer, or names a number that JSON has no spelling for.
func Write(to io.Writer, file any) error {
	encoder := json.NewEncoder(to)
	encoder.SetEscapeHTML(false)
	encoder.SetIndent("", "  ")
	return encoder.Encode(file)
}
