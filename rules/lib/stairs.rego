# What the checks of stairs have in common: which field of the description would
# answer a question, and which wording a reading takes.
package lib.stairs

# field is the place of a flight's field in the description: with the flight
# where the stair lists its flights, else with the stair.
field(flight, name) := concat("", ["stairs[].flights[].", name]) if {
	contains(flight.at[0], "/flights/")
} else := concat("", ["stairs[].", name])

# stair is the place of the stair that a flight belongs to.
stair(flight) := [split(flight.at[0], "/flights/")[0]]

# rise_field is the field without which the height of a riser is not known.
rise_field(flight) := field(flight, "risers") if not flight.risers

rise_field(flight) := "stairs[].total_rise" if flight.risers

# step_field is the field without which the shape of a step is not known.
step_field(flight) := field(flight, "tread_depth") if not flight.tread_depth

step_field(flight) := rise_field(flight) if flight.tread_depth

# landing_depth is what decides whether a landing is at least so deep in the
# direction of travel: its depth; where the direction is not known, the lesser
# side if that is enough, or the greater if even that is not. Undefined where
# the direction would decide.
landing_depth(landing, _) := landing.depth

landing_depth(landing, least) := _whichever(landing, least) if not landing.depth

# landing_width is the same for the width across the direction of travel.
landing_width(landing, _) := landing.width

landing_width(landing, least) := _whichever(landing, least) if not landing.width

_whichever(landing, least) := landing.lesser_side if landing.lesser_side.value >= least

_whichever(landing, least) := landing.greater_side if landing.greater_side.value < least

# landing_say is the wording for a landing whose direction is not known.
landing_say(landing, outside) := {"say": {true: "either", false: "either_within"}[outside]} if landing.lesser_side

landing_say(landing, _) := {} if not landing.lesser_side

# few holds for the top of so few risers, of a stair whose doors keep clear of
# it, that a set asks for no landing there.
few(figures, landing) if {
	landing.risers.value <= figures.few
	landing.doors_apart.value
}

# spared is the exempt row of a landing that is not asked for: at the top of few
# risers, of the use that the set names. Undefined where it is looked at.
spared(figures, landing) := {"at": landing.at, "because": "few", "risers": landing.risers.value, "few": figures.few} if {
	few(figures, landing)
	not figures.few_use
} else := {
	"at": landing.at, "because": "few_use", "risers": landing.risers.value, "few": figures.few,
	"use": landing.use.value,
} if {
	few(figures, landing)
	landing.use.value == figures.few_use
}

# may_be_spared holds where the use of the stair, which is not shown, would tell.
may_be_spared(figures, landing) if {
	few(figures, landing)
	figures.few_use
	not landing.use
}

# say picks the wording for the nth step of a flight; 0 means that all are alike.
say(0) := "outside"

say(n) := "one" if n > 0

# by_use are the names of the figures that may hold for a flight: the one of its
# use, which is the name with the use behind it where the set gives such a
# figure, or where the use is not shown those of all uses but the accessible
# one: a stair is built for that on purpose, and whoever does so says it.
by_use(figures, name, flight) := {_of_use(figures, name, flight.use.value)}

by_use(figures, name, flight) := {candidate |
	some use in ["main", "secondary", "service"]
	candidate := _of_use(figures, name, use)
} if {
	not flight.use
}

_of_use(figures, name, use) := own if {
	own := concat("_", [name, use])
	figures[own]
} else := name

# at_most is the name of the figure that decides whether a value is too great.
# It is undefined where the use is not shown and would decide.
at_most(figures, name, flight, value) := _named(figures, names, least) if {
	names := by_use(figures, name, flight)
	least := min({figures[n] | some n in names})
	value <= least
}

at_most(figures, name, flight, value) := _named(figures, names, greatest) if {
	names := by_use(figures, name, flight)
	greatest := max({figures[n] | some n in names})
	value > greatest
}

# at_least is the name of the figure that decides whether a value is too small.
at_least(figures, name, flight, value) := _named(figures, names, greatest) if {
	names := by_use(figures, name, flight)
	greatest := max({figures[n] | some n in names})
	value >= greatest
}

at_least(figures, name, flight, value) := _named(figures, names, least) if {
	names := by_use(figures, name, flight)
	least := min({figures[n] | some n in names})
	value < least
}

_named(figures, names, limit) := min({n | some n in names; figures[n] == limit})
