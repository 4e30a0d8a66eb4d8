// Package png paints a sheet as a PNG image, for those who have nothing to
// open an SVG or a PDF with. The same sheet gives the same bytes.
//
// Floor: above paper only.
package png
