package engine_test

import (
	"fmt"
	"strconv"
	"strings"
	"testing"
	"time"

	"plumbrule/checker/sandbox"
)

// hostile are rules that take far more than they may. Those of small size end
// by themselves after some seconds or some hundred MiB, so that a test sees
// what they do where nothing stops them.
var hostile = []struct {
	name, rule, small string
	limit             func(*sandbox.Limits)
}{
	{"range", `count(numbers.range(1, 1000000000))`, `count(numbers.range(1, 3000000))`, lowMemory},
	{"exponential join", `count([1 | some a in numbers.range(1, 300); some b in numbers.range(1, 300); some c in numbers.range(1, 300); some d in numbers.range(1, 300); a + b + c + d < 0])`,
		`count([1 | some a in numbers.range(1, 100); some b in numbers.range(1, 100); some c in numbers.range(1, 100); a + b + c < 0])`, lowTime},
	{"huge text", quadruple(20), quadruple(13), lowMemory},
	{"nested comprehensions", nest(30), nest(13), lowTime}, // the compiler takes long
}

func lowMemory(l *sandbox.Limits) { l.Memory, l.Time = 128<<20, time.Minute }

func lowTime(l *sandbox.Limits) { l.Time = 700 * time.Millisecond }

// quadruple makes a text of four characters four times as long, some times over.
func quadruple(times int) string {
	rules := "count(_s" + strconv.Itoa(times) + ")\n\n_s0 := \"abcd\"\n"
	for i := range times {
		rules += fmt.Sprintf("\n_s%d := concat(\"\", [_s%d, _s%d, _s%d, _s%d])\n", i+1, i, i, i, i)
	}
	return rules
}

// nest puts comprehensions into each other.
func nest(depth int) string {
	text := `"abcd"`
	for range depth {
		text = fmt.Sprintf(`concat("", [s | some _ in [1, 2]; s := %s])`, text)
	}
	return "count(" + text + ")"
}

// TestForeignCheckIsStopped runs each hostile rule confined, where it costs its
// own check only, and a small one of its kind both ways: stopped where it is
// confined, and done where nobody stops it.
func TestForeignCheckIsStopped(t *testing.T) {
	for _, h := range hostile {
		t.Run(h.name, func(t *testing.T) {
			box := confined(h.limit)
			stopped := "too long"
			if box.Limits.Memory < 1<<30 {
				if !sandbox.Bounded || raced {
					t.Skip("the memory of a process is not bounded here")
				}
				stopped = "too much memory"
			}
			rules := []string{h.rule, h.small}
			if testing.Short() {
				rules = rules[:1]
			}
			for _, rule := range rules {
				_, source := office(t, replace(toeFile, "_n := 1", "_n := "+rule))
				start := time.Now()
				results := source.evaluate(t, box)
				if took := time.Since(start); took > box.Limits.Time+10*time.Second {
					t.Errorf("it took %s", took)
				}
				if reason := failed(results, "office/toe"); !strings.Contains(reason, stopped) {
					t.Errorf("reason %q, want it to be %s", reason, stopped)
				}
				// Kick was done before; on a slow machine perhaps not within a short time.
				if got := len(of(results, "office/kick")); stopped == "too much memory" && got != 4 {
					t.Errorf("the check that ended before gives %d results, %s", got, failed(results, "office/kick"))
				}
				if got := len(of(results, "stairs/rise")); got != 4 {
					t.Errorf("the program's own check gives %d results", got)
				}
			}
			if testing.Short() {
				return
			}
			_, source := office(t, replace(toeFile, "_n := 1", "_n := "+h.small))
			start := time.Now()
			results := source.evaluate(t, free(box))
			if reason := failed(results, "office/toe"); reason != "" {
				t.Errorf("where nobody stops it: %s", reason)
			}
			if took := time.Since(start); stopped == "too long" && took < box.Limits.Time {
				t.Errorf("it takes %s only, which shows nothing", took)
			}
		})
	}
}
