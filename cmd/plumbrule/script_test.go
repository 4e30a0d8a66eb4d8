package main

import (
	"context"
	"os"
	"path/filepath"
	"testing"
	"time"

	"github.com/rogpeppe/go-internal/testscript"
)

// TestMain lets the scripts run this very binary under the program's name.
func TestMain(m *testing.M) {
	program := func() {
		os.Exit(run(context.Background(), environment{
			in: os.Stdin, out: os.Stdout, err: os.Stderr, getenv: os.Getenv, now: today,
			terminal: func() (int, bool) { return 0, os.Getenv("TERMINAL") != "" },
			watched:  func() bool { return false },
		}, os.Args[1:]))
	}
	if len(os.Args) > 1 && os.Args[1] == foreignCommand {
		program() // started by the program, under the name of this binary
	}
	testscript.Main(m, map[string]func(){"plumbrule": program})
}

// today is the day that a script sets in TODAY, else one like any other.
func today() time.Time {
	day, err := time.Parse(time.DateOnly, os.Getenv("TODAY"))
	if err != nil {
		return time.Date(2026, 5, 1, 12, 0, 0, 0, time.UTC)
	}
	return day
}

// The scripts show the commands as a user types them: flags, streams, exit
// codes. go test ./cmd/plumbrule -run TestScripts -update rewrites what they
// expect to be printed.
func TestScripts(t *testing.T) {
	fixtures, err := filepath.Abs("../../fixtures")
	if err != nil {
		t.Fatal(err)
	}
	testscript.Run(t, testscript.Params{
		Dir:                 "testdata/script",
		UpdateScripts:       os.Getenv("UPDATE_SCRIPTS") != "",
		RequireExplicitExec: true,
		RequireUniqueNames:  true,
		Setup: func(env *testscript.Env) error {
			env.Setenv("FIXTURES", fixtures)
			return nil
		},
		Cmds: map[string]func(*testscript.TestScript, bool, []string){"exitcode": exitcode},
	})
}

// exitcode N COMMAND...: run a command and hold its exit code against N.
func exitcode(ts *testscript.TestScript, neg bool, args []string) {
	if neg || len(args) < 2 {
		ts.Fatalf("usage: exitcode N COMMAND...")
	}
	err := ts.Exec(args[1], args[2:]...)
	got := "0"
	if err != nil {
		got = err.Error()
	}
	want := "exit status " + args[0]
	if args[0] == "0" {
		want = "0"
	}
	if got != want {
		ts.Fatalf("%v: %s, want %s", args[1:], got, want)
	}
}
