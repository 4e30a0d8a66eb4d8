# METADATA
# title: Total run as stated and as the steps give it
# description: The total run written down for a stair or a flight against the one that its treads give, within the set's tolerance.
# custom:
#   id: stairs/total-run
#   aliases: []
#   consequence: workmanship
#   why: The landing is placed by the total run. Where it is wrong, the stair ends beside its landing, or its treads come out uneven.
#   applies_when: the total run of a stair or of a flight is written down
#   figures:
#     tolerance: {type: length, relation: at most, about: greatest difference between the two}
#   values: {stated: length, derived: length}
#   messages:
#     outside: "the total run is stated as {stated}, the treads give {derived}: {have} apart, the limit is {limit}"
#   mend:
#     - "count the treads again, and write the run that they come to"
#   tries: []
package checks.stairs.total_run

import data.figures.stairs.total_run as figures

applies if count(input.stated_runs) > 0

readings contains {
	"at": run.at, "have": run.difference.value,
	"figure": "tolerance", "limit": figures.tolerance,
	"outside": run.difference.value > figures.tolerance,
	"stated": run.stated.value, "derived": run.derived.value,
} if {
	some run in input.stated_runs
}

unknown contains {"at": run.at, "needs": missing} if {
	some run in input.stated_runs
	some missing in run.missing
}
