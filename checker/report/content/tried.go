package content

import (
	"strconv"
	"strings"

	"plumbrule/checker/result"
)

// Tried says a change that was tried on a result, and what else it clears, so
// that nobody who reads of it in two places makes it twice.
func Tried(r *result.Result, remedy *result.Remedy) string {
	return TriedIn(r, remedy, func(*result.Cleared) int { return 0 })
}

// TriedIn is Tried in a report of items: item gives the number of the one that a
// finding belongs to, 0 where it has none. What belongs to the item of the
// result itself is left out.
func TriedIn(r *result.Result, remedy *result.Remedy, item func(*result.Cleared) int) string {
	own := 0
	if len(r.At) > 0 {
		own = item(&result.Cleared{Check: r.Check, Set: r.Set, At: r.At[0]})
	}
	var others []string
	also := remedy.Also(r)
	for i := range also {
		c := &also[i]
		switch n := item(c); {
		case n == 0:
			others = append(others, cleared(c))
		case n != own:
			others = append(others, "item "+strconv.Itoa(n)+", "+cleared(c))
		}
	}
	if len(others) == 0 {
		return remedy.Text
	}
	return remedy.Text + "; this also clears: " + strings.Join(others, "; ")
}

// cleared names a finding by its check and its place: "joists/cantilever (B1
// from_house)".
func cleared(c *result.Cleared) string {
	place := strings.TrimSpace(c.Mark + " " + field(c.At))
	if place == "" {
		return c.Check
	}
	return c.Check + " (" + place + ")"
}
