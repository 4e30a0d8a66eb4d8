// Package svg writes sheets as SVG: words as text, a title and a description
// for those who cannot see the drawing, no script, no style sheet and nothing
// to fetch, so that it also stands inside an HTML page. The same sheet gives the
// same bytes.
//
// Words carry the width that they were laid out with (textLength), so that they
// fit their place in whatever letters a viewer has.
//
// Floor: above paper only.
package svg
