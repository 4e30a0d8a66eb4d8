# METADATA
# title: Bracing of posts
# description: Braces at the posts of a deck that stands high, in line with the beam and, where nothing ties it to a house, square to it.
# custom:
#   id: posts/bracing
#   aliases: []
#   consequence: structure
#   why: A crowd that sways together racks a deck on tall posts until it folds to the side.
#   applies_when: posts stand under a beam
#   figures:
#     above: {type: length, about: height of the surface above the ground from which on posts are braced}
#     corners_only: {type: flag, about: true where the posts at the ends of a beam alone are braced}
#     along: {type: flag, relation: exactly, about: true where braces stand in line with the beam}
#     across: {type: flag, relation: exactly, about: true where braces stand square to the beam of a freestanding deck}
#     diagonal_decking: {type: angle, optional: true, about: angle of the boards from which on they brace a deck tied to a house}
#   values: {height: length, above: length, angle: angle}
#   messages:
#     outside: "the deck is {height} above the ground and the post has no brace in line with the beam, one is asked for above {above}"
#     across: "the freestanding deck is {height} above the ground and the post has no brace square to the beam, one is asked for above {above}"
#     braced: "the post is braced"
#   exempt:
#     low: "the deck is {height} above the ground there, braces are asked for above {above}"
#     middle: "braces are asked for at the posts at the ends of a beam, this one stands between them"
#     decking: "boards at {angle} brace the deck"
#   mend: ["knee braces at 45 degrees, bolted at both ends"]
#   tries: [both-braces]
#   asks: true
package checks.posts.bracing

import data.figures.posts.bracing as figures
import data.lib.posts

applies if count(input.posts) > 0

_low contains i if {
	some i, post in input.posts
	post.height_above_grade.value <= figures.above
}

_middle contains i if {
	some i, post in input.posts
	figures.corners_only
	not post.corner
	not i in _low
}

_angle[i] := angle if {
	some i, post in input.posts
	not post.freestanding
	not i in (_low | _middle)
	some decking in input.decking
	decking.platform == post.platform
	angle := decking.board_angle.value
	angle >= figures.diagonal_decking
}

_due[i] := post if {
	some i, post in input.posts
	post.height_above_grade
	not i in (_low | _middle)
	not _angle[i]
}

_asked[i] contains "along" if some i, _ in _due

_asked[i] contains "across" if {
	some i, post in _due
	post.freestanding
}

_fact := {"along": "braces_along", "across": "braces_across"}

_say := {"along": {true: "braced", false: "outside"}, "across": {true: "braced", false: "across"}}

readings contains {
	"at": braces.at, "have": braces.value,
	"figure": way, "limit": figures[way],
	"outside": _wanting(way, braces.value), "say": _say[way][braces.value],
	"height": _due[i].height_above_grade.value, "above": figures.above,
} if {
	some i, ways in _asked
	some way in ways
	braces := _due[i][_fact[way]]
}

_wanting(_, present) := false if present

_wanting(way, present) := figures[way] if present == false

exempt contains {"at": input.posts[i].at, "because": "low", "height": input.posts[i].height_above_grade.value, "above": figures.above} if {
	some i in _low
}

exempt contains {"at": input.posts[i].at, "because": "middle"} if some i in _middle

exempt contains {"at": input.posts[i].at, "because": "decking", "angle": angle} if some i, angle in _angle

unknown contains {"at": posts.place(post), "needs": "platforms[].surface_above_grade"} if {
	some i, post in input.posts
	not post.height_above_grade
	not i in _middle
	not _angle[i]
}

unknown contains {"at": posts.place(_due[i]), "needs": "platforms[].posts.braces.directions"} if {
	some i, ways in _asked
	some way in ways
	not _due[i][_fact[way]]
}
