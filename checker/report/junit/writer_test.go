package junit_test

import (
	"bytes"
	"encoding/xml"
	"errors"
	"fmt"
	"io"
	"os/exec"
	"slices"
	"strconv"
	"strings"
	"testing"

	"plumbrule/checker/report/golden"
	"plumbrule/checker/report/junit"
	"plumbrule/checker/report/reporttest"
	"plumbrule/checker/result"
)

func write(t testing.TB, report result.Report) []byte {
	t.Helper()
	var out bytes.Buffer
	if err := junit.New().Write(&out, report); err != nil {
		t.Fatal(err)
	}
	return out.Bytes()
}

// element is what the readers of the format agree on for one element: the
// attributes it must and may have, and the elements in it in their order. No
// body of standards keeps the format; this is what build servers document, from
// memory.
type element struct {
	required, optional []string
	children           []string
	text               bool
}

func elements() map[string]element {
	return map[string]element{
		"testsuites": {optional: []string{"name", "tests", "failures", "errors", "skipped", "disabled", "time"}, children: []string{"testsuite"}},
		"testsuite": {
			required: []string{"name", "tests"},
			optional: []string{"failures", "errors", "skipped", "disabled", "time", "timestamp", "hostname", "id", "package"},
			children: []string{"properties", "testcase", "system-out", "system-err"},
		},
		"properties": {children: []string{"property"}},
		"property":   {required: []string{"name", "value"}},
		"testcase": {
			required: []string{"name", "classname"}, optional: []string{"time", "assertions", "status"},
			children: []string{"skipped", "error", "failure", "system-out", "system-err"},
		},
		"skipped":    {optional: []string{"message"}},
		"error":      {optional: []string{"message", "type"}, text: true},
		"failure":    {optional: []string{"message", "type"}, text: true},
		"system-out": {text: true},
		"system-err": {text: true},
	}
}

// node is any element.
type node struct {
	XMLName  xml.Name
	Attrs    []xml.Attr `xml:",any,attr"`
	Text     string     `xml:",chardata"`
	Children []node     `xml:",any"`
}

func (n *node) attr(name string) string {
	for _, a := range n.Attrs {
		if a.Name.Local == name {
			return a.Value
		}
	}
	return ""
}

func parse(t *testing.T, data []byte) node {
	t.Helper()
	var root node
	decoder := xml.NewDecoder(bytes.NewReader(data))
	if err := decoder.Decode(&root); err != nil {
		t.Fatal(err)
	}
	if _, err := decoder.Token(); err != nil && !errors.Is(err, io.EOF) {
		t.Fatal(err)
	}
	return root
}

// faults says where a document differs from what readers agree on.
func faults(n *node) []string {
	name := n.XMLName.Local
	known, ok := elements()[name]
	if !ok {
		return []string{"element " + name}
	}
	var list []string
	for _, a := range n.Attrs {
		if !slices.Contains(append(known.required, known.optional...), a.Name.Local) {
			list = append(list, name+" "+a.Name.Local)
		}
		if slices.Contains([]string{"tests", "failures", "errors", "skipped"}, a.Name.Local) {
			if _, err := strconv.ParseUint(a.Value, 10, 31); err != nil {
				list = append(list, fmt.Sprintf("%s %s=%q", name, a.Name.Local, a.Value))
			}
		}
	}
	for _, must := range known.required {
		if !slices.ContainsFunc(n.Attrs, func(a xml.Attr) bool { return a.Name.Local == must }) {
			list = append(list, name+" without "+must)
		}
	}
	if !known.text && strings.TrimSpace(n.Text) != "" {
		list = append(list, fmt.Sprintf("text in %s: %q", name, n.Text))
	}
	last := 0
	for i := range n.Children {
		child := &n.Children[i]
		at := slices.Index(known.children, child.XMLName.Local)
		if at < last {
			list = append(list, child.XMLName.Local+" in "+name)
		}
		last = max(last, at)
		list = append(list, faults(child)...)
	}
	return list
}

func TestDocuments(t *testing.T) {
	canned := reporttest.Canned(t)
	for name, report := range map[string]result.Report{
		"everything": canned,
		"unread":     {Sets: canned.Sets[1:], Designs: canned.Designs[2:4]},
		"nothing":    {},
	} {
		t.Run(name, func(t *testing.T) {
			got := write(t, report)
			golden.Equal(t, name+".golden", got)
			root := parse(t, got)
			if list := faults(&root); list != nil || root.XMLName.Local != "testsuites" {
				t.Errorf("readers do not know %q", list)
			}
		})
	}
}

func TestFaultsAreSeen(t *testing.T) {
	good := string(write(t, reporttest.Canned(t)))
	for _, change := range [][2]string{
		{"<testcase ", `<testcase kind="x" `},
		{"<skipped ", "<omitted/><skipped "},
		{`tests="`, `tests="-`},
		{"<properties>", "<properties>text"},
		{"<properties>", "<system-out></system-out><properties>"},
		{`classname=`, `status=`},
	} {
		root := parse(t, []byte(strings.Replace(good, change[0], change[1], 1)))
		if faults(&root) == nil {
			t.Errorf("%q goes unseen", change[1])
		}
	}
}

// TestCounts counts what stands in the document, and holds that against its
// own attributes and against the report.
func TestCounts(t *testing.T) {
	canned := reporttest.Canned(t)
	root := parse(t, write(t, canned))
	sum := map[string]int{}
	for i := range root.Children {
		suite := &root.Children[i]
		count := map[string]int{}
		for j := range suite.Children {
			c := &suite.Children[j]
			if c.XMLName.Local != "testcase" {
				continue
			}
			count["tests"]++
			if len(c.Children) > 1 {
				t.Errorf("%s has %d outcomes", c.attr("name"), len(c.Children))
			}
			for k := range c.Children {
				count[map[string]string{"failure": "failures", "error": "errors", "skipped": "skipped"}[c.Children[k].XMLName.Local]]++
			}
		}
		d := &canned.Designs[i]
		c := d.Counts
		want := map[string]int{
			"tests":    c.Outside + c.Within + c.NotShown + c.DoesNotApply + c.Excused + c.CouldNotRun + len(d.Problems),
			"failures": c.Outside, "errors": c.CouldNotRun + len(d.Problems), "skipped": c.NotShown + c.DoesNotApply + c.Excused,
		}
		for key, n := range want {
			if suite.attr(key) != strconv.Itoa(n) || count[key] != n {
				t.Errorf("%s: %s=%q, counted %d, want %d", d.File, key, suite.attr(key), count[key], n)
			}
			sum[key] += n
		}
	}
	for key, n := range sum {
		if root.attr(key) != strconv.Itoa(n) {
			t.Errorf("%s=%q in all, want %d", key, root.attr(key), n)
		}
	}
}

func TestNamesAreUnique(t *testing.T) {
	r := result.Result{Check: "a/b", Set: "s", Title: "T", Outcome: result.Within, At: []string{"/x"}}
	canned := reporttest.Canned(t)
	canned.Designs[0].Readings = append(canned.Designs[0].Readings, r, r, r)
	root := parse(t, write(t, canned))
	for i := range root.Children {
		seen := map[string]bool{}
		for j := range root.Children[i].Children {
			c := &root.Children[i].Children[j]
			key := c.attr("classname") + " " + c.attr("name")
			if c.XMLName.Local == "testcase" && seen[key] {
				t.Errorf("two cases are %q", key)
			}
			seen[key] = true
		}
	}
}

// TestOddCharacters holds the document well-formed whatever a design says.
func TestOddCharacters(t *testing.T) {
	const evil = "a\x00\x1b[2J<b attr=\"1\">&amp;]]>\n\ufffe\xff"
	r := result.Result{Check: "a/b", Set: "s", Outcome: result.Outside, Message: evil, Mark: evil, Mend: []string{evil}, See: evil}
	skipped := r
	skipped.Outcome, skipped.Needs = result.NotShown, evil
	report := result.Report{Designs: []result.Design{
		{File: evil, Title: evil, Findings: []result.Result{r, skipped}},
		{File: evil, Problems: []result.Problem{{Message: evil, Hint: evil}}},
	}}
	data := write(t, report)
	root := parse(t, data)
	if list := faults(&root); list != nil {
		t.Errorf("readers do not know %q", list)
	}
	if xmllint, err := exec.LookPath("xmllint"); err == nil {
		run := exec.Command(xmllint, "--noout", "-")
		run.Stdin = bytes.NewReader(data)
		if out, err := run.CombinedOutput(); err != nil {
			t.Errorf("%v: %s", err, out)
		}
	}
}

type full struct{}

var errFull = errors.New("no room")

func (full) Write([]byte) (int, error) { return 0, errFull }

func TestWriterErrorComesOut(t *testing.T) {
	if err := junit.New().Write(full{}, reporttest.Canned(t)); !errors.Is(err, errFull) {
		t.Errorf("got %v", err)
	}
}

func BenchmarkWrite(b *testing.B) {
	report := reporttest.Canned(b)
	for range b.N {
		write(b, report)
	}
}
