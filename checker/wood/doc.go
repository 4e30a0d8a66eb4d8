// Package wood computes sawn lumber, posts, footings and dowel connections by the allowable stress method of the National
// Design Specification for Wood Construction (NDS), and reproduces with it the span tables that deck codes print.
//
// Two things are kept apart. [Strict] is the NDS as written. The profiles whose names begin with Table, and the
// functions of that name, repeat what a printed table was evidently made with, fitted figures included; every such
// figure is a named field of [Profile] and is marked [Fitted] in the report.
//
// Nothing is computed without its working: each result carries a [Report] whose steps can be redone by hand, one after
// the other, and which says of every figure how it is known. The reference design values are from memory of the NDS
// Supplement and marked [Recalled]; those that no published table confirms deserve a look into the book.
//
// Lengths, loads and forces come in and go out as whole quantities of package measure. Inside, and in everything that
// a report prints, the units are lb, in and psi, because that is what the NDS and its tables are rounded in.
//
// The package knows no deck, no code's limits and no outline. It does not say whether a number is good enough. It does
// not design glued laminated timber, notches at supports, fire, or fastener spacing.
//
// Floor: above measure, which is its only import from this module; below facts.
package wood
