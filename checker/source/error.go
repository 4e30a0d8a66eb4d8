package source

import "fmt"

// Error is one reason why a file cannot be read, with its place.
type Error struct {
	Name    string // the file's name as handed to Read
	Span    Span   // what the message is about; zero for the file as a whole
	Message string // one line, lower case, without the place
	Hint    string // what to write instead, or "" if that is not known
	Source  string // the text of the line on which Span starts; "" without one
}

// Error gives "name:line:col: message" on one line, without the hint, or
// "name: message" where the message is about the file as a whole.
func (e *Error) Error() string {
	if e.Span.Start.Line == 0 {
		return e.Name + ": " + e.Message
	}
	return fmt.Sprintf("%s:%d:%d: %s", e.Name, e.Span.Start.Line, e.Span.Start.Column, e.Message)
}

// refuse makes the error for the bytes from start to end.
func (r *reader) refuse(start, end int, hint, format string, args ...any) *Error {
	span := r.span(start, end)
	return &Error{
		Name:    r.name,
		Span:    span,
		Message: fmt.Sprintf(format, args...),
		Hint:    hint,
		Source:  r.line(span.Start.Line),
	}
}
