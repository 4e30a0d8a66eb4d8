# METADATA
# title: Stated span of stringers
# description: The horizontal span written down for the stringers against the one that steps and supports give, within the set's tolerance.
# custom:
#   id: stairs/stated-span
#   aliases: []
#   consequence: workmanship
#   why: Stringers are sized by the span on the drawing. Where the steps reach further than that, something has to carry the stringers in between and is not drawn.
#   applies_when: the span of the stringers is written down
#   figures:
#     tolerance: {type: length, relation: at most, about: greatest difference between the two}
#   values: {stated: length, derived: length}
#   messages:
#     outside: "the stringers are stated to span {stated}, steps and supports give {derived}: {have} apart, the limit is {limit}"
#   mend:
#     - "the drawing corrected, or the support between drawn that makes the span what is written"
#   tries: []
package checks.stairs.stated_span

import data.figures.stairs.stated_span as figures

applies if count(input.stated_stringers) > 0

readings contains {
	"at": run.at, "have": run.difference.value,
	"figure": "tolerance", "limit": figures.tolerance,
	"outside": run.difference.value > figures.tolerance,
	"stated": run.stated.value, "derived": run.derived.value,
} if {
	some run in input.stated_stringers
}

unknown contains {"at": run.at, "needs": missing} if {
	some run in input.stated_stringers
	some missing in run.missing
}
