package main

import (
	"bytes"
	"testing"
	"time"
)

func TestProgress(t *testing.T) {
	start := time.Date(2026, 5, 1, 12, 0, 0, 0, time.UTC)
	cases := []struct {
		name    string
		watched bool
		term    string
		at      []time.Duration // when each design is done
		want    string
	}{
		{"a short run", true, "", []time.Duration{300 * time.Millisecond, 999 * time.Millisecond}, ""},
		{"a long run", true, "", []time.Duration{time.Second, 1050 * time.Millisecond, 2 * time.Second},
			"\rchecked 1 of 10 designs\rchecked 3 of 10 designs\r                       \r"},
		{"a pipe", false, "", []time.Duration{time.Second, 2 * time.Second}, ""},
		{"a terminal that cannot go back", true, "dumb", []time.Duration{time.Second, 2 * time.Second}, ""},
	}
	for _, c := range cases {
		t.Run(c.name, func(t *testing.T) {
			var out bytes.Buffer
			now := start
			line := newProgress(environment{
				err: &out, now: func() time.Time { return now },
				watched: func() bool { return c.watched },
				getenv:  func(string) string { return c.term },
			}, 10)
			for i, at := range c.at {
				now = start.Add(at)
				line.done(i + 1)
			}
			line.end()
			if got := out.String(); got != c.want {
				t.Errorf("%q, want %q", got, c.want)
			}
		})
	}
}
