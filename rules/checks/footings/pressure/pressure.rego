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
#     max_share: {type: ratio, relation: at most, about: greatest pressure as a share of what the soil bears}
#   values: {beam: words, n: count, pressure: pressure, soil: pressure}
#   messages:
#     outside: "footing {n} below beam {beam} presses {pressure} on soil that bears {soil}"
#     within: "footing {n} below beam {beam} presses {pressure} on soil that bears {soil}"
#   mend: ["larger footings", "posts closer together, so that each footing carries less"]
package checks.footings.pressure

import data.figures.footings.pressure as figures
import data.lib.members

applies if count(input.footings) > 0

_complete[i] := footing if {
	some i, footing in input.footings
	footing.pressure
	footing.soil_bearing
}

readings contains {
	"at": footing.pressure.at, "have": {"rise": footing.pressure.value, "run": footing.soil_bearing.value},
	"figure": "max_share", "limit": figures.max_share,
	"outside": (footing.pressure.value * figures.max_share.run) > (footing.soil_bearing.value * figures.max_share.rise),
	"beam": footing.beam, "n": footing.n, "pressure": footing.pressure.value, "soil": footing.soil_bearing.value,
} if {
	some footing in _complete
}

_fields := {"soil_bearing": "site.soil_bearing", "plan_area": "platforms[].footings.shape"}

unknown contains {"at": footing.at, "needs": need} if {
	some i, footing in input.footings
	not _complete[i]
	some need in (members.missing(footing, _fields) | members.loads(footing))
}

unknown contains {"at": input.site.at, "needs": "site.dead_load"} if {
	some i, footing in input.footings
	not _complete[i]
	not input.site.dead_load
}

unknown contains {"at": footing.at, "needs": need} if {
	some footing in input.footings
	not footing.tributary_area
	some need in footing.missing
}
