# METADATA
# title: Beam bearing
# description: The length on which a beam rests on each post, and whether the post is as wide as all of its plies.
# custom:
#   id: beams/bearing
#   aliases: []
#   consequence: structure
#   why: A beam that rests on too little wood crushes it, and a ply that hangs over the side of the post carries nothing.
#   applies_when: a beam stands on posts
#   figures:
#     min_wood: {type: length, relation: at least, about: least length of bearing on wood or metal}
#     min_concrete: {type: length, optional: true, relation: at least, about: least length of bearing on concrete or masonry}
#     hard: {type: list, optional: true, about: what counts as concrete or masonry}
#     full_width: {type: flag, relation: exactly, about: true where the post carries the whole width of the beam}
#   values: {beam: part, width: length, post: length}
#   messages:
#     outside: "beam {beam} rests on {have}, the limit is {limit}"
#     within: "beam {beam} rests on {have}, the limit is {limit}"
#     wide: "beam {beam} is {width} wide and its posts {post}: a ply stands beside the post"
#     covered: "beam {beam} is {width} wide, its posts {post}"
#   mend: ["wider posts, or a post cap as wide as the beam", "a longer seat"]
#   tries: [bearing-length, post-size]
package checks.beams.bearing

import data.figures.beams.bearing as figures

applies if count(_standing) > 0

_standing[i] := beam if {
	some i, beam in input.beams
	not beam.posts.value == 0
}

_figure[i] := "min_concrete" if {
	some i, beam in _standing
	beam.bearing_on.value in figures.hard
}

_figure[i] := "min_wood" if {
	some i, beam in _standing
	beam.bearing_on
	not beam.bearing_on.value in figures.hard
}

# Where the set knows one length only, what it bears on does not matter.
_figure[i] := "min_wood" if {
	some i, beam in _standing
	beam.bearing_length
	not figures.min_concrete
}

# What it bears on does not matter outside the lesser limit and inside the greater one.
_figure[i] := "min_wood" if {
	some i, beam in _standing
	not beam.bearing_on
	beam.bearing_length.value < min([figures.min_wood, figures.min_concrete])
}

_figure[i] := "min_concrete" if {
	some i, beam in _standing
	not beam.bearing_on
	beam.bearing_length.value >= max([figures.min_wood, figures.min_concrete])
}

readings contains {
	"at": beam.bearing_length.at, "have": beam.bearing_length.value,
	"figure": figure, "limit": figures[figure],
	"outside": beam.bearing_length.value < figures[figure],
	"beam": beam.mark,
} if {
	some i, figure in _figure
	beam := input.beams[i]
}

_covered := {true: "covered", false: "wide"}

readings contains {
	"at": beam.beam_width.at, "have": whole,
	"figure": "full_width", "limit": figures.full_width,
	"outside": whole == false, "say": _covered[whole],
	"beam": beam.mark, "width": beam.beam_width.value, "post": beam.post_width.value,
} if {
	figures.full_width
	some beam in _standing
	whole := beam.beam_width.value <= beam.post_width.value
}

unknown contains {"at": beam.at, "needs": "platforms[].beams[].bearing_length"} if {
	some beam in _standing
	not beam.bearing_length
}

unknown contains {"at": beam.at, "needs": "platforms[].beams[].bearing_on"} if {
	some i, beam in _standing
	beam.bearing_length
	not _figure[i]
}

unknown contains {"at": beam.at, "needs": "platforms[].posts.size"} if {
	figures.full_width
	some beam in _standing
	not beam.post_width
}

unknown contains {"at": beam.at, "needs": need} if {
	figures.full_width
	some beam in _standing
	not beam.beam_width
	some name, need in {"size": "platforms[].beams[].size", "plies": "platforms[].beams[].plies"}
	not beam[name]
}
