package measure

import (
	"math/big"
	"strings"
)

const kindSlope = "slope"

// ParseSlope reads a slope: 1 in 60, 1:48, 2%, 1/4 in per ft, 10 mm per m, level. A leading minus is accepted, for a
// slope against the direction it is named by. The error is a *SpellingError.
func ParseSlope(text string) (Slope, error) {
	return read(kindSlope, text, readSlope)
}

func readSlope(text string) (Slope, *fault) {
	if text == "level" || text == "LEVEL" {
		return Slope{Rise: 0, Run: 1}, nil
	}
	s := scanner{text: text}
	minus := s.take("-")
	rise, wrong := s.number()
	if wrong != nil {
		return Slope{}, wrong
	}
	ratio, wrong := s.slope(rise)
	if wrong != nil {
		return Slope{}, wrong
	}
	if rise.improper {
		return Slope{}, carried(exactly(rise.value()) + text[len(rise.text):])
	}
	if minus {
		ratio.Neg(ratio)
	}
	slope, ok := reduced(ratio)
	if !ok {
		return Slope{}, &fault{reason: outOfRange, problem: "its ratio has terms above 1e9"}
	}
	return slope, nil
}

// slope reads what follows the rise, up to the end of the text.
func (s *scanner) slope(rise number) (*big.Rat, *fault) {
	spaced := s.space()
	switch {
	case s.take("%"):
		if !s.done() {
			return nil, misshapen("unexpected " + quoted(s.rest()) + " behind the percent sign")
		}
		return new(big.Rat).Quo(rise.value(), big.NewRat(100, 1)), nil
	case s.take(":"):
		s.space()
		return s.run(rise)
	case spaced && s.oneIn():
		return s.run(rise)
	}
	start := s.at
	u, _, ok := s.lengthUnit()
	if !ok {
		return nil, noSlope(s.text[start:], rise)
	}
	return s.per(rise, u)
}

// oneIn steps over the "in" of 1 in 60, which is no inch because a number follows.
func (s *scanner) oneIn() bool {
	start := s.at
	if (s.take("in") || s.take("IN")) && s.space() && s.numberNext() {
		return true
	}
	s.at = start
	return false
}

// run reads the run of a rise that is in the same unit.
func (s *scanner) run(rise number) (*big.Rat, *fault) {
	run, wrong := s.number()
	switch {
	case wrong != nil:
		return nil, wrong
	case !s.done():
		return nil, misshapen("unexpected "+quoted(s.rest())+" behind the run", s.text[:s.at])
	case run.num == 0:
		return nil, &fault{reason: zeroDenominator, problem: "a run of zero"}
	case run.improper:
		return nil, carried(strings.TrimSuffix(s.text, run.text) + exactly(run.value()))
	}
	return new(big.Rat).Quo(rise.value(), run.value()), nil
}

// per reads the run of a rise with a unit: inches per foot, millimetres or centimetres per metre.
func (s *scanner) per(rise number, small unit) (*big.Rat, *fault) {
	spaced := s.space()
	if s.take("/") {
		s.space()
	} else if !spaced || !s.take("per") && !s.take("PER") || !s.space() {
		return nil, noRun(rise, small)
	}
	large, _, ok := s.lengthUnit()
	if !ok || !s.done() {
		return nil, noRun(rise, small)
	}
	switch small.name + "/" + large.name {
	case "in/ft", "mm/m", "cm/m":
		return new(big.Rat).Mul(rise.value(), big.NewRat(small.num, large.num)), nil
	}
	return nil, noRun(rise, small)
}

func noRun(rise number, small unit) *fault {
	run := " per ft"
	if small.system == Metric {
		run = " per m"
	}
	return misshapen("a rise in "+small.name+" needs "+quoted(run[1:])+" behind it", rise.text+" "+small.name+run)
}

// noSlope explains a rest that begins neither with a unit nor with a sign of a ratio.
func noSlope(rest string, rise number) *fault {
	switch {
	case rest != "":
		s := scanner{text: rest}
		s.word()
		s.space()
		return misshapen("unexpected "+quoted(rest)+", expected a slope such as 1 in 60, 2% or 1/4 in per ft", rise.text+" in "+s.rest())
	case rise.num == 0:
		return misshapen(noUnit, "0%")
	case strings.Contains(rise.text, "/"):
		run := new(big.Rat).Inv(rise.value())
		return misshapen(noUnit, "1 in "+exactly(run), rise.text+" in per ft")
	}
	return misshapen(noUnit, rise.text+"%", "1 in "+rise.text)
}
