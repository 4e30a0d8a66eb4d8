package measure

// System is the family of units in which a value was typed, or is to be printed.
type System uint8

const (
	// Imperial is feet, inches, pounds and their like.
	Imperial System = iota
	// Metric is millimetres, newtons, pascals and their like.
	Metric
)

// String names the system in lower case.
func (s System) String() string {
	if s == Metric {
		return "metric"
	}
	return "imperial"
}
