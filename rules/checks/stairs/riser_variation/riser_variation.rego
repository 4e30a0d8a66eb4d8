# METADATA
# title: Difference between risers
# description: How much the risers of a flight differ, as a whole, from one to the next or from the riser as planned, and the bottom riser from one side of the stair to the other where it lands on ground that slopes across it.
# custom:
#   id: stairs/riser-variation
#   aliases: []
#   consequence: life safety
#   why: After two or three steps the foot expects the next one to be alike. A riser that differs is the commonest cause of a fall on a new stair.
#   applies_when: a flight of stairs is described
#   figures:
#     max: {type: length, relation: at most, optional: true, about: greatest difference between the risers of a flight}
#     adjacent: {type: length, relation: at most, optional: true, about: greatest difference between two risers that follow each other}
#     adjacent_upper: {type: length, relation: at most, optional: true, about: "greatest difference between two risers that follow each other, the lowest left out"}
#     planned_upper: {type: length, relation: at most, optional: true, about: "greatest difference of a riser above the lowest from the riser as planned, the rise divided by the risers"}
#     cross_slope: {type: slope, relation: at most, optional: true, about: "greatest slope of the landing across the stair, where that is limited in place of the difference that it makes"}
#     centered: {type: flag, relation: exactly, optional: true, about: whether risers are measured in the middle of the stair only}
#   messages:
#     outside: "risers of the flight differ by {have}, the limit is {limit}"
#     adjacent: "risers that follow each other differ by {have}, the limit is {limit}"
#     planned: "a riser differs by {have} from the riser as planned, the limit is {limit}"
#     cross_fall: "the bottom riser differs by {have} from one side of the stair to the other, the limit is {limit}"
#     cross_slope: "the bottom riser stands on a slope of {have} across the stair, the limit is {limit}"
#   exempt:
#     few: "the flight has too few risers to compare"
#   mend:
#     - "divide the total rise by the number of risers again, with tread thickness and finish to come taken off the bottom cut"
#     - "level the landing across the stair, or set a level pad in it"
#   tries: [landing-slope]
package checks.stairs.riser_variation

import data.figures.stairs.riser_variation as figures
import data.lib.stairs as lib

applies if count(input.flights) > 0

readings contains {
	"at": flight.riser_spread.at, "have": flight.riser_spread.value,
	"figure": "max", "limit": figures.max,
	"outside": flight.riser_spread.value > figures.max,
} if {
	some flight in input.flights
}

readings contains {
	"at": fall.at, "have": fall.value,
	"figure": "max", "limit": figures.max,
	"outside": fall.value > figures.max,
	"say": "cross_fall",
} if {
	some flight in input.flights
	_by_fall
	fall := _fall(flight)
}

readings contains {
	"at": slope.at, "have": slope.value,
	"figure": "cross_slope", "limit": figures.cross_slope,
	"outside": _steep(slope),
	"say": "cross_slope",
} if {
	some flight in input.flights
	slope := _slope(flight)
}

_by_fall if {
	figures.max
	not figures.cross_slope
	not figures.centered
}

# Where it is not known which slope lies across the stair, the greater fall
# decides if it is small enough, and the lesser if even that is too much.
_fall(flight) := flight.cross_fall

_fall(flight) := flight.cross_fall_greater if flight.cross_fall_greater.value <= figures.max

_fall(flight) := flight.cross_fall_lesser if flight.cross_fall_lesser.value > figures.max

_slope(flight) := flight.cross_slope

_slope(flight) := flight.cross_slope_greater if not _steep(flight.cross_slope_greater)

_slope(flight) := flight.cross_slope_lesser if _steep(flight.cross_slope_lesser)

# Slopes are compared multiplied out, so that equal ones stay equal.
_steep(slope) := (abs(slope.value.rise) * figures.cross_slope.run) > (figures.cross_slope.rise * slope.value.run)

_steps contains ["adjacent", "adjacent", flight.riser_step] if some flight in input.flights

_steps contains ["adjacent", "adjacent_upper", flight.upper_riser_step] if some flight in input.flights

_steps contains ["planned", "planned_upper", flight.upper_riser_off] if some flight in input.flights

readings contains {
	"at": fact.at, "have": fact.value,
	"figure": figure, "limit": figures[figure],
	"outside": fact.value > figures[figure],
	"say": say,
} if {
	some [say, figure, fact] in _steps
}

exempt contains {"at": flight.riser_spread.at, "because": "few"} if {
	_of_upper
	some flight in input.flights
	not _comparable(flight)
}

_of_upper if figures.planned_upper

_of_upper if figures.adjacent_upper

# Every flight can be held against these two; a single riser differs by nothing.
_comparable(_) if figures.max

_comparable(_) if figures.adjacent

_comparable(flight) if {
	figures.planned_upper
	count(flight.riser_heights) > 1
}

_comparable(flight) if {
	figures.adjacent_upper
	count(flight.riser_heights) > 2
}

unknown contains {"at": flight.at, "needs": flight.way_missing} if {
	some flight in input.flights
	_by_fall
	flight.cross_fall_lesser
	not _fall(flight)
}

unknown contains {"at": flight.at, "needs": flight.way_missing} if {
	some flight in input.flights
	figures.cross_slope
	flight.cross_slope_lesser
	not _slope(flight)
}

unknown contains {"at": flight.at, "needs": "stairs[].total_rise"} if {
	figures.planned_upper
	some flight in input.flights
	count(flight.riser_heights) > 1
	not flight.bottom_riser_off
}

unknown contains {"at": flight.at, "needs": lib.rise_field(flight)} if {
	some flight in input.flights
	not flight.riser_spread
}
