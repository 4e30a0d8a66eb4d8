package waive

import (
	"fmt"
	"time"
)

// Date is a day as 2027-01-31, so that dates order as texts. The empty date is
// no day.
type Date string

// DateOf gives the day of a moment, in the moment's own zone.
func DateOf(t time.Time) Date { return Date(t.Format(time.DateOnly)) }

// ParseDate reads a day. The error says what is wrong with it.
func ParseDate(text string) (Date, error) {
	t, err := time.Parse(time.DateOnly, text)
	if err != nil {
		return "", fmt.Errorf("%q is no day; write year-month-day: 2027-01-31", text)
	}
	return DateOf(t), nil
}
