package items

import (
	"slices"

	"plumbrule/checker/report/content"
	"plumbrule/checker/result"
)

// Item is a numbered matter of a review.
type Item struct {
	Number  int           // from 1
	Results content.Group // never empty
}

// shortID is the number of characters of a fingerprint that people are shown.
const shortID = 8

// ID gives the item's id for people: the start of its first fingerprint.
func (i Item) ID() string {
	id := i.Results[0].Fingerprint
	return id[:min(len(id), shortID)]
}

// Sheet holds the items of one sheet of the drawings, by number.
type Sheet struct {
	Title string // "sheet S3"
	Name  string // "S3"; "" where the description names none
	Items []Item
}

// Class holds the items of one class of consequence, by sheet.
type Class struct {
	Consequence result.Consequence
	Sheets      []Sheet
}

// List is the numbered findings of one design.
type List struct {
	Outside     []Class
	NotShown    []Sheet
	CouldNotRun []Item
	Excused     []Item
	// Past holds the earlier items that are not found now, by number.
	Past []Past
}

// Number numbers the findings of the design at an index of the report. Items
// that earlier reports numbered keep their numbers. What is found in a file of
// waivers is for those who keep it, and formats do not number it.
func Number(report *result.Report, design int, previous Previous) List {
	d := &report.Designs[design]
	earlier := previous.of(report, design)
	layout := content.Arrange(d.Findings)

	var list List
	for _, class := range layout.Outside {
		list.Outside = append(list.Outside, Class{class.Consequence, sheets(content.BySheet(class.Groups))})
	}
	for i := range layout.NotShown {
		layout.NotShown[i].Groups = byNeed(layout.NotShown[i].Groups)
	}
	list.NotShown = sheets(layout.NotShown)
	list.CouldNotRun = unnumbered(layout.CouldNotRun)
	list.Excused = unnumbered(layout.Excused)

	all := list.all()
	taken := keepNumbers(all, earlier)
	next := 1
	for i := range earlier {
		next = max(next, earlier[i].Number+1)
	}
	for _, item := range all {
		if item.Number == 0 {
			item.Number = next
			next++
		}
	}
	list.sort()
	list.Past = settle(content.SetsOf(report, d), d, all, earlier, taken)
	return list
}

// Numbers gives the number of each finding.
func (l *List) Numbers() map[*result.Result]int {
	numbers := map[*result.Result]int{}
	for _, item := range l.all() {
		for _, r := range item.Results {
			numbers[r] = item.Number
		}
	}
	return numbers
}

// all gives the items as they stand in the list, to be changed there.
func (l *List) all() []*Item {
	var all []*Item
	for _, items := range l.runs() {
		for i := range items {
			all = append(all, &items[i])
		}
	}
	return all
}

// runs gives the stretches of items that stand under one heading.
func (l *List) runs() [][]Item {
	var runs [][]Item
	for _, class := range l.Outside {
		for _, sheet := range class.Sheets {
			runs = append(runs, sheet.Items)
		}
	}
	for _, sheet := range l.NotShown {
		runs = append(runs, sheet.Items)
	}
	return append(runs, l.CouldNotRun, l.Excused)
}

// sort puts the items under each heading in the order of their numbers.
func (l *List) sort() {
	for _, items := range l.runs() {
		slices.SortFunc(items, func(a, b Item) int { return a.Number - b.Number })
	}
}

func sheets(from []content.Sheet) []Sheet {
	to := make([]Sheet, len(from))
	for i, sheet := range from {
		to[i] = Sheet{Title: sheet.Title(), Name: sheet.Name, Items: unnumbered(sheet.Groups)}
	}
	return to
}

func unnumbered(groups []content.Group) []Item {
	items := make([]Item, len(groups))
	for i, group := range groups {
		items[i].Results = group
	}
	return items
}

// byNeed splits what one element does not show into single values, as each of
// them is answered by itself.
func byNeed(groups []content.Group) []content.Group {
	var split []content.Group
	for _, group := range groups {
		index := map[string]int{}
		for _, r := range group {
			i, known := index[r.Needs]
			if !known {
				i = len(split)
				index[r.Needs] = i
				split = append(split, nil)
			}
			split[i] = append(split[i], r)
		}
	}
	return split
}
