package measure

// Angle is an angle in millionths of a degree.
type Angle int64

// Degree is one degree; MaxAngle, a full turn, is the largest angle that is read either way.
const (
	Degree   Angle = 1_000_000
	MaxAngle       = 360 * Degree
)

const kindAngle = "angle"

func angleDimension() dimension {
	return dimension{kind: kindAngle, unit: angleUnit, limit: int64(MaxAngle), signed: true, words: "deg ° degrees degree"}
}

func angleUnit(spelling string) (unit, bool) {
	switch spelling {
	case "", "°", "deg", "deg.", "degree", "degrees", "DEG", "DEG.", "DEGREE", "DEGREES":
		return unit{"deg", int64(Degree), 1, Imperial}, true
	}
	return unit{}, false
}

// ParseAngle reads an angle in degrees, 45, -22.5, 45 deg, 45°, 22-1/2 deg, rounded once to the nearest millionth. A
// leading minus is accepted. The error is a *SpellingError.
func ParseAngle(text string) (Angle, error) {
	m, err := read(kindAngle, text, angleDimension().read)
	return Angle(m.value), err
}

// Text prints the angle in degrees with at most four decimals, 89.8343°, alike in both systems.
func (a Angle) Text(System) string {
	return trimmed(degrees().in(int64(a)), 4) + "°"
}

// In counts the angle in degrees and names that unit, alike in both systems.
func (a Angle) In(System) (float64, string) {
	u := degrees()
	return u.float(int64(a)), u.name
}

func degrees() unit {
	u, _ := angleUnit("deg")
	return u
}
