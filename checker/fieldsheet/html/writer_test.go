package html_test

import (
	"bytes"
	"encoding/xml"
	"errors"
	"io"
	"os"
	"regexp"
	"strings"
	"testing"

	"plumbrule/checker"
	"plumbrule/checker/fieldsheet"
	"plumbrule/checker/fieldsheet/html"
	"plumbrule/checker/measure"
)

var designs = [...]string{"alder-lane", "karaka-bay", "ketch-point", "quarry-hill"}

func sheet(t *testing.T, name string) *fieldsheet.Sheet {
	t.Helper()
	data, err := os.ReadFile("../../../fixtures/designs/" + name + ".deck.yaml")
	if err != nil {
		t.Fatal(err)
	}
	s, problems := checker.FieldSheet(checker.Input{Name: name + ".deck.yaml", Data: data})
	if len(problems) > 0 {
		t.Fatal(problems)
	}
	return s
}

func write(t *testing.T, s *fieldsheet.Sheet) string {
	t.Helper()
	var b bytes.Buffer
	if err := html.Write(&b, s); err != nil {
		t.Fatal(err)
	}
	return b.String()
}

// A page works by itself: no script, nothing loaded from anywhere, and the same
// bytes every time.
func TestPageIsSelfContained(t *testing.T) {
	for _, name := range designs {
		page := write(t, sheet(t, name))
		for _, word := range []string{"<script", "src=", "http:", "https:", "url(", "@import", "<link"} {
			if strings.Contains(page, word) {
				t.Errorf("%s: the page has %q", name, word)
			}
		}
		if page != write(t, sheet(t, name)) {
			t.Errorf("%s: written twice, it differs", name)
		}
	}
}

// element is what the tests look at in a page.
type element struct {
	name  string
	attr  map[string]string
	depth int
}

// elements reads the page as strict XML, which it is but for the few elements
// that have no end.
func elements(t *testing.T, page string) []element {
	t.Helper()
	d := xml.NewDecoder(strings.NewReader(page))
	d.Strict = false
	d.AutoClose = xml.HTMLAutoClose
	d.Entity = xml.HTMLEntity
	var list []element
	depth := 0
	for {
		token, err := d.Token()
		if errors.Is(err, io.EOF) {
			return list
		}
		if err != nil {
			t.Fatal(err)
		}
		switch token := token.(type) {
		case xml.StartElement:
			depth++
			e := element{token.Name.Local, map[string]string{}, depth}
			for _, a := range token.Attr {
				e.attr[a.Name.Local] = a.Value
			}
			list = append(list, e)
		case xml.EndElement:
			depth--
		}
	}
}

// Headings come in order, every heading cell has a scope, every section has a
// name, and every link leads somewhere.
func TestPageIsAccessible(t *testing.T) {
	for _, name := range designs {
		ids, level := map[string]bool{}, 0
		var links []string
		for _, e := range elements(t, write(t, sheet(t, name))) {
			if id := e.attr["id"]; id != "" {
				if ids[id] {
					t.Errorf("%s: two elements are called %s", name, id)
				}
				ids[id] = true
			}
			switch e.name {
			case "html":
				if e.attr["lang"] == "" {
					t.Errorf("%s: the page has no language", name)
				}
			case "h1", "h2", "h3":
				now := int(e.name[1] - '0')
				if now > level+1 {
					t.Errorf("%s: %s comes after level %d", name, e.name, level)
				}
				level = now
			case "th":
				if s := e.attr["scope"]; s != "row" && s != "col" {
					t.Errorf("%s: a heading cell has the scope %q", name, s)
				}
			case "section", "footer":
				links = append(links, e.attr["aria-labelledby"])
			case "a":
				links = append(links, strings.TrimPrefix(e.attr["href"], "#"))
			}
		}
		for _, id := range links {
			if !ids[id] {
				t.Errorf("%s: %q leads nowhere", name, id)
			}
		}
	}
}

// What a grid spells stands in the page, cell by cell and in order.
func TestPageHoldsEveryCell(t *testing.T) {
	tags, blanks := regexp.MustCompile(`<[^>]*>`), regexp.MustCompile(`\s+`)
	for _, name := range designs {
		s := sheet(t, name)
		_, body, _ := strings.Cut(write(t, s), "<main>")
		plain := blanks.ReplaceAllString(tags.ReplaceAllString(body, " "), " ")
		for entity, sign := range map[string]string{"&#39;": "'", "&#34;": `"`, "&amp;": "&", "&gt;": ">"} {
			plain = strings.ReplaceAll(plain, entity, sign)
		}
		at := 0
		for i := range s.Sections {
			for k := range s.Sections[i].Tables {
				for _, row := range s.Sections[i].Tables[k].Grid(s.System).Rows {
					for _, f := range row {
						text := strings.Join(strings.Fields(f.Text), " ")
						found := strings.Index(plain[at:], text)
						if found < 0 {
							t.Fatalf("%s: %q of %q is not there", name, text, s.Sections[i].Title)
						}
						at += found + len(text)
					}
				}
			}
		}
	}
}

// Names of a design cannot become part of the page.
func TestNamesAreEscaped(t *testing.T) {
	s := sheet(t, "alder-lane")
	s.Title = `<script>alert("x")</script>`
	s.Sections[0].Tables[0].Rows[0][0].Text = `</table><b>`
	page := write(t, s)
	if strings.Contains(page, "<script") || strings.Contains(page, "</table><b>") {
		t.Error("a name became markup")
	}
}

// Paper is the one that the design's units come with.
func TestPaper(t *testing.T) {
	s := sheet(t, "alder-lane")
	if !strings.Contains(write(t, s), "size: letter") {
		t.Error("a design in inches is not on letter paper")
	}
	s.System = measure.Metric
	if !strings.Contains(write(t, s), "size: A4") {
		t.Error("a design in millimetres is not on A4")
	}
}

type broken struct{}

func (broken) Write([]byte) (int, error) { return 0, errors.New("no paper") }

func TestWriterFails(t *testing.T) {
	if err := html.Write(broken{}, sheet(t, "alder-lane")); err == nil || !strings.Contains(err.Error(), "no paper") {
		t.Errorf("error %v", err)
	}
}
