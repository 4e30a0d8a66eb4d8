package text_test

import (
	"bytes"
	"errors"
	"os"
	"strings"
	"testing"
	"unicode/utf8"

	"plumbrule/checker"
	"plumbrule/checker/fieldsheet"
	"plumbrule/checker/fieldsheet/text"
	"plumbrule/checker/report/golden"
)

func sheet(t *testing.T, name string) *fieldsheet.Sheet {
	t.Helper()
	data, err := os.ReadFile("../../../fixtures/designs/" + name + ".deck.yaml")
	if err != nil {
		t.Fatal(err)
	}
	s, problems := checker.FieldSheet(checker.Input{Name: "/somewhere/" + name + ".deck.yaml", Data: data})
	if len(problems) > 0 {
		t.Fatal(problems)
	}
	return s
}

func write(t *testing.T, s *fieldsheet.Sheet) []byte {
	t.Helper()
	var b bytes.Buffer
	if err := text.Write(&b, s); err != nil {
		t.Fatal(err)
	}
	return b.Bytes()
}

func TestSampleDesigns(t *testing.T) {
	for _, name := range []string{"alder-lane", "karaka-bay", "ketch-point", "quarry-hill"} {
		t.Run(name, func(t *testing.T) {
			got := write(t, sheet(t, name))
			golden.Equal(t, name+".golden", got)
			if again := write(t, sheet(t, name)); !bytes.Equal(got, again) {
				t.Error("written twice, it differs")
			}
			for i, line := range strings.Split(string(got), "\n") {
				if n := utf8.RuneCountInString(line); n > 80 {
					t.Errorf("line %d has %d columns: %s", i+1, n, line)
				}
				if strings.TrimRight(line, " ") != line {
					t.Errorf("line %d ends in blanks", i+1)
				}
			}
			if bytes.Contains(got, []byte("somewhere")) {
				t.Error("the sheet names a folder")
			}
		})
	}
}

// No word of a sheet says that a deck is in order.
func TestNoVerdict(t *testing.T) {
	for _, name := range []string{"alder-lane", "karaka-bay", "ketch-point", "quarry-hill"} {
		said := strings.ToLower(string(write(t, sheet(t, name))))
		for _, word := range []string{" safe", "compliant", "passes", "approved", " ok ", "conforms"} {
			if strings.Contains(said, word) {
				t.Errorf("%s: the sheet says %q", name, word)
			}
		}
	}
}

// Long names are wrapped, and what a terminal would obey is taken out.
func TestForeignNames(t *testing.T) {
	s, problems := checker.FieldSheet(checker.Input{Name: "x.deck.yaml", Data: []byte(`deck: 1
job: {title: "Terrasse \u001b[31m ` + strings.Repeat("über die ganze Länge ", 8) + `"}
platforms:
  - mark: "木の\u0007"
    measured_to: frame
    outline: {along_house: 4 m, out_from_house: 3 m}
  - mark: two
    measured_to: frame
    outline: {corners: [[0 m, 0 m], [4 m, 0 m], [4 m, 3 m], [2 m, 4 m], [0 m, 3 m]], edges: [house, a very long name of an edge that goes on and on, third, fourth, the last edge of them all]}
`)})
	if len(problems) > 0 {
		t.Fatal(problems)
	}
	got := string(write(t, s))
	if strings.ContainsRune(got, '\u001b') {
		t.Error("an escape character is printed")
	}
	golden.Equal(t, "foreign.golden", []byte(got))
}

type broken struct{}

func (broken) Write([]byte) (int, error) { return 0, errors.New("no paper") }

func TestWriterFails(t *testing.T) {
	if err := text.Write(broken{}, sheet(t, "alder-lane")); err == nil || !strings.Contains(err.Error(), "no paper") {
		t.Errorf("error %v", err)
	}
}
