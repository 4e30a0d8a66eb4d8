package schema

import (
	"bytes"
	"cmp"
	"encoding/json"
	"errors"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"

	"plumbrule/checker/source"
)

// TestAnotherValidatorAgrees asks ajv, which reads the schema on its own, about every design of the fixtures and about
// many ways of breaking a good one, and compares the answers. Quantities are left to their patterns here: that 3/0 in
// has no value is more than a schema can say.
func TestAnotherValidatorAgrees(t *testing.T) {
	node, err := exec.LookPath("node")
	if err != nil {
		t.Skip("node is not installed")
	}
	modules := filepath.Join(cmp.Or(os.Getenv("PLUMBRULE_AJV"), "/tmp/plumbrule-ajv"), "node_modules")
	if _, err := os.Stat(filepath.Join(modules, "ajv", "dist", "2020.js")); err != nil {
		t.Skipf("ajv is not installed (%v); .ci/ajv-setup installs it", err)
	}
	plain, err := compile("design")
	if err != nil {
		t.Fatal(err)
	}

	var input bytes.Buffer
	var names []string
	var ours []bool
	mutants := 0
	text, err := JSON("design")
	if err != nil {
		t.Fatal(err)
	}
	if err := json.Compact(&input, text); err != nil {
		t.Fatal(err)
	}
	add := func(name string, root *source.Node) {
		instance, err := json.Marshal(root.Interface())
		if err != nil {
			t.Fatal(err)
		}
		input.WriteByte('\n')
		input.Write(instance)
		names = append(names, name)
		ours = append(ours, len(plain.validate(root)) == 0)
	}
	for _, file := range designs(t, ".") {
		data, err := os.ReadFile(file)
		if err != nil {
			t.Fatal(err)
		}
		doc, err := source.Read(filepath.Base(file), data)
		var unreadable *source.Error
		if errors.As(err, &unreadable) {
			continue // there is no document to compare answers about
		}
		if err != nil {
			t.Fatal(err)
		}
		add(file, doc.Root)
		if !strings.Contains(file, "broken") {
			mutate(doc.Root, func(what, pointer string) {
				if mutants++; mutants%7 == 0 { // each answer costs twice
					add(file+": "+what+" at "+pointer, doc.Root)
				}
			})
		}
	}

	run := exec.Command(node, filepath.Join("testdata", "ajv.js"), modules)
	run.Stdin = &input
	var complaint bytes.Buffer
	run.Stderr = &complaint
	output, err := run.Output()
	if err != nil {
		t.Fatalf("ajv: %v\n%s", err, complaint.String())
	}
	if complaint.Len() > 0 {
		t.Errorf("ajv is not content with the schema:\n%s", complaint.String())
	}
	theirs := strings.Split(strings.TrimSuffix(string(output), "\n"), "\n")
	if len(theirs) != len(ours) || len(ours) < 400 {
		t.Fatalf("%d answers for %d questions", len(theirs), len(ours))
	}
	for i, name := range names {
		if (theirs[i] == "fits") != ours[i] {
			t.Errorf("%s: ajv says it %s", name, theirs[i])
		}
	}
}
