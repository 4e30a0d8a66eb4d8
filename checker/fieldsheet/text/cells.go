package text

import (
	"strings"

	"github.com/mattn/go-runewidth"
)

// cells measures text in the cells of a terminal, the same on every machine.
type cells struct{ *runewidth.Condition }

func newCells() cells { return cells{&runewidth.Condition{StrictEmojiNeutral: true}} }

// wrap breaks text at its blanks into lines of at most room cells. A word that
// is wider juts out, since a field name cut in two is of no use.
func (c cells) wrap(text string, room int) []string {
	var lines []string
	line, used := "", 0
	for _, word := range strings.Fields(text) {
		w := c.StringWidth(word)
		switch {
		case used == 0:
			line, used = word, w
		case used+1+w > room:
			lines = append(lines, line)
			line, used = word, w
		default:
			line, used = line+" "+word, used+1+w
		}
	}
	return append(lines, line)
}

// pad fills text up to a number of cells, on its left for a number.
func (c cells) pad(text string, room int, right bool) string {
	blanks := strings.Repeat(" ", max(room-c.StringWidth(text), 0))
	if right {
		return blanks + text
	}
	return text + blanks
}
