package wood

import "math"

// property is one of the reference design values.
type property uint8

const (
	bending property = iota
	shear
	bearing
	compression
	elasticity
	stability
)

// symbol is the NDS symbol of the property.
func (p property) symbol() string {
	return [...]string{"Fb", "Fv", "Fc⊥", "Fc", "E", "Emin"}[p]
}

// wet is CM of NDS 4.3.3, from memory of the adjustment factors printed before Supplement Tables 4A, 4B and 4D. The
// property's size factor decides two exceptions.
func wet(p property, r Reference, sizeFactor float64) (cm float64, note string) {
	if r.Table == "4D" {
		return wetTimber(p, r)
	}
	const lowBending, lowCompression = 1150, 750
	switch p {
	case bending:
		if r.Fb*sizeFactor <= lowBending {
			return 1, "Fb · CF is not above 1150 psi"
		}
		return 0.85, "wet service"
	case shear:
		return 0.97, "wet service"
	case bearing:
		return 0.67, "wet service"
	case compression:
		if r.Fc*sizeFactor <= lowCompression {
			return 1, "Fc · CF is not above 750 psi"
		}
		return 0.8, "wet service"
	}
	return 0.9, "wet service"
}

func wetTimber(p property, r Reference) (cm float64, note string) {
	switch {
	case r.Species == SouthernPine:
		return 1, "Table 4D values of southern pine hold wet and dry"
	case p == bearing:
		return 0.67, "wet service"
	case p == compression:
		return 0.91, "wet service"
	}
	return 1, "timber values hold wet and dry"
}

// incising is Ci of NDS 4.3.8, for the pattern described there.
func incising(p property) float64 {
	switch p {
	case elasticity, stability:
		return 0.95
	case bearing:
		return 1
	}
	return 0.8
}

// Temperature is the range a member is held at for long, NDS 2.3.3. The zero value is up to 100 °F.
type Temperature uint8

// The ranges.
const (
	UpTo100F Temperature = iota
	UpTo125F
	UpTo150F
)

// heat is Ct of NDS Table 2.3.3, from memory.
func heat(p property, t Temperature, isWet bool) float64 {
	switch {
	case t == UpTo100F:
		return 1
	case p == elasticity || p == stability:
		return 0.9
	case t == UpTo125F && isWet:
		return 0.7
	case t == UpTo125F:
		return 0.8
	case isWet:
		return 0.5
	}
	return 0.7
}

// nominalWidth is the nominal width in inches that an actual one belongs to; sizes in between go to the next wider,
// whose factors are lower. Everything above 12 is 14.
func nominalWidth(depth float64) int {
	for _, w := range [...]struct {
		actual  float64
		nominal int
	}{{3.5, 4}, {4.5, 5}, {5.5, 6}, {7.25, 8}, {9.25, 10}, {11.25, 12}} {
		if depth <= w.actual {
			return w.nominal
		}
	}
	return 14
}

// sizeFactors gives CF of NDS 4.3.6 for bending and for compression, from memory of the Supplement.
func sizeFactors(r Reference, s Section, narrow bool) (fb, fc float64, note string) {
	thick := s.Breadth > 2.5
	switch r.Table {
	case "4D":
		if s.Depth > 12 {
			return math.Pow(12/s.Depth, 1.0/9), 1, "deeper than 12 in"
		}
		return 1, 1, "not deeper than 12 in"
	case "4B":
		fb, fc = 1, 1
		if s.Depth > 11.25 {
			fb, fc = 0.9, 0.9
		}
		if thick && s.Depth >= 7.25 {
			fb *= 1.1
		}
		return fb, fc, "the rest is in Table 4B"
	}
	if thick && narrow && s.Depth >= 9.25 {
		thick = false
	}
	fb, fc = sizeFactors4A(nominalWidth(s.Depth), thick)
	return fb, fc, "Table 4A"
}

func sizeFactors4A(width int, thick bool) (fb, fc float64) {
	switch width {
	case 4:
		return 1.5, 1.15
	case 5:
		return 1.4, 1.1
	case 6:
		return 1.3, 1.1
	}
	// A 4-in-thick piece has the factor of the next narrower width.
	switch {
	case width == 8 && thick:
		return 1.3, 1.05
	case width == 8:
		return 1.2, 1.05
	case width == 10 && thick:
		return 1.2, 1
	case width == 10:
		return 1.1, 1
	case width == 12 && thick:
		return 1.1, 1
	case width == 12:
		return 1, 1
	case thick:
		return 1, 0.9
	}
	return 0.9, 0.9
}

// flatUse is Cfu of NDS 4.3.7 for dimension lumber loaded on its wide face, from memory. wide and thick are inches.
func flatUse(wide, thick float64) float64 {
	width, isThick := nominalWidth(wide), thick > 2.5
	switch {
	case wide <= 2.5:
		return 1
	case width == 4 && isThick:
		return 1
	case width == 4 || width == 5 && !isThick:
		return 1.1
	case width <= 8 && isThick:
		return 1.05
	case width <= 8:
		return 1.15
	case isThick:
		return 1.1
	}
	return 1.2
}
