package checker_test

import (
	"slices"
	"strings"

	"plumbrule/checker/catalog"
	"plumbrule/checker/facts"
	"plumbrule/checker/measure"
	"plumbrule/checker/result"
)

// irc are the editions of the model code whose figures are mostly the same.
const (
	irc2018    = "irc-2018"
	irc2021    = "irc-2021"
	irc2024    = "irc-2024"
	irc        = irc2018 + " " + irc2021 + " " + irc2024
	ircLater   = irc2021 + " " + irc2024
	dca6       = "dca6-2012"
	wisconsin  = "wisconsin-decks"
	practice   = "common-practice"
	everywhere = irc + " " + dca6 + " " + wisconsin

	canadianBeams = "ca-ns-halifax ca-nb-southwest"
)

// given is what sets say of a figure, read from their documents and not from
// the sets: texts by the sets' ids. Lists have commas between their words.
type given map[string]string

func (g given) of(set string) (string, bool) {
	for sets, text := range g {
		if slices.Contains(strings.Fields(sets), set) {
			return text, true
		}
	}
	return "", false
}

// plain is a figure that one fact is held against.
type plain struct {
	figure string // check and figure
	given  given
	// past tells where the outside lies: 1 above a number, or among the words
	// of a list; -1 below it, or among all other words.
	past  int64
	alone bool  // the fact is one of the whole design
	inner bool  // an inner band makes all values outside, in other words
	quiet bool  // past the limit the check says something else than outside
	step  int64 // how far past a share one value lies, 1 if nothing is said
	build func(p put)
}

// put is one value to be put on a sheet.
type put struct {
	*sheet
	at, place []string
	n         int64  // a number; for a share, that of tenFeet
	word      string // one word of a list, or of none
	yes       bool
}

func (p put) length() *facts.Length     { return shown(measure.Length(p.n), p.place) }
func (p put) pressure() *facts.Pressure { return shown(measure.Pressure(p.n), p.place) }
func (p put) force() *facts.Force       { return shown(measure.Force(p.n), p.place) }
func (p put) count() *facts.Count       { return shown(p.n, p.place) }
func (p put) words() *facts.Words       { return shown(p.word, p.place) }
func (p put) flag() *facts.Flag         { return shown(p.yes, p.place) }

// long is a length that is not the one in question.
func (p put) long(length measure.Length) *facts.Length { return shown(length, p.at) }

func (p put) said(word string) *facts.Words { return shown(word, p.at) }

func (p put) true(yes bool) *facts.Flag { return shown(yes, p.at) }

// tenFeet is what shares are shares of.
const tenFeet = 10 * measure.Foot

// value is what is put on a sheet and whether it must come out as outside.
type value struct {
	put     put
	outside bool
}

// values gives the values at the limit and one step past it.
func (p plain) values(m *mutation, text string) []value {
	check, name, _ := strings.Cut(p.figure, " ")
	declared := m.checks.Find(check).Figure(name)
	if declared == nil {
		m.t.Errorf("%s asks for no figure %s", check, name)
		return nil
	}
	switch declared.Kind {
	case catalog.Flag:
		yes := text == "true"
		return []value{{put{yes: yes}, false}, {put{yes: !yes}, true}}
	case catalog.List, catalog.Words:
		values := []value{{put{word: "some other thing"}, p.past < 0}}
		for word := range strings.SplitSeq(text, ", ") {
			values = append(values, value{put{word: word}, p.past > 0})
		}
		return values
	case catalog.Ratio, catalog.Slope:
		share, err := measure.ParseSlope(strings.Replace(text, "/", " in ", 1))
		if err != nil {
			m.t.Fatalf("%s: %v", p.figure, err)
		}
		n := int64(tenFeet) * share.Rise / share.Run
		return []value{{put{n: n}, false}, {put{n: n + p.past*max(p.step, 1)}, true}}
	}
	n, err := wholeOf(declared.Kind, text)
	if err != nil {
		m.t.Fatalf("%s: %v", p.figure, err)
	}
	step := units(m.set.System)[declared.Kind] / 2 * p.past
	if declared.Kind == catalog.Count {
		step = p.past
	}
	strict := declared.Relation == result.LessThan
	return []value{{put{n: n}, strict}, {put{n: n + step}, !strict || p.past > 0}, {put{n: n - step}, false}}
}

func wholeOf(kind catalog.Kind, text string) (int64, error) {
	switch kind {
	case catalog.Force:
		v, _, err := measure.ParseForce(text)
		return int64(v), err
	case catalog.Angle:
		v, err := measure.ParseAngle(text)
		return int64(v), err
	}
	return keys{"": text}.read(kind)
}

// sheets puts the values of a figure on one sheet, or on one each.
func (p plain) sheets(m *mutation) []*sheet {
	text, ok := p.given.of(m.set.ID)
	if !ok {
		return nil
	}
	var list []*sheet
	for _, v := range p.values(m, text) {
		if v.put.n < 0 {
			continue
		}
		if len(list) == 0 || p.alone {
			list = append(list, &sheet{})
		}
		v.put.sheet = list[len(list)-1]
		v.put.at, v.put.place = v.put.sheet.at()
		p.build(v.put)
		v.put.expect((v.outside || p.inner) && !p.quiet, "%s of %d %q %t", p.figure, v.put.n, v.put.word, v.put.yes)
	}
	return list
}

// plains are the figures with members of their own.
func plains() []plain {
	return slices.Concat(plainFrames(), plainBeams(), plainPosts(), plainFootings(), plainLedgers(), plainScope(), plainLayout(), plainEngineering())
}
