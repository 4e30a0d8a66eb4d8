// Package geometry is the plane geometry of a deck: outlines and what lies
// inside them, squaring with a tape, miters, and the even division of a length
// into joist bays, baluster gaps, rows of boards and risers.
//
// The plan has the house at its top. X runs along the house from its left end
// to the right, Y runs out from the house, which is down the page. An outline
// is a [Ring] walked from the left end of the house along the house, so it turns
// clockwise on the page and every interior angle below 180 degrees is a turn to
// the right.
//
// Lengths are whole nanometres. Signs, sides, orders and the areas of rings and
// strips are found in exact integer or rational arithmetic; a float appears only
// where an angle or a direction forces it, and is rounded once on the way out.
// Exactness is promised for coordinates and lengths up to [Reach]; beyond it
// results are meaningless, though nothing panics. [Ring.Check] refuses such
// rings.
//
// The package knows no figures, no code and no lumber: it says what the shape
// is, never whether that is right. It prints nothing and parses nothing.
//
// Floor: above measure, which is its only import from this module.
package geometry
