// Package items numbers the findings of a design as a reviewer numbers the
// comments of a letter, and keeps the numbers over the cycles of a review.
//
// An item is what one stroke on a drawing would answer: one check on one
// element by the figures of several sets, or one value that several checks miss.
// An item that is found again keeps its number, a new one gets the next number
// that was never used, and what became of the others is said: closed where the
// check ran again and found nothing, open where nobody can tell.
//
// It does not read or write reports; those who keep numbers do.
//
// Floor: above package content, below the formats.
package items
