# METADATA
# title: Total rise as stated and as it follows
# description: The total rise written down for a stair against the one that follows from the ground where it lands, or from the rises of its flights, within the set's tolerance.
# custom:
#   id: stairs/total-rise
#   aliases: []
#   consequence: workmanship
#   why: Stringers are cut from the total rise. Where it is wrong, the whole difference ends up in the first or the last riser.
#   applies_when: a stair is described
#   figures:
#     tolerance: {type: length, relation: at most, about: greatest difference between the two}
#   values: {stated: length, derived: length}
#   messages:
#     outside: "the total rise is stated as {stated}, ground or flights give {derived}: {have} apart, the limit is {limit}"
#   exempt:
#     single: "the total rise comes from one place only, there is nothing to compare it with"
#   mend:
#     - "measure again from the finished decking to the finished landing, where the stair lands"
#   tries: []
package checks.stairs.total_rise

import data.figures.stairs.total_rise as figures

applies if count(input.stairs) > 0

readings contains {
	"at": stair.rise_difference.at, "have": stair.rise_difference.value,
	"figure": "tolerance", "limit": figures.tolerance,
	"outside": stair.rise_difference.value > figures.tolerance,
	"stated": stair.total_rise.value, "derived": stair.derived_rise.value,
} if {
	some stair in input.stairs
}

exempt contains {"at": stair.total_rise.at, "because": "single"} if {
	some stair in input.stairs
	not stair.rise_difference
}

unknown contains {"at": stair.at, "needs": "stairs[].total_rise"} if {
	some stair in input.stairs
	not stair.total_rise
}
