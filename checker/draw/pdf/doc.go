// Package pdf writes sheets as the pages of one PDF file, with the letters
// embedded. The same sheets give the same bytes: the dates in the file are
// fixed, since the clock is no part of a drawing.
//
// Floor: above paper only.
package pdf
