package golden_test

import (
	"os"
	"os/exec"
	"strings"
	"testing"

	"plumbrule/checker/report/golden"
)

// TestEqual runs itself again with a difference, since a failure cannot be seen
// from inside.
func TestEqual(t *testing.T) {
	if got := os.Getenv("GOLDEN_TEST_GOT"); got != "" {
		golden.Equal(t, os.Getenv("GOLDEN_TEST_NAME"), []byte(got))
		return
	}
	golden.Equal(t, "sample.golden", []byte("one\ntwo\nthree\n"))

	for name, want := range map[string][]string{
		"sample.golden": {"testdata/sample.golden differs", "go test -run '^TestEqual$' . -update", "-two\n", "+2\n"},
		"absent.golden": {"testdata/absent.golden differs", "+one\n"},
	} {
		again := exec.Command(os.Args[0], "-test.run=^TestEqual$")
		again.Env = append(os.Environ(), "GOLDEN_TEST_GOT=one\n2\nthree\n", "GOLDEN_TEST_NAME="+name)
		out, err := again.CombinedOutput()
		if err == nil {
			t.Errorf("%s: a difference goes unseen", name)
		}
		for _, line := range want {
			if !strings.Contains(string(out), line) {
				t.Errorf("%s: no %q in\n%s", name, line, out)
			}
		}
	}
	if _, err := os.Stat("testdata/absent.golden"); err == nil {
		t.Error("comparing wrote a file")
	}
}
