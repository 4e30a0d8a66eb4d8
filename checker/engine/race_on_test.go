//go:build race

package engine_test

// raced says that the race detector is on, which takes memory of its own in a
// way that no limit of address space suits.
const raced = true
