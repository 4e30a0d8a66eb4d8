package measure

// Pressure is a load per area, a bearing capacity or a stress, in micropascals.
type Pressure int64

// MaxPressure is the largest pressure that is read: 1000 GPa.
const MaxPressure Pressure = 1e18

const kindPressure = "pressure"

func pressureDimension() dimension {
	return dimension{
		kind: kindPressure, unit: pressureUnit, limit: int64(MaxPressure),
		words: "psf kPa psi MPa Pa ksf lb/ft2 kN/m2 N/m2 N/mm2",
	}
}

// A pound-force is exactly 4.4482216152605 N and an inch exactly 25.4 mm (international avoirdupois pound and yard
// agreement of 1959, with the standard gravity of 1901), so a psf is poundPerFoot/squareFoot micropascals.
const (
	poundPerFoot = 444_822_161_526_050
	squareFoot   = 9_290_304
	squareInch   = squareFoot / 144
)

func pressureUnit(spelling string) (unit, bool) {
	switch spelling {
	case "psf", "PSF", "lb/ft2", "lb/ft²", "lb/ft^2":
		return unit{"psf", poundPerFoot, squareFoot, Imperial}, true
	case "psi", "PSI", "lb/in2", "lb/in²", "lb/in^2":
		return unit{"psi", poundPerFoot, squareInch, Imperial}, true
	case "ksf", "KSF":
		return unit{"ksf", 1000 * poundPerFoot, squareFoot, Imperial}, true
	case "Pa", "N/m2", "N/m²", "N/m^2":
		return unit{"Pa", 1e6, 1, Metric}, true
	case "kPa", "kN/m2", "kN/m²", "kN/m^2":
		return unit{"kPa", 1e9, 1, Metric}, true
	case "MPa", "N/mm2", "N/mm²", "N/mm^2":
		return unit{"MPa", 1e12, 1, Metric}, true
	}
	return unit{}, false
}

// ParsePressure reads a pressure with its unit, 40 psf, 1.9 kPa, 100 kN/m², 2500 psi, rounded once to the nearest
// micropascal, and tells in which system it was typed. A negative one is refused. The error is a *SpellingError.
func ParsePressure(text string) (Pressure, System, error) {
	m, err := read(kindPressure, text, pressureDimension().read)
	return Pressure(m.value), m.system, err
}

// Text prints a load in psf or kPa and a stress, from 100 psi or 1 MPa on, in psi or MPa, with at most four decimals.
func (p Pressure) Text(sys System) string {
	const stressPSI, stressMPa = 100, 1e12
	if sys == Metric {
		if p >= stressMPa || p <= -stressMPa {
			return pressureIn("MPa").print(int64(p))
		}
		return pressureIn("kPa").print(int64(p))
	}
	if psi, _ := pressureIn("psi").in(int64(p)).Float64(); psi > stressPSI-1e-9 || psi < -stressPSI+1e-9 {
		return pressureIn("psi").print(int64(p))
	}
	return pressureIn("psf").print(int64(p))
}

// In counts the pressure in psf or kPa, rounded to six decimals, and names that unit.
func (p Pressure) In(sys System) (float64, string) {
	u := pressureIn("psf")
	if sys == Metric {
		u = pressureIn("kPa")
	}
	return u.float(int64(p)), u.name
}

func pressureIn(name string) unit {
	u, _ := pressureUnit(name)
	return u
}
