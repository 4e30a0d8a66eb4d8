# METADATA
# description: >-
#   What the checks of beams, posts, footings and ledgers have in common: which
#   of two spans a set means, and which fields of the description are missing.
package lib.members

# span is the span of a bay as the set measures it.
span("clear span", bay) := bay.clear_span

span("span to center", bay) := bay.span_to_center

# joists is the span of the joists on a member as the set measures it.
joists("clear span", member) := member.joist_clear_span

joists("span to center", member) := member.joist_span

joists("span and cantilever", member) := {
	"value": member.joist_span.value + member.joist_cantilever.value,
	"at": array.concat(member.joist_span.at, member.joist_cantilever.at),
}

# missing are the fields that would show what is not shown, out of those given
# by the name of the fact.
missing(subject, fields) := {field |
	some name, field in fields
	not subject[name]
}

# place is where a missing field is missing: on the site or the house where it
# is one of theirs, else on the subject that lacks it. The owners are the places
# of the two by name.
place(owners, at, need) := owners[owner] if {
	owner := split(need, ".")[0]
	owners[owner]
} else := at

# lumber are the fields that would show what a member is cut from.
lumber(member) := {need | some need in member.lumber.missing}

# loads are the fields that would show the loads of the place.
loads(member) := missing(member, {"live_load": "site.live_load", "ground_snow_load": "site.ground_snow_load"})
