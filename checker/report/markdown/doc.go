// Package markdown writes words so that they stand in Markdown as they are: a
// mark or a title can neither lay out the page nor put a link or HTML into it.
//
// Floor: above package content, below the formats.
package markdown
