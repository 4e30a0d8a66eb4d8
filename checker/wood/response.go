package wood

import (
	"math"
	"slices"
)

// segment is a stretch of a beam under one even load: shear, moment, slope and deflection at its start, from which the
// rest follows. Moments sag, deflections point down; slope and deflection are multiplied by E′I. Units are lb and in.
type segment struct {
	from, to float64
	load     float64 // lb/in, down
	shear    float64 // lb, the sum of what pushes up on the left
	moment   float64 // lb·in
	slope    float64 // lb·in²
	drop     float64 // lb·in³
}

func (s segment) length() float64 { return s.to - s.from }

func (s segment) shearAt(x float64) float64 { return s.shear - s.load*x }

func (s segment) momentAt(x float64) float64 { return s.moment + x*(s.shear-s.load*x/2) }

// slopeAt integrates y″ = -M.
func (s segment) slopeAt(x float64) float64 {
	return s.slope - x*(s.moment+x*(s.shear/2-x*s.load/6))
}

func (s segment) dropAt(x float64) float64 {
	return s.drop + x*(s.slope-x*(s.moment/2+x*(s.shear/6-x*s.load/24)))
}

// plus adds what another load does on the same stretch.
func (s segment) plus(o segment, times float64) segment {
	s.load += times * o.load
	s.shear += times * o.shear
	s.moment += times * o.moment
	s.slope += times * o.slope
	s.drop += times * o.drop
	return s
}

// momentPeaks are the places where the moment may be greatest or least: both ends and where the shear changes sign.
func (s segment) momentPeaks() []float64 {
	peaks := []float64{0, s.length()}
	if s.load != 0 {
		if x := s.shear / s.load; x > 0 && x < s.length() {
			peaks = append(peaks, x)
		}
	}
	return peaks
}

// dropPeaks are the places where the deflection may be greatest or least: both ends and where the slope is zero. Between
// the zeros of the moment the slope only rises or only falls, so that each such stretch is searched once.
func (s segment) dropPeaks() []float64 {
	cuts := []float64{0}
	for _, x := range s.momentZeros() {
		if x > 0 && x < s.length() {
			cuts = append(cuts, x)
		}
	}
	cuts = append(cuts, s.length())
	slices.Sort(cuts)
	peaks := []float64{0, s.length()}
	for i := range len(cuts) - 1 {
		a, b := cuts[i], cuts[i+1]
		if s.slopeAt(a)*s.slopeAt(b) < 0 {
			peaks = append(peaks, bisect(a, b, s.slopeAt))
		}
	}
	return peaks
}

func (s segment) momentZeros() []float64 {
	if s.load == 0 {
		if s.shear == 0 {
			return nil
		}
		return []float64{-s.moment / s.shear}
	}
	root := s.shear*s.shear + 2*s.load*s.moment
	if root < 0 {
		return nil
	}
	q := math.Sqrt(root)
	return []float64{(s.shear - q) / s.load, (s.shear + q) / s.load}
}

// bisect finds the zero of f between a and b, where f has opposite signs, to the last bit or two.
func bisect(a, b float64, f func(float64) float64) float64 {
	rising := f(a) < 0
	for range 200 {
		mid := a + (b-a)/2
		if mid == a || mid == b {
			break
		}
		if (f(mid) < 0) == rising {
			a = mid
		} else {
			b = mid
		}
	}
	return a + (b-a)/2
}

// response is what one loading does to a beam.
type response struct {
	segments  []segment // left to right, without gaps
	reactions []float64 // up, by support, in lb
}

// add adds what another loading does. The segments of both have the same bounds.
func (r response) add(o response, times float64) response {
	sum := response{slices.Clone(r.segments), slices.Clone(r.reactions)}
	for i := range sum.segments {
		sum.segments[i] = sum.segments[i].plus(o.segments[i], times)
	}
	for i := range sum.reactions {
		sum.reactions[i] += times * o.reactions[i]
	}
	return sum
}
