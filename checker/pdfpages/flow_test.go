package pdfpages_test

import (
	"bytes"
	"slices"
	"strings"
	"testing"

	"plumbrule/checker/pdfpages"
)

var style = pdfpages.Style{Size: 10, Leading: 12}

func flow(t *testing.T, columns int) *pdfpages.Flow {
	t.Helper()
	f, err := pdfpages.New(pdfpages.Setup{Title: "t", Foot: "foot", Margin: 40, FootRoom: 10, FootLine: 20, Columns: columns, Gutter: 12, FootStyle: style})
	if err != nil {
		t.Fatal(err)
	}
	f.Page()
	return f
}

// Lines fit, nothing is lost, and what is to stay together does.
func TestWrap(t *testing.T) {
	f := flow(t, 1)
	for _, words := range []string{
		"", "one", "several words that need more than one line of this width",
		"x" + strings.Repeat("y", 200), "platforms[].ledger.fasteners.edge_distance_bottom", "20'-8\u00a013/16\" and 木",
	} {
		lines := f.Wrap(words, style, 90)
		for _, line := range lines {
			if f.Measure(line) > 90 {
				t.Errorf("%q is wider than its column", line)
			}
		}
		if got, want := squeezed(strings.Join(lines, "")), squeezed(words); got != want {
			t.Errorf("%q became %q", want, got)
		}
	}
	if got := f.Wrap("see 20'-8\u00a013/16\"", style, 70); !slices.Equal(got, []string{"see", "20'-8\u00a013/16\""}) {
		t.Errorf("a length was parted: %q", got)
	}
	if got := f.Wrap("platforms[].ledger.fasteners.edge", style, 130)[0]; !strings.HasSuffix(got, ".") {
		t.Errorf("a path was broken inside of a name: %q", got)
	}
}

// A word is broken where its letters, measured all at once, no longer fit, with
// letters of several bytes and such that no font has.
func TestWrapLongWords(t *testing.T) {
	f := flow(t, 1)
	for _, word := range []string{strings.Repeat("mi", 3000), strings.Repeat("wé木", 2000), "ab\xff" + strings.Repeat("l", 500)} {
		for _, width := range []float64{1, 40, 90.5} {
			lines := f.Wrap(word, style, width)
			if got := strings.Join(lines, ""); got != word {
				t.Fatalf("%.12q... became %.12q...", word, got)
			}
			for i, line := range lines {
				letters := []rune(line)
				if f.Measure(line) > width && len(letters) > 1 {
					t.Fatalf("%q is wider than %v", line, width)
				}
				if i+1 < len(lines) && f.Measure(line+string([]rune(lines[i+1])[0])) <= width {
					t.Fatalf("%q leaves room for a letter in %v", line, width)
				}
			}
		}
	}
}

func squeezed(s string) string { return strings.ReplaceAll(s, " ", "") }

// Columns are filled from the left to the right, then the next page.
func TestColumns(t *testing.T) {
	f := flow(t, 2)
	first := f.Left
	for f.PDF.PageNo() == 1 {
		if f.Left != first && f.Left != first+f.Width+12 {
			t.Fatalf("a column starts at %v", f.Left)
		}
		f.Paragraph("a line", style)
		if f.Y > f.Bottom {
			t.Fatalf("a line ends at %v, below %v", f.Y, f.Bottom)
		}
	}
	if f.Left != first || f.Y != f.Top+style.Leading {
		t.Errorf("the second page starts at %v, %v", f.Left, f.Y)
	}
}

func TestSameBytes(t *testing.T) {
	var first, second bytes.Buffer
	for _, out := range []*bytes.Buffer{&first, &second} {
		f := flow(t, 1)
		f.Item("an item of some words", style, 8)
		f.Bookmark("here", 0)
		if err := f.Output(out); err != nil {
			t.Fatal(err)
		}
	}
	if !bytes.Equal(first.Bytes(), second.Bytes()) {
		t.Error("two runs gave different bytes")
	}
}

// BenchmarkWrap breaks words of many letters and paragraphs of many words; the
// time for each letter should stay level.
func BenchmarkWrap(b *testing.B) {
	for _, c := range []struct{ name, text string }{
		{"word of 2000", strings.Repeat("x", 2000)},
		{"word of 20000", strings.Repeat("x", 20_000)},
		{"path of 20000", strings.Repeat("platforms[].", 20_000/12)},
		{"words of 20000", strings.Repeat("platform ", 20_000/9)},
	} {
		b.Run(c.name, func(b *testing.B) {
			f, err := pdfpages.New(pdfpages.Setup{Columns: 1})
			if err != nil {
				b.Fatal(err)
			}
			f.Page()
			for b.Loop() {
				f.Wrap(c.text, style, 300)
			}
			b.ReportMetric(float64(b.Elapsed().Nanoseconds())/float64(b.N*len(c.text)), "ns/letter")
		})
	}
}
