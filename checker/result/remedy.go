package result

import "plumbrule/checker/source"

// Remedy is a change of the design that was tried: the changed design was
// checked again, its finding is gone, and nothing else of it got worse.
type Remedy struct {
	// Text says the change and what comes of it, in one line.
	Text    string
	Changes []Change
}

// Change is one value of a design that is typed in anew.
type Change struct {
	Pointer string
	// From and To are the values as typed; From is empty where the design has
	// no value there.
	From, To string
	// Span is what is taken out of the text, empty where a value is added, and
	// Text what stands there instead, with all quotes it needs.
	Span source.Span
	Text string
}
