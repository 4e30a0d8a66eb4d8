package annotations_test

import (
	"bytes"
	"errors"
	"fmt"
	"maps"
	"slices"
	"strings"
	"testing"

	"plumbrule/checker/report/annotations"
	"plumbrule/checker/report/content"
	"plumbrule/checker/report/golden"
	"plumbrule/checker/report/reporttest"
	"plumbrule/checker/result"
	"plumbrule/checker/source"
)

func write(t testing.TB, report result.Report) string {
	t.Helper()
	var out bytes.Buffer
	if err := annotations.New().Write(&out, report); err != nil {
		t.Fatal(err)
	}
	return out.String()
}

func TestLines(t *testing.T) {
	golden.Equal(t, "everything.golden", []byte(write(t, reporttest.Canned(t))))
}

// command is what a runner makes of a line.
type command struct {
	level      string
	properties map[string]string
	message    string
}

// parse reads a line as a runner does: the name up to the blank, properties
// split at commas and cut at their first equals sign, the rest behind "::".
func parse(t *testing.T, line string) (command, bool) {
	t.Helper()
	line = strings.TrimSuffix(line, "\n")
	// Blanks before a command do not hide it from a runner.
	rest, ok := strings.CutPrefix(strings.TrimLeft(line, " \t"), "::")
	if !ok {
		return command{}, false
	}
	head, message, ok := strings.Cut(rest, "::")
	if !ok {
		t.Errorf("no end of the properties in %q", line)
	}
	level, list, _ := strings.Cut(head, " ")
	c := command{level, map[string]string{}, strings.NewReplacer("%0A", "\n", "%0D", "\r", "%25", "%").Replace(message)}
	for _, entry := range strings.Split(list, ",") {
		key, value, ok := strings.Cut(entry, "=")
		if !ok {
			t.Errorf("%q is no property in %q", entry, line)
		}
		c.properties[key] = strings.NewReplacer("%0A", "\n", "%0D", "\r", "%3A", ":", "%2C", ",", "%25", "%").Replace(value)
	}
	return c, true
}

func commands(t *testing.T, text string) []command {
	t.Helper()
	var list []command
	for line := range strings.Lines(text) {
		if c, ok := parse(t, line); ok {
			list = append(list, c)
		}
	}
	return list
}

// TestCommands finds each finding and each problem again.
func TestCommands(t *testing.T) {
	canned := reporttest.Canned(t)
	var want []string
	for _, d := range canned.Designs {
		for _, p := range d.Problems {
			want = append(want, fmt.Sprintf("%s:%d error cannot read", d.File, max(p.Span.Start.Line, 1)))
		}
		for _, r := range d.Findings {
			level := map[string]string{
				"outside life safety": "error", "outside structure": "error", "outside durability": "warning", "outside workmanship": "notice",
				"not shown life safety": "warning", "not shown structure": "warning", "excused life safety": "notice", "could not run workmanship": "error",
			}[string(r.Outcome)+" "+string(r.Consequence)]
			want = append(want, fmt.Sprintf("%s:%d %s %s", d.File, max(r.Span.Start.Line, 1), level, r.Title))
		}
	}
	var got []string
	for _, c := range commands(t, write(t, canned)) {
		title := c.properties["title"]
		if _, after, ok := strings.Cut(title, ": "); ok {
			title, _, _ = strings.Cut(after, " (")
		}
		got = append(got, fmt.Sprintf("%s:%s %s %s", c.properties["file"], c.properties["line"], c.level, title))
	}
	slices.Sort(got)
	slices.Sort(want)
	if !slices.Equal(got, want) {
		t.Errorf("got\n%s\nwant\n%s", strings.Join(got, "\n"), strings.Join(want, "\n"))
	}
}

// TestGravestFirst matters since runners cut the list off.
func TestGravestFirst(t *testing.T) {
	order := []string{"error", "warning", "notice"}
	last := 0
	var titles []string
	for _, c := range commands(t, write(t, reporttest.Canned(t))) {
		at := slices.Index(order, c.level)
		if at < last {
			t.Errorf("%s %q comes late", c.level, c.properties["title"])
		}
		last = at
		titles = append(titles, c.properties["title"])
	}
	if got := titles[3]; got != "life safety: Riser height (irc-2021 R311.7.5.1)" || !strings.HasPrefix(titles[len(titles)-1], "life safety: Guard height") {
		t.Errorf("the order is\n%s", strings.Join(titles, "\n"))
	}
}

func one(file string, r result.Result) result.Report {
	return result.Report{Designs: []result.Design{{File: file, Findings: []result.Result{r}}}}
}

func TestPlaces(t *testing.T) {
	at := func(line, column int) source.Position { return source.Position{Line: line, Column: column} }
	for _, c := range []struct {
		file string
		span source.Span
		want string
	}{
		{"a", source.Span{Start: at(5, 13), End: at(5, 16)}, "col=13 endColumn=15 file=a line=5"},
		{"a", source.Span{Start: at(5, 13), End: at(5, 14)}, "col=13 endColumn=13 file=a line=5"},
		{"a", source.Span{Start: at(5, 13), End: at(7, 2)}, "endLine=7 file=a line=5"},
		{"a", source.Span{}, "file=a line=1"},
		{"-", source.Span{Start: at(5, 13), End: at(5, 16)}, ""},
	} {
		r := result.Result{Check: "a/b", Outcome: result.Outside, Span: c.span}
		got := commands(t, write(t, one(c.file, r)))[0].properties
		delete(got, "title")
		var words []string
		for _, key := range slices.Sorted(maps.Keys(got)) {
			words = append(words, key+"="+got[key])
		}
		if strings.Join(words, " ") != c.want {
			t.Errorf("%q, want %q", words, c.want)
		}
	}
}

// TestEscapes puts everything that means something to a runner wherever a
// design or a set can put it.
func TestEscapes(t *testing.T) {
	for _, evil := range []string{"50%: a,b\r\n::stop-commands::x\n##[error]y %0A", "::error::x", "##[error]y"} {
		r := result.Result{
			Check: "a/b", Title: evil, Set: evil, Clause: evil, Outcome: result.Outside, Consequence: result.Structure, Message: evil, Mark: evil,
			Mend: []string{evil}, Reason: evil,
		}
		report := one(evil, r)
		report.Designs = append(report.Designs, result.Design{File: evil, Problems: []result.Problem{{Message: evil, Hint: evil}}})
		report.Sets = []result.Set{{ID: evil, Edition: evil, Title: evil, NotCovered: []string{evil}}}
		text := write(t, report)
		list := commands(t, text)
		if len(list) != 2 {
			t.Fatalf("%d commands in\n%s", len(list), text)
		}
		line := strings.NewReplacer("\r", " ", "\n", " ").Replace(evil)
		for _, c := range list {
			if c.properties["file"] != evil || !strings.HasPrefix(c.message, line+"\n") {
				t.Errorf("%q, %q", c.properties["file"], c.message)
			}
		}
		if want := "structure: " + line + " (" + line + " " + line + ")"; list[1].properties["title"] != want {
			t.Errorf("title %q, want %q", list[1].properties["title"], want)
		}
		for line := range strings.Lines(text) {
			if !strings.HasPrefix(line, "::") && strings.Contains(line, "##[") || strings.Contains(line, "\r") {
				t.Errorf("%q", line)
			}
		}
	}
}

func TestEveryLogHasItsCautions(t *testing.T) {
	canned := reporttest.Canned(t)
	for _, designs := range [][]result.Design{canned.Designs[4:], nil} {
		text := write(t, result.Report{Sets: canned.Sets, Designs: designs})
		for _, want := range append(content.Cautions(nil), "irc-2021 (edition 2021)", "does not cover: docks and piers") {
			if !strings.Contains(text, want) {
				t.Errorf("no %q", want)
			}
		}
	}
}

type full struct{}

var errFull = errors.New("no room")

func (full) Write([]byte) (int, error) { return 0, errFull }

func TestWriterErrorComesOut(t *testing.T) {
	if err := annotations.New().Write(full{}, reporttest.Canned(t)); !errors.Is(err, errFull) {
		t.Errorf("got %v", err)
	}
}

func BenchmarkWrite(b *testing.B) {
	report := reporttest.Canned(b)
	for range b.N {
		write(b, report)
	}
}
