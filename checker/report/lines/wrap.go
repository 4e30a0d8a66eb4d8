package lines

import "strings"

// glue is the blank at which Wrap does not break a line; it is printed as an
// ordinary one.
const glue = '\u00a0'

// gluedCells is the widest text that is kept on one line. What is wider is
// prose, which reads better when it fills the line.
const gluedCells = 24

// Keep glues the words of a short text, as of `12'-6 3/8"`, to each other.
func (c Cells) Keep(s string) string {
	if c.StringWidth(s) > gluedCells {
		return s
	}
	return strings.ReplaceAll(s, " ", string(glue))
}

// Wrap breaks text at its blanks into lines of at most first cells for the first
// and rest cells for the others. A word that is wider gets a line of its own and
// juts out, since a path or a name cut in two is of no use; the first line stays
// empty if that gives the word more room. With rest 0 nothing
// is broken. There is always one line at least.
func (c Cells) Wrap(text string, first, rest int) []string {
	if rest <= 0 {
		return []string{unglue(text)}
	}
	var lines []string
	var line strings.Builder
	used, room := 0, first
	for word := range strings.SplitSeq(text, " ") {
		if word == "" {
			continue
		}
		width := c.StringWidth(word)
		full := used > 0 && used+1+width > room
		late := len(lines) == 0 && used == 0 && width > room && rest > room
		if full || late {
			lines = append(lines, unglue(line.String()))
			line.Reset()
			used, room = 0, rest
		}
		if used > 0 {
			line.WriteByte(' ')
			used++
		}
		line.WriteString(word)
		used += width
	}
	return append(lines, unglue(line.String()))
}

func unglue(s string) string {
	return strings.ReplaceAll(s, string(glue), " ")
}
