package result

import "slices"

// Tally counts the outcomes of findings and readings.
func Tally(findings, readings []Result) Counts {
	var c Counts
	for _, list := range [][]Result{findings, readings} {
		for i := range list {
			switch list[i].Outcome {
			case Outside:
				c.Outside++
			case Within:
				c.Within++
			case NotShown:
				c.NotShown++
			case DoesNotApply:
				c.DoesNotApply++
			case Excused:
				c.Excused++
			case CouldNotRun:
				c.CouldNotRun++
			}
		}
	}
	return c
}

// Dispose gives the disposition of a design that was checked. A check that
// could not run weighs like something not shown: the question stays open. A
// design on which no check had anything to say was not reviewed, whatever was
// not found on it.
func Dispose(findings, readings []Result) Disposition {
	light, open := false, false
	for i := range findings {
		switch findings[i].Outcome {
		case Outside:
			if findings[i].Consequence.AtLeast(Structure) {
				return ReviseAndResubmit
			}
			light = true
		case NotShown, CouldNotRun:
			open = true
		case Within, DoesNotApply, Excused:
		}
	}
	switch {
	case light:
		return CorrectionsNoted
	case open:
		return CannotCheck
	case len(findings) == 0 && !slices.ContainsFunc(readings, func(r Result) bool { return r.Outcome == Within }):
		return NotReviewed
	}
	return NoExceptions
}
