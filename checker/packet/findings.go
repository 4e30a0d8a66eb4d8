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

// item puts a finding into words. Where several sets found it, each line names
// the sets that it holds for, unless it holds for all.
func (b *builder) item(item items.Item) Item {
	group := item.Results
	out := Item{
		Number: item.Number, ID: item.ID(), Outcome: group[0].Outcome, Class: group[0].Consequence,
		Head: content.Sentence(content.Message(group[0])),
	}
	tell := func(term string, say func(*result.Result) []string) {
		for _, line := range across(group, say) {
			out.Lines = append(out.Lines, Line{term, line})
		}
	}
	one := func(say func(*result.Result) string) func(*result.Result) []string {
		return func(r *result.Result) []string { return []string{say(r)} }
	}
	tell("Also found", one(func(r *result.Result) string {
		if content.Message(r) == content.Message(group[0]) {
			return ""
		}
		return content.Message(r)
	}))
	tell("Measured", one(func(r *result.Result) string { return measured(r) }))
	tell("Limit", one(func(r *result.Result) string { return content.Bound(r) }))
	tell("Margin", one(content.Margin))
	tell("Clause", one(func(r *result.Result) string { return clause(r) }))
	tell("Figure", one(b.figure))
	tell("Amended", one(func(r *result.Result) string { return r.Amended }))
	tell("By wood engineering", one(content.Engineered))
	tell("Reason", one(func(r *result.Result) string {
		if r.Waiver != nil {
			return ""
		}
		return r.Reason
	}))
	tell("Waiver", one(waiver))
	tell("Remark", func(r *result.Result) []string { return r.Notes })
	tell("Why it matters", one(func(r *result.Result) string { return r.Why }))
	tell("To mend", func(r *result.Result) []string { return r.Mend })
	tell("Tried", tried)
	tell("Place", one(b.where))
	return out
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

// clause names set, check and clause.
func clause(r *result.Result) string {
	words := r.Set + " " + r.Check
	if c := content.Clause(r); c != "" {
		words += ", " + c
	}
	if r.Table != "" && !strings.Contains(words, r.Table) {
		words += ", " + r.Table
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
		lines = append(lines, r.Remedies[i].Text)
	}
	return lines
}

// waiver says who excused a finding, why, until when and where it is written.
func waiver(r *result.Result) string {
	w := r.Waiver
	if w == nil {
		return ""
	}
	words := "by " + w.By + ": " + w.Reason
	if w.Document != "" {
		words += "; written in " + w.Document
	}
	if w.Until != "" {
		return words + "; until " + w.Until
	}
	return words + "; without a last day"
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
