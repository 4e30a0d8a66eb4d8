package archive

import "fmt"

// Limits say how much is read from one directory or bundle.
type Limits struct {
	// File and Total are bytes, of one file and of all that is read.
	File, Total int64
	// Entries is the number of files and directories.
	Entries int
	// Ratio is how many times its packed size a bundle may unpack to. The
	// first mebibyte is free, as short texts may pack very well.
	Ratio int64
}

// Default gives limits that the greatest sets that come with the program stay
// far below.
func Default() Limits {
	return Limits{File: 2 << 20, Total: 32 << 20, Entries: 5000, Ratio: 100}
}

// free is what a bundle may unpack to whatever its packed size.
const free = 1 << 20

// Error says which entry of which directory or bundle was refused, and why.
type Error struct {
	Name    string // of the directory or bundle, as it was asked for
	Entry   string // within it; empty where the whole is meant
	Problem string // follows the name: "is a symbolic link"
}

func (e *Error) Error() string {
	if e.Entry == "" {
		return e.Name + ": " + e.Problem
	}
	return fmt.Sprintf("%s: %q %s", e.Name, e.Entry, e.Problem)
}

// tally counts what was read against the limits.
type tally struct {
	limits  Limits
	total   int64
	entries int
}

// entry counts one more entry; the text says what is wrong, "" if nothing.
func (t *tally) entry() string {
	if t.entries++; t.entries > t.limits.Entries {
		return fmt.Sprintf("is one entry too many, the limit is %d", t.limits.Entries)
	}
	return ""
}

// bytes counts the size of one more file.
func (t *tally) bytes(size int64) string {
	t.total += size
	switch {
	case size > t.limits.File:
		return fmt.Sprintf("is too large, the limit for a file is %s", Size(t.limits.File))
	case t.total > t.limits.Total:
		return fmt.Sprintf("is too much, the limit for all files together is %s", Size(t.limits.Total))
	}
	return ""
}

// Size prints a number of bytes in the greatest unit that divides it.
func Size(bytes int64) string {
	for _, unit := range []struct {
		size int64
		name string
	}{{1 << 20, "MiB"}, {1 << 10, "KiB"}} {
		if bytes >= unit.size && bytes%unit.size == 0 {
			return fmt.Sprintf("%d %s", bytes/unit.size, unit.name)
		}
	}
	return fmt.Sprintf("%d bytes", bytes)
}
