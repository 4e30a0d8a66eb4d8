// Package facts derives from a typed deck what the deck is: spans, marks,
// rises, drops, angles, and the shapes of its parts on the plan, all of one
// working out. It computes and never judges; it holds no limit of any code. A
// value that the description does not show stays out of the document, it is
// never zero and never a default.
//
// Lengths are whole nanometres, loads whole micropascals, forces whole
// micronewtons, angles whole micro-degrees, areas whole square millimetres,
// slopes a rise and a run to be compared by cross-multiplying.
//
// Floor: above model, geometry and wood; below the rule sets.
package facts
