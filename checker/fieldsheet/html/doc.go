// Package html writes a field sheet as one self-contained HTML page: no script,
// no file beside it, readable on a phone and on black-and-white paper.
//
// Floor: above fieldsheet, beside the other formats of it.
package html
