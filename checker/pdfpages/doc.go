// Package pdfpages lays words out on pages of a PDF: lines that are broken at
// blanks, lists, headings with bookmarks, in one column or several, from the top
// down. The same words give the same bytes every time.
//
// It knows nothing of decks, and no tables: what stands in a table and how wide
// its columns are, those settle who have one to write.
//
// Floor: below all that write PDF; it imports nothing of this module.
package pdfpages
