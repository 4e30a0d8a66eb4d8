# METADATA
# title: Lateral devices
# description: Number, capacity and place of the tension ties that hold a deck to the house, in the two arrangements that the set gives.
# custom:
#   id: ledger/lateral-devices
#   aliases: []
#   consequence: life safety
#   why: Bolts carry the deck down, not away from the wall; a swaying crowd pulls the ledger off the rim, and the rim off the house.
#   applies_when: a platform hangs on a ledger
#   figures:
#     few: {type: count, unit: [device, devices], relation: at least, about: least number of devices}
#     few_capacity: {type: force, relation: at least, about: capacity of each where there are few}
#     many: {type: count, unit: [device, devices], optional: true, about: number from which on the lesser capacity does}
#     many_capacity: {type: force, optional: true, relation: at least, about: capacity of each where there are many}
#     many_penetration: {type: length, optional: true, relation: at least, about: how deep the screws of the lesser ones go into the house framing}
#     from_ends: {type: length, relation: at most, about: ends of the deck to the nearest device}
#   messages:
#     outside: "{have} lateral devices are shown, at least {limit} are asked for"
#     within: "{have} lateral devices are shown"
#     capacity: "each lateral device holds {have}, the limit is {limit}"
#     ends: "the nearest lateral device is {have} from the end of the deck, the limit is {limit}"
#     penetration: "the screws of the lateral devices go {have} into the house framing, the limit is {limit}"
#   mend: ["listed tension ties from the deck joists to the floor of the house, in one of the two arrangements"]
#   tries: [lateral-devices, whole-inches]
package checks.ledger.lateral_devices

import data.figures.ledger.lateral_devices as figures

applies if count(input.lateral_devices) > 0

_shown[i] := devices if {
	some i, devices in input.lateral_devices
	devices.shown
}

_many contains i if {
	some i, devices in _shown
	devices.count.value >= figures.many
}

_capacity[i] := "many_capacity" if some i in _many

_capacity[i] := "few_capacity" if {
	some i, devices in _shown
	not i in _many
}

# Few strong ones among many do as well, so that the lesser screws matter only below the greater capacity.
_lesser contains i if {
	some i in _many
	_shown[i].capacity.value < figures.few_capacity
	figures.many_penetration
}

readings contains {
	"at": devices.count.at, "have": devices.count.value,
	"figure": "few", "limit": figures.few, "outside": devices.count.value < figures.few,
} if {
	some devices in _shown
}

readings contains {
	"at": capacity.at, "have": capacity.value,
	"figure": figure, "limit": figures[figure],
	"outside": capacity.value < figures[figure], "say": "capacity",
} if {
	some i, figure in _capacity
	capacity := _shown[i].capacity
}

readings contains {
	"at": devices.from_ends.at, "have": devices.from_ends.value,
	"figure": "from_ends", "limit": figures.from_ends,
	"outside": devices.from_ends.value > figures.from_ends, "say": "ends",
} if {
	some devices in _shown
}

readings contains {
	"at": depth.at, "have": depth.value,
	"figure": "many_penetration", "limit": figures.many_penetration,
	"outside": depth.value < figures.many_penetration, "say": "penetration",
} if {
	some i in _lesser
	depth := _shown[i].penetration
}

unknown contains {"at": devices.at, "needs": "platforms[].lateral_devices"} if {
	some i, devices in input.lateral_devices
	not _shown[i]
}

_fields := {"count": "platforms[].lateral_devices.count", "capacity": "platforms[].lateral_devices.capacity", "from_ends": "platforms[].lateral_devices.distance_from_ends"}

unknown contains {"at": devices.at, "needs": need} if {
	some devices in _shown
	some name, need in _fields
	not devices[name]
}

unknown contains {"at": _shown[i].at, "needs": "platforms[].lateral_devices.penetration"} if {
	some i in _lesser
	not _shown[i].penetration
}
