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
