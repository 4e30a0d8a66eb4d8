# METADATA
# description: >-
#   How a drop is held against the height from which a set asks for a guard. The
#   figures are those of the check that an edge or a stair is guarded.
package lib.guards

# calls holds where a drop of this height asks for a guard: above the trigger, or
# from the height on.
calls(figures, drop) if drop > figures.trigger

calls(figures, drop) if drop >= figures.from

# steep holds where the ground beside an edge falls more than the set allows.
steep(figures, subject) if {
	slope := subject.ground_slope.value
	slope.rise * figures.slope.run > slope.run * figures.slope.rise
}

# worst is the greatest drop shown within the distance that counts.
worst(figures, drops) := [entry.drop |
	some entry in drops
	entry.out <= _reach(figures)
	entry.drop.value == max(_within(figures, drops))
][0]

_within(figures, drops) := [entry.drop.value |
	some entry in drops
	entry.out <= _reach(figures)
]

# Where the set names no distance, the ground counts straight below the edge.
_reach(figures) := figures.reach

_reach(figures) := 0 if not figures.reach

# low is the drop of an edge or a guard of which all that counts is shown and
# asks for no guard.
low(figures, subject) := drop if {
	covering := [entry.drop |
		some entry in subject.drops
		entry.out >= _reach(figures)
		entry.partial == false
		not calls(figures, entry.drop.value)
	]
	drop := array.concat([worst(figures, subject.drops) | true], covering)[0]
	count(covering) > 0
	not calls(figures, drop.value)
	_gentle(figures, subject)
}

_gentle(figures, _) if not figures.slope

_gentle(figures, subject) if {
	figures.slope
	subject.ground_slope
	not steep(figures, subject)
}

# upto holds where all that counts of the drops of a guard is shown and none is
# above a height.
upto(figures, guard, height) if {
	worst(figures, guard.drops).value <= height
	some entry in guard.drops
	entry.out >= _reach(figures)
	entry.partial == false
	entry.drop.value <= height
}

# low_stair is the height of a stair at which its guard is not asked for.
low_stair(figures, guard) := guard.drop if {
	guard.present
	not calls(figures, guard.drop.value)
}

# stair_drop_field is the field without which the height of a stair above the
# ground is not known.
stair_drop_field(stair) := "stairs[].risers" if stair.total_rise

stair_drop_field(stair) := "stairs[].total_rise" if not stair.total_rise

# missing are the members of an edge that would show whether its drop asks for a
# guard.
missing(figures, subject) := {field |
	not _settled(figures, subject.drops)
	field := _wanted(figures, subject.drops)
} | {"slope_within_1200_mm" |
	figures.slope
	not subject.ground_slope
}

_settled(figures, drops) if {
	some entry in drops
	entry.out >= _reach(figures)
	not calls(figures, entry.drop.value)
	entry.drop
}

_wanted(_, drops) := drops[0].field if count([entry | some entry in drops; entry.drop]) == 0

_wanted(figures, drops) := array.concat(beyond, [drops[count(drops) - 1].field])[0] if {
	count([entry | some entry in drops; entry.drop]) > 0
	beyond := [entry.field |
		some entry in drops
		entry.out >= _reach(figures)
	]
}

# trigger is the height from which or above which a guard is asked for.
trigger(figures) := figures.trigger

trigger(figures) := figures.from if not figures.trigger

# manner is what the keys of messages end in where the height itself asks for a
# guard already.
manner(figures) := "" if figures.trigger

manner(figures) := "_from" if not figures.trigger

# exempt says why a guard that nothing asks for is left alone.
exempt(figures, subject, drop) := {
	"at": subject.at, "because": concat("", ["low", manner(figures)]),
	"drop": drop.value, "trigger": trigger(figures),
}
