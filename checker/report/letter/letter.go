package letter

import (
	"fmt"
	"slices"

	"plumbrule/checker/report/content"
	"plumbrule/checker/report/items"
	"plumbrule/checker/result"
)

// letter prints the letter on one design.
func (p *printer) letter(report *result.Report, design int) {
	d := &report.Designs[design]
	list := items.Number(report, design, p.opts.Previous)
	p.header(report, d)
	if len(d.Problems) > 0 {
		p.problems(d)
	} else {
		p.found(&list)
	}
	p.past(list.Past)
	p.answers(&list)
}

// found prints what the checks found, in sections.
func (p *printer) found(list *items.List) {
	p.numbered(list)
	if len(list.Outside) > 0 {
		p.heading(2, "Outside the limits")
	}
	for _, class := range list.Outside {
		p.heading(3, "Consequence: "+string(class.Consequence))
		p.sheets(4, class.Sheets)
	}
	if len(list.NotShown) > 0 {
		p.heading(2, "Not shown")
		p.block("These could not be checked. Show them on the sheet named.")
		p.sheets(3, list.NotShown)
	}
	if len(list.CouldNotRun) > 0 {
		p.heading(2, "Could not run")
		p.block("These checks failed themselves. Nothing is asked of you; look at the matter by hand.")
		p.items(list.CouldNotRun)
	}
	if len(list.Excused) > 0 {
		p.heading(2, "Excused")
		p.items(list.Excused)
	}
}

func (p *printer) sheets(level int, sheets []items.Sheet) {
	for _, sheet := range sheets {
		p.heading(level, plain(title(sheet.Title)))
		p.items(sheet.Items)
	}
}

func (p *printer) items(list []items.Item) {
	for _, item := range list {
		p.item(item)
	}
}

// item prints one item: number, message and id, then its details.
func (p *printer) item(item items.Item) {
	messages := distinct(item.Results, content.Message)
	head := fmt.Sprintf("**%d.** %s", item.Number, plain(content.Sentence(messages[0])))
	if id := code(item.ID()); id != "" {
		head += " " + id
	}
	p.block(head)
	var lines []string
	tell := func(label string, texts []string) {
		for _, text := range texts {
			if text != "" {
				lines = append(lines, "- "+label+text)
			}
		}
	}
	tell("Also: ", escaped(sentences(messages[1:])))
	tell("", distinct(item.Results, asked))
	tell("By engineering: ", escaped(distinct(item.Results, content.Engineered)))
	tell("To be shown: ", distinct(item.Results, func(r *result.Result) string { return code(r.Needs) }))
	tell("Reason: ", escaped(distinct(item.Results, func(r *result.Result) string { return r.Reason })))
	tell("", escaped(distinct(item.Results, func(r *result.Result) string { return title(r.Amended) })))
	tell("Remark: ", escaped(each(item.Results, func(r *result.Result) []string { return r.Notes })))
	if p.opts.Verbose {
		tell("Why: ", escaped(distinct(item.Results, func(r *result.Result) string { return r.Why })))
		tell("Figure from: ", escaped(distinct(item.Results, func(r *result.Result) string { return r.Source })))
	}
	tell("Tried: ", escaped(each(item.Results, p.remedies)))
	tell("To mend: ", escaped(each(item.Results, func(r *result.Result) []string { return r.Mend })))
	tell("Drawn on: ", escaped(distinct(item.Results, func(r *result.Result) string { return content.Where(r.See, r.Mark) })))
	if len(lines) > 0 {
		p.block(lines...)
	}
}

// asked says what was measured and which limit of which set and clause it was
// held against, or for what is not shown, which set asks for it.
func asked(r *result.Result) string {
	line := "**" + plain(r.Set) + "**, " + plain(r.Check)
	values := content.Values(r)
	if clause := content.Clause(r); r.Limit == nil && clause != "" {
		values = append(values, clause)
	}
	for i, value := range values {
		if i == 0 {
			line += ": "
		} else {
			line += "; "
		}
		line += plain(value)
	}
	return line
}

// remedies says which changes were tried, and which other items they answer.
func (p *printer) remedies(r *result.Result) []string {
	var texts []string
	for i := range r.Remedies {
		texts = append(texts, content.TriedIn(r, &r.Remedies[i], func(c *result.Cleared) int {
			return p.numbers[findingAt{c.Check, c.Set, c.At}]
		}))
	}
	return texts
}

// findingAt tells findings of a design apart.
type findingAt struct{ check, set, at string }

// numbered notes the number of the item that each finding outside belongs to.
func (p *printer) numbered(list *items.List) {
	p.numbers = map[findingAt]int{}
	for _, class := range list.Outside {
		for _, sheet := range class.Sheets {
			for _, item := range sheet.Items {
				for _, r := range item.Results {
					if len(r.At) > 0 {
						p.numbers[findingAt{r.Check, r.Set, r.At[0]}] = item.Number
					}
				}
			}
		}
	}
}

// distinct gives what each result has to say, once.
func distinct(results content.Group, say func(*result.Result) string) []string {
	return each(results, func(r *result.Result) []string { return []string{say(r)} })
}

func each(results content.Group, say func(*result.Result) []string) []string {
	var said []string
	for _, r := range results {
		for _, words := range say(r) {
			if !slices.Contains(said, words) {
				said = append(said, words)
			}
		}
	}
	return said
}

func escaped(texts []string) []string {
	out := make([]string, len(texts))
	for i, text := range texts {
		out[i] = plain(text)
	}
	return out
}

func sentences(messages []string) []string {
	out := make([]string, len(messages))
	for i, message := range messages {
		out[i] = content.Sentence(message)
	}
	return out
}
