package source

import "strings"

// line reports mistakes in how lines are built and indented.
func (e *yamlError) line() *Error {
	switch {
	case e.says("could not find expected ':'"):
		return e.noColon(e.from)
	case e.says("mapping values are not allowed"):
		return e.secondColon()
	case e.says("block sequence entries are not allowed"):
		return e.refuse(e.at, e.afterOne(), "put each item on a line of its own, or write [a, b]; text that starts with a dash needs quotes",
			"a list cannot start on the line of its key")
	case e.says("did not find expected '-' indicator"):
		return e.refuse(e.at, e.lineEnd(e.at), "", "a list item (- ...) is expected here")
	case e.says("did not find expected <document start>"):
		return e.afterRoot()
	case e.says("did not find expected key"):
		return e.noKey()
	}
	return nil
}

// noColon reports the line of the offset as lacking "key: ".
func (e *yamlError) noColon(at int) *Error {
	start, end := e.content(at), e.lineEnd(at)
	if at > start && e.lineStart(at) == e.lineStart(start) {
		start = at // behind a dash
	}
	text, _, _ := strings.Cut(string(e.data[start:end]), " #")
	text = strings.TrimRight(text, " \t")
	end = start + len(text)
	if m := joined.FindStringSubmatch(text); m != nil {
		return e.refuse(start, end, `write "`+m[1]+": "+clip(text[len(m[1])+1:])+`"`,
			"a space is missing after the colon of %s", quote(m[1]))
	}
	return e.refuse(start, end, "", "this line has no colon and is no list item")
}

// secondColon reports a colon where none can be. The library met it inside what
// it took for a value: either on one line with its key, or on a line that was
// meant to have a key of its own.
func (e *yamlError) secondColon() *Error {
	start := e.content(e.at)
	if before := string(e.data[start:e.at]); strings.Contains(before, ": ") || strings.Contains(before, ":\t") {
		return e.refuse(e.at, e.afterOne(), "if it belongs to the text, put the text in quotes", "a second colon in one line")
	}
	above, ok := e.lineAbove(start)
	if !ok {
		return e.refuse(e.at, e.afterOne(), "if it belongs to the text, put the text in quotes", "a colon cannot stand here")
	}
	text := string(e.data[above:e.lineEnd(above)])
	if joined.MatchString(text) || !strings.Contains(text, ":") && !strings.HasPrefix(text, "- ") {
		return e.noColon(above)
	}
	return e.refuse(start, e.at, align, tooDeepLine)
}

// What is said in more than one place.
const (
	align       = "align it with the line it belongs beside"
	tooDeepLine = "this is indented deeper than the line above, which already has a value"
)

// afterRoot reports what follows the end of the file's value. If that value is
// a bare word, the word was meant as a line "key: value".
func (e *yamlError) afterRoot() *Error {
	if above, ok := e.lineAbove(e.at); ok {
		text := string(e.data[above:e.lineEnd(above)])
		if joined.MatchString(text) || !strings.ContainsAny(text, "\"'[]{}|>:") {
			return e.noColon(above)
		}
	}
	return e.refuse(e.at, e.lineEnd(e.at), "", "the file's value ends before this")
}

// lineAbove gives the offset of the first character of the nearest line above
// that holds more than a comment.
func (e *yamlError) lineAbove(i int) (int, bool) {
	for i = e.lineStart(i); i > e.starts[0]; {
		i = e.lineStart(i - 1)
		if at := e.content(i); at < e.lineEnd(i) && e.data[at] != '#' {
			return at, true
		}
	}
	return 0, false
}

// noKey reports what stands where the next key of a mapping is expected.
func (e *yamlError) noKey() *Error {
	start := e.content(e.at)
	if e.at > start {
		return e.afterValue()
	}
	if e.at == len(e.data) {
		return nil
	}
	if e.data[e.at] == '-' && e.at+1 < len(e.data) && isSpace(e.data[e.at+1]) && e.sameColumn() {
		return e.refuse(e.at, e.at+1, "", "a list item stands where a key is expected")
	}
	if above, ok := e.lineAbove(e.at); ok && e.indent(above) < e.indent(e.at) {
		return e.refuse(e.at, e.lineEnd(e.at), align, tooDeepLine)
	}
	column := e.position(e.from).Column
	return e.refuse(e.at, e.lineEnd(e.at), align,
		"this line is indented like no line above it (the keys before it start in column %d)", column)
}

// sameColumn reports whether the mistake stands right below the keys of the
// mapping around it.
func (e *yamlError) sameColumn() bool {
	return e.position(e.at).Column == e.position(e.from).Column
}

// afterValue reports text behind a value that is already complete.
func (e *yamlError) afterValue() *Error {
	b := e.data[e.at-1]
	for i := e.at - 1; isBlank(b) && i > 0; i-- {
		b = e.data[i-1]
	}
	if next := e.byteAt(); next == ']' || next == '}' {
		return e.refuse(e.at, e.at+1, "delete it", "this %q closes nothing", next)
	}
	switch b {
	case '"':
		return e.refuse(e.at, e.wordEnd(e.at), `put the whole value in quotes, and write \" for a quote inside it`,
			"text after the closing quote")
	case '\'':
		return e.refuse(e.at, e.wordEnd(e.at), "put the whole value in quotes, and double a single quote inside it",
			"text after the closing quote")
	case ']', '}':
		return e.refuse(e.at, e.wordEnd(e.at), "text that starts with a bracket needs quotes", "text after the closing bracket")
	}
	return e.refuse(e.at, e.wordEnd(e.at), "", "this cannot stand here")
}

// character reports characters that plain text cannot start with.
func (e *yamlError) character() *Error {
	switch {
	case e.says("cannot start any token"):
		return e.refuse(e.at, e.afterOne(), "put the text in quotes", "text cannot start with %q", e.byteAt())
	case e.context == "while scanning a block scalar":
		return e.refuse(e.from, e.lineEnd(e.from), "put the text in quotes; for text of many lines, end the line after it",
			"text cannot start with %q", e.data[e.from])
	case e.says("mapping keys are not allowed"):
		return e.refuse(e.at, e.afterOne(), "put the text in quotes", "text cannot start with %q", '?')
	}
	return nil
}
