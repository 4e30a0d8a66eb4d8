package pdf_test

import (
	"bytes"
	"errors"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"
	"unicode/utf16"

	"plumbrule/checker"
	"plumbrule/checker/draw/paper"
	"plumbrule/checker/packet"
	"plumbrule/checker/packet/packettest"
	"plumbrule/checker/packet/pdf"
)

func write(t *testing.T, p *packet.Packet) []byte {
	t.Helper()
	var b bytes.Buffer
	if err := pdf.Write(&b, p); err != nil {
		t.Fatal(err)
	}
	return b.Bytes()
}

func ofDesign(t *testing.T, name string) *packet.Packet {
	t.Helper()
	data, err := os.ReadFile("../../../fixtures/designs/" + name + ".deck.yaml")
	if err != nil {
		t.Fatal(err)
	}
	c, err := checker.New(checker.Options{})
	if err != nil {
		t.Fatal(err)
	}
	p, problems, err := c.Packet(t.Context(), checker.Input{Name: name + ".deck.yaml", Data: data}, checker.PacketOptions{})
	if err != nil || len(problems) > 0 {
		t.Fatal(err, problems)
	}
	return p
}

func TestSameBytes(t *testing.T) {
	p := packettest.Packet(t)
	first := write(t, p)
	for range 3 {
		if !bytes.Equal(first, write(t, packettest.Packet(t))) {
			t.Fatal("written again, it differs")
		}
	}
}

// The file has a title, a language, bookmarks, links, embedded letters, and
// pages of one size of paper, standing and lying.
func TestDocument(t *testing.T) {
	file := write(t, packettest.Packet(t))
	for _, want := range []string{"%PDF-", "/Lang (en)", "/Outlines", "/FontFile2", "/Subtype /Link", "/MediaBox [0 0 612.00 792.00]", "/MediaBox [0 0 792.00 612.00]"} {
		if !bytes.Contains(file, []byte(want)) {
			t.Errorf("no %q in the file", want)
		}
	}
}

// Sections, their parts and their drawings can be reached by bookmarks, and the
// file is called what the packet is.
func TestBookmarks(t *testing.T) {
	p := packettest.Packet(t)
	file := write(t, p)
	want := []string{"Review packet: " + p.Title}
	for i := range p.Sections {
		want = append(want, p.Sections[i].Title)
		for _, part := range p.Sections[i].Parts {
			if part.Title != "" {
				want = append(want, part.Title)
			}
			if part.Drawing != nil {
				want = append(want, part.Drawing.Sheet.Number+" "+part.Drawing.Sheet.Name)
			}
		}
	}
	for _, title := range want {
		if !bytes.Contains(file, title16(title)) {
			t.Errorf("no entry with the title %q", title)
		}
	}
	if got := bytes.Count(file, []byte("/Title (")); got != len(want) {
		t.Errorf("%d titles, want %d", got, len(want))
	}
}

// title16 is how a PDF writes a title: in UTF-16, big end first.
func title16(title string) []byte {
	out := []byte("/Title (\xfe\xff")
	for _, unit := range utf16.Encode([]rune(title)) {
		for _, b := range []byte{byte(unit >> 8), byte(unit)} {
			if strings.IndexByte(`\()`, b) >= 0 {
				out = append(out, '\\')
			}
			out = append(out, b)
		}
	}
	return append(out, ')')
}

// No heading stands alone at the foot of a page, however far the page is filled
// above it.
func TestHeadingsStayWithWhatFollows(t *testing.T) {
	row := packet.Row{Cells: []packet.Cell{{Text: "cell", More: "more"}, {Text: "cell"}}}
	columns := []packet.Column{{Head: "one", Share: 1}, {Head: "two", Share: 1}}
	parts := map[string]packet.Part{
		"table":   {Table: &packet.Table{Caption: "HEADT", Columns: columns, Rows: slices.Repeat([]packet.Row{row}, 6)}},
		"long":    {Table: &packet.Table{Caption: "HEADT", Columns: columns, Rows: slices.Repeat([]packet.Row{row}, 60)}},
		"items":   {Items: []packet.Item{{Number: 1, Head: strings.Repeat("words ", 60), Lines: slices.Repeat([]packet.Line{{Term: "t", Text: "x"}}, 12)}}},
		"list":    {List: []string{strings.Repeat("words ", 90), "x"}},
		"nothing": {Notes: []string{strings.Repeat("words ", 90)}},
	}
	for name, part := range parts {
		part.Title = "HEADP"
		p := &packet.Packet{Title: "t"}
		for fill := range 24 {
			p.Sections = append(p.Sections,
				packet.Section{ID: fmt.Sprint("fill", fill), Title: "fill", Notes: slices.Repeat([]string{"words"}, fill)},
				packet.Section{ID: fmt.Sprint("part", fill), Title: "HEADS", Parts: []packet.Part{part}})
		}
		foot := regexp.MustCompile(`t?page\d+of\d+$`)
		for i, page := range read(t, p) {
			page = foot.ReplaceAllString(page, "")
			for _, head := range []string{"HEADS", "HEADP", "HEADT", "onetwo"} {
				if strings.HasSuffix(page, head) {
					t.Errorf("%s: page %d ends with the heading %s", name, i+1, head)
				}
			}
		}
	}
}

// read gives the words of a PDF, page by page, without blanks.
func read(t *testing.T, p *packet.Packet) []string {
	t.Helper()
	reader, err := exec.LookPath("pdftotext")
	if err != nil {
		t.Skip("pdftotext is not here: the words of the PDF are not read back")
	}
	file := filepath.Join(t.TempDir(), "packet.pdf")
	if err := os.WriteFile(file, write(t, p), 0o600); err != nil {
		t.Fatal(err)
	}
	out, err := exec.CommandContext(t.Context(), reader, "-raw", file, "-").Output()
	if err != nil {
		t.Fatal(err)
	}
	var list []string
	for page := range strings.SplitSeq(strings.TrimSuffix(string(out), "\f"), "\f") {
		list = append(list, strings.Join(strings.Fields(page), ""))
	}
	return list
}

// The PDF says what the packet says, which is what the HTML says.
func TestSaysEverything(t *testing.T) {
	fonts, err := paper.OpenFonts()
	if err != nil {
		t.Fatal(err)
	}
	for name, p := range map[string]*packet.Packet{"canned": packettest.Packet(t), "quarry-hill": ofDesign(t, "quarry-hill")} {
		pages := read(t, p)
		plain := strings.Join(pages, "")
		packettest.Walk(p, func(text string) {
			text = strings.Map(func(r rune) rune {
				if !fonts.Has(r) {
					return '□'
				}
				return r
			}, strings.Join(strings.Fields(text), ""))
			if !strings.Contains(plain, text) && !inLines(plain, text) {
				t.Errorf("%s: %q cannot be read", name, text)
			}
		})
	}
}

// inLines reports whether a text that runs over lines beside other columns, or
// over a page, is there in pieces.
func inLines(plain, text string) bool {
	for len(text) > 0 {
		n := len(text)
		for n > 0 && !strings.Contains(plain, text[:n]) {
			n--
		}
		if n < min(len(text), 4) {
			return false
		}
		text = text[n:]
	}
	return true
}

// Each page has its number and the title with the revision, and the list of
// contents names the page on which a section starts.
func TestPageNumbers(t *testing.T) {
	p := packettest.Packet(t)
	pages := read(t, p)
	of := regexp.MustCompile(`page(\d+)of(\d+)`)
	for i, page := range pages {
		m := of.FindStringSubmatch(page)
		if m == nil || m[1] != strconv.Itoa(i+1) || m[2] != strconv.Itoa(len(pages)) {
			t.Errorf("page %d says %q", i+1, m)
		}
		if !strings.Contains(page, "Möwenwegreardeck,revisionB") {
			t.Errorf("page %d does not name design and revision", i+1)
		}
	}
	for i := range p.Sections {
		title := strings.ReplaceAll(p.Sections[i].Title, " ", "")
		m := regexp.MustCompile(regexp.QuoteMeta(title) + `(\d+)`).FindStringSubmatch(pages[0])
		if m == nil {
			t.Errorf("the contents do not list %s", p.Sections[i].Title)
			continue
		}
		starts := false
		for k, page := range pages {
			starts = starts || strings.HasPrefix(m[1], strconv.Itoa(k+1)) && strings.Contains(page, title)
		}
		if !starts {
			t.Errorf("%s does not start on page %s", p.Sections[i].Title, m[1])
		}
	}
}

// A packet of nothing, of endless words and of letters that the font lacks is
// still a document, and a row that is longer than a page goes on on the next.
func TestOddPackets(t *testing.T) {
	long := strings.Repeat("word ", 3000) + strings.Repeat("x", 500) + " 木"
	odd := &packet.Packet{
		Title: long[:400], Block: []packet.Line{{Term: "x", Text: long[:300]}}, Disposition: long[:200],
		Sections: []packet.Section{{ID: "a", Title: long[:200], Notes: []string{long, ""}, Parts: []packet.Part{{
			Title: long[:100], List: []string{long[:500]},
			Table: &packet.Table{Caption: "c", Columns: []packet.Column{{Head: long[:50], Share: 1}, {Head: "L", Share: 1}},
				Rows: []packet.Row{{Cells: []packet.Cell{{Text: long, More: long}, {}}}, {Cells: []packet.Cell{{Text: "last", Span: 2}}}}},
			Items: []packet.Item{{Head: long[:300], Lines: []packet.Line{{Term: "t", Text: long}}}},
		}}}},
	}
	for _, p := range []*packet.Packet{{}, odd} {
		if page := write(t, p); !bytes.HasPrefix(page, []byte("%PDF-")) {
			t.Error("no PDF")
		}
	}
	pages := read(t, odd)
	if words := strings.Count(strings.Join(pages, ""), "word"); words < 12000 {
		t.Errorf("of 4 times 3000 words %d are there", words)
	}
}

type broken struct{}

func (broken) Write([]byte) (int, error) { return 0, errors.New("no paper") }

func TestWriterFails(t *testing.T) {
	if err := pdf.Write(broken{}, packettest.Packet(t)); err == nil || !strings.Contains(err.Error(), "no paper") {
		t.Errorf("error %v", err)
	}
}
