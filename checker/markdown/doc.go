// Package markdown puts together pages in the Markdown that code hosts show:
// headings with their anchors, tables, code, and text that stands as it is,
// whatever characters it has.
//
// It knows nothing of decks, checks or sets.
//
// Floor: at the bottom, it imports nothing of this module.
package markdown
