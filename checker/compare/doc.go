// Package compare says what differs between two revisions of a design, and what
// rule sets make of one design beside each other.
//
// Revisions are compared value by value and finding by finding. An element is
// the same where it bears the same mark, wherever in its list it stands; one
// without a mark is the same where it says the same or nearly so and keeps its
// place among its neighbors. A value that is typed in another unit or spelling
// is the same value. A finding is the same where check, rule set and element
// are; what became of it is said with the reason, and nothing is called gone
// that nobody can see any more.
//
// The package checks no design, and prints and words nothing; reports on both
// sides come in, and lists go out.
//
// Floor: above result, schema and source, below the words that reports share.
package compare
