// Command plumbrule checks a written description of a residential deck against
// rule sets and prints warnings that defer to local code.
package main

import (
	"context"
	"os"
	"os/signal"
	"time"

	"golang.org/x/term"
)

func main() {
	ctx, stop := signal.NotifyContext(context.Background(), os.Interrupt)
	code := run(ctx, environment{
		in: os.Stdin, out: os.Stdout, err: os.Stderr,
		getenv: os.Getenv, now: time.Now,
		terminal: func() (width int, ok bool) {
			width, _, err := term.GetSize(int(os.Stdout.Fd()))
			return width, err == nil
		},
		watched: func() bool { return term.IsTerminal(int(os.Stderr.Fd())) },
	}, os.Args[1:])
	stop()
	os.Exit(code)
}
