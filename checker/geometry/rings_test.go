package geometry_test

import (
	"math"
	"math/big"
	"math/rand/v2"
	"slices"

	"plumbrule/checker/geometry"
	"plumbrule/checker/measure"
)

// inFeet is a ring with its corners given in feet.
func inFeet(corners ...[2]int64) geometry.Ring {
	r := make(geometry.Ring, len(corners))
	for i, c := range corners {
		r[i] = geometry.Point{X: measure.Length(c[0]) * measure.Foot, Y: measure.Length(c[1]) * measure.Foot}
	}
	return r
}

// wrap is an outline round an inner corner with a clip in it: seven corners, one
// of them reflex on either side of the clip.
func wrap() geometry.Ring {
	return inFeet([2]int64{0, 0}, [2]int64{24, 0}, [2]int64{24, 10}, [2]int64{14, 10}, [2]int64{10, 14}, [2]int64{10, 22}, [2]int64{0, 22})
}

// notched has an edge in line with another and a slot that cuts scan lines twice.
func notched() geometry.Ring {
	return inFeet([2]int64{0, 0}, [2]int64{12, 0}, [2]int64{12, 8}, [2]int64{8, 8}, [2]int64{8, 4}, [2]int64{4, 4}, [2]int64{4, 8}, [2]int64{0, 8})
}

// star is a random outline seen whole from its middle, clockwise on the page,
// concave more often than not. unit scales its roughly hundred units of radius.
func star(rnd *rand.Rand, corners int, unit measure.Length) geometry.Ring {
	for {
		bearings := make([]float64, corners)
		for i := range bearings {
			bearings[i] = rnd.Float64() * 2 * math.Pi
		}
		slices.Sort(bearings)
		r := make(geometry.Ring, corners)
		for i, b := range bearings {
			radius := 20 + 80*rnd.Float64()
			r[i] = geometry.Point{
				X: measure.Length(math.Round(radius*math.Cos(b))) * unit,
				Y: measure.Length(math.Round(radius*math.Sin(b))) * unit,
			}
		}
		if r.Check() == nil && r.Clockwise() {
			return r
		}
	}
}

// random yields the same numbers on every run, others for every stream.
func random(stream uint64) *rand.Rand { return rand.New(rand.NewPCG(stream, 1)) }

// moved is the ring with every corner put through f.
func moved(r geometry.Ring, f func(geometry.Point) geometry.Point) geometry.Ring {
	out := make(geometry.Ring, len(r))
	for i, p := range r {
		out[i] = f(p)
	}
	return out
}

// mirrored is the ring seen from below the page, walked the other way so that it
// is clockwise again.
func mirrored(r geometry.Ring) geometry.Ring {
	out := moved(r, func(p geometry.Point) geometry.Point { return geometry.Point{X: -p.X, Y: p.Y} })
	slices.Reverse(out)
	return out
}

// byEars is twice the area of a ring, found by cutting off ears: corners whose
// triangle lies inside the ring and holds no other corner.
func byEars(r geometry.Ring) *big.Int {
	side := func(o, a, b geometry.Point) *big.Int {
		wide := func(l measure.Length) *big.Int { return big.NewInt(int64(l)) }
		return new(big.Int).Sub(
			new(big.Int).Mul(wide(a.X-o.X), wide(b.Y-o.Y)),
			new(big.Int).Mul(wide(a.Y-o.Y), wide(b.X-o.X)))
	}
	left := slices.Clone(r)
	sum := new(big.Int)
	for len(left) > 2 {
		cut := false
		for i := range left {
			a, b, c := left[(i+len(left)-1)%len(left)], left[i], left[(i+1)%len(left)]
			if side(a, b, c).Sign() < 0 {
				continue
			}
			free := true
			for _, p := range left {
				if p != a && p != b && p != c && side(a, b, p).Sign() >= 0 && side(b, c, p).Sign() >= 0 && side(c, a, p).Sign() >= 0 {
					free = false
					break
				}
			}
			if free {
				sum.Add(sum, side(a, b, c))
				left = slices.Delete(left, i, i+1)
				cut = true
				break
			}
		}
		if !cut {
			return nil
		}
	}
	return sum
}

// anywhere is a coordinate within a few hundred metres.
func anywhere(rnd *rand.Rand) measure.Length {
	return measure.Length(rnd.Int64N(int64(400*measure.Metre)) - int64(200*measure.Metre))
}

// hull is a random convex outline: corners on an ellipse off the middle.
func hull(rnd *rand.Rand) geometry.Ring {
	for {
		s := star(rnd, 4+rnd.IntN(4), 1)
		wide, high := 0.3+rnd.Float64(), 0.3+rnd.Float64()
		right, down := anywhere(rnd)/800, anywhere(rnd)/800
		r := moved(s, func(p geometry.Point) geometry.Point {
			radius := float64(measure.Metre/2) / math.Hypot(float64(p.X), float64(p.Y))
			return geometry.Point{
				X: measure.Length(math.Round(float64(p.X) * radius * wide)),
				Y: measure.Length(math.Round(float64(p.Y) * radius * high)),
			}.Shift(right, down)
		})
		if r.Check() == nil {
			return r
		}
	}
}
