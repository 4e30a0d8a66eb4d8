# METADATA
# title: Beam cantilever
# description: The length of a beam past its last post as a share of the bay behind it.
# custom:
#   id: beams/cantilever
#   aliases: []
#   consequence: structure
#   why: A beam that reaches far past its last post bends there most, and lifts off the post behind.
#   applies_when: a beam runs past its last post
#   figures:
#     max: {type: length, optional: true, relation: at most, about: greatest cantilever whatever the bay behind it}
#     max_ratio: {type: ratio, unit: of the bay behind it, optional: true, relation: at most, about: greatest cantilever as a share of the bay behind it}
#   values: {beam: part, end: words, cantilever: length, back_span: length}
#   messages:
#     outside: "beam {beam} reaches past its last post by {cantilever} at its {end} on a bay of {back_span}, the limit is {limit} of it"
#     within: "beam {beam} reaches past its last post by {cantilever} at its {end} on a bay of {back_span}, the limit is {limit} of it"
#     at_most: "beam {beam} reaches past its last post by {cantilever} at its {end}, or less where the frame ends behind the outline, on a bay of {back_span}, the limit is {limit} of it"
#     most_at_most: "beam {beam} reaches past its last post by {have} at its {end}, or less where the frame ends behind the outline, the limit is {limit}"
#     most: "beam {beam} reaches past its last post by {have} at its {end}, the limit is {limit}"
#   mend:
#     - "the last post closer to the end of the beam"
#     - "a shorter beam"
#   tries: [end-post]
package checks.beams.cantilever

import data.figures.beams.cantilever as figures

applies if count(input.beam_cantilevers) > 0

_complete[i] := end if {
	some i, end in input.beam_cantilevers
	end.cantilever
	end.back_span
}

_complete[i] := end if {
	some i, end in input.beam_cantilevers
	end.cantilever
	not figures.max_ratio
}

readings contains {
	"at": end.cantilever.at, "have": {"rise": end.cantilever.value, "run": end.back_span.value},
	"figure": "max_ratio", "limit": figures.max_ratio,
	"outside": (end.cantilever.value * figures.max_ratio.run) > (end.back_span.value * figures.max_ratio.rise),
	"beam": end.beam, "end": end.end, "cantilever": end.cantilever.value, "back_span": end.back_span.value,
} if {
	some end in _complete
}

readings contains {
	"at": end.cantilever.at, "have": end.cantilever.value,
	"figure": "max", "limit": figures.max,
	"outside": end.cantilever.value > figures.max, "say": "most",
	"beam": end.beam, "end": end.end,
} if {
	some end in _complete
}

# An end that is inside up to the edge of the outline is so wherever the frame ends.
_share[i] := {
	"at": end.cantilever_at_most.at, "have": {"rise": end.cantilever_at_most.value, "run": end.back_span.value},
	"figure": "max_ratio", "limit": figures.max_ratio, "outside": false, "say": "at_most",
	"beam": end.beam, "end": end.end, "cantilever": end.cantilever_at_most.value, "back_span": end.back_span.value,
} if {
	some i, end in input.beam_cantilevers
	end.cantilever_at_most.value * figures.max_ratio.run <= end.back_span.value * figures.max_ratio.rise
}

_length[i] := {
	"at": end.cantilever_at_most.at, "have": end.cantilever_at_most.value,
	"figure": "max", "limit": figures.max, "outside": false, "say": "most_at_most",
	"beam": end.beam, "end": end.end,
} if {
	some i, end in input.beam_cantilevers
	end.cantilever_at_most.value <= figures.max
}

_within contains i if {
	_share[i]
	not figures.max
}

_within contains i if {
	_length[i]
	not figures.max_ratio
}

_within contains i if {
	_share[i]
	_length[i]
}

readings contains _share[i] if some i in _within

readings contains _length[i] if some i in _within

unknown contains {"at": end.at, "needs": need} if {
	some i, end in input.beam_cantilevers
	not _complete[i]
	not i in _within
	some need in end.missing
}
