package pages

import (
	"reflect"
	"strings"

	"plumbrule/checker/facts"
	md "plumbrule/checker/markdown"
	"plumbrule/checker/measure"
)

// facts writes the page of the facts: what each is, and what it comes to in a
// design.
func (p *Pages) facts() (string, error) {
	seen, err := p.seen()
	if err != nil {
		return "", err
	}
	var page md.Page
	page.Comment(remark)
	page.Heading(1, "Facts")
	page.Paragraph("What a design comes to, before anybody judges it: the document that checks read as "+md.Code("input")+". "+
		md.Code("plumbrule facts DESIGN")+" prints that of a design, "+md.Code("plumbrule schema facts")+" its schema.",
		"A value that the design does not show is absent.")
	page.Paragraph("A field whose kind is *shown* is an object: "+md.Code(`{"value": ..., "at": [...]}`)+", the places being JSON pointers into the design, the most telling first.",
		"Lengths are whole nanometres (1/64 in is 396875, 0.01 mm is 10000), pressures whole micropascals, forces whole micronewtons, angles whole micro-degrees,",
		"areas whole square millimetres; a slope is a rise and a run. The field "+md.Code("at")+" of every entry holds the places of the entry itself.")
	page.Paragraph("Examples are from the designs in " + link(md.Code("fixtures/designs"), factsPage, "../fixtures/designs") +
		", or, where none of these has the field, from a fixture of a check; in words and as checks get them. A dash stands where none has it.")
	w := newFactsWriter(&page, seen)
	w.table(reflect.TypeFor[facts.Facts]())
	for _, t := range w.order {
		page.Heading(2, w.sections[t])
		if about := w.about[t]; about != "" {
			page.Paragraph(md.Text(title(about)) + ".")
		}
		w.table(t)
	}
	return page.String(), nil
}

// factsWriter writes a section for each struct of the facts.
type factsWriter struct {
	page     *md.Page
	seen     map[field]string
	sections map[reflect.Type]string // heading of each struct
	about    map[reflect.Type]string // what the first field says that leads to it
	order    []reflect.Type          // as they are met
}

func newFactsWriter(page *md.Page, seen map[field]string) *factsWriter {
	w := &factsWriter{page: page, seen: seen, sections: map[reflect.Type]string{}, about: map[reflect.Type]string{}}
	w.plan(reflect.TypeFor[facts.Facts]())
	return w
}

// plan gives each struct that is met below a struct a section, those of the
// fields before those further down.
func (w *factsWriter) plan(of reflect.Type) {
	var met []reflect.Type
	for i := range of.NumField() {
		f := of.Field(i)
		t := within(f.Type)
		if t == nil || w.sections[t] != "" {
			continue
		}
		w.sections[t], w.about[t] = jsonName(f), f.Tag.Get("doc")
		if inner := shown(f.Type); inner != nil {
			w.sections[t], w.about[t] = "builder and statics", "what a member carries, figured in two ways"
		}
		w.order = append(w.order, t)
		met = append(met, t)
	}
	for _, t := range met {
		w.plan(t)
	}
}

// table lists the fields of a struct.
func (w *factsWriter) table(of reflect.Type) {
	var rows [][]string
	for i := range of.NumField() {
		f := of.Field(i)
		name := jsonName(f)
		if name == "at" {
			continue // explained once for all
		}
		example := w.seen[field{of, name}]
		if example == "" && (shown(f.Type) != nil || within(f.Type) == nil) {
			example = "–"
		}
		rows = append(rows, []string{md.Code(name), w.kind(f.Type), md.Text(f.Tag.Get("doc")), example})
	}
	w.page.Table([]string{"field", "kind", "what it is", "example"}, rows)
}

// kind says what a field holds.
func (w *factsWriter) kind(t reflect.Type) string {
	if inner := shown(t); inner != nil {
		if below := within(t); below != nil {
			return "shown " + w.section(below)
		}
		return "shown " + plainKind(inner)
	}
	list := ""
	if t.Kind() == reflect.Slice {
		list, t = "list of ", t.Elem()
	}
	if below := within(t); below != nil {
		return list + w.section(below)
	}
	return list + plainKind(t)
}

func (w *factsWriter) section(t reflect.Type) string {
	return md.Link(md.Text(w.sections[t]), "#"+md.Anchor(w.sections[t]))
}

// plainKind names a kind of value.
func plainKind(t reflect.Type) string {
	switch t {
	case reflect.TypeFor[measure.Length]():
		return "length"
	case reflect.TypeFor[measure.Pressure]():
		return "pressure"
	case reflect.TypeFor[measure.Force]():
		return "force"
	case reflect.TypeFor[measure.Angle]():
		return "angle"
	case reflect.TypeFor[facts.Ratio]():
		return "slope"
	}
	switch t.Kind() {
	case reflect.String:
		return "word"
	case reflect.Bool:
		return "flag"
	default:
		return "whole number"
	}
}

// shown gives the type of value that a field holds together with its places, or
// nil.
func shown(t reflect.Type) reflect.Type {
	if t.Kind() == reflect.Pointer {
		t = t.Elem()
	}
	if t.Kind() != reflect.Struct || !strings.HasPrefix(t.Name(), "Of[") {
		return nil
	}
	value, _ := t.FieldByName("Value")
	return value.Type
}

// within gives the struct that a field holds or lists, or nil.
func within(t reflect.Type) reflect.Type {
	if inner := shown(t); inner != nil {
		t = inner
	}
	for t.Kind() == reflect.Pointer || t.Kind() == reflect.Slice {
		t = t.Elem()
	}
	if t.Kind() != reflect.Struct || t == reflect.TypeFor[facts.Ratio]() {
		return nil
	}
	return t
}

func jsonName(f reflect.StructField) string {
	name, _, _ := strings.Cut(f.Tag.Get("json"), ",")
	return name
}
