package packet

import (
	"fmt"
	"strings"

	"plumbrule/checker/report/content"
	"plumbrule/checker/report/items"
	"plumbrule/checker/result"
)

// notShown lists what the description lacks, by sheet.
func (b *builder) notShown() Section {
	s := Section{ID: "not-shown", Title: "Not shown"}
	for _, sheet := range b.list.NotShown {
		t := &Table{Caption: "Not shown: " + sheet.Title, Columns: []Column{
			{"Item", 0.5}, {"What is not shown", 2.6}, {"Where", 1.5}, {"Field that would answer", 2}, {"Asked for by", 2},
		}}
		for _, item := range sheet.Items {
			t.Rows = append(t.Rows, b.gap(item))
		}
		s.Parts = append(s.Parts, Part{Title: capital(sheet.Title), Table: t})
	}
	if len(s.Parts) > 0 {
		s.Notes = []string{"These questions stay open. Each is answered by showing the value on the sheet named, and in the field named."}
	} else {
		s.Notes = []string{"Whatever the checks that apply asked for is shown."}
	}
	return s
}

// gap is one item that is not shown.
func (b *builder) gap(item items.Item) Row {
	group := item.Results
	messages := across(group, func(r *result.Result) []string { return []string{content.Message(r)} })
	var asked, needs []string
	for _, r := range group {
		asked = appendNew(asked, clause(r))
		needs = appendNew(needs, r.Needs)
	}
	where := content.Where(group[0].See, group[0].Mark)
	var more string
	if len(group[0].At) > 0 {
		more = fmt.Sprintf("line %d of the description", max(group[0].Span.Start.Line, 1))
	}
	return Row{Item: item.Number, Cells: []Cell{
		text(fmt.Sprint(item.Number)),
		{Text: capital(strings.Join(messages, "; ")), More: string(group[0].Consequence)},
		{Text: orDash(where), More: more},
		text(strings.Join(needs, "; ")),
		text(strings.Join(asked, "; ")),
	}}
}

func appendNew(list []string, s string) []string {
	for _, known := range list {
		if known == s {
			return list
		}
	}
	if s == "" {
		return list
	}
	return append(list, s)
}

func orDash(s string) string {
	if s == "" {
		return none
	}
	return s
}

// earlier says what became of the items of earlier reports that are not found
// under their number now; empty where there are none.
func (b *builder) earlier() Section {
	s := Section{ID: "earlier", Title: "Earlier items"}
	for _, state := range []struct {
		title  string
		closed bool
	}{{"Still open", false}, {"Closed: the checks ran again and no longer find these", true}} {
		var lines []string
		for i := range b.list.Past {
			p := &b.list.Past[i]
			if p.Closed != state.closed {
				continue
			}
			line := fmt.Sprintf("%d. %s", p.Number, content.Sentences(p.Headline(), content.Where(p.See, p.Mark), p.Reason))
			lines = append(lines, line)
		}
		if lines != nil {
			s.Parts = append(s.Parts, Part{Title: state.title, List: lines})
		}
	}
	return s
}
