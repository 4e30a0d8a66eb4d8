package packet

import (
	"fmt"
	"slices"
	"strings"

	"plumbrule/checker/draw/paper"
	"plumbrule/checker/measure"
)

func (b *builder) drawings() Section {
	s := Section{ID: "drawings", Title: "Drawings"}
	for _, sheet := range b.sheets {
		d := &Drawing{Sheet: sheet, Title: sheet.Number + ": " + sheet.Name, Findings: slices.Sorted(slices.Values(sheet.Findings))}
		if sheet.Scale != "" {
			d.Scale = "scale " + sheet.Scale
		}
		d.Alt = alt(d)
		s.Parts = append(s.Parts, Part{Drawing: d})
	}
	if len(s.Parts) > 0 {
		s.Notes = []string{
			"Drawn from the description, not from the work, and not drawn where it shows too little. The numbers of findings are those of this packet: white on black is outside a limit, a dashed box is not shown, a double box is excused.",
			"A scale holds for a print of the sheet's own size; smaller ones have the scale bar. Take no measure off a drawing.",
		}
	}
	return s
}

// alt puts a drawing into words: what it is, how large, which dimensions it has
// and which findings are on it.
func alt(d *Drawing) string {
	words := []string{d.Sheet.About}
	if d.Scale != "" {
		words = append(words, capital(d.Scale)+".")
	}
	if dims := dimensions(d.Sheet.Items); len(dims) > 0 {
		words = append(words, "Dimensions: "+strings.Join(dims, "; ")+".")
	}
	switch n := len(d.Findings); {
	case d.Scale == "":
	case n == 0:
		words = append(words, "No finding is marked on it.")
	default:
		words = append(words, "Findings marked on it: "+numberList(d.Findings)+".")
	}
	return strings.Join(words, " ")
}

// dimensions lists the words of the dimensions of a sheet, each once.
func dimensions(list []paper.Item) []string {
	var words []string
	var walk func([]paper.Item)
	walk = func(list []paper.Item) {
		for _, item := range list {
			switch item := item.(type) {
			case paper.Group:
				walk(item.Items)
			case paper.Dimension:
				if w := item.Label.Words; w != "" && !slices.Contains(words, w) {
					words = append(words, w)
				}
			}
		}
	}
	walk(list)
	return words
}

// numberList writes numbers, runs of three and more as "4 to 9".
func numberList(numbers []int) string {
	numbers = slices.Compact(slices.Sorted(slices.Values(numbers)))
	var parts []string
	for i := 0; i < len(numbers); {
		end := i
		for end+1 < len(numbers) && numbers[end+1] == numbers[end]+1 {
			end++
		}
		if end-i >= 2 {
			parts = append(parts, fmt.Sprintf("%d to %d", numbers[i], numbers[end]))
		} else {
			for _, n := range numbers[i : end+1] {
				parts = append(parts, fmt.Sprint(n))
			}
		}
		i = end + 1
	}
	return strings.Join(parts, ", ")
}

// Paper is the paper of drawings that are printed with the rest of a packet, by
// the name that package draw has for it.
func Paper(system measure.System) string {
	if system == measure.Metric {
		return "a4"
	}
	return "letter"
}
