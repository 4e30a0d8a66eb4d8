package sandbox_test

import (
	"context"
	"errors"
	"flag"
	"fmt"
	"io"
	"os"
	"strings"
	"testing"
	"time"

	"plumbrule/checker/sandbox"
)

// TestMain lets this very binary be the process that is confined.
func TestMain(m *testing.M) {
	if len(os.Args) > 2 && os.Args[1] == "confined" {
		if err := child(os.Args[2], os.Args[3:]); err != nil {
			fmt.Fprintln(os.Stderr, err)
			os.Exit(3)
		}
		os.Exit(0)
	}
	os.Exit(m.Run())
}

// hoarded keeps what the hoarding child takes from being collected.
var hoarded [][]byte

func child(task string, args []string) error {
	var limits sandbox.Limits
	flags := flag.NewFlagSet("confined", flag.ContinueOnError)
	flags.DurationVar(&limits.Time, "time", 0, "")
	flags.Int64Var(&limits.Memory, "memory", 0, "")
	flags.Int64Var(&limits.Question, "question", 0, "")
	if err := flags.Parse(args); err != nil {
		return err
	}
	task, free := strings.CutPrefix(task, "free ")
	if !free {
		if err := sandbox.Confine(limits); err != nil {
			return err
		}
	}
	question, err := io.ReadAll(os.Stdin)
	if err != nil {
		return err
	}
	fmt.Println("asked", string(question))
	switch task {
	case "look around":
		dir, err := os.Getwd()
		if err != nil {
			return err
		}
		entries, err := os.ReadDir(dir)
		fmt.Println(len(os.Environ()), len(entries), dir)
		return err
	case "write":
		return os.WriteFile("note", []byte("kept"), 0o600)
	case "hoard": // 256 MiB
		for range 64 {
			block := make([]byte, 4<<20)
			for i := range block {
				block[i] = 1
			}
			hoarded = append(hoarded, block)
		}
		fmt.Println("had it all")
	case "loop", "sleep": // for long, but not for ever: a test without the guard fails and ends
		for start := time.Now(); time.Since(start) < 20*time.Second; {
			if task == "sleep" {
				time.Sleep(time.Second)
			}
		}
		fmt.Println("had its time")
	case "chatter":
		for range 100000 {
			fmt.Println("and another thing")
		}
		fmt.Println("said it all")
	case "stop short":
		fmt.Print("half a li")
	case "break":
		return errors.New("broken")
	case "panic":
		panic("out of order")
	}
	return nil
}

func run(t *testing.T, task string, change func(*sandbox.Limits)) (string, error) {
	t.Helper()
	limits := sandbox.Limits{Time: 30 * time.Second, Memory: 1 << 30, Question: 100, Answer: 1 << 20}
	if change != nil {
		change(&limits)
	}
	box := sandbox.Sandbox{Command: []string{os.Args[0], "confined", task}, Limits: limits}
	lines, err := box.Run(t.Context(), []byte("question"))
	var text []string
	for _, line := range lines {
		text = append(text, string(line))
	}
	return strings.Join(text, "\n"), err
}

func TestRunGivesLines(t *testing.T) {
	if got, err := run(t, "nothing", nil); err != nil || got != "asked question" {
		t.Errorf("got %q, %v", got, err)
	}
	if got, err := run(t, "stop short", nil); err != nil || got != "asked question" {
		t.Errorf("a line that was cut off: %q, %v", got, err)
	}
}

// TestRunHidesSurroundings looks around in the process: an environment with a
// secret in it outside, none inside, and an empty directory that goes away.
func TestRunHidesSurroundings(t *testing.T) {
	t.Setenv("OFFICE_SECRET", "hidden")
	got, err := run(t, "look around", nil)
	if err != nil {
		t.Fatal(err)
	}
	_, around, _ := strings.Cut(got, "\n")
	dir, ok := strings.CutPrefix(around, "0 0 ")
	if !ok {
		t.Fatalf("variables, files and directory are %q, want none of the first two", around)
	}
	if _, err := os.Stat(dir); !errors.Is(err, os.ErrNotExist) {
		t.Errorf("its directory is still there: %v", err)
	}
}

func TestRunStopsTime(t *testing.T) {
	for _, task := range []string{"loop", "sleep"} {
		t.Run(task, func(t *testing.T) {
			start := time.Now()
			got, err := run(t, task, func(l *sandbox.Limits) { l.Time = 500 * time.Millisecond })
			if !errors.Is(err, sandbox.ErrTime) || strings.Contains(got, "had its time") || !strings.Contains(err.Error(), "500ms") {
				t.Errorf("got %q, %v", got, err)
			}
			if took := time.Since(start); took > 10*time.Second {
				t.Errorf("stopped after %s", took)
			}
		})
	}
}

// TestRunStopsMemory has a process take 256 MiB, which it gets where nobody
// confines it, and not where the limit is lower.
func TestRunStopsMemory(t *testing.T) {
	if !sandbox.Bounded || raced {
		t.Skip("the memory of a process is not bounded here")
	}
	low := func(l *sandbox.Limits) { l.Memory = 96 << 20 }
	got, err := run(t, "hoard", low)
	if !errors.Is(err, sandbox.ErrMemory) || strings.Contains(got, "had it all") || !strings.Contains(err.Error(), "96 MiB") {
		t.Errorf("confined: %q, %v", got, err)
	}
	if got, err := run(t, "free hoard", low); err != nil || !strings.Contains(got, "had it all") {
		t.Errorf("not confined: %q, %v", got, err)
	}
	if got, err := run(t, "hoard", nil); err != nil || !strings.Contains(got, "had it all") {
		t.Errorf("confined to more than that: %q, %v", got, err)
	}
}

func TestRunStopsChatter(t *testing.T) {
	got, err := run(t, "chatter", func(l *sandbox.Limits) { l.Answer = 1000 })
	if !errors.Is(err, sandbox.ErrAnswer) || len(got) > 1000 || len(got) < 900 {
		t.Errorf("got %d bytes, %v", len(got), err)
	}
	if got, err := run(t, "chatter", func(l *sandbox.Limits) { l.Answer = 8 << 20 }); err != nil || !strings.HasSuffix(got, "said it all") {
		t.Errorf("within the limit: %d bytes, %v", len(got), err)
	}
}

func TestRunWritesNoFile(t *testing.T) {
	if !sandbox.Bounded {
		t.Skip("this system keeps no process from writing")
	}
	if _, err := run(t, "write", nil); !errors.Is(err, sandbox.ErrBroken) {
		t.Errorf("confined: %v", err)
	}
	if _, err := run(t, "free write", nil); err != nil {
		t.Errorf("not confined: %v", err)
	}
}

func TestRunReportsBreakdown(t *testing.T) {
	for _, task := range []string{"break", "panic"} {
		if got, err := run(t, task, nil); !errors.Is(err, sandbox.ErrBroken) || got != "asked question" {
			t.Errorf("%s: %q, %v", task, got, err)
		}
	}
}

// A process that was told no limits does not run without any.
func TestConfineWithoutLimits(t *testing.T) {
	if err := sandbox.Confine(sandbox.Limits{}); err == nil {
		t.Error("it is confined to nothing")
	}
}

func TestRunBoundsQuestion(t *testing.T) {
	if _, err := run(t, "nothing", func(l *sandbox.Limits) { l.Question = 7 }); err == nil || !strings.Contains(err.Error(), "8 bytes, the limit is 7") {
		t.Errorf("got %v", err)
	}
}

func TestRunEndsWithContext(t *testing.T) {
	ctx, cancel := context.WithCancelCause(t.Context())
	why := errors.New("the user left")
	time.AfterFunc(300*time.Millisecond, func() { cancel(why) })
	box := sandbox.Sandbox{Command: []string{os.Args[0], "confined", "sleep"}, Limits: sandbox.Default()}
	if _, err := box.Run(ctx, nil); !errors.Is(err, why) {
		t.Errorf("got %v", err)
	}
}

func TestRunWithoutCommand(t *testing.T) {
	for _, box := range []*sandbox.Sandbox{nil, {Limits: sandbox.Default()}} {
		if _, err := box.Run(t.Context(), nil); err == nil || !strings.Contains(err.Error(), "no process") {
			t.Errorf("got %v", err)
		}
	}
}
