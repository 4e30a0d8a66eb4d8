package source

import (
	"sort"
	"unicode/utf8"
)

// Position is one place in a file.
type Position struct {
	Offset int // bytes from the start of the file, from 0
	Line   int // from 1
	Column int // code points from the start of the line, from 1
}

// Span is a stretch of a file. End is exclusive and may lie on a later line
// than Start; a span with equal ends marks a place where something is absent.
type Span struct {
	Start, End Position
}

// stride is how many bytes lie between two entries of layout.runes. It bounds
// the work of one conversion, so that a minified file of one long line does not
// cost quadratic time.
const stride = 64

// layout converts between byte offsets and lines and columns.
//
// LF, CRLF and a lone CR end a line. A byte order mark at the start of the file
// has an offset but no column, as editors do not show it.
type layout struct {
	data   []byte
	starts []int // offset of the first character of each line
	runes  []int // runes[k] counts the code points that begin before k*stride
}

func newLayout(data []byte, start int) *layout {
	l := &layout{data: data, starts: []int{start}}
	count := 0
	for i, b := range data {
		if i%stride == 0 {
			l.runes = append(l.runes, count)
		}
		if utf8.RuneStart(b) {
			count++
		}
		if b == '\n' || b == '\r' && (i+1 == len(data) || data[i+1] != '\n') {
			l.starts = append(l.starts, i+1)
		}
	}
	if len(data)%stride == 0 {
		l.runes = append(l.runes, count)
	}
	return l
}

// runesBefore counts the code points that begin before offset.
func (l *layout) runesBefore(offset int) int {
	k := offset / stride
	n := l.runes[k]
	for _, b := range l.data[k*stride : offset] {
		if utf8.RuneStart(b) {
			n++
		}
	}
	return n
}

// position gives the place of an offset; one outside the file is drawn to its
// nearer end.
func (l *layout) position(offset int) Position {
	offset = min(max(offset, l.starts[0]), len(l.data))
	line := sort.SearchInts(l.starts, offset+1) // the first line that starts after offset, from 0
	column := l.runesBefore(offset) - l.runesBefore(l.starts[line-1]) + 1
	return Position{Offset: offset, Line: line, Column: column}
}

func (l *layout) span(start, end int) Span {
	return Span{Start: l.position(start), End: l.position(max(start, end))}
}

// offset is the reverse of position; a line or column outside the file is drawn
// to its nearer end.
func (l *layout) offset(line, column int) int {
	if line < 1 {
		return l.starts[0]
	}
	if line > len(l.starts) {
		return len(l.data)
	}
	start := l.starts[line-1]
	want := l.runesBefore(start) + max(column, 1) - 1
	k := sort.SearchInts(l.runes, want+1) - 1 // the last entry at or before the wanted code point
	i, n := k*stride, l.runes[k]
	if i < start {
		i, n = start, want-max(column, 1)+1
	}
	for i < len(l.data) && (n < want || !utf8.RuneStart(l.data[i])) {
		if utf8.RuneStart(l.data[i]) {
			n++
		}
		i++
	}
	return i
}

// lineStart gives the offset of the first character of the line that holds
// offset.
func (l *layout) lineStart(offset int) int {
	return l.starts[sort.SearchInts(l.starts, offset+1)-1]
}

// lineEnd gives the offset where the text of the line that holds offset stops,
// before its line break.
func (l *layout) lineEnd(offset int) int {
	end := len(l.data)
	if next := sort.SearchInts(l.starts, offset+1); next < len(l.starts) {
		end = l.starts[next]
	}
	for end > l.lineStart(offset) && isBreak(l.data[end-1]) {
		end--
	}
	return end
}

// line gives the text of line n, from 1, without its line break, and "" for a
// line that does not exist.
func (l *layout) line(n int) string {
	if n < 1 || n > len(l.starts) {
		return ""
	}
	start := l.starts[n-1]
	return string(l.data[start:l.lineEnd(start)])
}

func isBreak(b byte) bool { return b == '\n' || b == '\r' }
func isBlank(b byte) bool { return b == ' ' || b == '\t' }
func isSpace(b byte) bool { return isBlank(b) || isBreak(b) }
