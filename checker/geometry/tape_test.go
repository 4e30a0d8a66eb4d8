package geometry_test

import (
	"math"
	"testing"

	"plumbrule/checker/measure"
)

// feet is a length as a tape shows it: feet, inches and sixteenths.
func feet(ft, in, sixteenths int64) measure.Length {
	return measure.Length(ft)*measure.Foot + measure.Length(in)*measure.Inch + measure.Length(sixteenths)*measure.Inch/16
}

// inches is a whole number of inches and num/den of another.
func inches(whole, num, den int64) measure.Length {
	return measure.Length(whole)*measure.Inch + measure.Length(num)*measure.Inch/measure.Length(den)
}

// onTape is the length rounded to the nearest sixteenth.
func onTape(l measure.Length) measure.Length {
	sixteenth := measure.Inch / 16
	return (l + sixteenth/2) / sixteenth * sixteenth
}

// decimal is the length in inches.
func decimal(l measure.Length) float64 { return float64(l) / float64(measure.Inch) }

func wantInches(t *testing.T, what string, got measure.Length, want float64, places int) {
	t.Helper()
	if half := 0.5 * math.Pow10(-places); math.Abs(decimal(got)-want) > half+1e-9 {
		t.Errorf("%s is %.6f in, want %.*f", what, decimal(got), places, want)
	}
}

func wantDegrees(t *testing.T, what string, got, want float64, places int) {
	t.Helper()
	if half := 0.5 * math.Pow10(-places); math.Abs(got-want) > half+1e-9 {
		t.Errorf("%s is %.6f degrees, want %.*f", what, got, places, want)
	}
}

func wantMarks(t *testing.T, got, want []measure.Length) {
	t.Helper()
	if len(got) != len(want) {
		t.Fatalf("%d marks, want %d", len(got), len(want))
	}
	for i := range want {
		if onTape(got[i]) != want[i] {
			t.Errorf("mark %d is %.4f in, want %.4f", i, decimal(got[i]), decimal(want[i]))
		}
	}
}
