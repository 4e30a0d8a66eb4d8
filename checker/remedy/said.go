package remedy

import "strings"

// filled puts values into the gaps of a text, written {}. The words of a set
// hold no braces.
func filled(text string, values []string) string {
	var out strings.Builder
	for i, piece := range strings.Split(text, "{}") {
		if i > 0 && i <= len(values) {
			out.WriteString(values[i-1])
		}
		out.WriteString(piece)
	}
	return out.String()
}
