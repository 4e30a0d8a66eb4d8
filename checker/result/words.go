package result

// Outcome says what became of one check on one subject.
type Outcome string

// The six outcomes.
const (
	Outside      Outcome = "outside"        // the measured value is outside the set's limit
	Within       Outcome = "within"         // inside it; the margin is reported
	NotShown     Outcome = "not shown"      // the description lacks what the check needs
	DoesNotApply Outcome = "does not apply" // with the reason
	Excused      Outcome = "excused"        // outside, but a waiver names it
	CouldNotRun  Outcome = "could not run"  // the check itself failed
)

// Consequence is the class of a finding: what is at stake.
type Consequence string

// The four classes, gravest first.
const (
	LifeSafety  Consequence = "life safety"
	Structure   Consequence = "structure"
	Durability  Consequence = "durability"
	Workmanship Consequence = "workmanship"
)

// Consequences lists the classes, gravest first.
func Consequences() []Consequence {
	return []Consequence{LifeSafety, Structure, Durability, Workmanship}
}

// Rank is 0 for the gravest class and grows as the class grows lighter.
// An unknown class ranks behind all.
func (c Consequence) Rank() int {
	for i, known := range Consequences() {
		if c == known {
			return i
		}
	}
	return len(Consequences())
}

// AtLeast reports whether c is as grave as floor or graver.
func (c Consequence) AtLeast(floor Consequence) bool { return c.Rank() <= floor.Rank() }

// Relation says on which side of a limit the inside lies.
type Relation string

// The relations a limit may have.
const (
	AtMost   Relation = "at most"
	AtLeast  Relation = "at least"
	LessThan Relation = "less than"
	MoreThan Relation = "more than"
	Exactly  Relation = "exactly"
	OneOf    Relation = "one of"
)

// Disposition is the word on a whole design, as a reviewer would stamp it.
type Disposition string

// The dispositions, and the one for a file that could not be read.
const (
	ReviseAndResubmit Disposition = "revise and resubmit"
	CorrectionsNoted  Disposition = "corrections noted"
	CannotCheck       Disposition = "cannot check: not shown"
	NoExceptions      Disposition = "no exceptions found by these rule sets"
	NotReviewed       Disposition = "not reviewed"
)
