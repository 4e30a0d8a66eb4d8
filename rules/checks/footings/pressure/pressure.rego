# METADATA
# title: Pressure below a footing
# description: The load on each footing by statics, spread over its area, against what the soil bears. The footing's own weight is left out.
# custom:
#   id: footings/pressure
#   aliases: []
#   consequence: structure
#   why: Soil that is pressed harder than it bears gives way slowly, one footing more than the next.
#   applies_when: footings are described under posts
#   figures:
#     max_share: {type: ratio, unit: times what the soil bears, relation: at most, about: greatest pressure as a share of what the soil bears}
#     dead_load: {type: pressure, about: dead load counted where the design states none}
#   values: {beam: part, n: count, soil: pressure, dead: pressure}
#   messages:
#     outside: "footing {n} below beam {beam} presses {have} times as hard as its soil of {soil} bears, with {dead} of dead load"
#     within: "footing {n} below beam {beam} presses {have} times as hard as its soil of {soil} bears, with {dead} of dead load"
#   mend: ["larger footings", "posts closer together, so that each footing carries less"]
#   tries: [footing-width, another-post]
package checks.footings.pressure

import data.figures.footings.pressure as figures
import data.lib.members

applies if count(input.footings) > 0

_owners := {"site": input.site.at, "house": input.house.at}

_dead := input.site.dead_load.value

_dead := figures.dead_load if not input.site.dead_load

# The load on a footing: an area in square millimetres by a pressure.
_load[i] := footing.tributary_area.value.statics * (max([footing.live_load.value, footing.ground_snow_load.value]) + _dead) if {
	some i, footing in input.footings
}

_bearable[i] := footing.plan_area.value * footing.soil_bearing.value if some i, footing in input.footings

readings contains {
	"at": footing.plan_area.at, "have": {"rise": load, "run": _bearable[i]},
	"figure": "max_share", "limit": figures.max_share,
	"outside": (load * figures.max_share.run) > (_bearable[i] * figures.max_share.rise),
	"beam": footing.beam, "n": footing.n, "dead": _dead,
	"soil": footing.soil_bearing.value,
} if {
	some i, load in _load
	footing := input.footings[i]
}

_field := {"round": ["platforms[].footings.diameter"], "square": ["platforms[].footings.side"], "rectangular": ["platforms[].footings.along", "platforms[].footings.out"]}

unknown contains {"at": members.place(_owners, footing.at, need), "needs": need} if {
	some footing in input.footings
	some need in (members.loads(footing) | members.missing(footing, {"soil_bearing": "site.soil_bearing"}))
}

unknown contains {"at": footing.at, "needs": need} if {
	some footing in input.footings
	not footing.plan_area
	some need in _field[footing.shape.value]
}

unknown contains {"at": footing.at, "needs": "platforms[].footings.shape"} if {
	some footing in input.footings
	not footing.plan_area
	not footing.shape
}

unknown contains {"at": footing.at, "needs": need} if {
	some footing in input.footings
	not footing.tributary_area
	some need in footing.missing
}
