package source

import (
	"strings"

	"go.yaml.in/yaml/v4"
)

// The YAML library tells where a node starts and what it contains, but not
// where it ends. The functions here find the end by walking the source beside
// the content that the library has already accepted; none of them decides what
// the text means.

// scalarEnd gives the offset behind a scalar that starts at the offset start.
func (r *reader) scalarEnd(n *yaml.Node, start int) int {
	switch {
	case n.Style&yaml.DoubleQuotedStyle != 0:
		return r.doubleQuotedEnd(start)
	case n.Style&yaml.SingleQuotedStyle != 0:
		return r.singleQuotedEnd(start)
	case n.Style&(yaml.LiteralStyle|yaml.FoldedStyle) != 0:
		return r.blockTextEnd(n.Value, start)
	}
	return r.match(n.Value, start)
}

func (r *reader) doubleQuotedEnd(start int) int {
	for i := start + 1; i < len(r.data); i++ {
		switch r.data[i] {
		case '\\':
			i++
		case '"':
			return i + 1
		}
	}
	return len(r.data)
}

func (r *reader) singleQuotedEnd(start int) int {
	for i := start + 1; i < len(r.data); i++ {
		if r.data[i] != '\'' {
			continue
		}
		if i+1 == len(r.data) || r.data[i+1] != '\'' {
			return i + 1
		}
		i++ // a doubled quote stands for one
	}
	return len(r.data)
}

// match gives the offset behind the last character of value in the source from
// start on. White space is skipped on both sides, because folding and
// indentation change only that.
func (r *reader) match(value string, start int) int {
	end, at := start, start
	for i := range len(value) {
		if isSpace(value[i]) {
			continue
		}
		at = r.skipSpace(at)
		if at == len(r.data) || r.data[at] != value[i] {
			break // not reached for a value that the library read from here
		}
		at++
		end = at
	}
	return end
}

// blockTextEnd gives the offset behind a text that is introduced by | or >. The
// line breaks that belong to the text are inside.
func (r *reader) blockTextEnd(value string, start int) int {
	header := r.lineEnd(start)
	if value == "" {
		return start + len(strings.TrimRight(blockHeader(string(r.data[start:header])), " \t"))
	}
	end := r.afterBreak(header)
	text := strings.TrimRight(value, " \t\n")
	if text != "" {
		end = r.match(text, end)
	}
	tail := value[len(text):]
	for range strings.Count(tail, "\n") {
		end = r.afterBreak(r.lineEnd(end))
	}
	if text != "" && tail == "" || strings.HasSuffix(tail, " ") || strings.HasSuffix(tail, "\t") {
		end = r.lineEnd(end)
	}
	return end
}

// blockHeader cuts a comment off the line that introduces a block text.
func blockHeader(line string) string {
	header, _, _ := strings.Cut(line, "#")
	return header
}

// afterBreak gives the offset behind the line break at the offset, if there is
// one.
func (r *reader) afterBreak(i int) int {
	if i < len(r.data) && r.data[i] == '\r' {
		i++
		if i == len(r.data) || r.data[i] != '\n' {
			return i
		}
	}
	if i < len(r.data) && r.data[i] == '\n' {
		i++
	}
	return i
}

// skipFiller gives the first offset from i on that holds neither white space
// nor a comment.
func (r *reader) skipFiller(i int) int {
	for i = r.skipSpace(i); i < len(r.data) && r.data[i] == '#'; {
		i = r.skipSpace(r.lineEnd(i))
	}
	return i
}

// closingBracket gives the offset behind the bracket that closes a flow
// collection whose last content ends at the offset.
func (r *reader) closingBracket(i int) int {
	for i = r.skipFiller(i); i < len(r.data); i = r.skipFiller(i + 1) {
		if b := r.data[i]; b == '}' || b == ']' {
			return i + 1
		}
	}
	return len(r.data)
}

// afterColon gives the place of a value that was left empty: behind its key's
// colon, or right behind the key where there is no colon, as in {key}. The
// library puts it, at the offset next, before whatever follows.
func (r *reader) afterColon(keyEnd, next int) int {
	if i := r.skipFiller(keyEnd); i < next && r.data[i] == ':' {
		return i + 1
	}
	return keyEnd
}
