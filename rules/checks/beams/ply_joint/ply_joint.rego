# METADATA
# title: Ply joint at a post
# description: How far a joint in the plies of a beam lies from the center of the nearest post, against the face of that post.
# custom:
#   id: beams/ply-joint
#   aliases: [beams/splice]
#   consequence: structure
#   why: A joint between posts leaves the beam with the plies that run through, and one of two plies is half a beam.
#   applies_when: joints in the plies of a beam are shown
#   figures:
#     past_face: {type: length, relation: at most, about: how far past the face of the post a joint may lie}
#   values: {beam: part}
#   messages:
#     outside: "a ply joint of beam {beam} lies {have} from the center of the nearest post, the limit is {limit}"
#     within: "a ply joint of beam {beam} lies {have} from the center of a post, the limit is {limit}"
#   mend: ["plies of other lengths, so that each joint comes over a post", "a post below the joint"]
#   tries: [joint-over-post]
package checks.beams.ply_joint

import data.figures.beams.ply_joint as figures

applies if count(input.ply_joints) > 0

_complete[i] := joint if {
	some i, joint in input.ply_joints
	joint.off_post
	joint.half_post
}

readings contains {
	"at": joint.off_post.at, "have": joint.off_post.value,
	"figure": "past_face", "limit": joint.half_post.value + figures.past_face,
	"outside": joint.off_post.value > (joint.half_post.value + figures.past_face),
	"beam": joint.beam,
} if {
	some joint in _complete
}

unknown contains {"at": joint.at, "needs": "platforms[].beams[].posts_at"} if {
	some joint in input.ply_joints
	not joint.off_post
}

unknown contains {"at": joint.at, "needs": "platforms[].posts.size"} if {
	some i, joint in input.ply_joints
	joint.off_post
	not _complete[i]
}
