package geometry

import "math"

// InteriorAngles are the angles inside the ring at each corner in degrees, above
// 180 where the outline turns back on itself. It works for either walking
// direction. For a simple ring they add up to (n-2) times 180.
func (r Ring) InteriorAngles() []float64 {
	angles := make([]float64, len(r))
	inward := 1.0
	if r.AreaTwice().Sign() < 0 {
		inward = -1
	}
	for i, p := range r {
		before, after := r[(i+len(r)-1)%len(r)], r[(i+1)%len(r)]
		// The turn is measured between exact integers, so square corners and
		// corners at 45 degrees come out as whole numbers.
		turn := math.Atan2(turned(before, p, after).float(), ahead(before, p, after).float())
		angles[i] = 180 - inward*degrees(turn)
	}
	return angles
}

// turned is the cross product of the way into p and the way out of it.
func turned(before, p, after Point) wide { return cross(before, p, after) }

// ahead is the scalar product of the way into p and the way out of it.
func ahead(before, p, after Point) wide { return wide{}.minus(dot(p, before, after)) }
