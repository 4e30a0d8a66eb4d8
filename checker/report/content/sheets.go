package content

import (
	"slices"
	"strings"

	"github.com/maruel/natural"
)

// Sheet holds what concerns one sheet of the drawings.
type Sheet struct {
	// Name is the sheet's name without the word, as "S3"; "" where the
	// description names none.
	Name   string
	Groups []Group
}

// Title gives the words for a heading: "sheet S3".
func (s Sheet) Title() string {
	if s.Name == "" {
		return "no sheet named"
	}
	return "sheet " + s.Name
}

// BySheet splits groups by sheet, in the order of a set of drawings: S2 before
// S10, and what no sheet is named for at the end. The first of a group stands
// for all of it.
func BySheet(groups []Group) []Sheet {
	var found []Sheet
	for _, g := range groups {
		name := SheetName(g[0].See)
		i := slices.IndexFunc(found, func(s Sheet) bool { return s.Name == name })
		if i < 0 {
			i = len(found)
			found = append(found, Sheet{Name: name})
		}
		found[i].Groups = append(found[i].Groups, g)
	}
	slices.SortStableFunc(found, func(a, b Sheet) int {
		if (a.Name == "") != (b.Name == "") {
			return strings.Compare(b.Name, a.Name)
		}
		return natural.Compare(a.Name, b.Name)
	})
	return found
}

// SheetName takes the sheet out of a reference to a sheet and a detail on it:
// "S3" out of "S3", "sheet S3 detail 2", "S3, S4" and "5/S3", which is detail 5
// on sheet S3 (common practice on drawings).
func SheetName(see string) string {
	name := strings.TrimSpace(see)
	name = strings.TrimSpace(trimWord(name, "sheet"))
	if at := strings.IndexAny(name, ",;"); at >= 0 {
		name = name[:at]
	}
	if at := strings.Index(strings.ToLower(name), " detail"); at >= 0 {
		name = name[:at]
	}
	if detail, sheet, ok := strings.Cut(name, "/"); ok && isDetail(detail) {
		name = sheet
	}
	return strings.TrimSpace(name)
}

// isDetail tells the name of a detail, a number or one letter, from that of a
// sheet.
func isDetail(name string) bool {
	name = strings.TrimSpace(name)
	return len(name) == 1 || name != "" && strings.Trim(name, "0123456789") == ""
}

// Where says on which sheet and under which mark an element is drawn: "sheet
// S3, ST1". It is "" where the description says neither.
func Where(see, mark string) string {
	see = strings.TrimSpace(see)
	lower := strings.ToLower(see)
	detail, _, slash := strings.Cut(see, "/")
	switch {
	case see == "" || strings.HasPrefix(lower, "sheet") || strings.HasPrefix(lower, "detail"):
	case slash && isDetail(detail):
		see = "detail " + see
	default:
		see = "sheet " + see
	}
	switch {
	case see != "" && mark != "":
		return see + ", " + mark
	case mark != "":
		return "mark " + mark
	}
	return see
}

// trimWord cuts a leading word in any case, if more follows it.
func trimWord(s, word string) string {
	if len(s) > len(word) && strings.EqualFold(s[:len(word)], word) && s[len(word)] == ' ' {
		return s[len(word)+1:]
	}
	return s
}
