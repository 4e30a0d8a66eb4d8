package waive

import (
	"crypto/sha256"
	"encoding/hex"
	"fmt"
	"strings"

	"plumbrule/checker/result"
	"plumbrule/checker/source"
)

// The checks on waivers themselves. Their findings stand under a file of
// waivers, not under a design, and belong to no rule set.
const (
	Unused  = "waivers/unused"
	Expired = "waivers/expired"
	set     = "waivers"
)

// Findings says which waivers of a list excused nothing in the designs that
// they cover and which have run out, given what became of the list on each of
// the designs of a run. It is false where there is nothing to say. A waiver
// whose designs were not in the run, or whose check did not run on them, is not
// judged.
func (l *List) Findings(uses []Use, today Date) (result.Design, bool) {
	d := result.Design{File: l.Name, Kind: result.KindWaivers, Document: l.doc}
	for i := range l.waivers {
		w := &l.waivers[i]
		var sum use
		designs := 0
		for _, used := range uses {
			if used[i].covers {
				designs++
			}
			sum.excused += used[i].excused
			sum.stands += used[i].stands
		}
		switch {
		case w.expired(today) && designs > 0:
			d.Findings = append(d.Findings, w.ranOut(sum.stands))
		case designs > 0 && sum.excused == 0:
			d.Findings = append(d.Findings, w.withoutUse(designs))
		}
	}
	d.Counts = result.Tally(d.Findings, nil)
	d.Disposition = result.Dispose(d.Findings, nil)
	return d, len(d.Findings) > 0
}

// Check describes one of the checks on waivers, which no catalog has.
type Check struct{ ID, Title, Why, Mend string }

// Checks gives the checks on waivers.
func Checks() []Check {
	return []Check{
		{
			Expired, "Waiver that has run out", "Leave was given for a time, and what it put off is due.",
			"the change that was put off, or a new date by whoever gave the waiver",
		},
		{
			Unused, "Waiver without use", "A waiver that nothing needs any more excuses whatever comes to stand in its place.",
			"the waiver removed, or its check, design or place corrected",
		},
	}
}

func (w *waiver) finding(id string, at *source.Node) result.Result {
	r := result.Result{
		Check: id, Set: set, Outcome: result.Outside, Consequence: result.Workmanship,
		At: []string{at.Pointer}, Span: at.Span, Fingerprint: w.identity(id),
	}
	for _, check := range Checks() {
		if check.ID == id {
			r.Title, r.Why, r.Mend = check.Title, check.Why, []string{check.Mend}
		}
	}
	return r
}

func (w *waiver) ranOut(stands int) result.Result {
	until := w.node.Member("until").Value
	r := w.finding(Expired, until)
	r.Message = fmt.Sprintf("waiver for %s by %s ran out on %s, %s", w.subject(), w.by, w.until, again(stands))
	r.Have = &result.Value{Text: string(w.until)}
	r.Limit = &result.Value{Text: "the day of the check", Relation: result.AtLeast}
	return r
}

func again(stands int) string {
	switch stands {
	case 0:
		return "and nothing is left for it to excuse"
	case 1:
		return "a finding stands again"
	}
	return fmt.Sprintf("%d findings stand again", stands)
}

func (w *waiver) withoutUse(designs int) result.Result {
	r := w.finding(Unused, w.node)
	r.Span = w.node.Member("check").Value.Span
	where := "the design that it covers"
	if designs > 1 {
		where = fmt.Sprintf("the %d designs that it covers", designs)
	}
	r.Message = fmt.Sprintf("waiver for %s by %s excuses nothing in %s", w.subject(), w.by, where)
	r.Have = &result.Value{Text: "nothing"}
	r.Limit = &result.Value{Text: "a finding outside its limit", Relation: result.Exactly}
	return r
}

// subject names what is excused.
func (w *waiver) subject() string {
	switch {
	case w.place != "":
		return w.check + " at " + w.place
	case w.fingerprint != "":
		return w.check + " at " + w.fingerprint
	}
	return w.check
}

// identity tells waivers apart by what they are for.
func (w *waiver) identity(check string) string {
	parts := append([]string{check, w.check, w.design, w.place, w.fingerprint}, w.sets...)
	sum := sha256.Sum256([]byte(strings.Join(parts, "\x00")))
	return hex.EncodeToString(sum[:8])
}
