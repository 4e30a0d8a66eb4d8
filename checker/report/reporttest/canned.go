package reporttest

import (
	"embed"
	"testing"

	"plumbrule/checker/measure"
	"plumbrule/checker/result"
	"plumbrule/checker/source"
)

//go:embed testdata
var files embed.FS

// Canned gives the report: all outcomes and classes, two sets that agree and
// disagree on one place, related places, a metric design, text that is wide,
// indented by tabs or not ASCII, designs that cannot be read, and one that
// nothing was found in.
func Canned(t testing.TB) result.Report {
	t.Helper()
	return result.Report{
		Sets: []result.Set{
			{
				ID: "irc-2021", Edition: "2021", Title: "Model residential code, deck parts", Publisher: "an invented publisher",
				Scope:      "decks of one storey at houses for one or two families",
				NotCovered: []string{"roofs and hot tubs on the deck", "docks and piers", "wind uplift", "decks above the second storey"},
				Figures:    result.FigureCounts{Published: 41, CommonPractice: 0, Recalled: 27},
			},
			{
				ID: "common-practice", Edition: "1", Title: "What careful builders do",
				Figures: result.FigureCounts{CommonPractice: 12},
			},
		},
		Designs: []result.Design{imperial(t), metric(t), misspelt(t), missing(), plain(t)},
	}
}

// sheet is a design being filled in.
type sheet struct {
	t      testing.TB
	design result.Design
}

// open reads a file of testdata as if it had been given under another name.
func open(t testing.TB, file, name string) *sheet {
	t.Helper()
	data, err := files.ReadFile("testdata/" + file)
	if err != nil {
		t.Fatal(err)
	}
	doc, err := source.Read(name, data)
	if err != nil {
		t.Fatal(err)
	}
	return &sheet{t, result.Design{File: name, Document: doc}}
}

// at gives the span of the value at a pointer.
func (s *sheet) at(pointer string) source.Span {
	s.t.Helper()
	node := s.design.Document.Find(pointer)
	if node == nil {
		s.t.Fatalf("%s has no %s", s.design.File, pointer)
	}
	return node.Span
}

// remedy is a change of one value that was tried.
func (s *sheet) remedy(text, pointer, to string) result.Remedy {
	s.t.Helper()
	from := s.design.Document.Find(pointer)
	return result.Remedy{Text: text, Changes: []result.Change{{Pointer: pointer, From: from.Text, To: to, Span: s.at(pointer), Text: to}}}
}

// add files a result under findings or readings, and fills in its span.
func (s *sheet) add(r result.Result) {
	s.t.Helper()
	if len(r.At) > 0 {
		r.Span = s.at(r.At[0])
		for _, pointer := range r.At[1:] {
			node := s.design.Document.Find(pointer)
			r.Related = append(r.Related, result.Place{Pointer: pointer, Span: s.at(pointer), Text: node.Text})
		}
	}
	if r.Outcome == result.NotShown {
		r.Span.End = r.Span.Start
		r.Span.End.Column++
		r.Span.End.Offset++
	}
	if r.Outcome == result.Within || r.Outcome == result.DoesNotApply {
		s.design.Readings = append(s.design.Readings, r)
	} else {
		s.design.Findings = append(s.design.Findings, r)
	}
}

// done gives the design with its counts and disposition.
func (s *sheet) done() result.Design {
	s.design.Counts = result.Tally(s.design.Findings, s.design.Readings)
	s.design.Disposition = result.Dispose(s.design.Findings, s.design.Readings)
	return s.design
}

func inches(n float64, text string) *result.Value {
	return &result.Value{Number: n, Unit: "in", Text: text}
}

func millimetres(n float64, text string) *result.Value {
	return &result.Value{Number: n, Unit: "mm", Text: text}
}

func words(text string) *result.Value { return &result.Value{Text: text} }

// limit gives v the relation of a limit.
func limit(relation result.Relation, v *result.Value) *result.Value {
	v.Relation = relation
	return v
}

// printedAs gives a limit the spelling of its standard.
func printedAs(standard string, v *result.Value) *result.Value {
	v.Standard = standard
	return v
}

func misspelt(t testing.TB) result.Design {
	s := open(t, "torn.deck.yaml", "jobs/torn.deck.yaml")
	key := s.design.Document.Find("/stairs/0").Member("raisers").KeySpan
	s.design.Problems = []result.Problem{
		{Span: key, Pointer: "/stairs/0/raisers", Message: `a stair has no "raisers"`, Hint: "risers"},
		{Span: s.at("/stairs/0/total_rise"), Pointer: "/stairs/0/total_rise", Message: "a length carries its unit", Hint: "56 in, 56 ft or 56 mm"},
	}
	s.design.Disposition = result.NotReviewed
	return s.design
}

// missing is a file that could not be opened, so that there is no document.
func missing() result.Design {
	return result.Design{
		File:        "jobs/gone.deck.yaml",
		System:      measure.Imperial,
		Problems:    []result.Problem{{Message: "the file does not exist"}},
		Disposition: result.NotReviewed,
	}
}

// plain is a design without findings; it has neither title nor revision.
func plain(t testing.TB) result.Design {
	s := open(t, "plain.deck.yaml", "jobs/plain.deck.yaml")
	s.add(result.Result{
		Check: "stairs/riser-height", Title: "Riser height", Set: "irc-2021", Clause: "R311.7.5.1", Status: "recalled",
		Outcome: result.Within, Consequence: result.LifeSafety, At: []string{"/stairs/0/risers"}, Mark: "ST1",
		Have: inches(7, `7"`), Limit: limit(result.AtMost, inches(7.75, `7-3/4"`)), Margin: inches(0.75, `3/4"`),
	})
	return s.done()
}
