package packet

import "testing"

func TestNumberList(t *testing.T) {
	for want, numbers := range map[string][]int{
		"": nil, "4": {4}, "1, 2": {2, 1}, "1 to 3, 7, 9, 10": {10, 3, 1, 2, 7, 9, 2},
	} {
		if got := numberList(numbers); got != want {
			t.Errorf("%v: %q, want %q", numbers, got, want)
		}
	}
}

func TestPlace(t *testing.T) {
	for pointer, want := range map[string]string{
		"/platforms/0/beams/1/posts_at/2": "platforms 1, beams 2, posts at 3",
		"/lumber/deck~1floor":             "lumber, deck/floor",
		"/lumber/2x10":                    "lumber, 2x10",
		"/stairs/0":                       "stairs 1",
	} {
		if got := place(pointer); got != want {
			t.Errorf("%s: %q, want %q", pointer, got, want)
		}
	}
}

// What belongs together stays on one line.
func TestJoined(t *testing.T) {
	for words, want := range map[string]string{
		`20'-8 13/16" and 3/4"`: "20'-8\u00a013/16\" and 3/4\"",
		"163.286 mm at 40 psf":  "163.286\u00a0mm at 40\u00a0psf",
		"8 in place of 7":       "8 in place of 7",
	} {
		if got := joined(words); got != want {
			t.Errorf("%q, want %q", got, want)
		}
	}
}
