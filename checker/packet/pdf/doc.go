// Package pdf writes a packet as a PDF for paper: words as text with the letters
// embedded, drawings as lines on pages of their own, bookmarks, links from the
// list of contents. The same packet gives the same bytes every time.
//
// The file has a title and a language, and no tags: the library writes none.
// Whoever needs a structured reading order is better served by the HTML.
//
// Floor: above packet, beside the other format of it.
package pdf
