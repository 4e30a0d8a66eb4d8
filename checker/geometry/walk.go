package geometry

import (
	"fmt"
	"math"
	"math/big"

	"plumbrule/checker/measure"
)

// Leg is one leg of a walk round an outline.
type Leg struct {
	Go   measure.Length // how far
	Turn measure.Angle  // how much to the right at its end; below zero to the left
}

// Closure is by how much a walk round an outline fails to come back.
type Closure struct {
	DX   measure.Length // along the house from the start to where the walk ended
	DY   measure.Length // out from the house from the start to where it ended
	Miss measure.Length // the straight distance between the two
	Turn measure.Angle  // all turns together less one full turn to the right
}

const fullTurn = 360 * measure.Degree

// Walk follows the legs from the left end of the house along the house, heading
// along X, and turns as each leg says. The ring holds the places where legs
// start; its last edge runs from the last of them straight back to the start and
// so takes up the whole miss, which Closure reports. Nothing is spread over the
// other edges: a misread leg must not bend the good ones.
//
// Legs on a quarter turn are exact, legs on an eighth are rounded from the exact
// root, any other from a sine and a cosine.
//
// The error says that there are fewer than three legs, or which leg has no
// length or leads beyond Reach.
func Walk(legs []Leg) (Ring, Closure, error) {
	if len(legs) < 3 {
		return nil, Closure{}, &RingError{Problem: fmt.Sprintf("a walk needs three legs, this has %d", len(legs))}
	}
	var at Point
	var heading, turns measure.Angle
	ring := make(Ring, 0, len(legs))
	for i, leg := range legs {
		if leg.Go <= 0 {
			return nil, Closure{}, &RingError{Problem: "has no length", Edges: []int{i}}
		}
		if leg.Turn <= -fullTurn || leg.Turn >= fullTurn {
			return nil, Closure{}, &RingError{Problem: "ends with a full turn or more", Edges: []int{i}}
		}
		ring = append(ring, at)
		if !inReach(leg.Go) {
			return nil, Closure{}, &RingError{Problem: "leads too far to be reckoned with", Edges: []int{i}}
		}
		at = at.Shift(step(leg.Go, heading))
		if !at.inReach() {
			return nil, Closure{}, &RingError{Problem: "leads too far to be reckoned with", Edges: []int{i}}
		}
		turns += leg.Turn
		heading = (heading + leg.Turn + fullTurn) % fullTurn
	}
	return ring, Closure{DX: at.X, DY: at.Y, Miss: hypot(at.X, at.Y), Turn: turns - fullTurn}, nil
}

// step is how far a leg leads along X and along Y; heading is from 0 up to but
// not including a full turn.
func step(l measure.Length, heading measure.Angle) (dx, dy measure.Length) {
	if heading%(45*measure.Degree) != 0 {
		sin, cos := math.Sincos(radians(float64(heading) / float64(measure.Degree)))
		return nearest(float64(l) * cos), nearest(float64(l) * sin)
	}
	// Eight headings, each a pair of signs; the odd ones are diagonal.
	eighth := heading / (45 * measure.Degree)
	signs := [8]struct{ x, y measure.Length }{{1, 0}, {1, 1}, {0, 1}, {-1, 1}, {-1, 0}, {-1, -1}, {0, -1}, {1, -1}}[eighth]
	if eighth%2 == 1 {
		l = root(mul(l, l).big(), big.NewInt(2))
	}
	return l * signs.x, l * signs.y
}
