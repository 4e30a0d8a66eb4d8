package source

import (
	"errors"
	"io"
	"strings"

	"github.com/go-json-experiment/json/jsontext"
)

// reword turns an error of the JSON library, met at the token that starts at
// the offset start, into words for someone who typed the file. The library's
// place is right to the byte; its words name characters and states.
func (j *jsonReader) reword(err error, start int) *Error {
	var syntax *jsontext.SyntacticError
	if !errors.As(err, &syntax) {
		return j.refuse(start, start, "", "cannot read JSON: %v", err)
	}
	at := min(j.base+int(syntax.ByteOffset), len(j.data))
	inString := start < at && j.data[start] == '"'
	switch {
	case errors.Is(err, io.ErrUnexpectedEOF) || at == len(j.data):
		return j.truncated(start)
	case inString:
		return j.badString(start, at, syntax.Err)
	}
	if e := j.comment(at); e != nil {
		return e
	}
	switch j.data[at] {
	case ',':
		if next := j.skipSpace(at + 1); next < len(j.data) && (j.data[next] == '}' || j.data[next] == ']') {
			return j.refuse(at, at+1, "delete it", "a comma after the last value, which JSON does not allow")
		}
		return j.refuse(at, at+1, "delete it, or write the value that is missing", "a comma where a value is expected")
	case '\'':
		return j.refuse(at, at+1, `write " instead of '`, "JSON puts text in double quotes, not single ones")
	case '}', ']':
		if inNumberOrLiteral(syntax.Err) {
			return j.badWord(at-1, j.word(at-1))
		}
		return j.badBracket(at)
	}
	kind, count := j.dec.StackIndex(j.dec.StackDepth())
	switch afterKey := kind == '{' && count%2 == 1; {
	case afterKey && start == at && !j.follows(at, ":"):
		return j.refuse(at, at+1, "", "a colon is missing between the key and its value")
	case j.data[at] == ':':
		return j.refuse(at, at+1, "", "a colon where a comma or closing bracket is expected")
	}
	if word := j.word(at); word != "" && !(j.missingComma(at) && isValue(word)) {
		return j.badWord(at, word)
	}
	if j.missingComma(at) {
		return j.refuse(at, at+1, "", "a comma is missing before this")
	}
	return j.refuse(at, at+1, "", "this is not JSON: %v", syntax.Err)
}

// isValue reports whether bare text is a complete JSON value.
func isValue(word string) bool {
	return word == "true" || word == "false" || word == "null" || numeral.MatchString(word)
}

// inNumberOrLiteral tells errors inside a number or a word such as true from
// those between values.
func inNumberOrLiteral(err error) bool {
	return strings.Contains(err.Error(), "in number") || strings.Contains(err.Error(), "in literal")
}

// follows reports whether the last character before the offset, spaces left
// out, is one of the given ones.
func (j *jsonReader) follows(at int, chars string) bool {
	for at--; at >= j.base; at-- {
		if !isSpace(j.data[at]) {
			return strings.IndexByte(chars, j.data[at]) >= 0
		}
	}
	return false
}

// missingComma reports whether a new value or key starts at the offset right
// after another one. Text that touches its predecessor is a misspelt value
// rather than a new one.
func (j *jsonReader) missingComma(at int) bool {
	touches := at > j.base && isWordByte(j.data[at-1]) && isWordByte(j.data[at])
	kind, count := j.dec.StackIndex(j.dec.StackDepth())
	afterKey := kind == '{' && count%2 == 1
	return len(j.open) > 0 && !touches && !afterKey && !j.follows(at, ",:[{")
}

// truncated reports the end of the file inside a value.
func (j *jsonReader) truncated(start int) *Error {
	if start < len(j.data) && j.data[start] == '"' {
		return j.refuse(start, j.lineEnd(start), `close it with "`, "the text that starts here is never closed")
	}
	end := len(j.data)
	if len(j.open) == 0 {
		return j.refuse(end, end, "", "the file ends before its value is complete")
	}
	bracket := j.open[len(j.open)-1]
	p := j.position(bracket)
	return j.refuse(end, end, "is the file complete?",
		"the file ends, but the %q at line %d, column %d is not closed", j.data[bracket], p.Line, p.Column)
}

func (j *jsonReader) badString(start, at int, err error) *Error {
	switch j.data[at] {
	case '\n', '\r':
		return j.refuse(start, at, `close it with ", or write \n for a line break inside it`,
			"the text that starts here is not closed on its line")
	case '\t':
		return j.refuse(at, at+1, `write \t`, "a tab inside JSON text")
	case '\\':
		return j.refuse(at, min(at+2, len(j.data)), `write \\ for a backslash and \" for an inch mark`,
			"an unknown or incomplete escape after a backslash")
	}
	return j.refuse(at, at+1, "", "%v", err)
}

// comment reports a comment at the offset, or nil if none starts there.
func (j *jsonReader) comment(at int) *Error {
	rest := j.data[at:]
	if rest[0] != '#' && !(len(rest) > 1 && rest[0] == '/' && (rest[1] == '/' || rest[1] == '*')) {
		return nil
	}
	return j.refuse(at, j.lineEnd(at), "delete it, or name the file .yaml and start comments with #",
		"a comment, which JSON does not allow")
}

func (j *jsonReader) badBracket(at int) *Error {
	if len(j.open) > 0 {
		bracket := j.open[len(j.open)-1]
		p := j.position(bracket)
		if (j.data[bracket] == '{') != (j.data[at] == '}') {
			return j.refuse(at, at+1, "", "this %q does not close the %q at line %d, column %d",
				j.data[at], j.data[bracket], p.Line, p.Column)
		}
	}
	return j.refuse(at, at+1, "write null, or leave the key out, for what is not known", "a value is missing before this")
}

// badWord reports bare text around the offset.
func (j *jsonReader) badWord(at int, word string) *Error {
	for at > j.base && isWordByte(j.data[at-1]) {
		at--
	}
	end := at + len(word)
	kind, count := j.dec.StackIndex(j.dec.StackDepth())
	if kind == '{' && count%2 == 0 && j.follows(at, "{,") {
		return j.refuse(at, end, `write "`+clip(word)+`"`, "the key %s is not in double quotes", quote(word))
	}
	if problem, hint := misspelt(word); problem != "" {
		return j.refuse(at, end, hint, "%s", problem)
	}
	switch lower := strings.ToLower(word); lower {
	case "true", "false", "null":
		return j.refuse(at, end, "write "+lower, "%s must be in lower case", word)
	case "none", "nil", "undefined":
		return j.refuse(at, end, "write null, or leave the key out", "JSON has no value %s", word)
	}
	return j.refuse(at, end, `text needs them, as in "16 in"`, "%s is not in double quotes", clip(word))
}

// word gives the bare text around the offset, or "".
func (j *jsonReader) word(at int) string {
	start, end := at, at
	for start > j.base && isWordByte(j.data[start-1]) {
		start--
	}
	for end < len(j.data) && isWordByte(j.data[end]) {
		end++
	}
	if at == end {
		return ""
	}
	return string(j.data[start:end])
}

func isWordByte(b byte) bool {
	return b >= '0' && b <= '9' || b >= 'a' && b <= 'z' || b >= 'A' && b <= 'Z' || b >= 0x80 ||
		b == '_' || b == '.' || b == '+' || b == '-' || b == '$'
}

// trailing reports what follows the end of the file's value.
func (j *jsonReader) trailing() *Error {
	at := j.skipSpace(j.end())
	if e := j.comment(at); e != nil {
		return e
	}
	switch j.data[at] {
	case '}', ']':
		return j.refuse(at, at+1, "delete it", "this %q closes nothing", j.data[at])
	}
	return j.refuse(at, at+1, "one file holds one design", "text after the end of the JSON value")
}
