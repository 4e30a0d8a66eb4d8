package text

import (
	"strings"
	"testing"

	"plumbrule/checker/source"
)

func TestLook(t *testing.T) {
	long := strings.Repeat("0123456789", 10)
	tests := []struct {
		name       string
		parts      parts
		room       int
		text, mark string
	}{
		{"fits", parts{"risers: ", "7", ""}, 20, "risers: 7", "        ^"},
		{"two cells", parts{"", "12", " in"}, 20, "12 in", "^^"},
		{"value with ends", parts{"a: ", "3 ft", "   # note"}, 20, "a: 3 ft   # note", "   ^--^"},
		{"nothing there", parts{"a:", "", ""}, 20, "a:", "  ^"},
		{"wide before", parts{"梁: ", "7", ""}, 20, "梁: 7", "    ^"},
		{"wide value", parts{"a: ", "梁B", ""}, 20, "a: 梁B", "   ^-^"},
		{"combining", parts{"e\u0301: ", "7", ""}, 20, "e\u0301: 7", "   ^"},
		{"emoji of several", parts{"👩‍🔧: ", "7", ""}, 20, "👩‍🔧: 7", "    ^"},
		{"tabs", parts{"\t\"a\":\t", "1", ",\tb"}, 30, "    \"a\":    1,  b", "            ^"},
		{"tab in value", parts{"\"", "a\tb", "\""}, 30, "\"a  b\"", " ^--^"},
		{"cut behind", parts{"a: ", "1", long}, 20, "a: 10123456789012...", "   ^"},
		{"cut before", parts{long, "1", ""}, 20, "...45678901234567891", "                   ^"},
		{"mark behind the end", parts{long, "", ""}, 20, "...4567890123456789", "                   ^"},
		{"cut on both sides", parts{long, "77", long}, 20, "...78977012345678...", "      ^^"},
		{"value wider than the room", parts{long, long, ""}, 20, "...01234567890123...", "   ^-------------"},
		{"half of a wide one cut", parts{strings.Repeat("梁", 20), "7", ""}, 21, "... 梁梁梁梁梁梁梁梁7", "                    ^"},
		{"control", parts{"a\x1b[2J: ", "7", ""}, 20, "a\ufffd[2J: 7", "       ^"},
	}
	c := newCells()
	for _, test := range tests {
		v := c.look(test.parts, test.room)
		if v.text != test.text {
			t.Errorf("%s: %q, want %q", test.name, v.text, test.text)
		}
		if mark := strings.Repeat(" ", v.start) + v.mark(); mark != test.mark {
			t.Errorf("%s: mark %q under %q, want %q", test.name, mark, v.text, test.mark)
		}
		if c.StringWidth(v.text) > test.room || v.start+v.width > test.room {
			t.Errorf("%s: wider than %d", test.name, test.room)
		}
	}
}

func TestCut(t *testing.T) {
	at := func(line, column, endLine, endColumn int) source.Span {
		return source.Span{
			Start: source.Position{Line: line, Column: column},
			End:   source.Position{Line: endLine, Column: endColumn},
		}
	}
	tests := []struct {
		name string
		line string
		span source.Span
		want parts
	}{
		{"a value", "ä: 12", at(3, 4, 3, 6), parts{"ä: ", "12", ""}},
		{"over more lines", "- mark: A", at(3, 3, 9, 1), parts{"- ", "m", "ark: A"}},
		{"empty place", "a: 1", at(3, 3, 3, 3), parts{"a:", "", " 1"}},
		{"behind the end", "a:", at(3, 9, 3, 9), parts{"a:", "", ""}},
		{"end before start", "abc", at(3, 3, 3, 1), parts{"ab", "", "c"}},
	}
	for _, test := range tests {
		if got := cut(test.line, test.span); got != test.want {
			t.Errorf("%s: %q, want %q", test.name, got, test.want)
		}
	}
}

// FuzzLook looks for lines that come out wider than they may, or with a mark
// that is off the screen.
func FuzzLook(f *testing.F) {
	f.Add("mark: ", "梁B1", "\t# 👩‍🔧 e\u0301", uint8(33))
	f.Add(strings.Repeat("梁", 30), "\t\t", "\x00\u202e", uint8(73))
	c := newCells()
	f.Fuzz(func(t *testing.T, before, value, after string, extra uint8) {
		room := 33 + int(extra)
		v := c.look(parts{before, value, after}, room)
		if got := c.StringWidth(v.text); got > room {
			t.Errorf("%d cells in %q, room for %d", got, v.text, room)
		}
		if v.start < 0 || v.width < 1 || v.start+v.width > room {
			t.Errorf("mark from %d, %d cells, in %d", v.start, v.width, room)
		}
	})
}
