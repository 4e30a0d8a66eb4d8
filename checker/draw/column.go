package draw

import (
	"fmt"
	"slices"

	"plumbrule/checker/draw/paper"
	"plumbrule/checker/report/content"
	"plumbrule/checker/result"
)

// entry is one paragraph of the notes beside a drawing.
type entry struct {
	words   string
	heading bool
	tags    []paper.Tag
	symbol  *symbol
}

const (
	entrySize = small
	entryGap  = 3.5
	// headingSize is that of the letters of headings.
	headingSize = 8.5
	// headingGap is left above a heading.
	headingGap = 6.0
)

// entries are the notes of a sheet.
func (s *sheetSet) entries(i int, figures []*figure, homes []home) []entry {
	var list []entry
	list = append(list, s.findingEntries(i, homes)...)
	var missing, remarks []string
	var symbols []symbol
	for _, f := range figures {
		missing = append(missing, f.missing...)
		remarks = append(remarks, f.remarks...)
		symbols = append(symbols, f.symbols...)
	}
	list = section(list, "Not shown, and not drawn", unique(missing))
	list = section(list, "How it is drawn", append([]string{s.d.units()}, unique(remarks)...))
	slices.Sort(symbols)
	if symbols = slices.Compact(symbols); len(symbols) > 0 {
		list = append(list, entry{words: "Signs", heading: true})
		for _, symbol := range symbols {
			list = append(list, entry{words: s.d.say(symbol.words()), symbol: &symbol})
		}
	}
	return list
}

// section adds a heading and its paragraphs, nothing where there are none.
func section(list []entry, heading string, paragraphs []string) []entry {
	if len(paragraphs) == 0 {
		return list
	}
	list = append(list, entry{words: heading, heading: true})
	for _, p := range paragraphs {
		list = append(list, entry{words: p})
	}
	return list
}

func unique(list []string) []string {
	var out []string
	for _, s := range list {
		if !slices.Contains(out, s) {
			out = append(out, s)
		}
	}
	return out
}

// findingEntries lists the findings marked on a sheet, and on the first one
// those that no drawing has a spot for.
func (s *sheetSet) findingEntries(i int, homes []home) []entry {
	if s.options.Report == nil {
		return nil
	}
	var here, nowhere []entry
	for k := range s.findings {
		f := &s.findings[k]
		e := entry{words: findingWords(f), tags: []paper.Tag{{N: f.number, Form: f.form()}}}
		switch {
		case homes[k].drawing == i && len(s.drawings) > 0:
			here = append(here, e)
		case homes[k].drawing < 0 && i == 0:
			nowhere = append(nowhere, e)
		}
	}
	var list []entry
	list = append(list, entry{words: "Findings on this sheet", heading: true})
	if len(here) == 0 {
		list = append(list, entry{words: "None of those that were found has its spot on this sheet."})
	}
	list = append(list, here...)
	if len(nowhere) > 0 {
		list = append(list, entry{words: "Findings without a spot on the drawings", heading: true})
		list = append(list, nowhere...)
	}
	return list
}

// findingWords is a finding in the words of the reports.
func findingWords(f *finding) string {
	r := f.results[0]
	words := content.Headline(r)
	var sets []string
	for _, r := range f.results {
		sets = append(sets, spaced(r.Set, content.Basis(r)))
	}
	words += " ["
	for i, set := range unique(sets) {
		if i > 0 {
			words += "; "
		}
		words += set
	}
	words += "]"
	if r.Outcome == result.Outside {
		words = string(r.Consequence) + ": " + words
	}
	if r.See != "" {
		words += ", see " + r.See
	}
	return words
}

// closing is the rule sets and the caution, which stand on every sheet.
func (s *sheetSet) closing() []entry {
	list := []entry{{words: "Rule sets", heading: true}}
	var sets []result.Set
	if s.options.Report == nil {
		list = append(list, entry{words: "None was run: the drawing shows what the design says and judges nothing."})
	} else {
		sets = s.options.Report.Sets
		for _, set := range sets {
			list = append(list, entry{words: fmt.Sprintf("%s: %s, %s.", set.ID, set.Title, set.Edition)})
		}
		list = append(list, entry{words: "Disposition by these sets: " + string(s.options.Report.Designs[0].Disposition) + "."})
	}
	return append(list, entry{words: "Caution", heading: true},
		entry{words: capital(content.Caution(sets)) + ". Drawn from a description, not from the work."})
}

// flow sets entries into the column of the last sheet, the closing ones at its
// foot. What finds no room goes onto sheets of notes behind all drawings.
func (s *sheetSet) flow(list []entry) {
	room, sheet := s.format.notes(), s.sheets[len(s.sheets)-1]
	foot := s.closing()
	footHeight := s.heights(foot, room.Width())
	upper := room
	upper.Max.Y -= footHeight + 10
	if s.heights(list, room.Width()) > upper.Height() {
		upper.Max.Y -= 12 // for the line that says where it goes on
	}
	rest := s.fill(sheet, upper, list)
	if len(rest) > 0 {
		t := s.d.fonts.Text("Continued on the sheet of notes.", entrySize)
		t.At = paper.Point{X: room.Min.X, Y: upper.Max.Y + 9}
		sheet.Items = append(sheet.Items, t)
		name := fmt.Sprintf("To sheet D%d, %s", len(s.sheets), sheet.Name)
		s.rest = append(append(s.rest, entry{words: name, heading: true}), rest...)
	}
	room.Min.Y = room.Max.Y - footHeight
	s.fill(sheet, room, foot)
}

// continued sets the notes that found no room on sheets of their own, column by
// column.
func (s *sheetSet) continued() {
	const columns = 4
	whole := paper.Extent{Min: s.format.field().Min, Max: s.format.notes().Max}
	width := (whole.Width() - (columns-1)*2*gutter) / columns
	for len(s.rest) > 0 {
		sheet := s.start("Notes to the drawings", "What found no room beside the drawings: findings, signs, what is not shown.")
		for k := range columns {
			x := whole.Min.X + float64(k)*(width+2*gutter)
			s.rest = s.fill(sheet, paper.Extent{Min: paper.Point{X: x, Y: whole.Min.Y}, Max: paper.Point{X: x + width, Y: whole.Max.Y}}, s.rest)
		}
	}
}

// heights is the room that entries take below each other.
func (s *sheetSet) heights(list []entry, width float64) float64 {
	sum := 0.0
	for i, e := range list {
		sum += s.height(e, width)
		if e.heading && i > 0 {
			sum += headingGap
		}
	}
	return sum
}

// fill sets entries into a column until one does not fit, and gives the rest. A
// heading stays with what follows it.
func (s *sheetSet) fill(sheet *paper.Sheet, room paper.Extent, list []entry) []entry {
	y := room.Min.Y
	for i, e := range list {
		need := s.height(e, room.Width())
		if e.heading && i > 0 {
			need += headingGap
		}
		if e.heading && i+1 < len(list) {
			need += s.height(list[i+1], room.Width())
		}
		if y+need > room.Max.Y+0.01 && i > 0 {
			return list[i:]
		}
		if e.heading && i > 0 {
			y += headingGap
		}
		sheet.Items = append(sheet.Items, s.set(e, paper.Point{X: room.Min.X, Y: y}, room.Width())...)
		y += s.height(e, room.Width())
	}
	return nil
}

// indent is how far the words of an entry stand in.
func (e *entry) indent(s *sheetSet) float64 {
	switch {
	case len(e.tags) > 0:
		w, _ := s.d.fonts.MarkerSize(e.tags)
		return max(w, 18) + 6
	case e.symbol != nil:
		return legendWidth + 6
	}
	return 0
}

func (s *sheetSet) height(e entry, width float64) float64 {
	if e.heading {
		lines := s.d.fonts.Wrap(e.words, headingSize, width, true)
		return 15 + float64(len(lines)-1)*headingSize*leading
	}
	lines := s.d.fonts.Wrap(e.words, entrySize, width-e.indent(s), false)
	height := float64(len(lines)) * entrySize * leading
	if e.symbol != nil {
		height = max(height, legendHeight)
	}
	if len(e.tags) > 0 {
		height = max(height, paper.TagHeight)
	}
	return height + entryGap
}

// set lays one entry out with its upper left corner at a place.
func (s *sheetSet) set(e entry, at paper.Point, width float64) []paper.Item {
	if e.heading {
		var list []paper.Item
		down := 9.0
		for k, line := range s.d.fonts.Wrap(e.words, headingSize, width, true) {
			t := s.d.fonts.BoldText(line, headingSize)
			down = 9 + float64(k)*headingSize*leading
			t.At = at.Plus(0, down)
			list = append(list, t)
		}
		return append(list, paper.Line(at.Plus(0, down+3), at.Plus(width, down+3), paper.Fine))
	}
	var list []paper.Item
	in := e.indent(s)
	if len(e.tags) > 0 {
		list = append(list, s.d.fonts.Marker(paper.Marker{At: at, Tags: e.tags, Bare: true}))
	}
	down := 0.0
	lines := s.d.fonts.Wrap(e.words, entrySize, width-in, false)
	if e.symbol != nil {
		for _, item := range e.symbol.sample(s.d.fonts) {
			list = append(list, item.Moved(at.X, at.Y))
		}
		if len(lines) == 1 {
			down = (legendHeight - entrySize*leading) / 2
		}
	}
	for k, line := range lines {
		t := s.d.fonts.Text(line, entrySize)
		t.At = at.Plus(in, down+entrySize*(0.95+leading*float64(k)))
		list = append(list, t)
	}
	return list
}
