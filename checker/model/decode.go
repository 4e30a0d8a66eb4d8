package model

import (
	"fmt"
	"reflect"
	"strconv"

	"plumbrule/checker/measure"
	"plumbrule/checker/source"
)

// Problem is something in the design that no drawing can mean.
type Problem struct {
	Node    *source.Node
	OnKey   bool // the key is meant rather than the value
	Message string
	Hint    string
}

// Read types a document that fits the design schema. A document with problems
// gives as much of the deck as could be read, which is not to be checked.
func Read(doc *source.Document) (*Deck, []Problem) {
	d := &decoder{}
	deck := &Deck{}
	d.structure(doc.Root, reflect.ValueOf(deck).Elem())
	deck.System, deck.Unread = d.system(), d.unread
	return deck, append(d.problems, references(doc, deck)...)
}

// decoder fills structs from nodes by the `deck` tags of their fields.
type decoder struct {
	unread           []*source.Node
	problems         []Problem
	imperial, metric int // lengths typed in each system
}

// system is the one that most lengths were typed in; imperial where they tie.
func (d *decoder) system() measure.System {
	if d.metric > d.imperial {
		return measure.Metric
	}
	return measure.Imperial
}

func (d *decoder) tally(system measure.System) {
	if system == measure.Metric {
		d.metric++
	} else {
		d.imperial++
	}
}

func (d *decoder) refuse(n *source.Node, format string, args ...any) {
	d.problems = append(d.problems, Problem{Node: n, Message: fmt.Sprintf(format, args...)})
}

// structure fills a struct and notes the members that it has no field for.
func (d *decoder) structure(n *source.Node, into reflect.Value) {
	d.fields(n, into)
	if into.Type() == reflect.TypeFor[Job]() {
		return // the title block is for people
	}
	known := map[string]bool{"mark": true, "see": true, "note": true, "$schema": true, "deck": true, "date": true, "instrument": true}
	keys(into.Type(), known)
	for _, m := range n.Members {
		if !known[m.Key] && m.Value.Kind != source.Null {
			d.unread = append(d.unread, m.Value)
		}
	}
}

// keys collects the members that a struct has fields for.
func keys(typ reflect.Type, into map[string]bool) {
	for i := range typ.NumField() {
		field := typ.Field(i)
		if field.Anonymous {
			keys(field.Type, into)
		} else if key := field.Tag.Get("deck"); key != "" {
			into[key] = true
		}
	}
}

// fields fills a struct, embedded ones included, and its At.
func (d *decoder) fields(n *source.Node, into reflect.Value) {
	if at := into.FieldByName("At"); at.IsValid() {
		at.SetString(n.Pointer)
	}
	kind := into.Type()
	for i := range kind.NumField() {
		field := kind.Field(i)
		if field.Anonymous {
			d.fields(n, into.Field(i))
			continue
		}
		key := field.Tag.Get("deck")
		if key == "" {
			continue
		}
		if m := n.Member(key); m != nil && m.Value.Kind != source.Null {
			d.value(m.Value, into.Field(i), field.Tag.Get("signed") != "")
		}
	}
}

// value fills one field: a pointer, a list, a map of names or a struct.
func (d *decoder) value(n *source.Node, into reflect.Value, signed bool) {
	if into.Kind() == reflect.Pointer {
		fresh := reflect.New(into.Type().Elem())
		d.value(n, fresh.Elem(), signed)
		into.Set(fresh)
		return
	}
	if d.leaf(n, into.Addr().Interface(), signed) {
		return
	}
	switch into.Kind() {
	case reflect.Slice:
		d.list(n, into, signed)
	case reflect.Struct:
		if n.Kind == source.Object {
			d.structure(n, into)
		}
	}
}

// list fills a slice from an array, or a Map from an object.
func (d *decoder) list(n *source.Node, into reflect.Value, signed bool) {
	if n.Kind == source.Object {
		into.Set(reflect.MakeSlice(into.Type(), len(n.Members), len(n.Members)))
		for i, m := range n.Members {
			entry := into.Index(i)
			entry.FieldByName("Name").SetString(m.Key)
			d.value(m.Value, entry.FieldByName("Value"), signed)
		}
		return
	}
	into.Set(reflect.MakeSlice(into.Type(), len(n.Items), len(n.Items)))
	for i, item := range n.Items {
		d.value(item, into.Index(i), signed)
	}
}

// leaf fills the types that stand for a single value and reports whether into
// is one of them.
func (d *decoder) leaf(n *source.Node, into any, signed bool) bool {
	switch v := into.(type) {
	case *Length:
		v.At, v.V = n.Pointer, d.length(n, signed)
	case *Pressure:
		v.At, v.V = n.Pointer, parsed(d, n, measure.ParsePressure)
	case *Force:
		v.At, v.V = n.Pointer, parsed(d, n, measure.ParseForce)
	case *Angle:
		v.At, v.V = n.Pointer, d.angle(n)
	case *Slope:
		v.At, v.V = n.Pointer, d.slope(n)
	case *Size:
		v.At, v.V = n.Pointer, d.size(n)
	case *Count:
		v.At, v.V = n.Pointer, d.count(n)
	case *Words:
		v.At, v.V = n.Pointer, n.Text
	case *Flag:
		v.At, v.V = n.Pointer, n.Text == "true"
	case *Point:
		d.point(n, v)
	case *LengthOrWord:
		d.lengthOrWord(n, v)
	case *Lighting:
		return d.lighting(n, v)
	default:
		return d.absent(n, into)
	}
	return true
}

// absent reads the word none for an element that may also be described.
func (d *decoder) absent(n *source.Node, into any) bool {
	if n.Kind != source.String {
		return false
	}
	switch v := into.(type) {
	case *Winders:
		v.At = n.Pointer
	case *Handrail:
		v.At, v.Sides = n.Pointer, &Count{V: 0, At: n.Pointer}
	case *StairGuard:
		v.At, v.None = n.Pointer, true
	default:
		return false
	}
	return true
}

func (d *decoder) length(n *source.Node, signed bool) measure.Length {
	l, system, err := measure.ParseLength(n.Text)
	if err != nil {
		d.refuse(n, "%v", err)
		return 0
	}
	if l < 0 && !signed {
		d.refuse(n, "a length here cannot be negative: %q", n.Text)
	}
	d.tally(system)
	return l
}

// parsed reads a load or a force, neither of which can be negative.
func parsed[T measure.Pressure | measure.Force](d *decoder, n *source.Node, parse func(string) (T, measure.System, error)) T {
	v, _, err := parse(n.Text)
	if err != nil {
		d.refuse(n, "%v", err)
		return 0
	}
	if v < 0 {
		d.refuse(n, "a load cannot be negative: %q", n.Text)
	}
	return v
}

func (d *decoder) angle(n *source.Node) measure.Angle {
	a, err := measure.ParseAngle(n.Text)
	if err != nil {
		d.refuse(n, "%v", err)
	}
	return a
}

func (d *decoder) slope(n *source.Node) measure.Slope {
	s, err := measure.ParseSlope(n.Text)
	if err != nil {
		d.refuse(n, "%v", err)
		return measure.Slope{Run: 1}
	}
	return s
}

func (d *decoder) size(n *source.Node) measure.Size {
	size, system, err := measure.ParseSize(n.Text)
	if err != nil {
		d.refuse(n, "%v", err)
		return measure.Size{}
	}
	if size.Nominal == "" {
		d.tally(system)
	}
	return size
}

func (d *decoder) count(n *source.Node) int64 {
	c, err := strconv.ParseInt(n.Text, 10, 32)
	if err != nil {
		d.refuse(n, "expected a whole number, found %s", n.Text)
	}
	return c
}

func (d *decoder) point(n *source.Node, into *Point) {
	into.At = n.Pointer
	if len(n.Items) == 2 {
		into.X, into.Y = d.length(n.Items[0], true), d.length(n.Items[1], true)
	}
}

func (d *decoder) lengthOrWord(n *source.Node, into *LengthOrWord) {
	into.At = n.Pointer
	l, system, err := measure.ParseLength(n.Text)
	if err != nil {
		into.Word = n.Text
		return
	}
	if l < 0 {
		d.refuse(n, "a length here cannot be negative: %q", n.Text)
	}
	d.tally(system)
	into.Length = &Length{V: l, At: n.Pointer}
}

// lighting reads the short spelling, true or false, of an element that may also
// be described.
func (d *decoder) lighting(n *source.Node, into *Lighting) bool {
	if n.Kind != source.Bool {
		return false
	}
	into.At, into.Present = n.Pointer, &Flag{V: n.Text == "true", At: n.Pointer}
	return true
}
