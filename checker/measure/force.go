package measure

// Force is a force or a weight in micronewtons.
type Force int64

// MaxForce is the largest force that is read: 1 GN.
const MaxForce Force = 1e15

const kindForce = "force"

func forceDimension() dimension {
	return dimension{
		kind: kindForce, unit: forceUnit, limit: int64(MaxForce),
		words: "lb kN N kip kg lbs lbf pounds kips newtons",
	}
}

// forceUnit counts a kilogram as its weight under standard gravity, exactly 9.80665 m/s², because what stands on a
// deck is typed by its mass.
func forceUnit(spelling string) (unit, bool) {
	const pound, perPound = 44_482_216_152_605, 10_000_000
	switch spelling {
	case "lb", "lb.", "lbs", "lbs.", "lbf", "pound", "pounds", "LB", "LB.", "LBS", "LBS.", "LBF", "POUND", "POUNDS":
		return unit{"lb", pound, perPound, Imperial}, true
	case "kip", "kips", "KIP", "KIPS":
		return unit{"kip", pound, perPound / 1000, Imperial}, true
	case "N", "newton", "newtons":
		return unit{"N", 1e6, 1, Metric}, true
	case "kN":
		return unit{"kN", 1e9, 1, Metric}, true
	case "kg":
		return unit{"kg", 9_806_650, 1, Metric}, true
	}
	return unit{}, false
}

// ParseForce reads a force with its unit, 1500 lb, 1.5 kip, 6.7 kN, or a weight in kg, rounded once to the nearest
// micronewton, and tells in which system it was typed. A negative one is refused. The error is a *SpellingError.
func ParseForce(text string) (Force, System, error) {
	m, err := read(kindForce, text, forceDimension().read)
	return Force(m.value), m.system, err
}

// Text prints the force in lb or kN with at most four decimals.
func (f Force) Text(sys System) string { return forceIn(sys).print(int64(f)) }

// In counts the force in lb or kN, rounded to six decimals, and names that unit.
func (f Force) In(sys System) (float64, string) {
	u := forceIn(sys)
	return u.float(int64(f)), u.name
}

func forceIn(sys System) unit {
	name := "lb"
	if sys == Metric {
		name = "kN"
	}
	u, _ := forceUnit(name)
	return u
}
