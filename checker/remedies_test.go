package checker_test

import (
	"context"
	"os"
	"path/filepath"
	"testing"

	"plumbrule/checker"
)

func TestZZ(t *testing.T) {
	for _, f := range fixtureFolders(t) {
		opts := checker.Options{Remedies: true}
		if f.set() != "" {
			opts.Sets = []string{f.set()}
		}
		c, err := checker.New(opts)
		if err != nil {
			t.Fatal(err)
		}
		files, _ := filepath.Glob(filepath.Join(f.dir, "outside*.deck.yaml"))
		for _, file := range files {
			data, _ := os.ReadFile(file)
			r := c.Check(context.Background(), checker.Input{Name: file, Data: data})
			for _, x := range r.Designs[0].Findings {
				if x.Outcome == "outside" {
					t.Log(x.Check, x.Message)
					for _, m := range x.Remedies {
						t.Log("      ", m.Text)
					}
				}
			}
		}
	}
}
