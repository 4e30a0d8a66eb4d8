package main

import (
	"bytes"
	"context"
	"io"
	"testing"
	"time"
)

// TestInterruptedWhileWaiting interrupts a check of standard input on which
// nobody types anything.
func TestInterruptedWhileWaiting(t *testing.T) {
	in, typed := io.Pipe()
	defer func() { _ = typed.Close() }()
	ctx, interrupt := context.WithCancel(t.Context())
	var out, said bytes.Buffer
	env := environment{
		in: in, out: &out, err: &said, getenv: func(string) string { return "" }, now: time.Now,
		terminal: func() (int, bool) { return 0, false }, watched: func() bool { return false },
	}
	code := make(chan int)
	go func() { code <- run(ctx, env, []string{"check", "--no-config", "--set", "common-practice", "-"}) }()
	interrupt()
	select {
	case got := <-code:
		if got != exitFailed || out.Len() > 0 || said.String() != "plumbrule: interrupted; nothing was written\n" {
			t.Errorf("exit code %d, printed %q, said %q", got, out.String(), said.String())
		}
	case <-time.After(time.Minute):
		t.Fatal("it still waits for somebody to type")
	}
}
