# METADATA
# title: Skewed hangers
# description: Whether skewed hangers are shown where joists meet a member at another angle than square. Where they are listed for other places, those left over are straight ones.
# custom:
#   id: joists/skewed-hangers
#   aliases: []
#   consequence: structure
#   why: A straight hanger bent to an angle has lost the strength of its listing.
#   applies_when: joists hang on a member that they meet on the skew
#   figures:
#     required: {type: flag, relation: exactly, about: true where hangers on the skew are made for it}
#   values: {edge: words}
#   messages:
#     outside: "joists meet {edge} on the skew, and skewed hangers are shown elsewhere alone"
#     within: "skewed hangers are shown at {edge}"
#   exempt:
#     straight: "hangers on the skew may be straight ones"
#   mend: ["hangers skewed to the angle by their maker"]
#   tries: [skewed-hangers]
package checks.joists.skewed_hangers

import data.figures.joists.skewed_hangers as figures

applies if count(_skewed) > 0

_skewed contains [i, edge] if {
	some i, joined in input.joined
	some edge in joined.skewed
}

_hung contains [i, edge] if {
	some [i, edge] in _skewed
	edge in input.joined[i].skewed_hangers
}

readings contains {
	"at": input.joined[i].at, "have": true,
	"figure": "required", "limit": true, "outside": false, "edge": edge,
} if {
	some [i, edge] in _hung
}

# Hangers on the skew are shown, though not at this edge.
_straight contains [i, edge] if {
	some [i, edge] in (_skewed - _hung)
	count(input.joined[i].skewed_hangers) > 0
	figures.required
}

readings contains {
	"at": input.joined[i].at, "have": false,
	"figure": "required", "limit": true, "outside": true, "edge": edge,
} if {
	some [i, edge] in _straight
}

exempt contains {"at": input.joined[i].at, "because": "straight"} if {
	some [i, edge] in (_skewed - _hung)
	not figures.required
}

unknown contains {"at": input.joined[i].at, "needs": "platforms[].joists.hangers.skewed_at"} if {
	some [i, edge] in ((_skewed - _hung) - _straight)
	figures.required
}
