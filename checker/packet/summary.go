package packet

import (
	"fmt"

	"plumbrule/checker/report/content"
	"plumbrule/checker/result"
)

// meaning says what an outcome is.
func meaning(o result.Outcome) string {
	switch o {
	case result.Outside:
		return "the value in the description is outside the limit of the rule set"
	case result.NotShown:
		return "the description lacks what the check needs"
	case result.CouldNotRun:
		return "the check itself failed; the question stays open"
	case result.Excused:
		return "outside, and a waiver names it"
	case result.Within:
		return "inside the limit; the margin is in the schedule"
	case result.DoesNotApply:
		return "with the reason in the schedule"
	}
	return ""
}

// stamp says what a disposition asks for.
func stamp(d result.Disposition) string {
	switch d {
	case result.ReviseAndResubmit:
		return "At least one finding concerns life safety or structure."
	case result.CorrectionsNoted:
		return "There are findings, none of which concerns life safety or structure."
	case result.CannotCheck:
		return "Nothing shown is outside these rule sets, but what is not shown leaves questions open."
	case result.NoExceptions:
		return "These rule sets found nothing to object to on what is shown. That is no proof that nothing is wrong."
	case result.NotReviewed:
		return "No check of these rule sets had anything to say on this design."
	}
	return ""
}

func (b *builder) summary() Section {
	d := b.design
	t := &Table{Caption: "Outcomes, counted by subject", Columns: []Column{{"Outcome", 1.2}, {"Number", 0.7}, {"What it means", 4}}}
	for _, tally := range content.Tallies(d.Counts) {
		t.Rows = append(t.Rows, Row{Cells: []Cell{
			{Text: string(tally.Outcome), Strong: tally.N > 0 && tally.Outcome != result.Within && tally.Outcome != result.DoesNotApply},
			text(fmt.Sprint(tally.N)), text(meaning(tally.Outcome)),
		}})
	}
	s := Section{
		ID: "summary", Title: "Summary",
		Notes: []string{content.Sentence("disposition by these rule sets: " + content.Disposition(d)), stamp(d.Disposition)},
		Parts: []Part{{Table: t}},
	}
	if classes := b.classes(); classes != nil {
		s.Parts = append(s.Parts, Part{Table: classes})
	}
	if closest := b.closest(); closest != nil {
		s.Parts = append(s.Parts, Part{Table: closest})
	}
	s.Parts = append(s.Parts, Part{Notes: []string{content.Decides(b.sets) + " This packet decides nothing."}})
	return s
}

// classes counts what is outside by what is at stake; nil where nothing is.
func (b *builder) classes() *Table {
	t := &Table{Caption: "Outside, by what is at stake", Columns: []Column{{"Class", 1.2}, {"Items", 0.7}, {"Numbers", 4}}}
	for _, class := range b.list.Outside {
		var numbers []int
		for _, sheet := range class.Sheets {
			for _, item := range sheet.Items {
				numbers = append(numbers, item.Number)
			}
		}
		t.Rows = append(t.Rows, Row{Cells: []Cell{
			text(string(class.Consequence)), text(fmt.Sprint(len(numbers))), text(numberList(numbers)),
		}})
	}
	if len(t.Rows) == 0 {
		return nil
	}
	return t
}

// closest lists what is inside with the least to spare; nil where nothing is.
func (b *builder) closest() *Table {
	const most = 5
	t := &Table{Caption: "Inside with the least to spare", Columns: []Column{{"Check and subject", 3}, {"Measured", 1}, {"Limit", 1.2}, {"Margin", 1.4}, {"Set", 1}}}
	for _, r := range content.Closest(b.design.Readings, most) {
		t.Rows = append(t.Rows, Row{Cells: []Cell{b.subject(r), text(measured(r)), limit(r), text(content.Margin(r)), text(r.Set)}})
	}
	if len(t.Rows) == 0 {
		return nil
	}
	return t
}
