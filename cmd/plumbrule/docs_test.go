package main

import (
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"strings"
	"testing"

	"plumbrule/checker/archive"
	"plumbrule/checker/sandbox"
)

// block is a fenced block of a page: its kind, the file that it is to be
// written to, its text and the line on which it begins.
type block struct {
	kind, file, text string
	line             int
}

var fence = regexp.MustCompile("(?ms)^```(\\w+)(?: (\\S+))?\n(.*?)^```$")

func blocksOf(page string) []block {
	var list []block
	for _, at := range fence.FindAllStringSubmatchIndex(page, -1) {
		b := block{kind: page[at[2]:at[3]], text: page[at[6]:at[7]], line: strings.Count(page[:at[0]], "\n") + 2}
		if at[4] >= 0 {
			b.file = page[at[4]:at[5]]
		}
		list = append(list, b)
	}
	return list
}

// TestPagesForAuthors does what the pages for rule authors say, in order:
// writes their files, runs their commands, and compares what is printed. A line
// with nothing but … stands for any lines.
func TestPagesForAuthors(t *testing.T) {
	for _, name := range []string{"writing-sets.md", "writing-checks.md"} {
		t.Run(name, func(t *testing.T) {
			text, err := os.ReadFile(filepath.Join("../../docs", name))
			if err != nil {
				t.Fatal(err)
			}
			dir, ran := t.TempDir(), 0
			for _, b := range blocksOf(string(text)) {
				switch {
				case b.file != "":
					file := filepath.Join(dir, filepath.FromSlash(b.file))
					if err := os.MkdirAll(filepath.Dir(file), 0o755); err != nil {
						t.Fatal(err)
					}
					if err := os.WriteFile(file, []byte(b.text), 0o644); err != nil {
						t.Fatal(err)
					}
				case b.kind == "console":
					for _, command := range strings.Split("\n"+b.text, "\n$ ")[1:] {
						line, want, _ := strings.Cut(command, "\n")
						ran++
						follow(t, fmt.Sprintf("%s:%d: %s", name, b.line, line), dir, line, want)
					}
				}
			}
			if ran < 4 {
				t.Errorf("only %d commands found", ran)
			}
		})
	}
}

// follow runs a command line of a page and holds what it prints against it.
func follow(t *testing.T, where, dir, line, want string) {
	t.Helper()
	line, remark, _ := strings.Cut(line, " # ")
	line, file, redirected := strings.Cut(line, " > ")
	words := strings.Fields(line)
	if words[0] != "plumbrule" {
		return // another test runs it
	}
	cmd := exec.CommandContext(t.Context(), words[0], words[1:]...)
	cmd.Dir = dir
	said, err := cmd.CombinedOutput()
	code := 0
	if err != nil {
		code = cmd.ProcessState.ExitCode()
	}
	wanted := "exit code " + fmt.Sprint(code)
	if code != 0 && remark != wanted || code == 0 && remark != "" {
		t.Errorf("%s: exit code %d (%v)\n%s", where, code, err, said)
	}
	if redirected {
		if err := os.WriteFile(filepath.Join(dir, file), said, 0o644); err != nil {
			t.Fatal(err)
		}
		return
	}
	pattern := regexp.QuoteMeta(strings.TrimRight(want, "\n"))
	pattern = strings.NewReplacer("\n…\n", "\n(?:.*\n)*?", "\n…", "\n(?:.*\n?)*", "…\n", "(?:.*\n)*?").Replace("\n" + pattern)
	if !regexp.MustCompile(`\A` + pattern + `\n*\z`).MatchString("\n" + string(said)) {
		t.Errorf("%s prints\n%s\nnot\n%s", where, said, want)
	}
}

// TestPageNamesTheLimits holds the limits that the page states against those
// that the program has.
func TestPageNamesTheLimits(t *testing.T) {
	text, err := os.ReadFile("../../docs/writing-sets.md")
	if err != nil {
		t.Fatal(err)
	}
	limits, files := sandbox.Default(), archive.Default()
	for _, want := range []string{
		"after " + limits.Time.String(), "at " + archive.Size(limits.Memory) + " of memory", archive.Size(limits.Answer) + " of answer",
		"a file above " + archive.Size(files.File), fmt.Sprintf("more than %d times", files.Ratio),
	} {
		if !strings.Contains(string(text), want) {
			t.Errorf("the page does not say %q", want)
		}
	}
}
