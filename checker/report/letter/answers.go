package letter

import (
	"fmt"
	"slices"

	"plumbrule/checker/report/content"
	"plumbrule/checker/report/items"
)

// past says what became of the items of earlier letters.
func (p *printer) past(past []items.Past) {
	for _, section := range []struct {
		heading string
		closed  bool
	}{{"Still open from earlier letters", false}, {"Closed", true}} {
		var lines []string
		for _, item := range past {
			if item.Closed != section.closed {
				continue
			}
			line := fmt.Sprintf("- **%d.** %s", item.Number, plain(content.Sentence(item.Headline())))
			if where := content.Where(item.See, item.Mark); where != "" {
				line += " " + plain(content.Sentence(where))
			}
			if item.Reason != "" {
				line += " " + plain(content.Sentence(item.Reason))
			}
			lines = append(lines, line)
		}
		if lines == nil {
			continue
		}
		p.heading(2, section.heading)
		if section.closed {
			p.block("The checks ran again and no longer find these. Their numbers are not given away.")
		}
		p.block(lines...)
	}
}

// answers prints a table with a row for each item that somebody has to answer.
func (p *printer) answers(list *items.List) {
	type answer struct {
		number int
		sheet  string
	}
	var open []answer
	add := func(sheets []items.Sheet) {
		for _, sheet := range sheets {
			for _, item := range sheet.Items {
				open = append(open, answer{item.Number, sheet.Name})
			}
		}
	}
	for _, class := range list.Outside {
		add(class.Sheets)
	}
	add(list.NotShown)
	for _, past := range list.Past {
		// Where another item stands for it, the answer belongs there.
		if !past.Closed && past.Now == 0 && past.Answerable() {
			open = append(open, answer{past.Number, content.SheetName(past.See)})
		}
	}
	if len(open) == 0 {
		return
	}
	slices.SortFunc(open, func(a, b answer) int { return a.number - b.number })
	p.heading(2, "Response")
	p.block("Answer each item: what was changed and on which sheet, or why nothing was.")
	rows := []string{row("Item", "Response", "Sheet"), row("---:", "---", "---")}
	for _, a := range open {
		rows = append(rows, row(fmt.Sprint(a.number), " ", plain(a.sheet)))
	}
	p.block(rows...)
}
