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

// A single design is checked in no time; what takes long are the changes that
// are tried on it.
func TestProgressOfTrials(t *testing.T) {
	for _, c := range []struct {
		designs int
		watched bool
		want    string
	}{
		{1, true, "\rtrying changes, 12 of at most 120\rtrying changes, 40 of at most 120\r                                 \r"},
		{
			3, true, "\rtrying changes, 12 of at most 120, for design 2 of 3\rtrying changes, 40 of at most 120, for design 2 of 3" +
				"\r                                                    \r",
		},
		{1, false, ""},
	} {
		var out bytes.Buffer
		now := time.Date(2026, 5, 1, 12, 0, 0, 0, time.UTC)
		line := newProgress(environment{
			err: &out, now: func() time.Time { return now },
			watched: func() bool { return c.watched },
			getenv:  func(string) string { return "" },
		}, c.designs)
		line.trying(2, 1, 120)
		for _, done := range []int{12, 13, 40} {
			if now = now.Add(time.Second); done == 13 {
				now = now.Add(-990 * time.Millisecond) // too soon after the last
			}
			line.trying(2, done, 120)
		}
		line.end()
		if got := out.String(); got != c.want {
			t.Errorf("%d designs: %q, want %q", c.designs, got, c.want)
		}
	}
}
