# METADATA
# title: Blocking between supports
# description: The span of the joists, against the longest that does without a row of blocking between its supports.
# custom:
#   id: joists/midspan-blocking
#   aliases: []
#   consequence: structure
#   why: A long slender joist rolls to the side under load, and a row of blocking lets its neighbors hold it.
#   applies_when: joists lie between two supports that the plan shows
#   figures:
#     basis: {type: words, about: "how the set measures: clear span or span to center"}
#     max: {type: length, relation: at most, about: longest span without blocking}
#     slender: {type: ratio, unit: times its thickness, optional: true, about: "depth of a joist as a share of its thickness from which on blocking is asked for, at any where none is given"}
#   values: {from: part, to: part, depth: length, thickness: length}
#   messages:
#     outside: "joists span {have} from {from} to {to} without blocking, the limit is {limit}"
#     within: "joists span {have} from {from} to {to}, blocking is asked for above {limit}"
#     blocked: "joists that span {have} from {from} to {to} have blocking, which is asked for above {limit}"
#   exempt:
#     stocky: "joists {depth} deep and {thickness} thick are asked for no blocking"
#   mend: ["a row of blocking in the middle of the span"]
#   tries: [midspan-blocking, beam-place]
package checks.joists.midspan_blocking

import data.figures.joists.midspan_blocking as figures
import data.lib.members

applies if count(input.joist_spans) > 0

_span[i] := members.span(figures.basis, span) if some i, span in input.joist_spans

_stocky[i] := span if {
	some i, span in input.joist_spans
	_span[i].value > figures.max
	span.depth.value * figures.slender.run < span.thickness.value * figures.slender.rise
}

_long[i] := span if {
	some i, span in input.joist_spans
	_span[i].value > figures.max
	not _stocky[i]
}

# Blocking that is there answers, however slender the joists are.
_judged[i] := span if {
	some i, span in _long
	not figures.slender
}

_judged[i] := span if {
	some i, span in _long
	span.depth
}

_judged[i] := span if {
	some i, span in _long
	span.blocked.value
}

_say := {true: "blocked", false: "outside"}

readings contains {
	"at": _span[i].at, "have": _span[i].value,
	"figure": "max", "limit": figures.max,
	"outside": false, "say": "within",
	"from": span.from, "to": span.to,
} if {
	some i, span in input.joist_spans
	_span[i].value <= figures.max
}

readings contains {
	"at": array.concat(_span[i].at, span.blocked.at), "have": _span[i].value,
	"figure": "max", "limit": figures.max,
	"outside": span.blocked.value == false, "say": _say[span.blocked.value],
	"from": span.from, "to": span.to,
} if {
	some i, span in _judged
}

exempt contains {"at": span.joists, "because": "stocky", "depth": span.depth.value, "thickness": span.thickness.value} if some span in _stocky

unknown contains {"at": span.joists, "needs": "platforms[].joists.blocking"} if {
	some span in _judged
	not span.blocked
}

unknown contains {"at": span.joists, "needs": "platforms[].joists.size"} if {
	some i, span in _long
	not _judged[i]
}

unknown contains {"at": span.joists, "needs": need} if {
	some i, span in input.joist_spans
	not _span[i]
	some need in span.missing
}
