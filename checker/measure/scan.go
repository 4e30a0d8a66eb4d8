package measure

import (
	"math/big"
	"math/bits"
	"strconv"
	"strings"
	"unicode/utf8"
)

// scanner walks over a folded text.
type scanner struct {
	text string
	at   int
}

func (s *scanner) rest() string { return s.text[s.at:] }

func (s *scanner) done() bool { return s.at == len(s.text) }

// take steps over a prefix if it comes next.
func (s *scanner) take(prefix string) bool {
	if !strings.HasPrefix(s.rest(), prefix) {
		return false
	}
	s.at += len(prefix)
	return true
}

// space steps over blanks and reports whether there were any.
func (s *scanner) space() bool { return s.while(func(c byte) bool { return c == ' ' }) != "" }

func (s *scanner) digits() string { return s.while(isDigit) }

// word steps over letters, and over the full stop of an abbreviation.
func (s *scanner) word() string {
	start := s.at
	if s.while(isLetter) != "" {
		s.take(".")
	}
	return s.text[start:s.at]
}

func (s *scanner) while(accept func(byte) bool) string {
	start := s.at
	for s.at < len(s.text) && accept(s.text[s.at]) {
		s.at++
	}
	return s.text[start:s.at]
}

func isDigit(c byte) bool { return '0' <= c && c <= '9' }

func isLetter(c byte) bool { return 'a' <= c && c <= 'z' || 'A' <= c && c <= 'Z' }

// numberNext reports whether a number starts here.
func (s *scanner) numberNext() bool {
	r, _ := utf8.DecodeRuneInString(s.rest())
	_, _, single := vulgar(r)
	return single || r == '.' || '0' <= r && r <= '9'
}

// number is an unsigned number as written, 12, 7.75, 3/4, 7-3/4, 7 3/4 or 7¾, and its exact value num/den.
type number struct {
	num, den uint64
	text     string
	improper bool // a whole number with a fraction of one or more behind it
}

// maxDigits keeps numerators and denominators within a uint64. A float64 needs 17 to be written out.
const maxDigits = 18

func (n number) value() *big.Rat {
	return new(big.Rat).SetFrac(new(big.Int).SetUint64(n.num), new(big.Int).SetUint64(n.den))
}

func (n number) whole() bool { return strings.Trim(n.text, "0123456789") == "" }

// plus adds a whole number, which may take more digits than there is room for.
func (n number) plus(whole uint64) (number, *fault) {
	high, low := bits.Mul64(whole, n.den)
	sum, carry := bits.Add64(low, n.num, 0)
	if high != 0 || carry != 0 {
		return n, tooManyDigits()
	}
	n.num = sum
	return n, nil
}

func tooManyDigits() *fault {
	return &fault{reason: outOfRange, problem: "a number of too many digits"}
}

// number reads the longest number that starts here.
func (s *scanner) number() (number, *fault) {
	start := s.at
	n, wrong := s.numeral()
	n.text = s.text[start:s.at]
	return n, wrong
}

func (s *scanner) numeral() (number, *fault) {
	digits := s.digits()
	switch {
	case strings.HasPrefix(s.rest(), ".") && s.at+1 < len(s.text) && isDigit(s.text[s.at+1]):
		s.at++
		decimals := s.digits()
		num, wrong := count(digits + decimals)
		return number{num: num, den: power10(len(decimals))}, wrong
	case strings.HasPrefix(s.rest(), "/") && digits != "":
		return s.over(digits)
	case digits == "":
		if n, ok := s.vulgar(); ok {
			return n, nil
		}
		return number{}, misshapen("does not start with a number")
	}
	whole, wrong := count(digits)
	if wrong != nil {
		return number{}, wrong
	}
	n, found, wrong := s.fractionBehind()
	if wrong != nil || !found {
		return number{num: whole, den: 1}, wrong
	}
	n.improper = n.num >= n.den
	return n.plus(whole)
}

// fractionBehind reads the fraction of a mixed number together with what separates it from the whole number. Without
// a fraction it stays where it is.
func (s *scanner) fractionBehind() (n number, found bool, wrong *fault) {
	start := s.at
	joined := !s.take("-") && !s.space()
	if n, ok := s.vulgar(); ok {
		return n, true, nil
	}
	if num := s.digits(); !joined && num != "" && strings.HasPrefix(s.rest(), "/") {
		n, wrong = s.over(num)
		return n, true, wrong
	}
	s.at = start
	return number{}, false, nil
}

// over reads the slash and the denominator behind a numerator.
func (s *scanner) over(numerator string) (number, *fault) {
	s.take("/")
	denominator := s.digits()
	if denominator == "" {
		return number{}, misshapen("a fraction without a denominator")
	}
	num, wrong := count(numerator)
	if wrong != nil {
		return number{}, wrong
	}
	den, wrong := count(denominator)
	if wrong == nil && den == 0 {
		wrong = &fault{reason: zeroDenominator, problem: "a fraction with a zero denominator"}
	}
	return number{num: num, den: den}, wrong
}

func (s *scanner) vulgar() (number, bool) {
	r, size := utf8.DecodeRuneInString(s.rest())
	num, den, ok := vulgar(r)
	if ok {
		s.at += size
	}
	return number{num: num, den: den}, ok
}

// count is the value of a row of digits.
func count(digits string) (uint64, *fault) {
	if len(digits) > maxDigits {
		return 0, tooManyDigits()
	}
	n, _ := strconv.ParseUint(digits, 10, 64) // so few digits always fit
	return n, nil
}

// power10 is called with no more than maxDigits by way of count.
func power10(exponent int) uint64 {
	power := uint64(1)
	for range min(exponent, maxDigits) {
		power *= 10
	}
	return power
}
