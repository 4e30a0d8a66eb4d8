package checker_test

import (
	"bytes"
	"encoding/json"
	"io/fs"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"
	"unicode/utf8"

	"plumbrule/checker"
	"plumbrule/checker/fieldsheet"
	"plumbrule/checker/fieldsheet/html"
	"plumbrule/checker/fieldsheet/pdf"
	"plumbrule/checker/fieldsheet/text"
	"plumbrule/checker/source"
)

// writeSheet writes the nth sheet as text and looks at its width; the other
// formats, which take longer, come with every twentieth.
func writeSheet(t *testing.T, name string, n int, s *fieldsheet.Sheet) {
	t.Helper()
	var page bytes.Buffer
	if err := text.Write(&page, s); err != nil {
		t.Errorf("%s: %v", name, err)
	}
	for i, line := range strings.Split(page.String(), "\n") {
		if utf8.RuneCountInString(line) > 80 && !strings.Contains(line, "->") {
			t.Errorf("%s: line %d is wider than 80 columns: %s", name, i+1, line)
		}
	}
	if n%20 != 0 {
		return
	}
	if err := html.Write(&page, s); err != nil {
		t.Errorf("%s: %v", name, err)
	}
	if err := pdf.Write(&page, s); err != nil {
		t.Errorf("%s: %v", name, err)
	}
}

// Every design among the fixtures that can be read has a sheet in every format,
// however little it shows.
func TestEveryFixtureHasASheet(t *testing.T) {
	n := 0
	err := filepath.WalkDir("../fixtures", func(file string, entry fs.DirEntry, err error) error {
		if err != nil || entry.IsDir() || !strings.Contains(file, ".deck.") {
			return err
		}
		data, err := os.ReadFile(file)
		if err != nil {
			return err
		}
		s, problems := checker.FieldSheet(checker.Input{Name: filepath.ToSlash(file), Data: data})
		if len(problems) > 0 {
			return nil
		}
		n++
		writeSheet(t, file, n, s)
		return nil
	})
	if err != nil {
		t.Fatal(err)
	}
	if n < 100 {
		t.Errorf("only %d designs", n)
	}
}

// Leaving any one field out of a design may cost its sheet numbers, but neither
// the sheet nor a number that nobody typed.
func TestSheetWithAnyFieldLeftOut(t *testing.T) {
	n, sheets := 0, 0
	for _, name := range []string{"alder-lane", "karaka-bay", "ketch-point", "quarry-hill"} {
		data, err := os.ReadFile("../fixtures/designs/" + name + ".deck.yaml")
		if err != nil {
			t.Fatal(err)
		}
		doc, err := source.Read(name+".deck.yaml", data)
		if err != nil {
			t.Fatal(err)
		}
		root := doc.Root.Interface()
		leaveOut(root, func() {
			n++
			short, err := json.Marshal(root)
			if err != nil {
				t.Fatal(err)
			}
			s, problems := checker.FieldSheet(checker.Input{Name: name + ".deck.json", Data: short})
			if len(problems) == 0 {
				sheets++
				writeSheet(t, name, sheets, s)
			}
		})
	}
	t.Logf("%d fields left out, %d sheets", n, sheets)
	if sheets < 300 {
		t.Errorf("only %d of %d fields left out gave a sheet", sheets, n)
	}
}

// leaveOut calls try once for every member below a value, with that one gone.
func leaveOut(value any, try func()) {
	switch value := value.(type) {
	case []any:
		for _, item := range value {
			leaveOut(item, try)
		}
	case map[string]any:
		keys := make([]string, 0, len(value))
		for key := range value {
			keys = append(keys, key)
		}
		slices.Sort(keys)
		for _, key := range keys {
			held := value[key]
			delete(value, key)
			try()
			value[key] = held
			leaveOut(held, try)
		}
	}
}
