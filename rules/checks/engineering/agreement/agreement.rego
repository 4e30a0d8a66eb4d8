# METADATA
# title: Tables against wood engineering
# description: >-
#   Spans, cantilevers, post heights and fastener spacings as they are drawn,
#   against what allowable stress design allows for them. It is an answer
#   of its own, beside that of a set's tables; a small difference comes from
#   rounding and from what a table assumes, a large one deserves a look.
# custom:
#   id: engineering/agreement
#   aliases: []
#   consequence: structure
#   why: A table is right only for the deck that it was made for. Where first principles give much less, one of the two was misread.
#   applies_when: members of the frame are described
#   figures:
#     past: {type: length, relation: at most, about: how far a length may pass what engineering allows}
#   values: {what: words, drawn: length, allowed: length, governs: words}
#   messages:
#     outside: "{what} is {drawn}, wood engineering allows {allowed} ({governs} governs): {have} past it, the limit is {limit}"
#     within: "{what} is {drawn}, wood engineering allows {allowed} ({governs} governs)"
#   exempt:
#     open: "species, grade, size, plies or what it carries are not shown, or no wood values are known for them"
#   mend:
#     - "ask an engineer which of the two holds"
#   tries: [joist-spacing, joist-size, beam-size, beam-place, stringer-size, stringer-support, lumber-grade]
package checks.engineering.agreement

import data.figures.engineering.agreement as figures

applies if count(_upper) > 0

applies if count(_open) > 0

_members contains span if some span in input.joist_spans

_members contains bay if some bay in input.beam_spans

_members contains post if some post in input.posts

_open contains member.at if {
	some member in _members
	not member.engineered
}

_upper contains {"what": "joist span", "drawn": span.span_to_center, "engineered": span.engineered} if {
	some span in input.joist_spans
}

_upper contains {"what": "joist cantilever", "drawn": past.cantilever, "engineered": past.engineered} if {
	some past in input.joist_cantilevers
}

_upper contains {"what": concat(" ", ["span of beam", bay.beam]), "drawn": bay.span_to_center, "engineered": bay.engineered} if {
	some bay in input.beam_spans
}

_upper contains {"what": concat(" ", ["cantilever of beam", end.beam]), "drawn": end.cantilever, "engineered": end.engineered} if {
	some end in input.beam_cantilevers
}

_upper contains {"what": sprintf("height of post %d below beam %s", [post.n, post.beam]), "drawn": post.height, "engineered": post.engineered} if {
	some post in input.posts
}

_upper contains {"what": "spacing of ledger fasteners", "drawn": ledger.fastener_spacing, "engineered": ledger.engineered} if {
	some ledger in input.ledgers
}

_upper contains {"what": concat(" ", ["stringer span of stair", flight.stair]), "drawn": flight.stringer_run, "engineered": flight.engineered} if {
	some flight in input.flights
}

readings contains {
	"at": one.drawn.at, "have": past,
	"figure": "past", "limit": figures.past,
	"outside": past > figures.past,
	"what": one.what, "drawn": one.drawn.value, "allowed": one.engineered.limit.value, "governs": one.engineered.governs,
	"engineered": one.engineered,
} if {
	some one in _upper
	past := max([one.drawn.value - one.engineered.limit.value, 0])
}

unknown contains {"at": input.site.at, "needs": "site.live_load"} if {
	not input.site.live_load
	count(_open) > 0
}

exempt contains {"at": at, "because": "open"} if {
	input.site.live_load
	some at in _open
}
