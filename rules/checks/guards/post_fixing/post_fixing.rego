# METADATA
# title: Fixing of guard posts
# description: The way guard posts are fixed to the frame and whether they are notched, against what the set does not accept.
# custom:
#   id: guards/post-fixing
#   aliases: []
#   consequence: life safety
#   why: A person leaning on the rail pries the post off with the post as lever, and a fixing that was not made for it lets go.
#   applies_when: a guard is described
#   reads: [guards/required]
#   figures:
#     loose: {type: list, optional: true, about: fixings to a member that nothing keeps from rotating}
#     refused: {type: list, about: fixings that are not accepted}
#     notched: {type: flag, relation: exactly, about: true where a post may be notched at the fixing}
#     notched_sizes: {type: list, optional: true, about: the only sizes of post for which notching is judged}
#   values: {drop: length, trigger: length, size: words}
#   messages:
#     outside: "guard posts are fixed with {have}, which is not accepted"
#     within: "guard posts are fixed with {have}"
#     loose: "guard posts are fixed with {have}, and nothing keeps that member from rotating"
#     notched: "guard posts are notched at the fixing, which is not accepted"
#     whole: "guard posts are not notched at the fixing"
#   exempt:
#     low: "the drop is {drop}, a guard is asked for above {trigger}"
#     low_from: "the drop is {drop}, a guard is asked for from {trigger} on"
#     large: "notching of posts is not judged for {size}"
#   mend:
#     - "hold-downs that tie each post to joists or to blocking between joists"
#     - "a listed post bracket, fastened as its listing says"
#   tries: [yes-no, guard-fixing]
package checks.guards.post_fixing

import data.figures.guards.post_fixing as figures
import data.figures.guards.required
import data.lib.guards

applies if count(input.guards) > 0

_open contains "other"

_open contains "unknown"

_low[i] := guards.low(required, guard) if some i, guard in input.guards

_due[i] := guard if {
	some i, guard in input.guards
	not _low[i]
}

_loose[i] := guard.post_fixing if {
	some i, guard in _due
	guard.post_fixing.value in figures.loose
}

_refused[i] := guard.post_fixing if {
	some i, guard in _due
	guard.post_fixing.value in figures.refused
	not _loose[i]
}

_large contains i if {
	some i, guard in _due
	guard.post_size
	figures.notched_sizes
	not guard.post_size.value in figures.notched_sizes
}

# Whether a notch matters is open where the set names sizes and the post's is not shown.
_sizeless contains i if {
	some i, guard in _due
	figures.notched_sizes
	not guard.post_size
}

readings contains {"at": fixing.at, "have": fixing.value, "figure": "loose", "outside": true, "say": "loose"} if {
	some fixing in _loose
}

readings contains {"at": fixing.at, "have": fixing.value, "figure": "refused", "outside": true} if {
	some fixing in _refused
}

readings contains {"at": guard.post_fixing.at, "have": guard.post_fixing.value, "figure": "refused", "outside": false} if {
	some i, guard in _due
	not guard.post_fixing.value in _open
	not _loose[i]
	not _refused[i]
}

readings contains {
	"at": guard.post_notched.at, "have": true,
	"figure": "notched", "limit": figures.notched,
	"outside": figures.notched == false, "say": "notched",
} if {
	some i, guard in _due
	guard.post_notched.value
	not i in _large
	not i in _sizeless
}

readings contains {
	"at": guard.post_notched.at, "have": false,
	"figure": "notched", "limit": figures.notched,
	"outside": false, "say": "whole",
} if {
	some guard in _due
	guard.post_notched.value == false
}

unknown contains {"at": guard.at, "needs": "guards[].posts.fixing"} if {
	some guard in _due
	not guard.post_fixing
}

unknown contains {"at": guard.at, "needs": "guards[].posts.fixing"} if {
	some guard in _due
	guard.post_fixing.value in _open
}

unknown contains {"at": guard.at, "needs": "guards[].posts.notched"} if {
	some i, guard in _due
	guard.post_fixing
	not guard.post_notched
	not i in _large
}

unknown contains {"at": guard.at, "needs": "guards[].posts.size"} if {
	some i, guard in _due
	guard.post_notched.value
	i in _sizeless
}

exempt contains guards.exempt(required, input.guards[i], drop) if some i, drop in _low

exempt contains {"at": guard.post_notched.at, "because": "large", "size": guard.post_size.value} if {
	some i, guard in _due
	guard.post_notched.value
	i in _large
}
