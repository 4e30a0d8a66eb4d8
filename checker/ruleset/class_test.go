package ruleset_test

import (
	"strings"
	"testing"
	"testing/fstest"

	"plumbrule/checker/result"
	"plumbrule/checker/ruleset"
)

const (
	ofTheCheck = "    note: of the check\n"
	ofTheState = "    clause: A1\n"
	ofTheTown  = "  kinds/every-one:\n    figures:\n      rise: {value: 8-1/4 in"
)

// classes reads the three sets with what each of them says besides.
func classes(t *testing.T, trial, below, above string) *ruleset.Library {
	t.Helper()
	tree := files(strings.Replace(set, ofTheCheck, ofTheCheck+trial, 1), table)
	tree["state/set.yaml"] = &fstest.MapFile{Data: []byte(strings.Replace(state, ofTheState, ofTheState+below, 1))}
	tree["town/set.yaml"] = &fstest.MapFile{Data: []byte(strings.Replace(town, ofTheTown, strings.Replace(ofTheTown, "    figures", above+"    figures", 1), 1))}
	return ruleset.NewLibrary(tree, checks(t))
}

func TestSetStatesTheClassOfACheck(t *testing.T) {
	const structure, lifeSafety = "    class: structure\n", "    class: life safety\n"
	for _, tt := range []struct {
		name, trial, state, town string
		want                     map[string]result.Consequence
	}{
		{"nobody", "", "", "", map[string]result.Consequence{"trial": result.Workmanship, "state": result.Workmanship, "town": result.Workmanship}},
		{"the lowest", structure, "", "", map[string]result.Consequence{"trial": result.Structure, "state": result.Structure, "town": result.Structure}},
		{"the one between", "", lifeSafety, "", map[string]result.Consequence{"trial": result.Workmanship, "state": result.LifeSafety, "town": result.LifeSafety}},
		{"each", structure, lifeSafety, "    class: durability\n", map[string]result.Consequence{"trial": result.Structure, "state": result.LifeSafety, "town": result.Durability}},
	} {
		t.Run(tt.name, func(t *testing.T) {
			l := classes(t, tt.trial, tt.state, tt.town)
			for name, want := range tt.want {
				s := byName(t, l, name)
				if got := s.Describe("kinds/every-one").Consequence; got != want {
					t.Errorf("%s takes it for %s, want %s", name, got, want)
				}
				if got := s.Catalog().Find("kinds/every-one").Consequence; got != result.Workmanship {
					t.Errorf("the check itself has become %s", got)
				}
			}
			if got := byName(t, l, "town").Describe("kinds/reader").Consequence; got != result.Workmanship {
				t.Errorf("another check has become %s", got)
			}
		})
	}
}

// A class alone is a change too.
func TestOverlayStatesAClassAlone(t *testing.T) {
	tree := files(set, table)
	tree["city/set.yaml"] = &fstest.MapFile{Data: []byte("set: city\ntitle: City rules\nedition: \"1\"\npublisher: the city\nextends: trial\nchecks:\n  kinds/all: {class: durability}\n")}
	s := byName(t, ruleset.NewLibrary(tree, checks(t)), "city")
	if c := s.Check("kinds/every-one"); c.Class != result.Durability || c.Figure("rise").Text != "7-3/4 in" || c.Figure("rise").Amended() != "" {
		t.Errorf("%+v", c)
	}
}

func TestClassRefused(t *testing.T) {
	_, err := ruleset.NewLibrary(files(strings.Replace(set, ofTheCheck, ofTheCheck+"    class: danger\n", 1), table), checks(t)).ByName("trial")
	if err == nil || !strings.Contains(err.Error(), "trial/set.yaml:14:12: ") || !strings.Contains(err.Error(), "life safety") {
		t.Errorf("an unknown class: %v", err)
	}
	l := library(t, "off: true, clause: A2", "off: true, class: structure, clause: A2")
	if _, err := l.ByName("state"); err == nil || !strings.Contains(err.Error(), "a check that is taken out has no class") {
		t.Errorf("a class of a check that is taken out: %v", err)
	}
}
