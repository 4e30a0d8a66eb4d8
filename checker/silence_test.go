package checker_test

import (
	"context"
	"encoding/json"
	"fmt"
	"strings"
	"testing"

	"plumbrule/checker"
	"plumbrule/checker/result"
	"plumbrule/checker/source"
)

// A check that applies and then says nothing about any subject has failed, and
// says so. Whatever a design leaves out, no check may: each field of each design
// is left out once, and each value of the plain one is emptied of its parts.
func TestNothingFallsSilent(t *testing.T) {
	t.Run("default sets", func(t *testing.T) { nothingFallsSilent(t, checkerFor(t, "")) })
	t.Run("sets of other countries", func(t *testing.T) {
		c, err := checker.New(checker.Options{Sets: []string{
			"ca-on", "canada-nbc-2020", "england-adk-2013", "ireland-tgd-k", "australia-ncc-2022", "new-zealand", "germany",
		}})
		if err != nil {
			t.Fatal(err)
		}
		nothingFallsSilent(t, c)
	})
}

func nothingFallsSilent(t *testing.T, c *checker.Checker) {
	t.Helper()
	tried := 0
	for _, file := range designFiles(t) {
		in := readInput(t, file)
		doc, err := source.Read(in.Name, in.Data)
		if err != nil {
			t.Fatal(err)
		}
		var fields []string
		collect(doc.Root, &fields)
		var inputs []checker.Input
		for i, field := range fields {
			if field == "/deck" || testing.Short() && i%7 != 0 {
				continue
			}
			inputs = append(inputs, checker.Input{Name: field + ".json", Data: without(t, doc.Root, field)})
		}
		tried += len(inputs)
		failed := map[string]string{}
		for _, d := range c.Check(context.Background(), inputs...).Designs {
			for _, r := range d.Findings {
				if r.Outcome == result.CouldNotRun {
					failed[r.Check+": "+r.Reason] = strings.TrimSuffix(d.File, ".json")
				}
			}
		}
		for what, field := range failed {
			t.Errorf("%s without %s: %s", in.Name, field, what)
		}
	}
	t.Logf("%d designs with one field left out", tried)
}

// collect lists the pointers of all members of objects.
func collect(n *source.Node, into *[]string) {
	for _, m := range n.Members {
		*into = append(*into, m.Value.Pointer)
		collect(m.Value, into)
	}
	for _, item := range n.Items {
		collect(item, into)
	}
}

// without writes a design as JSON with one member left out.
func without(t *testing.T, root *source.Node, field string) []byte {
	t.Helper()
	var prune func(n *source.Node) any
	prune = func(n *source.Node) any {
		switch n.Kind {
		case source.Object:
			object := map[string]any{}
			for _, m := range n.Members {
				if m.Value.Pointer != field {
					object[m.Key] = prune(m.Value)
				}
			}
			return object
		case source.Array:
			list := make([]any, len(n.Items))
			for i, item := range n.Items {
				list[i] = prune(item)
			}
			return list
		}
		return n.Interface()
	}
	data, err := json.Marshal(prune(root))
	if err != nil {
		t.Fatal(fmt.Errorf("without %s: %w", field, err))
	}
	return data
}
