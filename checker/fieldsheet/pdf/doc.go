// Package pdf writes a field sheet as a PDF for paper, in two columns, black on
// white. The same sheet gives the same bytes every time.
//
// Floor: above fieldsheet, beside the other formats of it.
package pdf
