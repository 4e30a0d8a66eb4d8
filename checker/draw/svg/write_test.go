package svg_test

import (
	"bytes"
	"encoding/xml"
	"errors"
	"io"
	"regexp"
	"strings"
	"testing"

	"plumbrule/checker/draw/paper"
	"plumbrule/checker/draw/svg"
)

func sheet() *paper.Sheet {
	return &paper.Sheet{
		Number: "D1", Name: `Plan of "A" & <B>`, File: "d1-plan", About: "Seen from above.", Width: 144, Height: 72,
		Items: []paper.Item{
			paper.Line(paper.Point{X: 1.23456, Y: -0.001}, paper.Point{X: 10, Y: 20}, paper.Hidden),
			paper.Rectangle(paper.Point{X: 5, Y: 5}, paper.Point{X: 9, Y: 9}, paper.NoStroke, paper.Shade),
			paper.Group{Kind: "figure", Items: []paper.Item{paper.Text{At: paper.Point{X: 30, Y: 40}, Words: `6'-0" <&>`, Size: 8, Width: 33.333, Turn: 90, Align: paper.Middle, Bold: true}}},
		},
	}
}

func TestWrite(t *testing.T) {
	var out bytes.Buffer
	if err := svg.Write(&out, sheet()); err != nil {
		t.Fatal(err)
	}
	got := out.String()
	const id = "sheet-d1-plan-294ab4da65202d4e"
	for _, want := range []string{
		`width="2in" height="1in" viewBox="0 0 144 72"`,
		`role="img" aria-labelledby="` + id + `-title ` + id + `-about"`,
		`<title id="` + id + `-title">D1: Plan of &#34;A&#34; &amp; &lt;B&gt;</title>`,
		`<desc id="` + id + `-about">Seen from above.</desc>`,
		`<path d="M1.23 0L10 20" stroke="#000000" stroke-width="0.6" stroke-dasharray="5 2.5"/>`,
		`<path d="M5 5L9 5L9 9L5 9Z" fill="#dedede"/>`,
		`<g class="figure">`,
		`<text x="30" y="40" font-size="8" fill="#000000" font-weight="700" text-anchor="middle" transform="rotate(-90 30 40)" textLength="33.33" lengthAdjust="spacingAndGlyphs">6&#39;-0&#34; &lt;&amp;&gt;</text>`,
	} {
		if !strings.Contains(got, want) {
			t.Errorf("no %s in\n%s", want, got)
		}
	}
	for d := xml.NewDecoder(&out); ; {
		if _, err := d.Token(); errors.Is(err, io.EOF) {
			break
		} else if err != nil {
			t.Fatal(err)
		}
	}
}

// Sheets of several designs have files of the same names. Inlined in one page
// they share no identifier, and nothing in them is fetched or run.
func TestSeveralInOnePage(t *testing.T) {
	other := sheet()
	other.Items = append(other.Items, paper.Line(paper.Point{}, paper.Point{X: 1}, paper.Thin))
	renamed := sheet()
	renamed.Job = "Another deck"
	var page bytes.Buffer
	for _, s := range []*paper.Sheet{sheet(), other, renamed} {
		if err := svg.Write(&page, s); err != nil {
			t.Fatal(err)
		}
	}
	ids := regexp.MustCompile(` id="([^"]+)"`).FindAllStringSubmatch(page.String(), -1)
	seen := map[string]bool{}
	for _, m := range ids {
		if seen[m[1]] {
			t.Errorf("the identifier %s is given twice", m[1])
		}
		seen[m[1]] = true
	}
	if len(seen) != 6 {
		t.Errorf("%d identifiers, want a title and a description for each of three", len(seen))
	}
	for _, label := range regexp.MustCompile(`aria-labelledby="(\S+) (\S+)"`).FindAllStringSubmatch(page.String(), -1) {
		if !seen[label[1]] || !seen[label[2]] {
			t.Errorf("nothing has the identifier %s or %s", label[1], label[2])
		}
	}
	for _, outside := range []string{"href", "url(", "<script", "<style", "@import", "<image"} {
		if strings.Contains(page.String(), outside) {
			t.Errorf("the drawings hold %q", outside)
		}
	}
}

type full struct{}

func (full) Write([]byte) (int, error) { return 0, errors.New("disk full") }

func TestWriteFails(t *testing.T) {
	if err := svg.Write(full{}, sheet()); err == nil || !strings.Contains(err.Error(), "write the sheet D1: disk full") {
		t.Error(err)
	}
}
