package text

import (
	"fmt"
	"strings"

	"plumbrule/checker/source"
)

const (
	// numberWidth is the least width of a line number.
	numberWidth = 4
	// unwrappedRoom is the part of a source line that is shown where lines are
	// not wrapped: a file on a single line must not be repeated with every
	// finding.
	unwrappedRoom = 160
	ellipsis      = "..."
)

// snippet prints the line on which span starts, with a mark under the span.
func (p *printer) snippet(doc *source.Document, span source.Span, colour paint) {
	if doc == nil || span.Start.Line < 1 {
		return
	}
	line := doc.Line(span.Start.Line)
	if strings.TrimSpace(line) == "" {
		return
	}
	number := fmt.Sprintf("%*d", numberWidth, span.Start.Line)
	room := unwrappedRoom
	if p.opts.Width > 0 {
		room = p.opts.Width - len(number) - len(" | ")
	}
	v := p.cells.look(cut(line, span), room)
	p.line(p.style.faint(number+" |") + " " + strings.TrimRight(v.text, " "))
	p.line(p.style.faint(strings.Repeat(" ", len(number))+" |") + " " +
		strings.Repeat(" ", v.start) + colour(v.mark()))
}

// parts is a line cut at the ends of the value that is marked in it.
type parts struct{ before, value, after string }

// cut takes the line on which span starts apart. A value that goes on over more
// lines is marked at its first character only.
func cut(line string, span source.Span) parts {
	runes := []rune(line)
	start := min(max(span.Start.Column-1, 0), len(runes))
	end := min(start+1, len(runes))
	if span.End.Line == span.Start.Line {
		end = min(max(span.End.Column-1, start), len(runes))
	}
	return parts{string(runes[:start]), string(runes[start:end]), string(runes[end:])}
}

// view is the stretch of a line that fits, and where its mark goes, in cells.
type view struct {
	text         string
	start, width int
	openEnded    bool // the value goes on past the stretch
}

// look fits a line into room cells, round the value.
func (c cells) look(p parts, room int) view {
	text := c.expand(p.before, 0)
	start := c.StringWidth(text)
	text += c.expand(p.value, start)
	end := c.StringWidth(text)
	text += c.expand(p.after, end)
	v := view{text: text, start: start, width: max(end-start, 1)}
	all := max(c.StringWidth(text), start+v.width) // the mark may stand behind the end
	if all <= room {
		return v
	}
	if end > room-len(ellipsis) {
		// A third of the room stays for what stands before the value: less where
		// the value needs it, more where the line ends soon.
		from := max(start-room/3, end-room+len(ellipsis))
		if from = min(from, start-len(ellipsis), all-room); from > 0 {
			v.text = c.TruncateLeft(v.text, from+len(ellipsis), ellipsis)
			v.start -= from
		}
	}
	if c.StringWidth(v.text) > room {
		v.text = c.Truncate(v.text, room, ellipsis)
		room -= len(ellipsis)
	}
	if v.start+v.width > room {
		v.width, v.openEnded = max(room-v.start, 1), true
	}
	return v
}

// mark draws a caret under each end of the value with a line between them, as a
// dimension is drawn; the far caret is missing where the value goes on.
func (v view) mark() string {
	if v.width == 1 {
		return "^"
	}
	if v.openEnded {
		return "^" + strings.Repeat("-", v.width-1)
	}
	return "^" + strings.Repeat("-", v.width-2) + "^"
}
