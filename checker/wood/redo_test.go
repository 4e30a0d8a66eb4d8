package wood_test

import (
	"fmt"
	"math"
	"strconv"
	"strings"
	"testing"
	"unicode"

	"plumbrule/checker/wood"
)

// redo goes through a report as a reader with a calculator would: each formula is evaluated with the values of the steps
// before it and has to give the value beside it.
func redo(t *testing.T, r wood.Report) {
	t.Helper()
	known := map[string]float64{}
	for _, s := range r.Steps {
		if s.Status == "" || s.Name == "" {
			t.Errorf("%s: %+v has no status or name", r.Title, s)
		}
		if s.Formula != "" {
			f := formula{text: []rune(s.Formula), known: known}
			got, err := f.evaluate()
			if err != nil {
				t.Errorf("%s: %s: %v", r.Title, s, err)
			} else if math.Abs(got-s.Value) > 1e-6*max(1e-9, math.Abs(s.Value)) {
				t.Errorf("%s: %s: redone it gives %g", r.Title, s, got)
			}
		}
		known[s.Name] = s.Value
	}
	for _, line := range r.Lines() {
		if strings.Contains(line, "NaN") || strings.Contains(line, "Inf") || line == "" {
			t.Errorf("%s: line %q", r.Title, line)
		}
	}
}

// formula evaluates what the steps are written in: + - · / ^ ² ³ √ ∛, brackets, and min, max, floor and round.
type formula struct {
	text  []rune
	at    int
	known map[string]float64
}

func (f *formula) evaluate() (v float64, err error) {
	defer func() {
		if r := recover(); r != nil {
			err = fmt.Errorf("%v", r)
		}
	}()
	v = f.sum()
	if f.peek() != 0 {
		panic("left over: " + string(f.text[f.at:]))
	}
	return v, nil
}

func (f *formula) peek() rune {
	for f.at < len(f.text) && f.text[f.at] == ' ' {
		f.at++
	}
	if f.at == len(f.text) {
		return 0
	}
	return f.text[f.at]
}

func (f *formula) take(r rune) bool {
	if f.peek() == r {
		f.at++
		return true
	}
	return false
}

func (f *formula) sum() float64 {
	v := f.product()
	for {
		switch {
		case f.take('+'):
			v += f.product()
		case f.take('-'):
			v -= f.product()
		default:
			return v
		}
	}
}

func (f *formula) product() float64 {
	v := f.power()
	for {
		switch {
		case f.take('·'):
			v *= f.power()
		case f.take('/'):
			v /= f.power()
		default:
			return v
		}
	}
}

func (f *formula) power() float64 {
	v := f.primary()
	for {
		switch {
		case f.take('²'):
			v *= v
		case f.take('³'):
			v *= v * v
		case f.take('^'):
			v = math.Pow(v, f.primary())
		default:
			return v
		}
	}
}

func (f *formula) primary() float64 {
	switch r := f.peek(); {
	case f.take('√'):
		return math.Sqrt(f.primary())
	case f.take('∛'):
		return math.Cbrt(f.primary())
	case f.take('('):
		v := f.sum()
		f.close()
		return v
	case unicode.IsDigit(r):
		return f.literal()
	default:
		return f.name()
	}
}

func (f *formula) close() {
	if !f.take(')') {
		panic("no closing bracket")
	}
}

func (f *formula) literal() float64 {
	start := f.at
	for f.at < len(f.text) && (unicode.IsDigit(f.text[f.at]) || f.text[f.at] == '.') {
		f.at++
	}
	v, err := strconv.ParseFloat(string(f.text[start:f.at]), 64)
	if err != nil {
		panic(err)
	}
	return v
}

func (f *formula) name() float64 {
	start := f.at
	for f.at < len(f.text) && (unicode.IsLetter(f.text[f.at]) || f.text[f.at] >= '0' && f.text[f.at] <= '9' || strings.ContainsRune("_′*⊥∥", f.text[f.at])) {
		f.at++
	}
	name := string(f.text[start:f.at])
	if f.peek() == '(' {
		return f.call(name)
	}
	v, ok := f.known[name]
	if !ok {
		panic("no earlier step " + strconv.Quote(name))
	}
	return v
}

func (f *formula) call(name string) float64 {
	f.take('(')
	values := []float64{f.sum()}
	for f.take(',') {
		values = append(values, f.sum())
	}
	f.close()
	v := values[0]
	switch name {
	case "min", "max":
		for _, o := range values {
			if name == "min" {
				v = min(v, o)
			} else {
				v = max(v, o)
			}
		}
	case "floor":
		v = math.Floor(v + 1e-9)
	case "round":
		v = math.Floor(v + 0.5)
	default:
		panic("no function " + name)
	}
	return v
}
