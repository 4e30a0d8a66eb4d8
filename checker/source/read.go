package source

import (
	"path/filepath"
	"strings"
)

// Limits on what is read. A design is a few kilobytes and nests about ten deep;
// these only keep a hostile or mistaken file from costing much.
const (
	MaxBytes = 1 << 20 // size of a file
	MaxDepth = 64      // objects and arrays inside one another, the root counted
)

// format is how a file is written.
type format uint8

const (
	formatUnknown format = iota
	formatJSON
	formatYAML
)

// reader is the state of reading one file.
type reader struct {
	*layout
	name string
}

// Read reads a JSON or YAML file into one tree with places. The format follows
// from the name's extension (.json, .yaml, .yml); with any other name, such as
// "-" for standard input, text that begins with a brace or bracket is tried as
// JSON first, and everything else is YAML. The name is otherwise used for
// messages only. Read keeps data, which must not be changed afterwards.
//
// Every error is an *Error.
func Read(name string, data []byte) (*Document, error) {
	r := &reader{name: name, layout: newLayout(data, bomLength(data))}
	root, err := r.read(formatOf(name))
	if err != nil {
		return nil, err
	}
	return &Document{Name: name, Bytes: data, Root: root, layout: r.layout}, nil
}

// formatOf tells the format from a file's name.
func formatOf(name string) format {
	switch strings.ToLower(filepath.Ext(name)) {
	case ".json":
		return formatJSON
	case ".yaml", ".yml":
		return formatYAML
	}
	return formatUnknown
}

// read returns error, not *Error, lest a nil *Error become an error that is not
// nil.
func (r *reader) read(f format) (*Node, error) {
	if err := r.checkText(); err != nil {
		return nil, err
	}
	var root *Node
	var err *Error
	switch f {
	case formatJSON:
		root, err = r.readJSON()
	case formatYAML:
		root, err = r.readYAML()
	default:
		root, err = r.readEither()
	}
	if err != nil {
		return nil, err
	}
	return root, nil
}

// readEither reads a file whose name does not tell its format.
func (r *reader) readEither() (*Node, *Error) {
	first := r.skipSpace(r.starts[0])
	if first == len(r.data) || r.data[first] != '{' && r.data[first] != '[' {
		return r.readYAML()
	}
	root, asJSON := r.readJSON()
	if asJSON == nil {
		return root, nil
	}
	root, asYAML := r.readYAML()
	if asYAML == nil || !r.looksLikeJSON(first) {
		return root, asYAML
	}
	return nil, asJSON
}

// looksLikeJSON guesses, for text that neither format can read, in which of the
// two it was meant, from what follows the first bracket.
func (r *reader) looksLikeJSON(bracket int) bool {
	next := r.skipSpace(bracket + 1)
	if next == len(r.data) {
		return true
	}
	if r.data[bracket] == '{' {
		return r.data[next] == '"' || r.data[next] == '}'
	}
	return strings.IndexByte(`"{[]-0123456789`, r.data[next]) >= 0
}

// skipSpace gives the first offset from i on that holds no space, tab or line
// break.
func (r *reader) skipSpace(i int) int {
	for i < len(r.data) && isSpace(r.data[i]) {
		i++
	}
	return i
}
