package checker_test

import (
	"bytes"
	"encoding/json"
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

	"plumbrule/checker/report/reporttest"
	"plumbrule/checker/report/text"
	"plumbrule/checker/source"
)

const ciFiles = "../docs/ci"

// matcher is an entry of the problem matcher file.
type matcher struct {
	Owner, Severity string
	Pattern         []struct {
		Regexp                            string
		File, Line, Column, Message, Code int
	}
}

func matchers(t *testing.T) []matcher {
	t.Helper()
	data, err := os.ReadFile(filepath.Join(ciFiles, "problem-matcher.json"))
	if err != nil {
		t.Fatal(err)
	}
	var file struct{ ProblemMatcher []matcher }
	decoder := json.NewDecoder(bytes.NewReader(data))
	decoder.DisallowUnknownFields()
	if err := decoder.Decode(&file); err != nil {
		t.Fatal(err)
	}
	for _, m := range file.ProblemMatcher {
		if len(m.Pattern) != 1 {
			t.Fatalf("%s: %d patterns", m.Owner, len(m.Pattern))
		}
	}
	return file.ProblemMatcher
}

// reportLines gives every line of the text report, with colour and without.
func reportLines(t *testing.T) []string {
	t.Helper()
	var out bytes.Buffer
	for _, opts := range []text.Options{{}, {Colour: true}, {Compact: true}, {Compact: true, Colour: true}, {Width: 80, Verbose: true}} {
		if err := text.New(opts).Write(&out, reporttest.Canned(t)); err != nil {
			t.Fatal(err)
		}
	}
	return strings.Split(strings.TrimSuffix(out.String(), "\n"), "\n")
}

// seen writes what the matchers make of a line: the severity, place, message
// and code of each that matches.
func seen(list []matcher, find func(pattern, line string) []string, line string) string {
	var hits []string
	for _, m := range list {
		p := m.Pattern[0]
		if g := find(p.Regexp, line); g != nil {
			hits = append(hits, fmt.Sprintf("%s %s:%s:%s %s (%s)", m.Severity, g[p.File], g[p.Line], g[p.Column], g[p.Message], g[p.Code]))
		}
	}
	return strings.Join(hits, "\n")
}

// TestProblemMatcher holds the matchers against the expression for first lines:
// each first line is seen by exactly one, no other line by any.
func TestProblemMatcher(t *testing.T) {
	list := matchers(t)
	compiled := map[string]*regexp.Regexp{}
	for _, m := range list {
		compiled[m.Pattern[0].Regexp] = regexp.MustCompile(m.Pattern[0].Regexp)
	}
	first := regexp.MustCompile(text.FirstLine)
	n := 0
	for _, line := range reportLines(t) {
		want := ""
		if g := first.FindStringSubmatch(line); g != nil {
			n++
			severity := "error"
			if g[4] == "durability" || g[4] == "workmanship" {
				severity = "warning"
			}
			if strings.HasPrefix(g[5], "excused: ") {
				severity = "notice"
			}
			want = fmt.Sprintf("%s %s:%s:%s %s (%s)", severity, g[1], g[2], g[3], g[5], g[7])
		}
		got := seen(list, func(pattern, line string) []string { return compiled[pattern].FindStringSubmatch(line) }, line)
		if got != want {
			t.Errorf("%q is seen as\n%s\nwant\n%s", line, got, want)
		}
	}
	if n < 50 {
		t.Errorf("only %d first lines", n)
	}
}

// TestProblemMatcherInJavaScript asks another engine for the same answers.
func TestProblemMatcherInJavaScript(t *testing.T) {
	node, err := exec.LookPath("node")
	if err != nil {
		t.Skip("node is not installed")
	}
	const script = `
const {patterns, lines} = JSON.parse(require("node:fs").readFileSync(0, "utf8"));
const compiled = patterns.map((p) => new RegExp(p));
console.log(JSON.stringify(lines.map((l) => compiled.map((c) => {
  const m = c.exec(l);
  return m && Array.from(m, (g) => g ?? "");
}))));`
	list := matchers(t)
	question := struct {
		Patterns []string `json:"patterns"`
		Lines    []string `json:"lines"`
	}{Lines: reportLines(t)}
	for _, m := range list {
		question.Patterns = append(question.Patterns, m.Pattern[0].Regexp)
	}
	input, err := json.Marshal(question)
	if err != nil {
		t.Fatal(err)
	}
	run := exec.Command(node, "-e", script)
	run.Stdin = bytes.NewReader(input)
	out, err := run.Output()
	if err != nil {
		t.Fatal(err)
	}
	var answers [][][]string
	if err := json.Unmarshal(out, &answers); err != nil {
		t.Fatal(err)
	}
	matched := 0
	for i, line := range question.Lines {
		for j, m := range list {
			want := regexp.MustCompile(m.Pattern[0].Regexp).FindStringSubmatch(line)
			if !slices.Equal(answers[i][j], want) {
				t.Errorf("%s on %q: %q, want %q", m.Owner, line, answers[i][j], want)
			}
			if want != nil {
				matched++
			}
		}
	}
	if matched == 0 {
		t.Error("nothing matched")
	}
}

// build compiles the program and gives its path.
func build(t *testing.T) string {
	t.Helper()
	name := filepath.Join(t.TempDir(), "plumbrule")
	if out, err := exec.Command("go", "build", "-o", name, "../cmd/plumbrule").CombinedOutput(); err != nil {
		t.Fatalf("%v\n%s", err, out)
	}
	return name
}

// repository is a scratch git repository to try the files in.
type repository struct {
	t         *testing.T
	dir, temp string // the repository, and where the program and its reports go
	env       []string
}

func newRepository(t *testing.T) *repository {
	t.Helper()
	if testing.Short() {
		t.Skip("builds the program")
	}
	for _, tool := range []string{"git", "sh", "xargs", "mktemp"} {
		if _, err := exec.LookPath(tool); err != nil {
			t.Skipf("%s is not installed", tool)
		}
	}
	program := build(t)
	r := &repository{t: t, dir: t.TempDir(), temp: filepath.Dir(program)}
	for _, entry := range os.Environ() {
		if !strings.HasPrefix(entry, "GIT_") {
			r.env = append(r.env, entry)
		}
	}
	r.env = append(r.env, "PLUMBRULE="+program, "RUNNER_TEMP="+r.temp, "GIT_CONFIG_GLOBAL="+os.DevNull, "GIT_CONFIG_SYSTEM="+os.DevNull)
	r.must("git", "init", "--quiet")
	r.must("git", "config", "user.name", "nobody")
	r.must("git", "config", "user.email", "nobody@example.invalid")
	return r
}

func (r *repository) run(name string, args ...string) (string, error) {
	cmd := exec.Command(name, args...)
	cmd.Dir, cmd.Env = r.dir, r.env
	out, err := cmd.CombinedOutput()
	return string(out), err
}

func (r *repository) must(name string, args ...string) {
	r.t.Helper()
	if out, err := r.run(name, args...); err != nil {
		r.t.Fatalf("%s %v: %v\n%s", name, args, err, out)
	}
}

func (r *repository) write(name, content string) {
	r.t.Helper()
	path := filepath.Join(r.dir, name)
	if err := os.MkdirAll(filepath.Dir(path), 0o755); err != nil {
		r.t.Fatal(err)
	}
	if err := os.WriteFile(path, []byte(content), 0o644); err != nil {
		r.t.Fatal(err)
	}
}

const (
	bareDesign  = "deck: 1\nstairs: [{mark: ST1}]\n"
	steepDesign = "deck: 1\nstairs:\n  - {mark: ST1, total_rise: 32 in, risers: 4}\n"
	tornDesign  = "deck: 1\nstairs:\n  - {risers: seven}\n"
)

func TestPreCommitHook(t *testing.T) {
	r := newRepository(t)
	hook, err := os.ReadFile(filepath.Join(ciFiles, "pre-commit"))
	if err != nil {
		t.Fatal(err)
	}
	r.write(".git/hooks/pre-commit", string(hook))
	if err := os.Chmod(filepath.Join(r.dir, ".git/hooks/pre-commit"), 0o755); err != nil {
		t.Fatal(err)
	}
	commit := func(refused bool, wants ...string) {
		t.Helper()
		out, err := r.run("git", "commit", "-m", "a change")
		if refused != (err != nil) {
			t.Errorf("refused: %t, want %t\n%s", err != nil, refused, out)
		}
		for _, want := range wants {
			if !strings.Contains(out, want) {
				t.Errorf("no %q in\n%s", want, out)
			}
		}
	}

	r.write("notes.yaml", "no design: [")
	r.must("git", "add", ".")
	commit(false)

	r.write("jobs/low deck.deck.yaml", bareDesign)
	r.must("git", "add", ".")
	commit(false, "jobs/low deck.deck.yaml:2:10: ")

	r.write("jobs/low deck.deck.yaml", steepDesign)
	r.must("git", "add", ".")
	commit(true, "jobs/low deck.deck.yaml:3:44: life safety: ", "the designs above are not committed")

	// What is staged counts, not what lies in the folder.
	r.write("jobs/low deck.deck.yaml", bareDesign)
	commit(true, "life safety: ")
	r.must("git", "add", ".")
	r.must("git", "rm", "--quiet", "--cached", "notes.yaml")
	r.write("jobs/low deck.deck.yaml", steepDesign)
	commit(false)
	r.write("jobs/low deck.deck.yaml", bareDesign)

	// A design that is not in the commit is not asked about.
	r.write("jobs/other.deck.yml", steepDesign)
	r.must("git", "add", "notes.yaml")
	commit(false)

	r.write("jobs/torn.deck.json", tornDesign)
	r.must("git", "add", "jobs/torn.deck.json")
	commit(true, "jobs/torn.deck.json:1:1: cannot read: ")
	r.must("git", "commit", "--quiet", "--no-verify", "-m", "all the same")
	r.must("git", "rm", "--quiet", "jobs/torn.deck.json")
	commit(false)

	// Without the program a design is not waved through, all else is.
	r.env = append(r.env, "PLUMBRULE=/nowhere/plumbrule")
	r.write("notes.yaml", "more: [")
	r.must("git", "add", "notes.yaml")
	commit(false)
	r.must("git", "add", "jobs/other.deck.yml")
	commit(true, "there is no /nowhere/plumbrule")
}

// workflowStep gives the commands of a step of the workflow file.
func workflowStep(t *testing.T, name string) string {
	t.Helper()
	data, err := os.ReadFile(filepath.Join(ciFiles, "check-designs.yml"))
	if err != nil {
		t.Fatal(err)
	}
	doc, err := source.Read("check-designs.yml", data)
	if err != nil {
		t.Fatal(err)
	}
	steps := doc.Find("/jobs/check/steps")
	if steps == nil {
		t.Fatal("the workflow has no steps")
	}
	for _, step := range steps.Items {
		if m := step.Member("name"); m != nil && m.Value.Text == name {
			return step.Member("run").Value.Text
		}
	}
	t.Fatalf("the workflow has no step %q", name)
	return ""
}

func TestWorkflow(t *testing.T) {
	r := newRepository(t)
	r.write("jobs/a.deck.yaml", steepDesign)
	r.write("jobs/b.deck.yaml", bareDesign)
	r.write(".plumbrule/fixtures/torn.deck.yaml", tornDesign)

	out, err := r.run("sh", "-e", "-c", workflowStep(t, "Check the designs"))
	var exit *exec.ExitError
	if !errors.As(err, &exit) || exit.ExitCode() != 1 {
		t.Errorf("%v\n%s", err, out)
	}
	if !strings.Contains(out, "::error file=jobs/a.deck.yaml,line=3,col=44,") || strings.Contains(out, "torn") {
		t.Errorf("annotations:\n%s", out)
	}
	for name, want := range map[string]string{
		"designs.sarif": `"uri": "jobs/a.deck.yaml"`, "designs.xml": `<testsuite name="jobs/b.deck.yaml"`,
		"designs.json": `"file": "jobs/a.deck.yaml"`, "letter.md": "# Review: jobs/a.deck.yaml",
	} {
		data, err := os.ReadFile(filepath.Join(r.temp, name))
		if err != nil || !strings.Contains(string(data), want) {
			t.Errorf("%s: %v, no %s", name, err, strconv.Quote(want))
		}
	}
}
