package pdf_test

import (
	"bytes"
	"errors"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"

	"plumbrule/checker"
	"plumbrule/checker/fieldsheet"
	"plumbrule/checker/fieldsheet/pdf"
)

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

func write(t *testing.T, s *fieldsheet.Sheet) []byte {
	t.Helper()
	var b bytes.Buffer
	if err := pdf.Write(&b, s); err != nil {
		t.Fatal(err)
	}
	return b.Bytes()
}

// A sheet takes no more than two pages, and the same bytes every time.
func TestPages(t *testing.T) {
	for _, name := range []string{"alder-lane", "karaka-bay", "ketch-point", "quarry-hill"} {
		first := write(t, sheet(t, name))
		for range 5 {
			if !bytes.Equal(first, write(t, sheet(t, name))) {
				t.Fatalf("%s: written again, it differs", name)
			}
		}
		if pages := bytes.Count(first, []byte("/Type /Page\n")); pages < 1 || pages > 2 {
			t.Errorf("%s takes %d pages", name, pages)
		}
	}
}

// What a grid spells can be read out of the page again, where the program that
// does so is at hand.
func TestTextCanBeReadBack(t *testing.T) {
	reader, err := exec.LookPath("pdftotext")
	if err != nil {
		t.Skip("pdftotext is not here")
	}
	s := sheet(t, "quarry-hill")
	file := filepath.Join(t.TempDir(), "sheet.pdf")
	if err := os.WriteFile(file, write(t, s), 0o600); err != nil {
		t.Fatal(err)
	}
	out, err := exec.CommandContext(t.Context(), reader, "-raw", file, "-").Output()
	if err != nil {
		t.Fatal(err)
	}
	plain := strings.Join(strings.Fields(string(out)), " ")
	for i := range s.Sections {
		for k := range s.Sections[i].Tables {
			for _, row := range s.Sections[i].Tables[k].Grid(s.System).Rows {
				for _, f := range row {
					if !strings.Contains(plain, f.Text) {
						t.Errorf("%q of %q cannot be read", f.Text, s.Sections[i].Title)
					}
				}
			}
		}
	}
}

// A sheet of nothing, of long names and of letters that the font lacks is still
// a document.
func TestOddSheets(t *testing.T) {
	long := strings.Repeat("word ", 200) + strings.Repeat("x", 300)
	odd := &fieldsheet.Sheet{Title: long + " 木", File: "x", Basis: []string{long}, Sections: []fieldsheet.Section{{
		Title: long, Notes: []string{long, ""},
		Tables: []fieldsheet.Table{{
			Title: long, Columns: []fieldsheet.Column{{Head: long}, {Head: "L", Kind: fieldsheet.Length}},
			Rows: [][]fieldsheet.Cell{{{Text: long}, {Kind: fieldsheet.Unknown}}, {{}, {Kind: fieldsheet.Length, Length: 1}}},
		}},
	}}}
	for _, s := range []*fieldsheet.Sheet{{}, odd} {
		if page := write(t, s); !bytes.HasPrefix(page, []byte("%PDF-")) {
			t.Error("no PDF")
		}
	}
}

type broken struct{}

func (broken) Write([]byte) (int, error) { return 0, errors.New("no paper") }

func TestWriterFails(t *testing.T) {
	if err := pdf.Write(broken{}, sheet(t, "alder-lane")); err == nil || !strings.Contains(err.Error(), "no paper") {
		t.Errorf("error %v", err)
	}
}
