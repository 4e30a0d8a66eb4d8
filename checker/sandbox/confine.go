package sandbox

import (
	"fmt"
	"runtime/debug"
	"strconv"
	"time"
)

// Flags gives the limits that a process sets itself, as arguments of its command line.
func (l Limits) Flags() []string {
	return []string{"--time=" + l.Time.String(), "--memory=" + strconv.FormatInt(l.Memory, 10), "--question=" + strconv.FormatInt(l.Question, 10)}
}

// Confine binds this process to the limits, for good. It comes before anything
// is read. Where the system bounds no memory, it only asks the garbage collector
// to stay below.
func Confine(limits Limits) error {
	if limits.Time < time.Millisecond || limits.Memory < 1<<20 {
		return fmt.Errorf("a process needs more than %s and %d bytes", limits.Time, limits.Memory)
	}
	debug.SetMemoryLimit(limits.Memory)
	// Without this, a crash would print the stacks of all goroutines.
	debug.SetTraceback("none")
	return confine(limits)
}
