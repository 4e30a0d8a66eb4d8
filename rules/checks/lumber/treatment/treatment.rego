# METADATA
# title: Lumber that resists decay
# description: Whether the lumber that a deck is framed with is treated with preservative or naturally durable.
# custom:
#   id: lumber/treatment
#   aliases: []
#   consequence: durability
#   why: Bare lumber that stays wet outdoors rots within years, and first where it cannot be seen.
#   applies_when: a member of the deck names its lumber
#   figures:
#     accepted: {type: list, relation: one of, about: "what keeps lumber outdoors from decay: preservative-treated, naturally durable"}
#     durable: {type: list, about: species whose heartwood can be naturally durable}
#   values: {name: words, species: words}
#   messages:
#     outside: "lumber {name} is {have}, accepted are {limit}"
#     within: "lumber {name} is {have}"
#     neither: "lumber {name} is not treated, and its species, {species}, is not among the naturally durable ones"
#     bare: "lumber {name} is neither treated nor naturally durable"
#   tries: [yes-no]
#   mend: ["preservative-treated lumber, or heartwood of a species that is naturally durable"]
package checks.lumber.treatment

import data.figures.lumber.treatment as figures

applies if count(input.outdoor_lumber) > 0

_kept contains [kind, kind.treated, "preservative-treated"] if {
	some kind in input.outdoor_lumber
	kind.treated.value
}

_kept contains [kind, kind.naturally_durable, "naturally durable"] if {
	some kind in input.outdoor_lumber
	kind.naturally_durable.value
	not kind.treated.value
	not _other(kind)
}

_left contains kind if {
	some kind in input.outdoor_lumber
	not kind.treated.value
	not kind.naturally_durable.value
}

# Heartwood of a species that has no durable one keeps no better.
_left contains kind if {
	some kind in input.outdoor_lumber
	not kind.treated.value
	_other(kind)
}

_refused(kept) := false if kept in figures.accepted

else := true

_durable(kind) if lower(kind.species.value) in figures.durable

readings contains {
	"at": fact.at, "have": kept, "figure": "accepted", "limit": figures.accepted,
	"outside": _refused(kept), "name": kind.name,
} if {
	some [kind, fact, kept] in _kept
}

readings contains {
	"at": array.concat(kind.treated.at, kind.naturally_durable.at), "figure": "accepted",
	"outside": true, "say": "bare", "name": kind.name,
} if {
	some kind in _left
	kind.naturally_durable.value == false
}

readings contains {
	"at": array.concat(kind.treated.at, kind.species.at), "figure": "durable",
	"outside": true, "say": "neither", "name": kind.name, "species": kind.species.value,
} if {
	some kind in _left
	not kind.naturally_durable.value == false
	not _durable(kind)
}

unknown contains {"at": kind.at, "needs": sprintf("lumber.<%s>.treated", [kind.name])} if {
	some kind in _left
	not kind.treated
}

unknown contains {"at": kind.at, "needs": sprintf("lumber.<%s>.naturally_durable", [kind.name])} if {
	some kind in _left
	kind.treated
	not kind.naturally_durable
	not _other(kind)
}

# A species that is never durable leaves nothing to be shown.
_other(kind) if {
	kind.species
	not _durable(kind)
}
