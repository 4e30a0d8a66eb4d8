package reporttest

import (
	"testing"

	"plumbrule/checker/measure"
	"plumbrule/checker/result"
)

// metric is a design in millimetres held against figures in inches, in a file
// that is indented by tabs.
func metric(t testing.TB) result.Design {
	s := open(t, "karaka.deck.json", "jobs/karaka.deck.json")
	s.design.Title, s.design.Revision, s.design.System = "Karaka Bay", "C", measure.Metric
	s.design.Sets = []string{"irc-2021"}
	s.add(result.Result{
		Check: "guards/opening", Title: "Guard opening", Set: "irc-2021", Clause: "R312.1.3", Status: "published",
		Outcome: result.Outside, Consequence: result.LifeSafety, Mark: "B1", At: []string{"/guards/0/infill/opening"},
		Have: millimetres(110, "110 mm"), Limit: limit(result.LessThan, printedAs(`4"`, millimetres(101.6, "101.6 mm"))),
		Margin:  millimetres(-8.4, "-8.4 mm"),
		Message: "opening is 110 mm, the limit is less than 101.6 mm", Mend: []string{"balusters set closer"},
		Fingerprint: "cc30",
	})
	s.add(result.Result{
		Check: "stairs/riser-height", Title: "Riser height", Set: "irc-2021", Clause: "R311.7.5.1", Status: "recalled",
		Outcome: result.Within, Consequence: result.LifeSafety, Mark: "F1", At: []string{"/stairs/0/risers"},
		Have: millimetres(163.285714, "163.286 mm"), Limit: limit(result.AtMost, printedAs(`7-3/4"`, millimetres(196.85, "196.85 mm"))),
		Margin: millimetres(33.564286, "33.564 mm"),
	})
	return s.done()
}
