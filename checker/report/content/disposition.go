package content

import (
	"fmt"

	"plumbrule/checker/result"
)

// Disposition gives the stamp on a design with the number of questions that
// stay open: "corrections noted; 2 items not shown".
func Disposition(d *result.Design) string {
	stamp := string(d.Disposition)
	if n := d.Counts.NotShown; n > 0 {
		stamp += fmt.Sprintf("; %d %s not shown", n, plural(n, "item"))
	}
	if n := d.Counts.CouldNotRun; n > 0 {
		stamp += fmt.Sprintf("; %d %s could not run", n, plural(n, "check"))
	}
	return stamp
}

// Tally is one outcome and how many subjects had it.
type Tally struct {
	Outcome result.Outcome
	N       int
}

// Tallies gives the counts in the order reports print them.
func Tallies(c result.Counts) []Tally {
	return []Tally{
		{result.Outside, c.Outside},
		{result.NotShown, c.NotShown},
		{result.CouldNotRun, c.CouldNotRun},
		{result.Excused, c.Excused},
		{result.Within, c.Within},
		{result.DoesNotApply, c.DoesNotApply},
	}
}

func plural(n int, word string) string {
	if n == 1 {
		return word
	}
	return word + "s"
}
