package checker_test

import (
	"bytes"
	"context"
	"os"
	"regexp"
	"strings"
	"testing"

	"plumbrule/checker"
	"plumbrule/checker/report/text"
)

// The README shows what the program prints, and not what it printed once.
func TestReadmeShowsRealOutput(t *testing.T) {
	const (
		readme = "../README.md"
		design = "fixtures/designs/heron-lane.deck.yaml"
	)
	page, err := os.ReadFile(readme)
	if err != nil {
		t.Fatal(err)
	}
	data, err := os.ReadFile("../" + design)
	if err != nil {
		t.Fatal(err)
	}
	var out bytes.Buffer
	report := menderFor(t, "").Check(context.Background(), checker.Input{Name: design, Data: data})
	if err := text.New(text.Options{}).Write(&out, report); err != nil {
		t.Fatal(err)
	}
	block := regexp.MustCompile("(?s)(<!-- output of the first command -->\n```text\n)(.*?)(```\n)")
	parts := block.FindSubmatch(page)
	if parts == nil {
		t.Fatal("the README has no output of the first command")
	}
	want := strings.TrimRight(out.String(), "\n") + "\n"
	if *update {
		page = block.ReplaceAllLiteral(page, append(append(parts[1], want...), parts[3]...))
		if err := os.WriteFile(readme, page, 0o644); err != nil {
			t.Fatal(err)
		}
		return
	}
	if string(parts[2]) != want {
		t.Errorf("the README shows other output than the command prints; go test ./checker -run TestReadme -update\ngot\n%s", want)
	}
}
