# METADATA
# title: Measured risers against the total rise
# description: The sum of the risers as measured against the total rise, within the set's tolerance.
# custom:
#   id: stairs/riser-sum
#   aliases: []
#   consequence: workmanship
#   why: Risers that do not add up to the rise mean that one of them was read or typed wrong, or was left out.
#   applies_when: a stair is described
#   figures:
#     tolerance: {type: length, relation: at most, about: greatest difference between the two}
#   values: {sum: length, rise: length}
#   messages:
#     outside: "measured risers add up to {sum}, the total rise is {rise}: {have} apart, the limit is {limit}"
#   exempt:
#     not_measured: "risers were not measured one by one"
#   mend:
#     - "measure every riser again, and the total rise beside them"
#   tries: []
package checks.stairs.riser_sum

import data.figures.stairs.riser_sum as figures

applies if count(input.stairs) > 0

readings contains {
	"at": stair.sum_difference.at, "have": stair.sum_difference.value,
	"figure": "tolerance", "limit": figures.tolerance,
	"outside": stair.sum_difference.value > figures.tolerance,
	"sum": stair.measured_sum.value, "rise": stair.total_rise.value,
} if {
	some stair in input.stairs
}

exempt contains {"at": stair.at, "because": "not_measured"} if {
	some stair in input.stairs
	not stair.measured_sum
}

unknown contains {"at": stair.at, "needs": "stairs[].total_rise"} if {
	some stair in input.stairs
	stair.measured_sum
	not stair.sum_difference
}
