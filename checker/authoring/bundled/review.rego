# METADATA
# title: Review of a design
# description: >
#   What each check of the set returns for the facts of a design, by the id of
#   the check. Ask for data.plumbrule.review.rows with the output of
#   "plumbrule facts" as input. A check whose rows are missing failed to run.
package plumbrule.review

# A check that does not apply has no rows.
rows[id] := {"applies": false} if {
	some id, check in data.plumbrule.set.checks
	not data.checks[check.topic][check.name].applies
}

rows[id] := {
	"applies": true,
	"readings": module.readings,
	"unknown": object.get(module, "unknown", set()),
	"exempt": object.get(module, "exempt", set()),
} if {
	some id, check in data.plumbrule.set.checks
	module := data.checks[check.topic][check.name]
	module.applies
}
