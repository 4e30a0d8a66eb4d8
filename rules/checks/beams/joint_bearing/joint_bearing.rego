# METADATA
# title: Bearing at a ply joint
# description: The length on which each piece of a ply rests at a joint over a post, as stated or as the post leaves it.
# custom:
#   id: beams/joint-bearing
#   aliases: []
#   consequence: structure
#   why: Two ends share one post, and an end that catches only the edge of it crushes or slips off.
#   applies_when: joints in the plies of a beam are shown
#   figures:
#     min: {type: length, relation: at least, about: least length on which each piece rests}
#   values: {beam: part}
#   messages:
#     outside: "each ply of beam {beam} rests {have} at its joint, the limit is {limit}"
#     within: "each ply of beam {beam} rests {have} at its joint, the limit is {limit}"
#   exempt:
#     off: "the joint is not over a post"
#   mend: ["the joint over the center of the post", "a wider post or a post cap with a longer seat"]
#   tries: [bearing-at-joint, post-size]
package checks.beams.joint_bearing

import data.figures.beams.joint_bearing as figures

applies if count(input.ply_joints) > 0

# What the post leaves to the shorter side of the joint.
_left[i] := joint.half_post.value - joint.off_post.value if {
	some i, joint in input.ply_joints
	not joint.bearing
}

readings contains {
	"at": joint.bearing.at, "have": joint.bearing.value,
	"figure": "min", "limit": figures.min,
	"outside": joint.bearing.value < figures.min,
	"beam": joint.beam,
} if {
	some joint in input.ply_joints
}

readings contains {
	"at": joint.off_post.at, "have": left,
	"figure": "min", "limit": figures.min,
	"outside": left < figures.min,
	"beam": joint.beam,
} if {
	some i, left in _left
	left > 0
	joint := input.ply_joints[i]
}

exempt contains {"at": input.ply_joints[i].at, "because": "off"} if {
	some i, left in _left
	left <= 0
}

unknown contains {"at": joint.at, "needs": "platforms[].beams[].bearing_at_joint"} if {
	some i, joint in input.ply_joints
	not joint.bearing
	not _left[i]
}
