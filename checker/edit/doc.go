// Package edit changes single values in the text of a design and leaves every
// other byte as it was: comments, order, quotes and line breaks stay. It works
// on YAML in block and flow style and on JSON.
//
// It does not know what a value means, it does not write files, and it gives no
// word that its result can be read: who wants to know reads it again.
//
// Floor: above source.
package edit
