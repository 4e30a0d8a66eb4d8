package source

import (
	"bytes"

	"github.com/go-json-experiment/json/jsontext"
)

// jsonReader walks the tokens of one JSON file.
type jsonReader struct {
	*reader
	dec  *jsontext.Decoder
	base int   // offset of the decoder's first byte
	open []int // offsets of the brackets that are open, outermost first
}

func (r *reader) readJSON() (*Node, *Error) {
	base := r.starts[0]
	j := &jsonReader{
		reader: r,
		base:   base,
		// Keys are compared in readObject, which knows where the first one stands.
		dec: jsontext.NewDecoder(bytes.NewReader(r.data[base:]), jsontext.AllowDuplicateNames(true)),
	}
	root := &Node{}
	if err := j.read(root); err != nil {
		return nil, err
	}
	if j.skipSpace(j.end()) < len(r.data) {
		return nil, j.trailing()
	}
	return root, nil
}

// end is the offset behind the last token read.
func (j *jsonReader) end() int { return j.base + int(j.dec.InputOffset()) }

// next is the offset of the next token, behind the separators that precede it.
func (j *jsonReader) next() int {
	i := j.skipSpace(j.end())
	for i < len(j.data) && (j.data[i] == ',' || j.data[i] == ':') {
		i = j.skipSpace(i + 1)
	}
	return i
}

// read fills n, whose Pointer and Parent are set, with the next value.
func (j *jsonReader) read(n *Node) *Error {
	start := j.next()
	switch j.dec.PeekKind() {
	case '{':
		n.Kind = Object
		return j.readCollection(n, start, j.readMember)
	case '[':
		n.Kind = Array
		return j.readCollection(n, start, j.readItem)
	}
	value, err := j.dec.ReadValue()
	if err != nil {
		return j.reword(err, start)
	}
	n.Span = j.span(j.end()-len(value), j.end())
	switch value.Kind() {
	case '"':
		n.Kind = String
		n.Text, err = unquote(value)
	case '0':
		n.Kind, n.Text = Number, string(value)
	case 't', 'f':
		n.Kind, n.Text = Bool, string(value)
	default:
		n.Kind = Null
	}
	if err != nil {
		return j.reword(err, start)
	}
	return nil
}

// readCollection reads an object or array by its members or items.
func (j *jsonReader) readCollection(n *Node, start int, each func(*Node, map[string]Span) *Error) *Error {
	j.open = append(j.open, start)
	if len(j.open) > MaxDepth {
		return j.tooDeep(start)
	}
	if _, err := j.dec.ReadToken(); err != nil {
		return j.reword(err, start)
	}
	keys := map[string]Span{}
	for {
		at := j.next()
		switch j.dec.PeekKind() {
		case '}', ']':
			if _, err := j.dec.ReadToken(); err != nil {
				return j.reword(err, at)
			}
			n.Span = j.span(start, j.end())
			j.open = j.open[:len(j.open)-1]
			return nil
		}
		if err := each(n, keys); err != nil {
			return err
		}
	}
}

func (j *jsonReader) readMember(n *Node, keys map[string]Span) *Error {
	at := j.next()
	raw, err := j.dec.ReadValue()
	if err != nil {
		return j.reword(err, at)
	}
	key, err := unquote(raw)
	if err != nil {
		return j.reword(err, at)
	}
	span := j.span(j.end()-len(raw), j.end())
	if first, ok := keys[key]; ok {
		return j.duplicate(key, span, first)
	}
	keys[key] = span
	value := n.child(key)
	n.add(key, span, value)
	return j.read(value)
}

func (j *jsonReader) readItem(n *Node, _ map[string]Span) *Error {
	item := n.item()
	n.Items = append(n.Items, item)
	return j.read(item)
}

// duplicate refuses a key that its object already has.
func (r *reader) duplicate(key string, again, first Span) *Error {
	return r.refuse(again.Start.Offset, again.End.Offset, "keep one of the two, or rename one",
		"the key %s was already given at line %d, column %d", quote(key), first.Start.Line, first.Start.Column)
}

// tooDeep refuses the collection that starts at the offset.
func (r *reader) tooDeep(start int) *Error {
	return r.refuse(start, min(start+1, len(r.data)), "", "nested more than %d deep", MaxDepth)
}

func unquote(raw jsontext.Value) (string, error) {
	text, err := jsontext.AppendUnquote(nil, raw)
	return string(text), err
}
