package markdown

import "strings"

// Code sets s as code on one line, with as many accents round it as it takes.
func Code(s string) string {
	s = oneLine(s)
	if s == "" {
		return ""
	}
	fence := strings.Repeat("`", longest(s, '`')+1)
	if strings.HasPrefix(s, "`") || strings.HasSuffix(s, "`") {
		s = " " + s + " "
	}
	return fence + s + fence
}

// Link points from a text, in Markdown already, to a target.
func Link(text, target string) string {
	return "[" + text + "](" + strings.NewReplacer(" ", "%20", "(", "%28", ")", "%29").Replace(target) + ")"
}

// Strong sets a text, in Markdown already, in bold letters.
func Strong(text string) string { return "**" + text + "**" }

func oneLine(s string) string { return strings.Join(strings.Fields(s), " ") }

// longest gives the length of the longest run of a character.
func longest(s string, of rune) int {
	most, run := 0, 0
	for _, r := range s {
		run++
		if r != of {
			run = 0
		}
		most = max(most, run)
	}
	return most
}
