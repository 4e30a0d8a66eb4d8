package geometry

import (
	"errors"
	"fmt"
	"math/big"

	"plumbrule/checker/measure"
)

// Flight is a flight of equal risers.
type Flight struct {
	Treads int
	// Rise divides the total rise, which is Rise.Over, by the risers, which are
	// Rise.Parts.
	Rise Pitch
}

// Risers is the number of risers.
func (f Flight) Risers() int { return int(f.Rise.Parts) }

// Risers divides a total rise by the fewest equal risers of at most limit, with
// one tread less than risers. The error says that a measure is not above zero or
// beyond Reach, or that there would be more than MaxParts risers.
func Risers(total, limit measure.Length) (Flight, error) {
	if err := checkLengths(named{"the total rise", total}, named{"the riser's limit", limit}); err != nil {
		return Flight{}, err
	}
	n := ceilDiv(total, limit)
	if err := checkParts(n, "risers"); err != nil {
		return Flight{}, err
	}
	return Flight{Treads: int(n - 1), Rise: Pitch{Over: total, Parts: n}}, nil
}

// Descent is a straight stair from an edge down to ground that falls away from
// it, or rises where Fall is below zero. The rise then depends on where the stair
// lands, and that on the number of risers.
type Descent struct {
	AtEdge   measure.Length // from the decking down to the ground at the edge
	Fall     measure.Slope  // of the ground, away from the edge; the zero Slope is level
	Run      measure.Length // of one tread
	FlushTop bool           // the top tread is level with the decking, so there are as many treads as risers
}

// Total is the rise, rounded to the nanometre, of the stair with so many risers:
// from the decking down to the ground where its lowest tread ends. The error says
// that a measure cannot be reckoned with, or that the ground rises to the decking
// before that.
func (d Descent) Total(risers int) (measure.Length, error) {
	if err := d.check(); err != nil {
		return 0, err
	}
	if risers < 1 || risers > MaxParts {
		return 0, fmt.Errorf("%d risers are not between 1 and %d", risers, MaxParts)
	}
	return d.total(int64(risers))
}

func (d Descent) total(risers int64) (measure.Length, error) {
	fall := new(big.Int).Mul(big.NewInt(d.treads(risers)), mul(d.Run, measure.Length(d.Fall.Rise)).big())
	total := quotient(fall, big.NewInt(d.fallRun()))
	total.Add(total, big.NewInt(int64(d.AtEdge)))
	switch {
	case total.Sign() <= 0:
		return 0, errors.New("the ground rises to the decking before the stair lands")
	case total.Cmp(big.NewInt(int64(Reach))) > 0:
		return 0, errors.New("the stair leads too far to be reckoned with")
	}
	return measure.Length(total.Int64()), nil
}

func (d Descent) treads(risers int64) int64 {
	if d.FlushTop {
		return risers
	}
	return risers - 1
}

// fallRun is the run that the ground falls over: any will do where it is level.
func (d Descent) fallRun() int64 { return max(d.Fall.Run, 1) }

func (d Descent) check() error {
	if err := checkLengths(named{"the rise at the edge", d.AtEdge}, named{"the run of a tread", d.Run}); err != nil {
		return err
	}
	if d.Fall.Run < 0 || d.Fall.Run == 0 && d.Fall.Rise != 0 {
		return errors.New("the fall of the ground has no run")
	}
	// Steeper than that is a bank and no ground to land on.
	if d.Fall.Rise > d.Fall.Run || d.Fall.Rise < -d.Fall.Run {
		return errors.New("the ground is steeper than 45 degrees")
	}
	return nil
}

// Risers is the flight with the fewest equal risers of at most limit. One riser
// more lands the stair one tread further out and lower, so the number is not the
// rise at the edge divided by the limit; it follows exactly from
// AtEdge + treads*Run*Fall <= risers*limit.
//
// The error says that a measure cannot be reckoned with, that the ground falls
// away as fast as the stair descends, that it rises to the decking before the
// stair lands, or that there would be more than MaxParts risers.
func (d Descent) Risers(limit measure.Length) (Flight, error) {
	if err := d.check(); err != nil {
		return Flight{}, err
	}
	if err := checkLengths(named{"the riser's limit", limit}); err != nil {
		return Flight{}, err
	}
	n, err := d.fewest(limit)
	if err != nil {
		return Flight{}, err
	}
	total, err := d.total(n)
	if err != nil {
		return Flight{}, err
	}
	return Flight{Treads: int(d.treads(n)), Rise: Pitch{Over: total, Parts: n}}, nil
}

func (d Descent) fewest(limit measure.Length) (int64, error) {
	if !d.FlushTop && d.AtEdge <= limit {
		return 1, nil // no tread, so the fall of the ground does not enter
	}
	// Everything times Fall.Run: what a riser gains, and what the risers have to
	// make up for.
	fall := mul(d.Run, measure.Length(d.Fall.Rise)).big()
	run := big.NewInt(d.fallRun())
	gain := new(big.Int).Mul(big.NewInt(int64(limit)), run)
	gain.Sub(gain, fall)
	if gain.Sign() <= 0 {
		return 0, errors.New("the ground falls away as fast as the stair descends")
	}
	need := new(big.Int).Mul(big.NewInt(int64(d.AtEdge)), run)
	if !d.FlushTop {
		need.Sub(need, fall)
	}
	n := ceilBig(need, gain)
	if !n.IsInt64() || n.Int64() > MaxParts {
		return 0, fmt.Errorf("%s risers are more than the %d that are worked out", n, MaxParts)
	}
	return n.Int64(), nil
}
