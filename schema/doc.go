// Package schema holds the published JSON Schemas (draft 2020-12) and tells in a builder's words, with the place,
// what in a document does not fit them.
//
// The schemas are the *.schema.json files beside this one. A new file is published by being there. Shapes are told
// apart by a word ("kind", "layout", "what") and if/then, and not by oneOf, because a mistake then has one cause
// instead of one per branch; where a field has no place beside another, the schema refuses it with `"not": {}` and
// says why in a $comment, which becomes the message. Quantities are recognized by their pattern, so that a text that
// looks right but cannot be read (3/0 in) is refused here too, in the words of package measure.
//
// The package does not read files, does not follow references from one part of a document to another (a mark, a kind
// of lumber), and judges no value: that a stair is too steep is none of its business.
//
// It is the only user of the validator library, whose errors name keywords instead of mistakes, come in an order that
// changes from run to run, and percent-encode their locations.
//
// Floor: above checker/measure and checker/source, beside checker/geometry.
package schema
