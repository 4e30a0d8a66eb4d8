package html

import (
	"fmt"
	"strings"
	"unicode"

	"plumbrule/checker/measure"
	"plumbrule/checker/packet"
)

// paper is the part of the style sheet that hangs on the design: the size that
// printers have where its units are used, and what stands at the foot of a page.
func paper(p *packet.Packet) string {
	size, high := "letter", "202mm"
	if p.System == measure.Metric {
		size, high = "A4", "196mm"
	}
	foot := p.Title
	if p.Revision != "" {
		foot += ", revision " + p.Revision
	}
	const letters = "font: 7.5pt \"Segoe UI\", \"Noto Sans\", \"Liberation Sans\", sans-serif;"
	return fmt.Sprintf(`@page { size: %[1]s portrait; margin: 13mm 13mm 15mm;
  @bottom-left { content: "%[2]s"; %[3]s }
  @bottom-right { content: "page " counter(page) " of " counter(pages); %[3]s } }
@page drawing { size: %[1]s landscape; margin: 2mm 2mm 9mm;
  @bottom-left { padding-left: 8mm; } @bottom-right { padding-right: 8mm; } }
@media print { .drawing svg { max-height: %[4]s; } }
`, size, quoted(foot), letters, high)
}

// quoted is text inside a string of a style sheet. What could end the string,
// the sheet or the line is written as its number.
func quoted(s string) string {
	var b strings.Builder
	for _, r := range s {
		if r < ' ' || strings.ContainsRune(`"'\<>&`, r) || !unicode.IsPrint(r) {
			fmt.Fprintf(&b, `\%06x`, r)
			continue
		}
		b.WriteRune(r)
	}
	return b.String()
}
