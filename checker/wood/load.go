package wood

import (
	"errors"

	"plumbrule/checker/measure"
)

// Duration is the time a load lasts in sum over the life of the structure; it gives the load duration factor CD of NDS
// 2.3.2. The zero value is the ten years of an occupancy live load.
type Duration uint8

// The durations.
const (
	TenYears   Duration = iota // occupancy live load
	Permanent                  // dead load
	TwoMonths                  // snow
	SevenDays                  // construction
	TenMinutes                 // wind, earthquake
	Impact
)

// Factor is CD, from memory of NDS Table 2.3.2.
func (d Duration) Factor() float64 {
	switch d {
	case Permanent:
		return 0.9
	case TwoMonths:
		return 1.15
	case SevenDays:
		return 1.25
	case TenMinutes:
		return 1.6
	case Impact:
		return 2.0
	}
	return 1.0
}

// String names the load that lasts so long.
func (d Duration) String() string {
	switch d {
	case Permanent:
		return "permanent"
	case TwoMonths:
		return "two months, snow"
	case SevenDays:
		return "seven days, construction"
	case TenMinutes:
		return "ten minutes, wind or earthquake"
	case Impact:
		return "impact"
	}
	return "ten years, occupancy"
}

// Load is what a deck carries per area, seen in plan: its own weight and either people or snow. Where both are asked
// for, compute with each and take the worse.
type Load struct {
	Dead, Imposed measure.Pressure
	Duration      Duration // of the imposed load
}

// check refuses loads for which the one combination that is computed does not govern: a permanent load alone counts
// with CD 0.9.
func (l Load) check() error {
	switch {
	case l.Dead < 0 || l.Imposed < 0:
		return errors.New("negative load")
	case l.Dead+l.Imposed == 0:
		return errors.New("no load")
	case float64(l.Dead)/Permanent.Factor() > float64(l.Dead+l.Imposed)/l.Duration.Factor():
		return errors.New("the dead load alone governs, beside so small an imposed load")
	}
	return nil
}

// put records the load on a strip of the given width in inches and gives dead and imposed load in plf.
func (l Load) put(w *working, width float64, symbol, note string) (dead, imposed float64) {
	d := w.given("D", psf(l.Dead), "psf", "dead load")
	q := w.given("Q", psf(l.Imposed), "psf", "imposed load, "+l.Duration.String())
	s := w.given(symbol, width, "in", note)
	dead = w.find("w_D", "D · "+symbol+" / 12", d*s/12, "plf")
	imposed = w.find("w_Q", "Q · "+symbol+" / 12", q*s/12, "plf")
	w.find("w", "w_D + w_Q", dead+imposed, "plf")
	return dead, imposed
}
