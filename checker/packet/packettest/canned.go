package packettest

import (
	"testing"

	"plumbrule/checker/draw/paper"
	"plumbrule/checker/measure"
	"plumbrule/checker/packet"
	"plumbrule/checker/report/items"
	"plumbrule/checker/report/reporttest"
	"plumbrule/checker/result"
)

// Report is the canned report of all formats, with what packets say besides: an
// engineered answer, a change that was tried, a value that nothing reads, a
// waiver without use.
func Report(t testing.TB) *result.Report {
	t.Helper()
	report := reporttest.Canned(t)
	d := &report.Designs[0]
	for i := range d.Findings {
		switch r := &d.Findings[i]; r.Check {
		case "stairs/riser-height":
			r.Remedies = []result.Remedy{{Text: `risers: 8 in place of 7, each 7"`, Changes: []result.Change{{Pointer: "/stairs/0/risers", From: "7", To: "8"}}}}
		case "beams/ply-joint":
			r.Engineered = &result.Engineered{
				Limit: result.Value{Text: `9'-2"`}, Governs: "bending",
				Working: []string{"dead load not shown: 10 psf taken", "longest beam span", "assumed: even load", "b = 3 in", "assumed: not one any more"},
			}
		}
	}
	d.Unread = []result.Place{{Pointer: "/stairs/0/handrail/profile/type", Span: d.Findings[0].Span, Text: "flat board"}}
	report.Sets[1].Place = "an invented town <&>"
	report.Designs = append(report.Designs[:1], result.Design{
		Kind: result.KindWaivers, File: "waivers.yaml",
		Findings: []result.Result{{Outcome: result.Outside, Message: "waiver for guards/height at G9 excuses nothing in the design that it covers"}},
	})
	return &report
}

// Sheets are two drawings, one of which has findings and a dimension.
func Sheets() []*paper.Sheet {
	at := func(x, y float64) paper.Point { return paper.Point{X: x, Y: y} }
	dimension := paper.Dimension{
		From: at(40, 40), To: at(140, 40), Start: at(40, 20), End: at(140, 20), Value: 16 * measure.Foot,
		Label: paper.Text{At: at(90, 18), Words: `16'-0"`, Size: 8, Width: 30, Align: paper.Middle},
	}
	return []*paper.Sheet{
		{
			Number: "D1", Name: "Plan of <A>", File: "d1-plan", Job: "Möwenweg rear deck", About: "Plan of A from above.",
			Scale: `1/4" = 1'-0"`, Findings: []int{6, 4, 5, 10}, Width: 792, Height: 612,
			Items: []paper.Item{paper.Group{Kind: "figure", Items: []paper.Item{
				paper.Rectangle(at(40, 40), at(140, 120), paper.Bold, paper.NoFill), dimension, dimension,
			}}},
		},
		{Number: "D2", Name: "Notes to the drawings", File: "d2-notes", Job: "Möwenweg rear deck", About: "What found no room.", Width: 792, Height: 612},
	}
}

// Packet is the packet of report and sheets, after an earlier review.
func Packet(t testing.TB) *packet.Packet {
	t.Helper()
	earlier := items.Previous{{File: "jobs/möwenweg.deck.yaml", Items: []items.Earlier{{
		Number: 3, Outcome: result.Outside, Mark: "P9", Message: "post is too thin",
		Found: []items.Found{{Check: "posts/size", Set: "irc-2021", Fingerprint: "ff99"}},
	}}}}
	return packet.Build(Report(t), Sheets(), earlier)
}
