package schema

import "plumbrule/checker/source"

// In gives the problem as an error in a file that is not a design, where what was probably meant stands in the message.
func (p Problem) In(file string) *source.Error {
	message := p.Message
	if p.Hint != "" {
		message += " (" + p.Hint + ")"
	}
	return &source.Error{Name: file, Span: p.Span, Message: message}
}
