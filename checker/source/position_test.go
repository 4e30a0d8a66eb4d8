package source

import (
	"math/rand/v2"
	"strings"
	"testing"
	"unicode/utf8"
)

// TestLayout compares the table with counting from the start of the file.
func TestLayout(t *testing.T) {
	random := rand.New(rand.NewPCG(1, 2))
	pieces := []string{"a", "é", "日", "😀", " ", "\n", "\r\n", "\r", "key: value", strings.Repeat("long ", 60)}
	for range 200 {
		var b strings.Builder
		if random.IntN(2) == 0 {
			b.WriteString(bom)
		}
		for range random.IntN(40) {
			b.WriteString(pieces[random.IntN(len(pieces))])
		}
		text := b.String()
		start := bomLength([]byte(text))
		l := newLayout([]byte(text), start)
		line, column := 1, 1
		for i := start; i <= len(text); {
			want := Position{Offset: i, Line: line, Column: column}
			if got := l.position(i); got != want {
				t.Fatalf("%q: offset %d is %+v, want %+v", text, i, got, want)
			}
			if got := l.offset(line, column); got != i {
				t.Fatalf("%q: %d:%d has offset %d, want %d", text, line, column, got, i)
			}
			if i == len(text) {
				break
			}
			c, size := utf8.DecodeRuneInString(text[i:])
			i += size
			column++
			if c == '\n' || c == '\r' && !strings.HasPrefix(text[i:], "\n") {
				line, column = line+1, 1
			}
		}
	}
}

func TestLayoutOutside(t *testing.T) {
	l := newLayout([]byte(bom+"ab\nc"), len(bom))
	for _, c := range []struct {
		offset int
		want   Position
	}{
		{-1, Position{3, 1, 1}}, {0, Position{3, 1, 1}}, {99, Position{7, 2, 2}},
	} {
		if got := l.position(c.offset); got != c.want {
			t.Errorf("offset %d is %+v, want %+v", c.offset, got, c.want)
		}
	}
	for _, c := range [][3]int{{0, 0, 3}, {0, 9, 3}, {9, 1, 7}, {2, 99, 7}, {2, -1, 6}} {
		if got := l.offset(c[0], c[1]); got != c[2] {
			t.Errorf("%d:%d has offset %d, want %d", c[0], c[1], got, c[2])
		}
	}
	if empty := newLayout(nil, 0); empty.position(0) != (Position{0, 1, 1}) || empty.line(1) != "" {
		t.Error("an empty file has no first line")
	}
}
