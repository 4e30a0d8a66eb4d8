package source

import (
	"strconv"
	"strings"
)

// Document is one file that could be read.
type Document struct {
	Name  string // as handed to Read
	Bytes []byte // as handed to Read; every Offset counts in these
	Root  *Node  // never nil

	layout *layout
}

// Unread is a document of a text that Read refused: it has lines to show, and
// a root that holds nothing.
func Unread(name string, data []byte) *Document {
	return &Document{Name: name, Bytes: data, Root: &Node{Kind: Null}, layout: newLayout(data, bomLength(data))}
}

// Find gives the value at a JSON pointer (RFC 6901, tokens not
// percent-encoded), or nil where the file holds none. The pointer "" is the
// root.
func (d *Document) Find(pointer string) *Node {
	if pointer == "" {
		return d.Root
	}
	tokens := strings.Split(pointer, "/")
	if tokens[0] != "" {
		return nil
	}
	node := d.Root
	for _, token := range tokens[1:] {
		if node = node.step(token); node == nil {
			return nil
		}
	}
	return node
}

// step follows one escaped token of a pointer.
func (n *Node) step(token string) *Node {
	if n.Kind == Array {
		i, err := strconv.Atoi(token)
		// Comparing the text too refuses spellings such as "01" and "+1".
		if err != nil || i < 0 || i >= len(n.Items) || strconv.Itoa(i) != token {
			return nil
		}
		return n.Items[i]
	}
	if m := n.Member(strings.NewReplacer("~1", "/", "~0", "~").Replace(token)); m != nil {
		return m.Value
	}
	return nil
}

// Line gives the text of line n, counted from 1, without its line break, and ""
// for a line that does not exist.
func (d *Document) Line(n int) string {
	return d.layout.line(n)
}

// Position gives the line and column of a byte offset; one outside the file is
// drawn to its nearer end.
func (d *Document) Position(offset int) Position {
	return d.layout.position(offset)
}
