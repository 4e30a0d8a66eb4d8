// Package sandbox runs a task that may be hostile in a process of its own,
// which can be stopped for good: by the clock, by the memory it takes and by
// the length of what it says. One process cannot bound the memory of a part of
// itself, and cannot be sure to stop it; another one can be killed.
//
// The process is this very program, started again with a command that first of
// all calls Confine. It gets no environment, an empty directory to stand in, one
// question on its standard input, and answers in lines on its standard output.
// What it says is untrusted: the caller validates every line.
//
// Memory is bounded on Linux. On other systems the memory limit is only what
// the garbage collector aims at, and the clock has to do; see Bounded.
//
// The package knows nothing of rules. It does not keep the process from the
// network or the disk: the language that is run in it has no words for them.
//
// Floor: beside measure; it imports nothing of this module.
package sandbox
