package packet

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"plumbrule/checker/report/content"
	"plumbrule/checker/report/items"
	"plumbrule/checker/result"
)

// findings is everything found but what is not shown, in full.
func (b *builder) findings() Section {
	s := Section{ID: "findings", Title: "Findings"}
	for _, class := range b.list.Outside {
		part := Part{Title: "Outside the limits: " + string(class.Consequence)}
		for _, sheet := range class.Sheets {
			part.Items = append(part.Items, b.items(sheet.Items)...)
		}
		slices.SortFunc(part.Items, func(x, y Item) int { return cmp.Compare(x.Number, y.Number) })
		s.Parts = append(s.Parts, part)
	}
	if len(b.list.CouldNotRun) > 0 {
		s.Parts = append(s.Parts, Part{
			Title: "Could not run",
			Notes: []string{"These checks failed themselves. Somebody has to look at the matter by hand."},
			Items: b.items(b.list.CouldNotRun),
		})
	}
	if len(b.list.Excused) > 0 {
		s.Parts = append(s.Parts, Part{
			Title: "Excused",
			Notes: []string{"Outside a limit as the others are; a waiver says who takes it as it is, and why."},
			Items: b.items(b.list.Excused),
		})
	}
	if len(s.Parts) == 0 {
		s.Notes = []string{"None of the rule sets named in the title block found anything outside its limits."}
	}
	return s
}

func (b *builder) items(list []items.Item) []Item {
	out := make([]Item, len(list))
	for i, item := range list {
		out[i] = b.item(item)
	}
	return out
}

// item puts a finding into words: what each set and check says with its figure,
// then once what is common to all of them.
func (b *builder) item(item items.Item) Item {
	group := item.Results
	out := Item{
		Number: item.Number, ID: item.ID(), Outcome: group[0].Outcome, Class: group[0].Consequence,
		Head: content.Sentence(content.Message(group[0])),
	}
	var told []string
	for _, r := range group {
		lines := b.answer(r)
		if content.Message(r) != content.Message(group[0]) || r.Set+r.Check != group[0].Set+group[0].Check {
			lines = []Line{{"Also found", also(r, lines)}}
		}
		for _, l := range lines {
			told = appendNew(told, l.Term+": "+l.Text)
			if len(told) > len(out.Lines) { // nobody said it before
				out.Lines = append(out.Lines, l)
			}
		}
	}
	tell := func(term string, say func(*result.Result) []string) {
		for _, line := range across(group, say) {
			out.Lines = append(out.Lines, Line{term, line})
		}
	}
	tell("Reason", reason)
	tell("Waiver", waiver)
	tell("Remark", func(r *result.Result) []string { return r.Notes })
	tell("Why it matters", func(r *result.Result) []string { return []string{r.Why} })
	tell("To mend", func(r *result.Result) []string { return r.Mend })
	tell("Tried", tried)
	tell("Place", func(r *result.Result) []string { return []string{b.where(r)} })
	return out
}

// answer is what one check of one set says.
func (b *builder) answer(r *result.Result) []Line {
	found, asked := "Measured", "Limit"
	if r.Have != nil && r.Have.Unit == "" { // words, or yes and no, which nobody measures
		found, asked = "As described", "Asked for"
	}
	return slices.DeleteFunc([]Line{
		{"Held against", clause(r)},
		{found, measured(r)},
		{asked, content.Bound(r)},
		{"Margin", content.Margin(r)},
		{"Figure", b.figure(r)},
		{"Amended", r.Amended},
		{"By wood engineering", content.Engineered(r)},
	}, func(l Line) bool { return l.Text == "" })
}

// also puts an answer that is not the first of its item into one line.
func also(r *result.Result, lines []Line) string {
	words := make([]string, len(lines))
	for i, l := range lines {
		words[i] = strings.ToLower(l.Term) + " " + l.Text
	}
	return content.Sentence(content.Message(r)) + " " + capital(strings.Join(words, "; ")) + "."
}

// reason is why a check could not run. That of a waiver stands with the waiver.
func reason(r *result.Result) []string {
	if r.Waiver != nil {
		return nil
	}
	return []string{r.Reason}
}

// across gives what the results of a group say, each line once, with the sets
// that say it where not all of them do.
func across(group content.Group, say func(*result.Result) []string) []string {
	var lines []string
	var sets [][]string
	all := map[string]bool{}
	for _, r := range group {
		all[r.Set] = true
		for _, line := range say(r) {
			if line == "" {
				continue
			}
			i := slices.Index(lines, line)
			if i < 0 {
				i = len(lines)
				lines, sets = append(lines, line), append(sets, nil)
			}
			if !slices.Contains(sets[i], r.Set) {
				sets[i] = append(sets[i], r.Set)
			}
		}
	}
	for i := range lines {
		if len(sets[i]) < len(all) {
			lines[i] = strings.Join(sets[i], ", ") + ": " + lines[i]
		}
	}
	return lines
}

func measured(r *result.Result) string {
	if r.Have == nil {
		return ""
	}
	return r.Have.Text
}

// clause names set, check and clause, and the table that was read.
func clause(r *result.Result) string {
	words, c := r.Set+" "+r.Check, content.Clause(r)
	switch {
	case strings.HasPrefix(r.Table, c): // a table's title begins with its number
		c = r.Table
	case r.Table != "":
		c += ", " + r.Table
	}
	if c != "" {
		words += ", " + c
	}
	return words
}

// figure says how far a figure can be trusted, and where it was read.
func (b *builder) figure(r *result.Result) string {
	if r.Status == "" {
		return ""
	}
	words := r.Status
	if r.Source != "" {
		words += fmt.Sprintf(", read in source %d: %s", b.source(r), r.Source)
	}
	return words
}

// source is the number of a result's source in the list of sources.
func (b *builder) source(r *result.Result) int {
	i, _ := slices.BinarySearch(b.sources, r.Source)
	return i + 1
}

// tried lists the changes that were checked again and mend the finding.
func tried(r *result.Result) []string {
	var lines []string
	for i := range r.Remedies {
		lines = append(lines, content.Tried(r, &r.Remedies[i]))
	}
	return lines
}

// waiver says who excused a finding, why, until when and where it is written.
func waiver(r *result.Result) []string {
	w := r.Waiver
	if w == nil {
		return nil
	}
	words := "by " + w.By + ": " + w.Reason
	if w.Document != "" {
		words += "; written in " + w.Document
	}
	if w.Until == "" {
		return []string{words + "; without a last day"}
	}
	return []string{words + "; until " + w.Until}
}

// where says on which sheet and under which mark an element is drawn, and where
// it stands in the file.
func (b *builder) where(r *result.Result) string {
	var words []string
	if w := content.Where(r.See, r.Mark); w != "" {
		words = append(words, w)
	}
	if len(r.At) > 0 {
		words = append(words, fmt.Sprintf("%s (line %d of the description)", place(r.At[0]), max(r.Span.Start.Line, 1)))
	}
	return strings.Join(words, "; ")
}
