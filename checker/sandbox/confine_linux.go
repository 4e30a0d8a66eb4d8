package sandbox

import (
	"bytes"
	"fmt"
	"os"
	"runtime"
	"strconv"
	"time"

	"golang.org/x/sys/unix"
)

// Bounded says that Confine bounds the memory of a process.
const Bounded = true

// confine sets limits that the process cannot raise again: address space beyond
// what it has now, processor time as a second clock in case that nobody is left
// to stop it, and no files or core dumps at all.
func confine(limits Limits) error {
	now, err := addressSpace()
	if err != nil {
		return fmt.Errorf("finding out how much memory is in use: %w", err)
	}
	seconds := uint64((limits.Time+time.Second-1)/time.Second) + 1
	for _, limit := range []struct {
		name     string
		resource int
		value    uint64
	}{
		{"memory", unix.RLIMIT_AS, now + uint64(limits.Memory)},
		{"processor time", unix.RLIMIT_CPU, seconds * uint64(runtime.GOMAXPROCS(0))},
		{"file size", unix.RLIMIT_FSIZE, 0},
		{"core dumps", unix.RLIMIT_CORE, 0},
	} {
		if err := unix.Setrlimit(limit.resource, &unix.Rlimit{Cur: limit.value, Max: limit.value}); err != nil {
			return fmt.Errorf("limiting %s: %w", limit.name, err)
		}
	}
	return nil
}

// addressSpace gives the bytes of address space in use. A Go program reserves
// far more than it uses, so that a limit can only count from there.
func addressSpace() (uint64, error) {
	text, err := os.ReadFile("/proc/self/statm")
	if err != nil {
		return 0, err
	}
	first, _, _ := bytes.Cut(text, []byte(" "))
	pages, err := strconv.ParseUint(string(first), 10, 64)
	if err != nil {
		return 0, err
	}
	return pages * uint64(os.Getpagesize()), nil
}
