# What the checks of handrails have in common: which handrails they leave alone.
package lib.handrail

# spared is the exempt row of a stair whose handrail is not looked at: it has
# fewer risers or rises less than a handrail is asked for from, or none is shown,
# which is a matter of its own. Undefined where the handrail is looked at. The
# figures are those of handrail/required.
spared(rail, required) := {"at": rail.at, "because": "few", "risers": rail.risers.value, "from": required.from} if {
	rail.risers.value < required.from
} else := {"at": rail.at, "because": "low", "rise": rail.rise.value, "rise_from": required.rise_from} if {
	rail.rise.value < required.rise_from
} else := {"at": rail.at, "because": "none"} if {
	not rail.present
}

# recessed is true of a handrail whose profile shows any part of a finger recess.
recessed(rail) if rail.recess_start

recessed(rail) if rail.recess_depth

# class says how a profile is judged: "round" by its diameter, "small" by its
# perimeter and width, "large" by its finger recess. Undefined where no such
# profile is known.
class(rail, _) := "round" if rail.profile.value == "round"

class(rail, most) := "small" if {
	rail.profile.value == "shaped"
	rail.perimeter.value <= most
}

class(rail, most) := "large" if {
	rail.profile.value == "shaped"
	rail.perimeter.value > most
}

# class_field is the field of the profile without which its class is not known.
class_field(rail) := "type" if not rail.profile

class_field(rail) := "perimeter" if {
	rail.profile.value == "shaped"
	not rail.perimeter
}
