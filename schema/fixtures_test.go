package schema

import (
	"errors"

	"fmt"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"plumbrule/checker/source"
)

const fixtures = "../fixtures"

// TestBrokenFixtures reads every broken design and compares all that is wrong with it, place by place and word by word.
func TestBrokenFixtures(t *testing.T) {
	files := designs(t, "broken")
	if len(files) < 15 {
		t.Fatalf("only %d broken designs found", len(files))
	}
	for _, file := range files {
		t.Run(filepath.Base(file), func(t *testing.T) {
			got := complaints(t, file)
			if got == "" {
				t.Fatal("nothing was found wrong with it")
			}
			want := file[:strings.LastIndex(file, ".deck.")] + ".want"
			if *update {
				if err := os.WriteFile(want, []byte(got), 0o644); err != nil {
					t.Fatal(err)
				}
			}
			expected, err := os.ReadFile(want)
			if err != nil {
				t.Fatalf("%v; go test ./schema -update writes it", err)
			}
			if got != string(expected) {
				t.Errorf("found\n%s\nwanted\n%s\nif the new text is right: go test ./schema -update", got, expected)
			}
		})
	}
}

// TestDesignsFit accepts every design that is not there to be refused.
func TestDesignsFit(t *testing.T) {
	good := slices.DeleteFunc(designs(t, "."), func(file string) bool { return strings.Contains(file, "broken") })
	if len(good) < 4 {
		t.Fatalf("only %d designs found", len(good))
	}
	for _, file := range good {
		if got := complaints(t, file); got != "" {
			t.Errorf("%s is refused:\n%s", file, got)
		}
	}
}

// designs lists the design files below a directory of the fixtures.
func designs(t *testing.T, below string) []string {
	t.Helper()
	var found []string
	err := filepath.WalkDir(filepath.Join(fixtures, below), func(path string, _ os.DirEntry, err error) error {
		for _, ending := range []string{".deck.yaml", ".deck.yml", ".deck.json"} {
			if strings.HasSuffix(path, ending) {
				found = append(found, path)
			}
		}
		return err
	})
	if err != nil {
		t.Fatal(err)
	}
	return found
}

// complaints gives all that is wrong with a design, or "".
func complaints(t *testing.T, file string) string {
	t.Helper()
	data, err := os.ReadFile(file)
	if err != nil {
		t.Fatal(err)
	}
	doc, err := source.Read(filepath.Base(file), data)
	var unreadable *source.Error
	if errors.As(err, &unreadable) {
		return complaint(unreadable.Span, unreadable.Message, unreadable.Hint)
	}
	if err != nil {
		t.Fatal(err)
	}
	return listed(Validate("design", doc))
}

func listed(problems []Problem) string {
	var b strings.Builder
	for _, p := range problems {
		b.WriteString(complaint(p.Span, p.Message, p.Hint))
	}
	return b.String()
}

func complaint(span source.Span, message, hint string) string {
	text := fmt.Sprintf("%d:%d: %s\n", span.Start.Line, span.Start.Column, message)
	if hint != "" {
		text += "  " + hint + "\n"
	}
	return text
}
