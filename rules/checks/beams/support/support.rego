# METADATA
# title: Supports of a beam
# description: How many posts and end supports carry a beam.
# custom:
#   id: beams/support
#   aliases: []
#   consequence: structure
#   why: A beam on one support tips, and one whose supports are not drawn gets them where they happen to fit.
#   applies_when: beams are described
#   figures:
#     two: {type: flag, relation: exactly, about: true where a beam needs two supports or more}
#   values: {beam: part, posts: count}
#   messages:
#     outside: "posts of beam {beam}: {posts}, and no other support that would make two"
#     within: "beam {beam} has two supports or more"
#   mend: ["a post near each end of the beam"]
#   tries: [another-post]
package checks.beams.support

import data.figures.beams.support as figures

applies if count(input.beams) > 0

_shown[i] := beam if {
	some i, beam in input.beams
	beam.supported
}

_shown[i] := beam if {
	some i, beam in input.beams
	beam.posts
}

readings contains object.union(
	{
		"at": beam.at, "have": beam.supported,
		"figure": "two", "limit": figures.two,
		"outside": _wanting(beam), "beam": beam.mark,
	},
	{"posts": posts | posts := beam.posts.value},
) if {
	some beam in _shown
}

_wanting(beam) := figures.two == true if beam.supported == false

_wanting(beam) := false if beam.supported

unknown contains {"at": beam.at, "needs": "platforms[].beams[].posts_at"} if {
	some i, beam in input.beams
	not _shown[i]
}
