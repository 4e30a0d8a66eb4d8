package sandbox

import (
	"bufio"
	"bytes"
	"context"
	"errors"
	"fmt"
	"io"
	"os"
	"os/exec"
	"slices"
	"strings"
	"time"
)

// Limits bound one process.
type Limits struct {
	// Time is by the clock, from the start to the last line.
	Time time.Duration
	// Memory is bytes beyond what the program takes when it does nothing.
	Memory int64
	// Question and Answer are bytes of what goes in and of what comes out.
	Question, Answer int64
}

// Default gives limits that a set of some hundred checks stays far below.
func Default() Limits {
	return Limits{Time: 10 * time.Second, Memory: 512 << 20, Question: 64 << 20, Answer: 8 << 20}
}

// Sandbox starts processes.
type Sandbox struct {
	// Command is the program with the arguments that make it answer one
	// question; those of Limits.Flags are added.
	Command []string
	Limits  Limits
}

// What a process can die of.
var (
	ErrTime   = errors.New("it took too long")
	ErrMemory = errors.New("it took too much memory")
	ErrAnswer = errors.New("it answered at too great a length")
	ErrBroken = errors.New("its process broke down")
)

// Run puts a question to a new process and gives the lines of the answer, up to
// where the process ended or was stopped. The error wraps ErrTime, ErrMemory,
// ErrAnswer or ErrBroken, or the cause of ctx where that ended first.
func (s *Sandbox) Run(ctx context.Context, question []byte) (lines [][]byte, err error) {
	if s == nil || len(s.Command) == 0 {
		return nil, errors.New("there is no process to run it in")
	}
	if int64(len(question)) > s.Limits.Question {
		return nil, fmt.Errorf("what it is asked comes to %d bytes, the limit is %d", len(question), s.Limits.Question)
	}
	dir, err := os.MkdirTemp("", "plumbrule-")
	if err != nil {
		return nil, fmt.Errorf("making a directory to run in: %w", err)
	}
	defer func() { err = errors.Join(err, os.RemoveAll(dir)) }()
	timed, stop := context.WithTimeoutCause(ctx, s.Limits.Time, ErrTime)
	defer stop()
	cmd := exec.CommandContext(timed, s.Command[0], append(s.Command[1:len(s.Command):len(s.Command)], s.Limits.Flags()...)...)
	cmd.Dir = dir
	cmd.Env = []string{}
	cmd.Stdin = bytes.NewReader(question)
	cmd.WaitDelay = time.Second
	said := &head{limit: 16 << 10}
	cmd.Stderr = said
	out, err := cmd.StdoutPipe()
	if err != nil {
		return nil, fmt.Errorf("preparing a process: %w", err)
	}
	if err := cmd.Start(); err != nil {
		return nil, fmt.Errorf("starting a process: %w", err)
	}
	lines, long := readLines(out, s.Limits.Answer)
	if long {
		stop()
	}
	ended := cmd.Wait()
	switch {
	case long:
		return lines, fmt.Errorf("%w: the limit is %d bytes", ErrAnswer, s.Limits.Answer)
	case ended == nil:
		return lines, nil
	case errors.Is(context.Cause(timed), ErrTime):
		return lines, fmt.Errorf("%w: the limit is %s", ErrTime, s.Limits.Time)
	case ctx.Err() != nil:
		return lines, context.Cause(ctx)
	case said.outOfMemory():
		return lines, fmt.Errorf("%w: the limit is %d MiB", ErrMemory, s.Limits.Memory>>20)
	}
	return lines, fmt.Errorf("%w (%w)", ErrBroken, ended)
}

// readLines reads whole lines until the end, and says whether there was more
// than the limit. A last line without an end was cut off and is left out.
func readLines(r io.Reader, limit int64) (lines [][]byte, long bool) {
	limited := &io.LimitedReader{R: r, N: limit + 1}
	buffered := bufio.NewReader(limited)
	for {
		line, err := buffered.ReadBytes('\n')
		if err != nil { // at the end; why, the process says
			return lines, limited.N <= 0
		}
		lines = append(lines, bytes.TrimSuffix(line, []byte("\n")))
	}
}

// head keeps the first bytes that are written to it and drops the rest.
type head struct {
	limit int
	text  []byte
}

func (h *head) Write(p []byte) (int, error) {
	h.text = append(h.text, p[:min(len(p), h.limit-len(h.text))]...)
	return len(p), nil
}

// outOfMemory recognizes the words with which a Go program ends when it gets no
// more memory. They are its own, no task can write to its standard error.
func (h *head) outOfMemory() bool {
	return slices.ContainsFunc([]string{"out of memory", "cannot allocate memory", "pthread_create failed"}, func(words string) bool {
		return strings.Contains(string(h.text), words)
	})
}
