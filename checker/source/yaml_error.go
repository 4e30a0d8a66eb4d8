package source

import (
	"errors"
	"regexp"
	"strings"

	"go.yaml.in/yaml/v4"
)

// yamlError is an error of the YAML library with its places as offsets.
type yamlError struct {
	*reader
	message string
	context string // what the library was reading, or ""
	from    int    // where that began
	at      int    // where the library gave up
}

// rewordYAML turns an error of the YAML library into words for someone who
// typed the file, and moves it to where the mistake is. The library stops where
// the text first makes no sense, which for a quote or bracket that was never
// closed, or a line without a colon, is a line or more too late.
func (r *reader) rewordYAML(err error) *Error {
	var load *yaml.LoadError
	if !errors.As(err, &load) {
		return r.refuse(r.starts[0], r.starts[0], "", "cannot read YAML: %v", err)
	}
	e := &yamlError{
		reader:  r,
		message: load.Message,
		context: load.ContextMsg,
		from:    r.offset(load.ContextMark.Line, load.ContextMark.Column),
		at:      r.offset(load.Mark.Line, load.Mark.Column),
	}
	for _, attempt := range []func() *Error{e.limit, e.tab, e.feature, e.quoted, e.bracket, e.line, e.character} {
		if refusal := attempt(); refusal != nil {
			return refusal
		}
	}
	return r.refuse(e.at, e.afterOne(), "", "this is not YAML: %s", e.message)
}

func (e *yamlError) says(parts ...string) bool {
	for _, part := range parts {
		if strings.Contains(e.message, part) {
			return true
		}
	}
	return false
}

// afterOne is the offset behind the character at which the library stopped.
func (e *yamlError) afterOne() int { return min(e.at+1, e.lineEnd(e.at)) }

// byteAt is the byte at which the library stopped, 0 at the end of the file.
func (e *yamlError) byteAt() byte {
	if e.at < len(e.data) {
		return e.data[e.at]
	}
	return 0
}

func (e *yamlError) limit() *Error {
	if !e.says("exceeded max depth") {
		return nil
	}
	return e.tooDeep(e.at)
}

func (e *yamlError) tab() *Error {
	if !e.says("tab character") && !(e.says("cannot start any token") && e.byteAt() == '\t') {
		return nil
	}
	end := e.at
	for end < len(e.data) && isBlank(e.data[end]) {
		end++
	}
	return e.refuse(e.at, end, "indent with spaces", "a tab is used for indentation, which YAML does not allow")
}

// feature reports anchors, aliases, tags and directives that the library could
// not even read.
func (e *yamlError) feature() *Error {
	switch {
	case e.says("unknown anchor"):
		return e.alias(e.at)
	case e.context == "while scanning an alias":
		return e.alias(e.from)
	case e.context == "while scanning an anchor":
		return e.anchor(e.from)
	case e.says("undefined tag handle"):
		return e.tag(e.at)
	case e.context == "while scanning a tag", e.context == "while parsing a tag":
		return e.tag(e.from)
	case strings.Contains(e.context, "directive"):
		return e.directive(e.from)
	case e.says("directive", "incompatible YAML document"):
		return e.directive(e.at)
	}
	return nil
}

func (r *reader) alias(at int) *Error {
	return r.refuse(at, r.wordEnd(at), "write the value out in full; text that starts with * needs quotes",
		"YAML aliases (*name) are not read, as they hide where a value stands")
}

func (r *reader) anchor(at int) *Error {
	return r.refuse(at, r.wordEnd(at), "delete it; text that starts with & needs quotes",
		"YAML anchors (&name) are not read, as they hide where a value stands")
}

func (r *reader) tag(at int) *Error {
	return r.refuse(at, r.wordEnd(at), "delete it; text that starts with ! needs quotes",
		"YAML tags (!name) are not read")
}

func (r *reader) directive(at int) *Error {
	return r.refuse(at, r.lineEnd(at), "delete the line", "YAML directives (%%NAME) are not read")
}

// wordEnd gives the offset behind the run of characters, white space and flow
// punctuation excluded, that starts at the offset.
func (r *reader) wordEnd(i int) int {
	end := min(i+1, len(r.data))
	for end < len(r.data) && !isSpace(r.data[end]) && strings.IndexByte(",[]{}", r.data[end]) < 0 {
		end++
	}
	return end
}

// quoted reports quotes that are closed nowhere, or too late.
func (e *yamlError) quoted() *Error {
	const hint = "is its closing quote missing?"
	if e.context == "while scanning a quoted scalar" {
		switch {
		case e.says("end of stream", "document indicator"):
			return e.refuse(e.from, e.lineEnd(e.from), hint, "the quoted text that starts here is never closed")
		case e.says("escape", "hexadecimal"):
			return e.refuse(e.at, min(e.at+2, e.lineEnd(e.at)), `write \\ for a backslash, \" for an inch mark, or use single quotes`,
				"an unknown or incomplete escape after a backslash")
		}
		return nil
	}
	open, ok := e.openQuote(e.lineStart(e.at))
	if !ok || strings.TrimSpace(e.closedText(open)) == "" {
		return nil
	}
	return e.refuse(open, e.lineEnd(open), hint,
		"the quoted text that starts here runs on to line %d", e.position(e.at).Line)
}

// closedText is what stands on the line of the mistake before its place, where
// a quote that was opened on an earlier line must have been closed.
func (e *yamlError) closedText(open int) string {
	before := string(e.data[e.lineStart(e.at):e.at])
	if strings.IndexByte(before, e.data[open]) < 0 {
		return ""
	}
	return before
}

// openQuote finds the quoted text that is still open at the end of the given
// part of the file, by asking the library to read that part alone.
func (e *yamlError) openQuote(end int) (int, bool) {
	base := e.starts[0]
	if end <= base {
		return 0, false
	}
	_, err := parseYAML(e.data[base:end])
	var load *yaml.LoadError
	if !errors.As(err, &load) || load.ContextMsg != "while scanning a quoted scalar" {
		return 0, false
	}
	return e.offset(load.ContextMark.Line, load.ContextMark.Column), true
}

// bracket reports what goes wrong between brackets and braces.
func (e *yamlError) bracket() *Error {
	atEnd := e.skipFiller(e.at) == len(e.data)
	switch e.context {
	case "while parsing a flow sequence", "while parsing a flow mapping":
	case "while parsing a flow node":
		if open, ok := e.openBracket(); ok && atEnd {
			return e.refuse(open, open+1, "", unclosedBracket, e.data[open])
		}
		return e.refuse(e.at, e.afterOne(), "", "a value is missing before this")
	default:
		return nil
	}
	open, place := e.data[e.from], e.position(e.from)
	switch b := e.byteAt(); {
	case atEnd || b != '}' && b != ']' && e.unclosed():
		return e.refuse(e.from, e.from+1, "", unclosedBracket, open)
	case b == '}' || b == ']':
		return e.refuse(e.at, e.at+1, "", "this %q does not close the %q at line %d, column %d", b, open, place.Line, place.Column)
	case b == ':':
		return e.flowColon()
	}
	return e.refuse(e.at, e.afterOne(), "", missingComma)
}

// openBracket finds the innermost bracket that is open at the end of the file,
// by having the library read the file with one more value behind it.
func (e *yamlError) openBracket() (int, bool) {
	base := e.starts[0]
	_, err := parseYAML(append(append([]byte(nil), e.data[base:]...), "\nx"...))
	var load *yaml.LoadError
	if !errors.As(err, &load) || !strings.HasPrefix(load.ContextMsg, "while parsing a flow") {
		return 0, false
	}
	open := e.offset(load.ContextMark.Line, load.ContextMark.Column)
	return open, open < len(e.data)
}

// What is said in more than one place.
const (
	missingComma    = "a comma or closing bracket is missing before this"
	unclosedBracket = "this %q is never closed"
)

// flowColon reports a colon inside what the library took for a value: either
// the value holds a colon itself, or a comma was forgotten and the next key was
// read as part of the value.
func (e *yamlError) flowColon() *Error {
	key := e.at
	for key > e.from+1 && !isSpace(e.data[key-1]) && strings.IndexByte(`,[]{}"'`, e.data[key-1]) < 0 {
		key--
	}
	before := strings.TrimRight(string(e.data[e.from:key]), " \t\r\n")
	if strings.HasSuffix(before, ":") {
		return e.refuse(e.at, e.at+1, "if it belongs to the text, put the text in quotes", "a second colon in one value")
	}
	return e.refuse(key, e.at+1, `text that holds ": " needs quotes`, missingComma)
}

// unclosed guesses that the closing bracket is what was forgotten: the file goes
// on with a line that is indented no deeper than the one with the bracket.
func (e *yamlError) unclosed() bool {
	return e.lineStart(e.at) != e.lineStart(e.from) && e.indent(e.at) <= e.indent(e.from)
}

// indent counts the blanks that begin the line of the offset.
func (e *yamlError) indent(i int) int { return e.content(i) - e.lineStart(i) }

// content gives the offset of the first character on the line that is no blank.
func (r *reader) content(i int) int {
	i = r.lineStart(i)
	for i < len(r.data) && isBlank(r.data[i]) {
		i++
	}
	return i
}

// joined is a key and its value without the space between them, as in 12:30 or
// key:value; the key is a word that a design might use.
var joined = regexp.MustCompile(`^(?:- +)*([A-Za-z_][A-Za-z0-9_ ]*):[^ \t]`)
