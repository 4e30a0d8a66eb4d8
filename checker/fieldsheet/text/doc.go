// Package text writes a field sheet as plain text for a terminal or a printer,
// with aligned tables that fit 80 columns.
//
// Floor: above fieldsheet, beside the other formats of it.
package text
