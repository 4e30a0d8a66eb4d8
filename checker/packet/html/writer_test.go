package html_test

import (
	"bytes"
	"errors"
	"os"
	"slices"
	"strings"
	"testing"

	dom "golang.org/x/net/html"

	"plumbrule/checker"
	"plumbrule/checker/measure"
	"plumbrule/checker/packet"
	"plumbrule/checker/packet/html"
	"plumbrule/checker/packet/packettest"
	"plumbrule/checker/report/golden"
)

var designs = [...]string{"alder-lane", "karaka-bay", "ketch-point", "quarry-hill"}

// packets are the canned one and those of whole designs.
func packets(t *testing.T) map[string]*packet.Packet {
	t.Helper()
	c, err := checker.New(checker.Options{})
	if err != nil {
		t.Fatal(err)
	}
	list := map[string]*packet.Packet{"canned": packettest.Packet(t)}
	for _, name := range designs {
		data, err := os.ReadFile("../../../fixtures/designs/" + name + ".deck.yaml")
		if err != nil {
			t.Fatal(err)
		}
		p, problems, err := c.Packet(t.Context(), checker.Input{Name: name + ".deck.yaml", Data: data}, checker.PacketOptions{})
		if err != nil || len(problems) > 0 {
			t.Fatal(err, problems)
		}
		list[name] = p
	}
	return list
}

func write(t *testing.T, p *packet.Packet) string {
	t.Helper()
	var b bytes.Buffer
	if err := html.Write(&b, p); err != nil {
		t.Fatal(err)
	}
	return b.String()
}

func TestGolden(t *testing.T) {
	golden.Equal(t, "everything.html", []byte(write(t, packettest.Packet(t))))
}

// elements lists the elements of a page in their order.
func elements(t *testing.T, page string) []*dom.Node {
	t.Helper()
	root, err := dom.Parse(strings.NewReader(page))
	if err != nil {
		t.Fatal(err)
	}
	var list []*dom.Node
	for n := range root.Descendants() {
		if n.Type == dom.ElementNode {
			list = append(list, n)
		}
	}
	return list
}

func attr(n *dom.Node, name string) string {
	for _, a := range n.Attr {
		if a.Key == name {
			return a.Val
		}
	}
	return ""
}

// words are the texts in a node, blanks drawn together.
func words(n *dom.Node) string {
	var b strings.Builder
	for d := range n.Descendants() {
		if d.Type == dom.TextNode {
			b.WriteString(d.Data + " ")
		}
	}
	return strings.Join(strings.Fields(b.String()), " ")
}

// A page works by itself: no script, nothing loaded from anywhere, the same bytes
// every time.
func TestPageIsSelfContained(t *testing.T) {
	for name, p := range packets(t) {
		page := write(t, p)
		if page != write(t, p) {
			t.Errorf("%s: written twice, it differs", name)
		}
		for _, word := range []string{"url(", "@import", "javascript:"} {
			if strings.Contains(page, word) {
				t.Errorf("%s: the page has %q", name, word)
			}
		}
		for _, n := range elements(t, page) {
			if slices.Contains([]string{"script", "link", "iframe", "object", "embed", "base", "img", "image", "use"}, n.Data) {
				t.Errorf("%s: the page has an element %s", name, n.Data)
			}
			for _, a := range n.Attr {
				if strings.HasPrefix(a.Key, "on") || a.Key == "src" || a.Key == "style" || a.Key == "href" && !strings.HasPrefix(a.Val, "#") {
					t.Errorf("%s: %s has %s=%q", name, n.Data, a.Key, a.Val)
				}
			}
		}
	}
}

// page collects what the rules of accessibility ask of the elements together.
type page struct {
	t     *testing.T
	name  string
	ids   map[string]*dom.Node
	level int
	refs  []string
	heads int
}

// Headings come in order under one first heading, pictures and regions have
// names, tables captions, headings of cells a scope, links and names lead
// somewhere.
func TestPageIsAccessible(t *testing.T) {
	for name, p := range packets(t) {
		look := &page{t: t, name: name, ids: map[string]*dom.Node{}}
		for _, n := range elements(t, write(t, p)) {
			look.identity(n)
			look.headings(n)
			look.tables(n)
			look.named(n)
		}
		if look.heads != 1 {
			t.Errorf("%s: %d first headings", name, look.heads)
		}
		for _, id := range look.refs {
			if look.ids[id] == nil {
				t.Errorf("%s: %q leads nowhere", name, id)
			} else if words(look.ids[id]) == "" {
				t.Errorf("%s: %q has no words", name, id)
			}
		}
	}
}

func (p *page) identity(n *dom.Node) {
	if id := attr(n, "id"); id != "" {
		if p.ids[id] != nil {
			p.t.Errorf("%s: two elements are called %s", p.name, id)
		}
		p.ids[id] = n
	}
	if href := attr(n, "href"); n.Data == "a" {
		p.refs = append(p.refs, strings.TrimPrefix(href, "#"))
	}
	p.refs = append(p.refs, strings.Fields(attr(n, "aria-labelledby"))...)
	if n.Data == "html" && attr(n, "lang") == "" {
		p.t.Errorf("%s: the page has no language", p.name)
	}
}

func (p *page) headings(n *dom.Node) {
	if len(n.Data) != 2 || n.Data[0] != 'h' || n.Data[1] < '1' || n.Data[1] > '6' {
		return
	}
	now := int(n.Data[1] - '0')
	if now > p.level+1 {
		p.t.Errorf("%s: %s %q comes after level %d", p.name, n.Data, words(n), p.level)
	}
	if p.level = now; now == 1 {
		p.heads++
	}
}

func (p *page) tables(n *dom.Node) {
	switch n.Data {
	case "th":
		if s := attr(n, "scope"); s != "row" && s != "col" {
			p.t.Errorf("%s: the heading cell %q has the scope %q", p.name, words(n), s)
		}
	case "table":
		if !slices.ContainsFunc(slices.Collect(n.ChildNodes()), func(c *dom.Node) bool { return c.Data == "caption" && words(c) != "" }) {
			p.t.Errorf("%s: a table has no caption", p.name)
		}
		if attr(n.Parent, "tabindex") != "0" || !strings.HasPrefix(attr(n.Parent, "class"), "scroll") {
			p.t.Errorf("%s: a table cannot be scrolled by keys", p.name)
		}
	case "input":
		if next := n.NextSibling; attr(n, "type") != "checkbox" || next == nil || next.Data != "label" || attr(next, "for") != attr(n, "id") || words(next) == "" {
			p.t.Errorf("%s: a switch has no label", p.name)
		}
	}
}

func (p *page) named(n *dom.Node) {
	name := attr(n, "aria-label") + attr(n, "aria-labelledby")
	switch {
	case n.Data == "svg":
		if attr(n, "role") != "img" || len(strings.Fields(attr(n, "aria-labelledby"))) != 2 {
			p.t.Errorf("%s: a picture is not called one, or lacks title or description", p.name)
		}
	case (n.Data == "section" || n.Data == "nav" || n.Data == "article" || attr(n, "role") == "region") && name == "":
		p.t.Errorf("%s: %s without a name", p.name, n.Data)
	}
	if attr(n, "tabindex") != "" && attr(n, "role") != "region" {
		p.t.Errorf("%s: %s can be reached by keys and has no part to play", p.name, n.Data)
	}
}

// What the packet says stands in the page, in order.
func TestPageSaysEverything(t *testing.T) {
	for name, p := range packets(t) {
		root, err := dom.Parse(strings.NewReader(write(t, p)))
		if err != nil {
			t.Fatal(err)
		}
		// A word that may be broken somewhere consists of several texts.
		plain := strings.ReplaceAll(words(root), " ", "")
		at := 0
		packettest.Walk(p, func(text string) {
			text = strings.Join(strings.Fields(text), "")
			found := strings.Index(plain[at:], text)
			if found < 0 {
				t.Fatalf("%s: %q is not there", name, text)
			}
			at += found + len(text)
		})
	}
}

// Words of a design cannot become part of the page or of its style sheet.
func TestWordsAreEscaped(t *testing.T) {
	p := packettest.Packet(t)
	const evil = `</style><script>alert(1)</script>"\<!--`
	p.Title, p.Revision = evil, evil
	p.Sections[0].Parts[0].Table.Rows[0].Cells[0] = packet.Cell{Text: evil, More: evil + strings.Repeat("</td>.", 9)}
	p.Sections[0].Notes = append(p.Sections[0].Notes, evil)
	text := write(t, p)
	if n := strings.Count(text, "</style>"); n != 1 {
		t.Errorf("%d style sheets end", n)
	}
	for _, n := range elements(t, text) {
		if n.Data == "script" {
			t.Fatal("a title became a script")
		}
	}
}

// Paper is the one that the design's units come with.
func TestPaper(t *testing.T) {
	p := packettest.Packet(t)
	if !strings.Contains(write(t, p), "size: letter portrait") {
		t.Error("a design in inches is not on letter paper")
	}
	p.System = measure.Metric
	if !strings.Contains(write(t, p), "size: A4 portrait") {
		t.Error("a design in millimetres is not on A4")
	}
}

type broken struct{}

func (broken) Write([]byte) (int, error) { return 0, errors.New("no paper") }

func TestWriterFails(t *testing.T) {
	if err := html.Write(broken{}, packettest.Packet(t)); err == nil || !strings.Contains(err.Error(), "no paper") {
		t.Errorf("error %v", err)
	}
}
