package html_test

import (
	"fmt"
	"math"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"plumbrule/checker/packet/packettest"
)

// Words are readable on what is behind them, by the contrast that WCAG 2.1
// defines (relative luminance, 1.4.3: at least 4.5). A rule that says one of the
// two colors only is held against ink and paper of the whole page.
func TestContrast(t *testing.T) {
	page := write(t, packettest.Packet(t))
	sheet, _, _ := strings.Cut(strings.SplitAfter(page, "<style>")[1], "</style>")
	rule := regexp.MustCompile(`([^{}]+)\{([^{}]*)\}`)
	ink := regexp.MustCompile(`(?:^|[;\s])color:\s*(#[0-9a-f]{6})`)
	behind := regexp.MustCompile(`background:\s*(#[0-9a-f]{6})`)
	const white = "#ffffff"
	pairs := 0
	for _, m := range rule.FindAllStringSubmatch(sheet, -1) {
		front, back := "#16202a", white
		if c := ink.FindStringSubmatch(m[2]); c != nil {
			front = c[1]
		}
		if c := behind.FindStringSubmatch(m[2]); c != nil {
			back = c[1]
		}
		pairs++
		if got := contrast(t, front, back); got < 4.5 {
			t.Errorf("%s: %s on %s has a contrast of %.2f", strings.TrimSpace(m[1]), front, back, got)
		}
	}
	if pairs < 20 {
		t.Errorf("only %d rules were found", pairs)
	}
	// Every color is written so that the test above sees it.
	for _, word := range []string{"rgb(", "hsl(", "var(", "opacity", "background-color"} {
		if strings.Contains(sheet, word) {
			t.Errorf("the style sheet has %s, which this test does not read", word)
		}
	}
}

func contrast(t *testing.T, a, b string) float64 {
	t.Helper()
	x, y := luminance(t, a), luminance(t, b)
	return (max(x, y) + 0.05) / (min(x, y) + 0.05)
}

func luminance(t *testing.T, color string) float64 {
	t.Helper()
	sum := 0.0
	for i, weight := range []float64{0.2126, 0.7152, 0.0722} {
		n, err := strconv.ParseUint(color[1+2*i:3+2*i], 16, 8)
		if err != nil {
			t.Fatal(fmt.Errorf("color %s: %w", color, err))
		}
		v := float64(n) / 255
		if v <= 0.04045 {
			v /= 12.92
		} else {
			v = math.Pow((v+0.055)/1.055, 2.4)
		}
		sum += weight * v
	}
	return sum
}

// The formula, against its ends and a value of the definition's own example.
func TestContrastFormula(t *testing.T) {
	for pair, want := range map[[2]string]float64{
		{"#000000", "#ffffff"}: 21, {"#ffffff", "#ffffff"}: 1, {"#767676", "#ffffff"}: 4.54,
	} {
		if got := contrast(t, pair[0], pair[1]); math.Abs(got-want) > 0.01 {
			t.Errorf("%v: %.3f, want %.2f", pair, got, want)
		}
	}
}
