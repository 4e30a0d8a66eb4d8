# METADATA
# title: Stated span against the plan
# description: A span or cantilever written on the drawing, against the one that the plan gives.
# custom:
#   id: joists/stated-span
#   aliases: []
#   consequence: workmanship
#   why: Where the written span and the plan disagree, one of them is wrong, and the crew builds one of them.
#   applies_when: a span or cantilever of the joists is written down
#   figures:
#     tolerance: {type: length, relation: at most, about: greatest difference between a stated span and the plan}
#   values: {what: words, stated: length, derived: length}
#   messages:
#     outside: "stated {what} is {stated}, the plan gives {derived}, apart by {have}"
#     within: "stated {what} is {stated}, the plan gives {derived}"
#   mend: ["the drawing corrected, and the member checked at the larger of the two"]
#   tries: []
package checks.joists.stated_span

import data.figures.joists.stated_span as figures

applies if count(input.stated_spans) > 0

readings contains {
	"at": stated.at, "have": stated.difference.value,
	"figure": "tolerance", "limit": figures.tolerance,
	"outside": stated.difference.value > figures.tolerance,
	"what": stated.what, "stated": stated.stated.value, "derived": stated.derived.value,
} if {
	some stated in input.stated_spans
}

unknown contains {"at": stated.at, "needs": "platforms[].beams"} if {
	some stated in input.stated_spans
	not stated.difference
}
