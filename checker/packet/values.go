package packet

import (
	"fmt"
	"strings"

	"plumbrule/checker/report/content"
	"plumbrule/checker/source"
)

// notGiven stands for what a title block does not say.
const notGiven = "not shown"

// block is the title block: what the drawings say about themselves, and what
// they were held against.
func (b *builder) block(p *Packet) []Line {
	d := b.design
	job := member(d.Document, "/job")
	lines := []Line{{"Job", orNot(d.Title)}, {"Revision", orNot(d.Revision)}, {"Sheets", orNot(d.Sheets)}}
	for _, m := range job {
		switch m.Key {
		case "title", "revision", "sheets", "reviewed_against":
		default: // number, permit, jurisdiction, date, as far as they are given
			lines = append(lines, Line{capital(spaced(m.Key)), spelled(m.Value)})
		}
	}
	if d.ReviewedAgainst != "" {
		lines = append(lines, Line{"Also to be held against", d.ReviewedAgainst + ", which this review has not seen"})
	}
	lines = append(lines, Line{"Typed in as", p.File})
	for i := range b.sets {
		s := &b.sets[i]
		words := content.Edition(s)
		if s.Place != "" {
			words += ", of " + s.Place
		}
		lines = append(lines, Line{"Rule set " + s.ID, words})
	}
	return lines
}

func orNot(s string) string {
	if s == "" {
		return notGiven
	}
	return s
}

// values is the section of the values that most figures hang on, as typed.
func (b *builder) values() Section {
	s := Section{
		ID: "values", Title: "Loads, ground and lumber as described",
		Notes: []string{"As typed into the description. What is not shown was not taken from anywhere else, unless the section on assumptions says so."},
	}
	t := &Table{Caption: "Site", Columns: []Column{{"Value", 1}, {"As described", 2}}}
	given := map[string]bool{}
	site := member(b.design.Document, "/site")
	for _, m := range site {
		given[m.Key] = true
	}
	for _, key := range []string{"live_load", "dead_load", "ground_snow_load", "soil_bearing", "frost_depth"} {
		if !given[key] {
			t.Rows = append(t.Rows, Row{Cells: []Cell{text(spaced(key)), text(notGiven)}})
		}
	}
	var shown []Row
	for _, m := range site {
		shown = append(shown, Row{Cells: []Cell{text(spaced(m.Key)), text(spelled(m.Value))}})
	}
	t.Rows = append(shown, t.Rows...)
	s.Parts = append(s.Parts, Part{Table: t})
	lumber := &Table{Caption: "Lumber", Columns: []Column{{"Name", 1}, {"As described", 2}}}
	for _, m := range member(b.design.Document, "/lumber") {
		lumber.Rows = append(lumber.Rows, Row{Cells: []Cell{text(m.Key), text(spelled(m.Value))}})
	}
	if len(lumber.Rows) > 0 {
		s.Parts = append(s.Parts, Part{Table: lumber})
	}
	return s
}

// member gives the members of an object of the design; none where it is not
// there.
func member(doc *source.Document, pointer string) []source.Member {
	if doc == nil || doc.Root == nil {
		return nil
	}
	if n := doc.Find(pointer); n != nil {
		return n.Members
	}
	return nil
}

// spaced is a key in words.
func spaced(key string) string { return strings.ReplaceAll(key, "_", " ") }

// spelled is a value as typed, what is in it behind each other.
func spelled(n *source.Node) string {
	switch n.Kind {
	case source.Object:
		var parts []string
		for _, m := range n.Members {
			parts = append(parts, spaced(m.Key)+" "+spelled(m.Value))
		}
		return strings.Join(parts, ", ")
	case source.Array:
		var parts []string
		for _, item := range n.Items {
			parts = append(parts, spelled(item))
		}
		return strings.Join(parts, "; ")
	case source.Bool:
		if n.Text == "true" {
			return "yes"
		}
		return "no"
	}
	return n.Text
}

// place names where a pointer leads, in words: "platforms 1, joists, size".
func place(pointer string) string {
	var words []string
	for token := range strings.SplitSeq(strings.TrimPrefix(pointer, "/"), "/") {
		var n int
		if _, err := fmt.Sscanf(token, "%d", &n); err == nil && len(words) > 0 && strings.Trim(token, "0123456789") == "" {
			words[len(words)-1] += fmt.Sprintf(" %d", n+1)
			continue
		}
		words = append(words, spaced(strings.NewReplacer("~1", "/", "~0", "~").Replace(token)))
	}
	return strings.Join(words, ", ")
}
