# METADATA
# title: Post height
# description: The height of each post by its own ground, against the table for its size and what it carries.
# custom:
#   id: posts/height
#   aliases: []
#   consequence: structure
#   why: A slender post buckles to the side long before its wood is crushed.
#   applies_when: posts stand under a beam
#   figures:
#     live_steps: {type: steps, about: load column under which a live load is read}
#     groups: {type: groups, optional: true, about: species that share the rows of the table}
#     grades: {type: list, optional: true, about: grades that the table was made for}
#     tributary: {type: words, optional: true, about: "how the area that a post carries is figured: statics or builder"}
#     area_unit: {type: length, optional: true, about: side of the square in which the table counts areas}
#     by_size: {type: table, optional: true, value: length, keys: [size, load, plies], relation: at most, about: greatest height by size and plies of the beam}
#     by_area: {type: table, optional: true, value: length, keys: [group, size, load, area], relation: at most, about: "greatest height by species, size and area carried"}
#     by_spans: {type: table, optional: true, value: length, keys: [group, size, load, beam_span, joist_span], relation: at most, about: "greatest height by species, size and spans"}
#   values: {species: words, grade: words, size: words, load: pressure, plies: count, span: length, material: words}
#   messages:
#     outside: "a {size} post is {have} high, the limit is {limit}"
#     within: "a {size} post is {have} high, the limit is {limit}"
#     not_permitted: "a {size} post is not permitted for what it carries"
#     beyond_species: "species {species} is outside this table: an engineer is needed"
#     beyond_grade: "grade {grade} is outside this table: an engineer is needed"
#     beyond_size: "a {size} post is outside this table: an engineer is needed"
#     beyond_load: "this set holds no post height for a load of {load}: the printed table or an engineer is needed"
#     beyond_plies: "a post below a beam of {plies} plies is outside this table: an engineer is needed"
#     beyond_area: "the post carries more deck than this table lists: an engineer is needed"
#     beyond_beam_span: "a post below a beam that spans {span} is outside this table: an engineer is needed"
#     beyond_joist_span: "a post below joists that span {span} is outside this table: an engineer is needed"
#   exempt:
#     material: "the post is of {material}, the table is for wood"
#   mend: ["thicker posts", "posts closer together, so that each carries less", "footings that rise further above the ground"]
#   tries: [post-size, another-post]
package checks.posts.height

import data.figures.posts.height as figures
import data.lib.members
import data.lib.posts
import data.lib.spans

applies if count(input.posts) > 0

_owners := {"site": input.site.at, "house": input.house.at}

_other contains i if {
	some i, post in input.posts
	post.material.value != "wood"
}

_wood[i] := post if {
	some i, post in input.posts
	not i in _other
}

_beyond[i] := rows if {
	some i, post in _wood
	rows := posts.beyond(figures, post)
	count(rows) > 0
}

_limit[i] := posts.limit(figures, post) if {
	some i, post in _wood
	not _beyond[i]
}

_row[i] := {
	"at": post.height.at, "have": post.height.value,
	"figure": posts.form(figures), "limit": _limit[i].limit, "cell": _limit[i].cell,
	"outside": post.height.value > _limit[i].limit, "size": post.size.value,
} if {
	some i, post in _wood
	is_number(_limit[i].limit)
}

_row[i] := {
	"at": post.at, "figure": posts.form(figures), "cell": _limit[i].cell,
	"outside": true, "say": "not_permitted", "size": post.size.value,
} if {
	some i, post in _wood
	is_null(_limit[i].limit)
}

# What is not shown matters only where more of it could still bring the post outside.
_open contains i if {
	some i, post in _wood
	not _row[i].outside
	not posts.complete(figures, post)
}

_open contains i if {
	some i, _ in _wood
	not _row[i]
}

readings contains spans.beside(row, input.posts[i]) if {
	some i, row in _row
	not i in _open
}

readings contains row if some row in _beyond[_]

_needs[i] contains need if {
	some i, post in _wood
	some need in (members.missing(post, posts.chosen(figures)) | members.loads(post))
}

_needs[i] contains need if {
	some i, post in _wood
	not figures.by_size
	some need in members.lumber(post)
}

_needs[i] contains need if {
	some i, post in _wood
	not _placed(post)
	some need in post.missing
}

_needs[i] contains need if {
	some i, post in _wood
	count(post.missing) == 0
	some need in posts.unplaced(figures, post)
}

_placed(post) if {
	post.height
	posts.placed(figures, post)
}

exempt contains {"at": input.posts[i].at, "because": "material", "material": input.posts[i].material.value} if {
	some i in _other
}

unknown contains {"at": members.place(_owners, posts.place(_wood[i]), need), "needs": need} if {
	some i in _open
	not _beyond[i]
	some need in _needs[i]
}
