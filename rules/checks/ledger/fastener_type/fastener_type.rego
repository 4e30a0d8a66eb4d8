# METADATA
# title: Kind of ledger fastener
# description: What holds each ledger, against the kinds that the table of spacings was made for and their least diameter. Kinds that follow a listing of their own need that listing shown.
# custom:
#   id: ledger/fastener-type
#   aliases: []
#   consequence: life safety
#   why: Nails pull straight out of the rim, and a ledger that lets go drops the whole deck at once.
#   applies_when: a platform hangs on a ledger
#   figures:
#     accepted: {type: list, relation: one of, about: kinds that the table is for}
#     listed: {type: list, about: kinds that follow a listing of their own}
#     min_diameter: {type: length, relation: at least, about: least diameter}
#   values: {fastener: words, listing: words}
#   messages:
#     outside: "the ledger is held by {have}, accepted are {limit}"
#     within: "the ledger is held by {have}"
#     diameter: "ledger fasteners are {have} thick, the limit is {limit}"
#   exempt:
#     listed: "a {fastener} follows its own listing: {listing}"
#   mend: ["lag screws or through-bolts of the accepted diameter", "fasteners with a listing for ledgers, shown with its spacing"]
#   tries: [ledger-screws, eighths]
package checks.ledger.fastener_type

import data.figures.ledger.fastener_type as figures

applies if count(input.ledgers) > 0

_known[i] := ledger if {
	some i, ledger in input.ledgers
	ledger.fastener_type.value != "unknown"
}

_accepted[i] := ledger if {
	some i, ledger in _known
	ledger.fastener_type.value in figures.accepted
}

_listed[i] := ledger if {
	some i, ledger in _known
	ledger.fastener_type.value in figures.listed
	not _accepted[i]
}

readings contains {
	"at": ledger.fastener_type.at, "have": ledger.fastener_type.value,
	"figure": "accepted", "limit": figures.accepted, "outside": false,
} if {
	some ledger in _accepted
}

readings contains {
	"at": ledger.fastener_type.at, "have": ledger.fastener_type.value,
	"figure": "accepted", "limit": figures.accepted, "outside": true,
} if {
	some i, ledger in _known
	not _accepted[i]
	not _listed[i]
}

readings contains {
	"at": ledger.fastener_diameter.at, "have": ledger.fastener_diameter.value,
	"figure": "min_diameter", "limit": figures.min_diameter,
	"outside": ledger.fastener_diameter.value < figures.min_diameter, "say": "diameter",
} if {
	some ledger in _accepted
}

exempt contains {
	"at": ledger.fastener_type.at, "because": "listed",
	"fastener": ledger.fastener_type.value, "listing": ledger.fastener_listing.value,
} if {
	some ledger in _listed
}

unknown contains {"at": ledger.at, "needs": "platforms[].ledger.fasteners.type"} if {
	some i, ledger in input.ledgers
	not _known[i]
}

unknown contains {"at": ledger.at, "needs": "platforms[].ledger.fasteners.diameter"} if {
	some ledger in _accepted
	not ledger.fastener_diameter
}

unknown contains {"at": ledger.at, "needs": "platforms[].ledger.fasteners.listing"} if {
	some ledger in _listed
	not ledger.fastener_listing
}
